import type { FoodTable } from "../food/index.ts";
import type { Issue } from "../quantity/index.ts";
import { applyMovement } from "./applyMovement.ts";
import type { Lot } from "./lot.ts";
import { type LotState, lotOfStock } from "./lotState.ts";
import type { Movement } from "./movement.ts";

/** What is and was in the stores, and the movements that cannot have happened. */
export interface StoresState {
  /** Every lot by its id, the empty ones too, in the order they came in. */
  readonly lots: ReadonlyMap<string, LotState>;
  /** Each with the position of the movement first in its path; such a movement is left out of the state. */
  readonly issues: readonly Issue[];
}

/**
 * What the movements make of the lots at hand at the start. They count in the order of their days, those of one day as
 * they are listed. A movement is refused whole, with an issue for each doubt, that names no lot there by that day, takes
 * more than is left, or uses, opens or moves a lot that has gone off.
 */
export function deriveStores(opening: readonly Lot[], movements: readonly Movement[], foods: FoodTable): StoresState {
  const lots = new Map<string, LotState>();
  const issues: Issue[] = [];
  for (const [at, lot] of opening.entries()) {
    if (lots.has(lot.id)) issues.push(toIssue("lot-twice", ["opening", at, "id"], "an id not used before", lot.id));
    else lots.set(lot.id, lotOfStock(lot, foods));
  }
  const inTurn = movements.map((movement, at) => ({ movement, at }));
  inTurn.sort((a, b) => (a.movement.on < b.movement.on ? -1 : a.movement.on > b.movement.on ? 1 : a.at - b.at));
  for (const { movement, at } of inTurn) {
    const { lots: changed, doubts } = applyMovement(movement, lots, foods);
    if (doubts.length === 0) for (const lot of changed) lots.set(lot.id, lot);
    else issues.push(...doubts.map((doubt) => toIssue(doubt.code, [at, doubt.key], doubt.expected, doubt.received)));
  }
  return { lots, issues };
}

function toIssue(code: string, path: Issue["path"], expected: string, received: string): Issue {
  return { code, path, expected, received };
}
