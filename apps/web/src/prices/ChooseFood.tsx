import { FoodIndex, findFood } from "@halfloaf/reading";
import { type ReactNode, useId, useMemo } from "react";
import { useNamedFoods } from "../kitchen/useNamedFoods.ts";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface ChooseFoodProps {
  /** What the goods are called, which the foods offered first are near to. */
  readonly text: string;
  /** "" = none is chosen yet. */
  readonly value: string;
  readonly onChange: (food: string) => void;
}

/** The food that a pack holds: those near to what it is called first, then all. */
export function ChooseFood({ text, value, onChange }: ChooseFoodProps): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const { priced: words } = further;
  const names = useNames();
  const field = useId();
  const foods = useNamedFoods();
  const all = useMemo(
    () => [...foods.keys()].map((id) => [id, names.food(id)] as const).sort((a, b) => formats.compare(a[1], b[1])),
    [foods, names, formats],
  );
  const index = useMemo(() => new FoodIndex(foods.values()), [foods]);
  const near = useMemo(() => {
    if (text.trim() === "") return [];
    const found = findFood(index, { name: text.trim().toLowerCase() });
    const first = found.kind === "not-in-table" ? [] : [found.best];
    return [...new Set([...first, ...found.nearest].map(({ food }) => food))];
  }, [index, text]);
  return (
    <label className="field" htmlFor={field}>
      {words.food}
      <select id={field} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{words.chooseFood}</option>
        {near.length > 0 && (
          <optgroup label={words.nearFoods}>
            {near.map((id) => (
              <option key={id} value={id}>
                {names.food(id)}
              </option>
            ))}
          </optgroup>
        )}
        <optgroup label={words.allFoods}>
          {all.map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </optgroup>
      </select>
    </label>
  );
}
