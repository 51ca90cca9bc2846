import { type ReactNode, useId, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import type { DishWanted } from "../thinking/Thinker.ts";
import { useWords } from "../words/WordsContext.tsx";

/** Dishes to be cooked together: those the menu has for today first, any other by name. */
export function ChooseDishes({
  onChoose,
}: {
  readonly onChoose: (wanted: readonly DishWanted[]) => Promise<void>;
}): ReactNode {
  const { words } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const field = useId();
  const [wanted, setWanted] = useState<readonly DishWanted[]>([]);
  const [text, setText] = useState("");
  const planned = (view.menu?.week.batches ?? []).filter(({ date, putBy }) => date === view.day && putBy === undefined);
  const found = view.tables.dishes.filter(
    ({ title }) => text.length > 1 && title.toLowerCase().includes(text.toLowerCase()),
  );
  const isWanted = (dish: string): boolean => wanted.some((each) => each.dish === dish);
  const toggle = (dish: string, portions: number): void =>
    setWanted(isWanted(dish) ? wanted.filter((each) => each.dish !== dish) : [...wanted, { dish, portions }]);
  const choices = [
    ...planned.map(({ dish, portions }) => ({ dish, portions })),
    ...found.slice(0, 8).map(({ id }) => ({ dish: id, portions: view.kitchen.eaters.length })),
    ...wanted,
  ].filter(({ dish }, at, all) => all.findIndex((each) => each.dish === dish) === at);
  return (
    <div className="stack">
      <label className="field" htmlFor={field}>
        {words.work.find}
        <input id={field} type="search" value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <ul className="lines">
        {choices.map(({ dish, portions }) => (
          <li key={dish}>
            <label className="tick">
              <input type="checkbox" checked={isWanted(dish)} onChange={() => toggle(dish, portions)} />
              <span>{names.dish(dish)}</span>
            </label>
          </li>
        ))}
      </ul>
      <div>
        <button
          type="button"
          className="button main"
          disabled={wanted.length === 0}
          onClick={() => void onChoose(wanted)}
        >
          {words.work.order}
        </button>
      </div>
    </div>
  );
}
