import { SITTING_KINDS } from "halfloaf/dish";
import type { Kitchen, KitchenProblem, Tables } from "halfloaf/kitchen";
import { findGaps, type Gap } from "halfloaf/menu";
import { type DaysAsked, stateAsked } from "../../thinking/stateAsked.ts";
import { goEarlier } from "./goEarlier.ts";
import type { ImpossibleTold } from "./Told.ts";

/** The first shop that would be enough if its trips came home before the earliest of the sittings that come before them. */
export function findEarlier(
  gaps: readonly Gap[],
  { kitchen, tables, asked }: { readonly kitchen: Kitchen; readonly tables: Tables; readonly asked: DaysAsked },
  { sittings }: Pick<KitchenProblem, "sittings">,
): Extract<ImpossibleTold, { kind: "gaps" }>["earlier"] {
  const kinds = gaps.flatMap(({ sitting, isBeforeTrips }) => (isBeforeTrips ? (sittings[sitting]?.kind ?? []) : []));
  const earliest = SITTING_KINDS.find((kind) => kinds.includes(kind));
  if (earliest === undefined) return undefined;
  const isEnough = (shop: string): boolean => {
    const then = stateAsked(goEarlier(kitchen, { shop, sitting: earliest }), tables, asked);
    return findGaps(then.problem).every(({ isBeforeTrips }) => isBeforeTrips !== true);
  };
  const shop = kitchen.shops.find(({ id }) => isEnough(id))?.id;
  return shop === undefined ? undefined : { shop, sitting: earliest };
}
