import { fitOwnFoods, NO_FINDINGS, withFindings } from "@halfloaf/reading";
import { foodName } from "halfloaf/food";
import { editsBetween } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo, useState } from "react";
import { Issues } from "../../kitchen/Issues.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useSaving } from "../../kitchen/useSaving.ts";
import { Allowed } from "../../sharing/Allowed.tsx";
import { RoleNote } from "../../sharing/RoleNote.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { upper } from "../useFigures.ts";
import { ChangesTable } from "./ChangesTable.tsx";

/** A file of own foods, and figures from elsewhere, beside what this kitchen has; kept as one act. */
export function OwnFoodsRead({ content }: { readonly content: unknown }): ReactNode {
  const { further, language } = useFurther("foods");
  const { view } = useKitchen();
  const { issues, save } = useSaving();
  const [wasKept, setKept] = useState(false);
  const { edited, tables } = view;
  const fitted = useMemo(() => {
    const own = new Set(edited.foods.map(({ id }) => id));
    return fitOwnFoods(content, tables.foods, new Map([...tables.foods].filter(([id]) => !own.has(id))));
  }, [content, edited.foods, tables.foods]);
  const { foodRead: words, foods: texts } = further;
  if (!fitted.ok)
    return (
      <div className="issues" role="status">
        <p>{words.refused}</p>
        <ul>
          {fitted.issues.map(({ code, path, received, expected }) => (
            <li key={`${code} ${path.join(" ")}`}>{words.faultOf(path.join(" "), received, expected)}</li>
          ))}
        </ul>
      </div>
    );
  const { foods, overrides, laid } = fitted.value;
  const nameOf = (id: string): string => upper(foodName(laid.get(id), edited.english, language) ?? id);
  const findings = { ...NO_FINDINGS, foods, overrides: overrides.map(({ override }) => override) };
  const now = { ...edited, ...withFindings(edited, findings) };
  const isNew = editsBetween(edited, now).length > 0;
  return (
    <>
      <p role="status">{words.brought(foods.length, overrides.length)}</p>
      <ul className="lines">
        {foods.map(({ id, source }) => (
          <li key={id}>
            {nameOf(id)} {edited.foods.some((food) => food.id === id) && <b className="small">({words.replaces})</b>}
            <div className="small soft">{texts.source(source)}</div>
          </li>
        ))}
        {overrides.map(({ override, changes }) => (
          <li key={override.food} className="stack tight">
            {nameOf(override.food)}
            <div className="small soft">{texts.source(override.from)}</div>
            <ChangesTable changes={changes} from={override.from} />
          </li>
        ))}
      </ul>
      <Issues issues={issues} />
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button
            type="button"
            className="button main"
            disabled={!isNew}
            onClick={() => setKept(save((before) => ({ ...before, ...withFindings(before, findings) })))}
          >
            {words.keep}
          </button>
        </div>
      </Allowed>
      <p role="status">{!isNew && (wasKept ? words.kept : words.allThere)}</p>
    </>
  );
}
