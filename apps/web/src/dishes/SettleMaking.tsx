import type { DishDraft, MakingChoice } from "@halfloaf/reading";
import { type ReactNode, useId, useState } from "react";
import { WriteFood } from "../foods/WriteFood.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { tellAmount } from "./tellAmount.ts";

interface SettleMakingProps {
  readonly making: DishDraft["makings"][number];
  readonly choice: MakingChoice | undefined;
  readonly isInDoubt: boolean;
  readonly onChoice: (choice: MakingChoice | undefined) => void;
}

/** One line as written and as read; where it is in doubt, the nearest foods to choose from and the amount to tell. */
export function SettleMaking({ making, choice, isInDoubt, onChoice }: SettleMakingProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const names = useNames();
  const [isOpen, setOpen] = useState(isInDoubt);
  // What was in doubt stays open once it is settled, so that nothing is closed under the hand.
  if (isInDoubt && !isOpen) setOpen(true);
  const chosen = choice === "left-out" ? undefined : choice;
  const food = chosen?.food ?? making.food?.value;
  const amount = chosen?.amount ?? making.amount?.value;
  const isLeftOut = choice === "left-out";
  const isGuess =
    !isInDoubt && choice === undefined && (making.food?.sure === "guess" || making.amount?.sure === "guess");
  const told = [
    food === undefined ? further.unknown : names.food(food),
    amount === undefined ? undefined : tellAmount(amount, 1, further, formats),
    making.cut?.value,
    making.optional.value ? further.dishes.optional : undefined,
  ];
  return (
    <div className="side-by-side">
      <div className="written">{making.passage.text}</div>
      <div className="stack tight">
        <div className="row spread">
          <span>
            {isLeftOut ? further.reading.leftOut : told.filter((each) => each !== undefined).join(", ")}
            {isInDoubt && <b className="gone-off"> ({further.reading.doubt})</b>}
            {isGuess && <b> ({further.reading.guess})</b>}
          </span>
          {!isOpen && (
            <button type="button" className="plain" onClick={() => setOpen(true)}>
              {further.edit}
              <span className="unseen"> {making.passage.text}</span>
            </button>
          )}
        </div>
        {making.unread.length > 0 && <p className="small soft">{further.reading.notUsed(making.unread.join("; "))}</p>}
        {isOpen && <Choosing making={making} food={food} choice={choice} onChoice={onChoice} />}
      </div>
    </div>
  );
}

interface ChoosingProps extends Pick<SettleMakingProps, "making" | "choice" | "onChoice"> {
  readonly food: string | undefined;
}

function Choosing({ making, food, choice, onChoice }: ChoosingProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const names = useNames();
  const field = useId();
  const chosen = choice === "left-out" || choice === undefined ? {} : choice;
  const near = [...new Set([...making.offers, ...(making.food === undefined ? [] : [making.food.value])])];
  const others = [...view.tables.foods.keys()]
    .map((id) => [id, names.food(id)] as const)
    .sort((a, b) => formats.compare(a[1], b[1]));
  const setGrams = (massG: number | undefined): void => {
    const { amount: _, ...rest } = chosen;
    onChoice(massG === undefined || !(massG > 0) ? rest : { ...rest, amount: { value: massG, unit: "g" } });
  };
  return (
    <div className="stack tight">
      <label className="field" htmlFor={field}>
        {further.reading.food}
        <select
          id={field}
          value={food ?? ""}
          onChange={(event) => event.target.value !== "" && onChoice({ ...chosen, food: event.target.value })}
        >
          {food === undefined && <option value="">{further.reading.choose}</option>}
          {near.map((id) => (
            <option key={id} value={id}>
              {names.food(id)}
            </option>
          ))}
          <optgroup label={further.reading.otherFood}>
            {others.map(([id, name]) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      <WriteFood />
      <NumberField label={further.reading.amount} value={undefined} onChange={setGrams} />
      <TickField
        label={further.reading.leaveOut}
        isTicked={choice === "left-out"}
        onChange={(isLeftOut) => onChoice(isLeftOut ? "left-out" : undefined)}
      />
    </div>
  );
}
