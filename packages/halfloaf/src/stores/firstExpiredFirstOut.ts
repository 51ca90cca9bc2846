import type { FoodTable } from "../food/index.ts";
import { type KeepsUntil, keepsUntil } from "./keepsUntil.ts";
import type { LotState } from "./lotState.ts";

/** A lot with its last day. */
export interface LotInOrder {
  readonly lot: LotState;
  /** Undefined where the food is not in the table. */
  readonly keeps: KeepsUntil | undefined;
}

/**
 * The lots with anything left, in the order in which they should be used: the earliest last day first; among equal ones
 * what is open, then what was bought first, then by id. Lots whose last day is not known come at the end.
 */
export function firstExpiredFirstOut(lots: Iterable<LotState>, foods: FoodTable): LotInOrder[] {
  const filled = [...lots].filter(({ leftG }) => leftG > 0);
  const inOrder = filled.map((lot): LotInOrder => {
    const food = foods.get(lot.food);
    return { lot, keeps: food === undefined ? undefined : keepsUntil(lot, food) };
  });
  return inOrder.sort((a, b) => compareKeys(keysOf(a), keysOf(b)));
}

/** Keys that sort as texts; no day of the calendar sorts behind a tilde. */
function keysOf({ lot, keeps }: LotInOrder): string[] {
  return [keeps?.ok ? keeps.on : "~", lot.openedOn ?? "~", lot.boughtOn, lot.id];
}

function compareKeys(a: readonly string[], b: readonly string[]): number {
  const at = a.findIndex((key, place) => key !== b[place]);
  if (at < 0) return 0;
  return (a[at] as string) < (b[at] as string) ? -1 : 1;
}
