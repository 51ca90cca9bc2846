import { contentOfLabel, FoodIndex, findFood, type PricedLine } from "@halfloaf/reading";
import { type ReactNode, useId, useMemo, useState } from "react";
import { WriteFood } from "../../foods/WriteFood.tsx";
import { NumberField } from "../../kitchen/fields/NumberField.tsx";
import { useNamedFoods } from "../../kitchen/useNamedFoods.ts";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import { tellContent } from "./tellContent.ts";
import type { Settling } from "./useSettling.ts";

interface NewPackProps {
  readonly line: PricedLine;
  readonly settling: Settling;
  readonly onMade: () => void;
}

/** What makes a new pack of a line: the food in it, and how much it holds where the line does not tell. */
export function NewPack({ line, settling, onMade }: NewPackProps): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const names = useNames();
  const field = useId();
  const foods = useNamedFoods();
  const all = useMemo(
    () => [...foods.keys()].map((id) => [id, names.food(id)] as const).sort((a, b) => formats.compare(a[1], b[1])),
    [foods, names, formats],
  );
  const near = useMemo(() => {
    const found = findFood(new FoodIndex(foods.values()), { name: line.text.toLowerCase() });
    const first = found.kind === "not-in-table" ? [] : [found.best];
    return [...new Set([...first, ...found.nearest].map(({ food }) => food))];
  }, [foods, line.text]);
  const [food, setFood] = useState("");
  const [massG, setMassG] = useState<number>();
  const told = line.candidate?.content ?? contentOfLabel(line.text);
  const isMass = massG !== undefined && massG > 0;
  const { priced: words } = further;
  return (
    <div className="stack tight">
      <div className="fields">
        <label className="field" htmlFor={field}>
          {words.food}
          <select id={field} value={food} onChange={(event) => setFood(event.target.value)}>
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
        {told === undefined ? (
          <NumberField label={words.grams} value={undefined} onChange={setMassG} />
        ) : (
          <p>{tellContent(told, formats)}</p>
        )}
      </div>
      <WriteFood />
      <div>
        <button
          type="button"
          className="button main"
          disabled={food === "" || (told === undefined && !isMass)}
          onClick={() => settling.makePack(line, food, told === undefined ? massG : undefined) && onMade()}
        >
          {words.make}
        </button>
      </div>
    </div>
  );
}
