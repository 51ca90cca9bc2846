import type { FoodTable } from "halfloaf/food";
import type { WeekPlan } from "halfloaf/kitchen";
import { layRibbons } from "halfloaf/sheet";
import { type ReactNode, useMemo } from "react";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useWords } from "../words/WordsContext.tsx";
import type { Lit } from "./Lit.ts";

interface RibbonTableProps {
  readonly week: WeekPlan;
  readonly foods: FoodTable;
  readonly titleOf: (dish: string) => string;
  readonly nameOf: (food: string) => string;
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
}

/** What the picture of ribbons says, as a table: each pack, the plates it feeds, and what becomes of its rest. */
export function RibbonTable(props: RibbonTableProps): ReactNode {
  const { words } = useWords();
  return (
    <Unfolding summaryClassName="button" summary={words.menu.asTable}>
      <Packs {...props} />
    </Unfolding>
  );
}

function Packs({ week, foods, titleOf, nameOf, lit, onLight }: RibbonTableProps): ReactNode {
  const { words, formats } = useWords();
  const ribbons = useMemo(() => {
    const picture = layRibbons(week, foods);
    return [...picture.ribbons, ...picture.shelf];
  }, [week, foods]);
  return (
    <table className="table small ribbon-table">
      <thead>
        <tr>
          <th scope="col">{words.menu.pack}</th>
          <th scope="col">{words.menu.goesInto}</th>
          <th scope="col">{words.menu.rest}</th>
        </tr>
      </thead>
      <tbody>
        {ribbons.map((ribbon) => {
          const isLit = lit !== undefined && "lot" in lit && lit.lot === ribbon.lot;
          return (
            <tr key={ribbon.lot}>
              <th scope="row">
                <button
                  type="button"
                  className="plain"
                  aria-pressed={isLit}
                  onClick={() => onLight(isLit ? undefined : { lot: ribbon.lot })}
                >
                  {nameOf(ribbon.food)}, {formats.mass(ribbon.massG)}
                </button>
              </th>
              <td>
                <ul className="lines">
                  {ribbon.beads.map(({ batch, massG, costMinor }) => {
                    const cooked = week.batches[batch] as WeekPlan["batches"][number];
                    return (
                      <li key={batch}>
                        {formats.day(cooked.date)}: {titleOf(cooked.dish)}, {formats.mass(massG)},{" "}
                        {formats.money(costMinor, week.currency)}
                      </li>
                    );
                  })}
                </ul>
              </td>
              <td>{words.menu.ends[ribbon.end](formats.mass(ribbon.restG))}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
