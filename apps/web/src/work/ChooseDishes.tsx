import { isFound, toSearchText } from "halfloaf/food";
import { remindersOf } from "halfloaf/kitchen/record";
import { type ReactNode, useId, useMemo, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import type { DishWanted } from "../thinking/Thinker.ts";
import { useWords } from "../words/WordsContext.tsx";
import { cookingsOf } from "./cookingsOf.ts";

const DishesAgainst = lazily(() => import("../thinking/DishesAgainst.tsx"));

const MOST_FOUND = 8;

/** Dishes to be cooked together: those of today's next sitting are chosen already, any other can be found by name. */
export function ChooseDishes({
  onChoose,
}: {
  readonly onChoose: (wanted: readonly DishWanted[]) => Promise<void>;
}): ReactNode {
  const { words } = useWords();
  const { view } = useKitchen();
  const field = useId();
  const cookings = useMemo(() => {
    const reminders = remindersOf(view.edited, view.state, view.tables, view.day);
    return cookingsOf(reminders.flatMap((reminder) => (reminder.kind === "job" ? [reminder.job] : [])));
  }, [view]);
  const [wanted, setWanted] = useState(cookings[0]?.wanted ?? []);
  const [text, setText] = useState("");
  const isWanted = (dish: string): boolean => wanted.some((each) => each.dish === dish);
  const toggle = (choice: DishWanted): void =>
    setWanted(isWanted(choice.dish) ? wanted.filter(({ dish }) => dish !== choice.dish) : [...wanted, choice]);
  const planned = new Set(cookings.flatMap((each) => each.wanted.map(({ dish }) => dish)));
  const found = view.tables.dishes.filter(({ title }) => text.length > 1 && isFound(toSearchText(title), text.trim()));
  const others = [
    ...found.slice(0, MOST_FOUND).map(({ id }) => ({ dish: id, portions: view.kitchen.eaters.length })),
    ...wanted,
  ].filter(({ dish }, at, all) => !planned.has(dish) && all.findIndex((each) => each.dish === dish) === at);
  return (
    <div className="stack">
      {cookings.map(({ sitting, wanted: dishes }) => (
        <fieldset key={sitting} className="choice">
          <legend className="soft small">{words.sittings[sitting]}</legend>
          <DishTicks dishes={dishes} isWanted={isWanted} onToggle={toggle} />
        </fieldset>
      ))}
      <label className="field" htmlFor={field}>
        {words.work.find}
        <input id={field} type="search" value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      {others.length > 0 && <DishTicks dishes={others} isWanted={isWanted} onToggle={toggle} />}
      <Awaited isQuiet>
        <DishesAgainst dishes={wanted.map(({ dish }) => dish)} />
      </Awaited>
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

interface DishTicksProps {
  readonly dishes: readonly DishWanted[];
  readonly isWanted: (dish: string) => boolean;
  readonly onToggle: (choice: DishWanted) => void;
}

function DishTicks({ dishes, isWanted, onToggle }: DishTicksProps): ReactNode {
  const names = useNames();
  return (
    <ul className="lines">
      {dishes.map((choice) => (
        <li key={choice.dish}>
          <label className="tick">
            <input type="checkbox" checked={isWanted(choice.dish)} onChange={() => onToggle(choice)} />
            <span>{names.dish(choice.dish)}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}
