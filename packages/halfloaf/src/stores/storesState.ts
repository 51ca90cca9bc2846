import type { FoodTable } from "../food/index.ts";
import type { CivilDate, Issue } from "../quantity/index.ts";
import { isGoneOff, keepsUntil, unopenedLife } from "./keepsUntil.ts";
import type { Lot } from "./lot.ts";
import {
  addFound,
  type LotState,
  lotOfBought,
  lotOfStock,
  MASS_TOLERANCE_G,
  openState,
  splitOff,
  takeOut,
} from "./lotState.ts";
import type { Movement, MovementOf } from "./movement.ts";

/** What is and was in the stores, and the movements that cannot have happened. */
export interface StoresState {
  /** Every lot by its id, the empty ones too, in the order they came in. */
  readonly lots: ReadonlyMap<string, LotState>;
  /** Each with the position of the movement first in its path; such a movement is left out of the state. */
  readonly issues: readonly Issue[];
}

/**
 * What the movements make of the lots at hand at the start. They count in the order of their days, those of one day as
 * they are listed. A movement is refused, with an issue, that names no lot there by that day, takes more than is left, or
 * uses, opens or moves a lot that has gone off.
 */
export function deriveStores(opening: readonly Lot[], movements: readonly Movement[], foods: FoodTable): StoresState {
  const lots = new Map<string, LotState>();
  const issues: Issue[] = [];
  for (const [at, lot] of opening.entries()) {
    if (lots.has(lot.id)) issues.push(toIssue("lot-twice", ["opening", at, "id"], "an id not used before", lot.id));
    else lots.set(lot.id, lotOfStock(lot));
  }
  const inTurn = movements.map((movement, at) => ({ movement, at }));
  inTurn.sort((a, b) => (a.movement.on < b.movement.on ? -1 : a.movement.on > b.movement.on ? 1 : a.at - b.at));
  for (const { movement, at } of inTurn) {
    const outcome = apply(movement, lots, foods);
    if (Array.isArray(outcome)) for (const lot of outcome) lots.set(lot.id, lot);
    else issues.push(toIssue(outcome.code, [at, outcome.key], outcome.expected, outcome.received));
  }
  return { lots, issues };
}

interface Refusal {
  readonly code: string;
  readonly key: string;
  readonly expected: string;
  readonly received: string;
}
type Outcome = LotState[] | Refusal;

/** The lots that the movement changes, as they are after it; or why it cannot have happened. */
function apply(movement: Movement, lots: ReadonlyMap<string, LotState>, foods: FoodTable): Outcome {
  if (movement.kind === "bought") {
    return lots.has(movement.lot) ? refuseTwice("lot", movement.lot) : [lotOfBought(movement)];
  }
  const lot = lots.get(movement.lot);
  if (lot === undefined || lot.boughtOn > movement.on) {
    return {
      code: "lot-unknown",
      key: "lot",
      expected: `a lot that is there on ${movement.on}`,
      received: movement.lot,
    };
  }
  if (movement.kind === "counted") return [count(lot, movement)];
  if (movement.kind === "wasted") return remove(lot, movement);
  const food = foods.get(lot.food);
  const keeps = food === undefined ? undefined : keepsUntil(lot, food);
  if (keeps?.ok && isGoneOff(keeps, movement.on)) return refuseGoneOff(keeps.on, movement.on);
  if (movement.kind === "used") return remove(lot, movement);
  if (movement.kind === "opened") return open(lot, movement.on);
  const unopenedUntil = earlier(lot.unopenedUntil, food === undefined ? undefined : unopenedLife(lot, food));
  return move(lot.place === "freezer" ? lot : { ...lot, unopenedUntil }, movement, lots);
}

function earlier(a: CivilDate | undefined, b: CivilDate | undefined): CivilDate | undefined {
  return a === undefined || (b !== undefined && b < a) ? b : a;
}

function remove(lot: LotState, movement: MovementOf<"used"> | MovementOf<"wasted">): Outcome {
  const rest = takeOut(lot, movement);
  return rest === undefined ? refuseTooMuch(lot, movement.massG) : [rest];
}

function open(lot: LotState, on: CivilDate): Outcome {
  if (lot.loose) return { code: "never-opened", key: "lot", expected: "a lot that is one pack", received: lot.id };
  if (lot.openedOn !== undefined) {
    return { code: "opened-twice", key: "lot", expected: "an unopened lot", received: lot.id };
  }
  return [openState(lot, on)];
}

function move(lot: LotState, movement: MovementOf<"moved">, lots: ReadonlyMap<string, LotState>): Outcome {
  const { to, part, on } = movement;
  if (to === lot.place) return { code: "same-place", key: "to", expected: "another place", received: to };
  if (to === "freezer" && lot.thawedOn !== undefined) {
    return { code: "refrozen", key: "to", expected: "no freezer again for what was thawed", received: to };
  }
  const thawed = lot.place === "freezer" ? { thawedOn: on } : {};
  if (part === undefined) return [{ ...lot, place: to, placedOn: on, ...thawed }];
  if (lots.has(part.lot)) return refuseTwice("part", part.lot);
  const pieces = splitOff(lot, part, on);
  if (pieces === undefined) return refuseTooMuch(lot, part.massG, "part");
  return [pieces.rest, { ...pieces.part, place: to, placedOn: on, ...thawed }];
}

/** What is missing left without a record. */
function count(lot: LotState, { massG, on }: MovementOf<"counted">): LotState {
  const missingG = lot.leftG - massG;
  if (Math.abs(missingG) <= MASS_TOLERANCE_G) return lot;
  if (missingG < 0) return addFound(lot, -missingG);
  return takeOut(lot, { kind: "missing", on, massG: missingG }) as LotState;
}

function refuseTwice(key: string, received: string): Refusal {
  return { code: "lot-twice", key, expected: "an id not used before", received };
}

function refuseTooMuch({ leftG }: LotState, massG: number, key = "massG"): Refusal {
  return { code: "too-much", key, expected: `${leftG} g at most`, received: `${massG} g` };
}

function refuseGoneOff(lastDay: CivilDate, received: CivilDate): Refusal {
  return { code: "gone-off", key: "on", expected: `${lastDay} at the latest`, received };
}

function toIssue(code: string, path: Issue["path"], expected: string, received: string): Issue {
  return { code, path, expected, received };
}
