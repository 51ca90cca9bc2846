import type { Dish } from "halfloaf/dish";
import { isFound, toSearchText } from "halfloaf/food";
import { type ReactNode, useId, useMemo, useState } from "react";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useFurther } from "../words/useFurther.ts";

/** So many dishes are shown at once. */
const MOST_SHOWN = 8;

interface FindDishProps {
  readonly dishes: readonly Dish[];
  /** Id of the dish that is chosen. */
  readonly chosen: string | undefined;
  readonly onChoose: (dish: string) => void;
}

/** One dish of many: by a part of its name, then among those that have it. */
export function FindDish({ dishes, chosen, onChoose }: FindDishProps): ReactNode {
  const { further, formats } = useFurther("menu");
  const { other } = further;
  const [text, setText] = useState("");
  const group = useId();
  const sorted = useMemo(() => dishes.toSorted((a, b) => formats.compare(a.title, b.title)), [dishes, formats]);
  const found = sorted.filter(({ title }) => isFound(toSearchText(title), text.trim()));
  const shown = found.slice(0, MOST_SHOWN);
  return (
    <>
      <TextField label={other.find} type="search" value={text} onChange={setText} />
      <p className="small soft" role="status">
        {found.length === 0
          ? other.noneFound
          : found.length > shown.length
            ? other.someFound(formats.number(shown.length), formats.number(found.length))
            : other.allFound(found.length)}
      </p>
      <fieldset className="group">
        <legend className="unseen">{other.dish}</legend>
        <div className="move-targets">
          {shown.map(({ id, title }) => (
            <label key={id} className="tick">
              <input type="radio" name={group} checked={id === chosen} onChange={() => onChoose(id)} />
              <span>{title}</span>
            </label>
          ))}
        </div>
      </fieldset>
    </>
  );
}
