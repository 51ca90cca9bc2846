import { remindersOf, useUpList } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";

/** What to do next, and what must be used up. */
export default function TodayScreen(): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  return (
    <div className="stack">
      <h1>{formats.longDay(view.day)}</h1>
      <p>{view.kitchen.name}</p>
    </div>
  );
}
