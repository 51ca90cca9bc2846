import type { WeekPlan } from "halfloaf/kitchen";
import type { WeekNews } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useNames } from "../kitchen/useNames.ts";
import LetFollow from "../thinking/LetFollow.tsx";
import { useFurther } from "../words/useFurther.ts";
import { tellNews } from "./tellNews.ts";

/** What a week came out to otherwise than planned, line by line, and what lets it follow. */
export default function NewsTold({
  news,
  week,
}: {
  readonly news: readonly WeekNews[];
  readonly week: WeekPlan;
}): ReactNode {
  const { words, further, formats } = useFurther("today");
  const names = useNames();
  const lines = week.trips.flatMap((trip) => trip.lines);
  const packOf = (id: string): string => lines.find(({ pack }) => pack === id)?.label ?? id;
  const telling = { week, packOf, names, words, further, formats };
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
      <LetFollow told={JSON.stringify(news)} />
    </section>
  );
}
