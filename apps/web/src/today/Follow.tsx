import { weekNews } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LetFollow } from "../thinking/LetFollow.tsx";
import { useFurther } from "../words/useFurther.ts";

/** Where things came out otherwise than the week took them to be, lets the plan follow; nothing where they did not. */
export function Follow(): ReactNode {
  const { further } = useFurther("today");
  const { view } = useKitchen();
  const { state, menu, day } = view;
  const news = useMemo(() => (menu === undefined ? [] : weekNews(state, menu.week, day)), [state, menu, day]);
  if (news.length === 0) return null;
  return (
    <section className="sheet stack tight" aria-labelledby="follow">
      <h2 id="follow">{further.follow.title}</h2>
      <p>{further.follow.count(news.length)}</p>
      <LetFollow told={JSON.stringify(news)} />
    </section>
  );
}
