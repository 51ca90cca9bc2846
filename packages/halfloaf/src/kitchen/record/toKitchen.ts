import type { FoodTable } from "../../food/index.ts";
import { latestPrices, massOfPack, type Pack } from "../../price/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Lot, LotState } from "../../stores/index.ts";
import type { Kitchen } from "../kitchen.ts";
import type { PutBy } from "../putBy.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { paceOfKitchen } from "./pacesOf.ts";
import { type PortionsAtHand, portionsAtHand } from "./portionsAtHand.ts";
import type { RecordState } from "./recordState.ts";

/**
 * The kitchen as it stands, for `toMenuProblem` and all else that takes a kitchen: its stores are the food lots with
 * anything left on the day, its packs have the latest price and content seen by then, its ratings the latest given, its pace
 * what cookings showed. Cooked portions in fridge or freezer are what it has put by, beside what it was told to have and no
 * lot tells of.
 */
export function toKitchen(edited: EditedKitchen, state: RecordState, foods: FoodTable, day: CivilDate): Kitchen {
  const stores = [...state.lots.values()].flatMap((lot) => toLot(lot, day) ?? []);
  const told = edited.putBy.filter(({ id }) => !state.lots.has(id));
  const putBy = [...told, ...portionsAtHand(state, day).flatMap(toPutBy)];
  const there = new Set([...stores, ...putBy].map(({ id }) => id));
  const rated = edited.ratings.filter(({ dish }) => !state.ratings.has(dish));
  const pace = paceOfKitchen(edited, state);
  return {
    ...edited,
    ...(pace !== undefined && { pace }),
    format: "halfloaf-kitchen",
    version: 1,
    startsOn: day,
    packs: pricedPacks(edited.packs, state, foods, day),
    stores,
    putBy,
    useUp: edited.useUp.filter((id) => there.has(id)),
    ratings: [...rated, ...[...state.ratings].map(([dish, points]) => ({ dish, points }))],
  };
}

/** Cooked portions as the planner takes them: in fridge or freezer, with their last day. */
function toPutBy({ lot, place, until, foods = [], ...one }: PortionsAtHand): PutBy[] {
  const { dish, portions, cookedOn, costMinor } = one;
  if (place === "dry-store" || until === undefined || portions <= 0) return [];
  return [{ id: lot, dish, portions, place, cookedOn, keepsUntil: until, costMinor, foods: [...foods] }];
}

/** What is left of a lot as a lot of a kitchen's file; undefined for what is empty, cooked, or not there yet. */
export function toLot(lot: LotState, day: CivilDate): Lot | undefined {
  const { id, food, place, boughtOn, placedOn, openedOn, thawedOn, unopenedUntil, useBy, bestBefore, loose, pack } =
    lot;
  const { costUnknown } = lot;
  if (food === undefined || lot.leftG === 0 || lot.since > day) return undefined;
  return {
    id,
    food,
    place,
    boughtOn,
    ...(placedOn !== undefined && { placedOn }),
    ...(openedOn !== undefined && { openedOn }),
    ...(thawedOn !== undefined && { thawedOn }),
    ...(unopenedUntil !== undefined && { unopenedUntil }),
    ...(useBy !== undefined && { useBy }),
    ...(bestBefore !== undefined && { bestBefore }),
    ...(loose !== undefined && { loose }),
    ...(pack !== undefined && { pack }),
    ...(costUnknown !== undefined && { costUnknown }),
    massG: lot.leftG,
    costMinor: lot.leftMinor,
  };
}

/** Packs at the latest price and with the latest content; those first seen later stay as they are. */
function pricedPacks(packs: readonly Pack[], { prices }: RecordState, foods: FoodTable, day: CivilDate): Pack[] {
  const priced = latestPrices(packs, prices, day);
  const found = new Map<string, number>();
  for (const { pack, massG, seen } of prices) {
    if (seen.on > day) continue;
    // A look that names no mass found the pack as the kitchen has it.
    if (massG === undefined) found.delete(pack);
    else found.set(pack, massG);
  }
  return packs.map((pack) => {
    const now = priced.get(pack.id)?.pack ?? pack;
    const massG = found.get(pack.id);
    const food = foods.get(pack.food);
    const known = food === undefined ? undefined : massOfPack(pack, food);
    return massG === undefined || (known?.ok && known.massG === massG) ? now : { ...now, content: { massG } };
  });
}
