import { type Saving, wasteBy, wasteByReason } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { tellWhy } from "../stores/wasteWhy.ts";
import { useFurther } from "../words/useFurther.ts";

interface WasteProps {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

/** What was thrown away, by food, the dearest first, and what would have saved it. */
export function Waste({ from, to }: WasteProps): ReactNode {
  const { further, formats } = useFurther("accounts", "stores");
  const { view } = useKitchen();
  const names = useNames();
  const { kitchen, state, tables } = view;
  const losses = useMemo(
    () => wasteBy(kitchen, state, tables.foods, from, to),
    [kitchen, state, tables.foods, from, to],
  );
  const reasons = useMemo(() => wasteByReason(state, from, to), [state, from, to]);
  const { accounts } = further;
  return (
    <section className="stack tight">
      <h2>{accounts.waste}</h2>
      {losses.length === 0 && <p className="soft">{accounts.wasteNone}</p>}
      {reasons.some(({ why }) => why !== undefined) && (
        <table className="table small flows">
          <caption className="unseen">{accounts.wasteWhy}</caption>
          <tbody>
            {reasons.map(({ why, massG, costMinor }) => (
              <tr key={why}>
                <th scope="row">{tellWhy(why, further)}</th>
                <td className="figure">{formats.mass(massG)}</td>
                <td className="figure">{formats.money(costMinor, kitchen.currency)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <ul className="lines">
        {losses.map(({ food, dish, massG, costMinor, lots }) => (
          <li key={`${food} ${dish}`} className="stack tight">
            <div className="row spread">
              <b>{food === undefined ? names.dish(dish ?? "") : names.food(food)}</b>
              <span className="figure">
                {formats.mass(massG)}, {formats.money(costMinor, kitchen.currency)}
              </span>
            </div>
            <ul className="lines close small soft">
              {lots.flatMap(({ lot, missingG, savings }) => [
                ...(missingG > 0 ? [<li key={`${lot} missing`}>{accounts.missing(formats.mass(missingG))}</li>] : []),
                ...savings.map((saving) => <li key={`${lot} ${saving.kind}`}>{tell(saving)}</li>),
              ])}
            </ul>
          </li>
        ))}
      </ul>
    </section>
  );

  function tell(saving: Saving): string {
    if (saving.kind !== "smaller-pack") return accounts.savings[saving.kind](formats.day(saving.by));
    const label = kitchen.packs.find(({ id }) => id === saving.pack)?.label ?? saving.pack;
    const money = formats.money(saving.savesMinor, kitchen.currency);
    return accounts.savings["smaller-pack"](saving.count, label, money);
  }
}
