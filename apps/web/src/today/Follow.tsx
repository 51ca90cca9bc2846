import { weekNews } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { LetFollow } from "../thinking/LetFollow.tsx";
import { useFurther } from "../words/useFurther.ts";
import { tellNews } from "./tellNews.ts";

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
  const told = news.map((change) => tellNews(change, { week: menu.week, packOf, names, words, further, formats }));
  return (
    <section className="sheet stack tight" aria-labelledby="follow">
      <h2 id="follow">{further.follow.title}</h2>
      <p>{further.follow.count(news.length)}</p>
      <ul className="lines close small">
        {told.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <LetFollow told={JSON.stringify(news)} />
    </section>
  );
}
