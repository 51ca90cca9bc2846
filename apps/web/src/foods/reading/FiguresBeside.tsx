import {
  changesOf,
  compareFood,
  type FigureChange,
  NO_FINDINGS,
  type OfficialFood,
  replaceFigures,
  withFindings,
} from "@halfloaf/reading";
import { type Food, overrideFigures } from "halfloaf/food";
import { type ReactNode, useMemo, useState } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { Allowed } from "../../sharing/Allowed.tsx";
import { RoleNote } from "../../sharing/RoleNote.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { Contradictions } from "../Contradictions.tsx";
import { upper } from "../useFigures.ts";
import { ChangesTable } from "./ChangesTable.tsx";

interface FiguresBesideProps {
  readonly food: Food;
  readonly official: OfficialFood;
}

/** The figures of a food beside those of a table, and what takes them. */
export function FiguresBeside({ food, official }: FiguresBesideProps): ReactNode {
  const { further } = useFurther("foods");
  const { session, view } = useKitchen();
  const names = useNames();
  const [wasTaken, setTaken] = useState(false);
  const { override, changes } = useMemo(() => {
    const comparison = compareFood(food, official);
    const made = replaceFigures(comparison, { chosenOn: view.day }).override;
    return { override: made, changes: changesOf(comparison, made) };
  }, [food, official, view.day]);
  const isOther = changes.some(({ kind }) => kind === "changed" || kind === "gained");
  const { foodRead: words } = further;
  const take = (): void => {
    void session.edit((edited) => ({
      ...edited,
      ...withFindings(edited, { ...NO_FINDINGS, overrides: [override] }),
    }));
    setTaken(true);
  };
  return (
    <section className="stack tight">
      <h2>{words.beside(upper(names.food(food.id)), official.name)}</h2>
      <p className="small soft">{further.foods.source(official.source)}</p>
      {isOther ? <ChangesTable changes={changes} from={official.source} /> : <p>{words.noChange}</p>}
      <p className="small soft">{words.same(countOf(changes, "same"), countOf(changes, "kept"))}</p>
      <Contradictions composition={overrideFigures(food, override).composition} />
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button type="button" className="button main" disabled={!isOther} onClick={take}>
            {words.take}
          </button>
        </div>
      </Allowed>
      <p role="status">{wasTaken && !isOther && words.tookNow(names.food(food.id))}</p>
    </section>
  );
}

function countOf(changes: readonly FigureChange[], kind: FigureChange["kind"]): number {
  return changes.filter((change) => change.kind === kind).length;
}
