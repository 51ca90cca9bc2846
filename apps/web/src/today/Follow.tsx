import { weekNews } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { tellNews } from "./tellNews.ts";

const LetFollow = lazily(() => import("../thinking/LetFollow.tsx"));

/** Where things came out otherwise than the week took them to be, lets the plan follow; nothing where they did not. */
export function Follow(): ReactNode {
  const { words, further, formats } = useFurther("today");
  const names = useNames();
  const { view } = useKitchen();
  const { state, menu, day } = view;
  const news = useMemo(() => (menu === undefined ? [] : weekNews(state, menu.week, day)), [state, menu, day]);
  if (news.length === 0 || menu === undefined) return null;
  const lines = menu.week.trips.flatMap((trip) => trip.lines);
  const packOf = (id: string): string => lines.find(({ pack }) => pack === id)?.label ?? id;
  const telling = { week: menu.week, packOf, names, words, further, formats };
  // Two finds of one food and size are told alike, so the words alone would not tell their lines apart.
  const told = news.map((change, at) => ({ key: `${change.kind} ${at}`, text: tellNews(change, telling) }));
  return (
    <section className="sheet stack tight" aria-labelledby="follow">
      <h2 id="follow">{further.follow.title}</h2>
      <p>{further.follow.count(news.length)}</p>
      <ul className="lines close small">
        {told.map(({ key, text }) => (
          <li key={key}>{text}</li>
        ))}
      </ul>
      <Awaited>
        <LetFollow told={JSON.stringify(news)} />
      </Awaited>
    </section>
  );
}
