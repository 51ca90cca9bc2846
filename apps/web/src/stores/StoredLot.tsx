import { type CivilDate, daysBetween } from "halfloaf/quantity";
import type { LotState } from "halfloaf/stores";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import LotActs from "./LotActs.tsx";
import { PackDate } from "./PackDate.tsx";

/** One lot with what is left of it, and what can be told of it. */
export function StoredLot({ lot }: { readonly lot: LotState }): ReactNode {
  const { words, formats, further } = useFurther("stores");
  const { view } = useKitchen();
  const names = useNames();
  const { keeps, food, cooked } = lot;
  const portions = cooked === undefined ? 0 : lot.leftG / cooked.portionG;
  const daysLeft = keeps?.ok ? daysBetween(view.day, keeps.on) : undefined;
  return (
    <Unfolding
      className="lot"
      summaryClassName="row spread"
      summary={
        <>
          <span>{food === undefined ? names.dish(cooked?.dish ?? lot.id) : names.food(food)}</span>
          <span className="figure">
            {cooked === undefined ? formats.mass(lot.leftG) : further.lot.portions(portions, formats.number(portions))}
          </span>
          <span className={daysLeft !== undefined && daysLeft < 0 ? "figure small gone-off" : "figure small soft"}>
            {keeps?.ok ? words.stores.until(formats.dayFrom(view.day, keeps.on)) : words.stores.untilUnknown}
          </span>
        </>
      }
    >
      <Telling lot={lot} />
    </Unfolding>
  );
}

function Telling({ lot }: { readonly lot: LotState }): ReactNode {
  const { words, further, formats } = useFurther("stores");
  const { view } = useKitchen();
  const names = useNames();
  const { boughtOn, food, cooked, openedOn, costUnknown } = lot;
  const tellDay = (day: CivilDate): string => formats.dayFrom(view.day, day);
  const told = [
    (cooked === undefined ? words.stores.bought : further.lot.cooked)(tellDay(boughtOn)),
    ...(openedOn === undefined ? [] : [words.stores.opened(tellDay(openedOn))]),
    costUnknown
      ? further.foundHere.costUnknown
      : words.stores.left(formats.money(lot.leftMinor, view.kitchen.currency)),
  ];
  return (
    <div className="stack tight telling">
      <p className="small soft">{told.join(" ")}</p>
      {food !== undefined && <PackDate lots={[lot]} label={names.food(food)} />}
      <LotActs lot={lot} inGrams />
    </div>
  );
}
