import { type EatenPlate, type PlannedPlate, platesBy, type SittingAccount } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface PlatesProps {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

/** Each sitting as it was planned beside how it was. */
export function Plates({ from, to }: PlatesProps): ReactNode {
  const { further } = useFurther("accounts");
  const { view } = useKitchen();
  const { state } = view;
  const sittings = useMemo(() => platesBy(state, from, to), [state, from, to]);
  return (
    <section className="stack tight">
      <h2>{further.accounts.plates}</h2>
      {sittings.length === 0 ? (
        <p className="soft">{further.accounts.platesNone}</p>
      ) : (
        <ul className="lines">
          {sittings.map((sitting) => (
            <li key={`${sitting.on} ${sitting.sitting}`}>
              <Sitting account={sitting} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Sitting({ account }: { readonly account: SittingAccount }): ReactNode {
  const { further, formats, words } = useFurther("accounts");
  const { view } = useKitchen();
  const names = useNames();
  const { on, sitting, planned, eaten, plannedMinor, eatenMinor, atLeast, news } = account;
  const { accounts } = further;
  const money = (minor: number): string => formats.money(minor, view.kitchen.currency);
  const dishesOf = (plates: readonly (PlannedPlate | EatenPlate)[]): string =>
    [...new Set(plates.map((plate) => nameOf(plate)))].join(", ");
  const nameOf = (plate: PlannedPlate | EatenPlate): string =>
    plate.dish === undefined ? names.food("food" in plate ? (plate.food ?? "") : "") : names.dish(plate.dish);
  return (
    <div className="plate-line">
      <b>
        {formats.day(on)}, {words.sittings[sitting]}
      </b>
      <span>
        <span className="small soft">{accounts.asPlanned}: </span>
        {planned.length === 0 ? further.none : `${dishesOf(planned)}, ${money(plannedMinor)}`}
      </span>
      <span>
        <span className="small soft">{accounts.asItWas}: </span>
        {news?.allAway === true
          ? accounts.nobody
          : eaten.length === 0
            ? "–"
            : `${dishesOf(eaten)}, ${atLeast ? further.atLeast(money(eatenMinor)) : money(eatenMinor)}`}
        {news !== undefined &&
          news.guestPortions > 0 &&
          `, ${accounts.guests(news.guestPortions, formats.number(news.guestPortions))}`}
        {news !== undefined && news.ateOutMinor > 0 && `, ${accounts.elsewhere(money(news.ateOutMinor))}`}
      </span>
    </div>
  );
}
