import type { FoodTable } from "../food/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import { isGoneOff } from "./keepsUntil.ts";
import {
  addFound,
  isAtLeast,
  type LotState,
  labelState,
  lotOfBought,
  lotOfCooked,
  lotOfPortions,
  lotOfStock,
  MASS_TOLERANCE_G,
  moveState,
  openState,
  splitOff,
  takeOut,
} from "./lotState.ts";
import type { CookedUse, Movement, MovementOf } from "./movement.ts";

/** What of a movement cannot have happened as told. */
export interface Doubt {
  readonly code:
    | "lot-twice"
    | "lot-unknown"
    | "too-much"
    | "gone-off"
    | "opened-twice"
    | "never-opened"
    | "same-place"
    | "refrozen";
  /** Key of the movement that is at fault. */
  readonly key: string;
  readonly expected: string;
  readonly received: string;
  /** The lot it is about. */
  readonly lot: string;
  /** By how many g more was said to have left the lot than was booked; absent where no mass is in doubt. */
  readonly shortG?: number;
}

/** The lots that a movement changes, as they are after it, and what of it is in doubt and was left out. */
export interface Applied {
  readonly lots: readonly LotState[];
  readonly doubts: readonly Doubt[];
}

/**
 * What a movement makes of the lots. Of what cannot have happened as much as can is done: a lot gives what is left of it
 * and never more, and nothing that has gone off is used; the difference is named.
 */
export function applyMovement(movement: Movement, lots: ReadonlyMap<string, LotState>, foods: FoodTable): Applied {
  if (movement.kind === "stocked") {
    const { stock, on } = movement;
    if (lots.has(stock.id)) return refuse(lotTwice("stock", stock.id));
    return change("dish" in stock ? lotOfPortions(stock, foods, on) : lotOfStock(stock, foods, on));
  }
  if (movement.kind === "bought") {
    return lots.has(movement.lot) ? refuse(lotTwice("lot", movement.lot)) : change(lotOfBought(movement, foods));
  }
  if (movement.kind === "cooked") return cook(movement, lots, foods);
  const lot = findLot(movement.lot, movement.on, lots);
  if (lot === undefined) return refuse(lotUnknown(movement));
  if (movement.kind === "counted") return change(count(lot, movement));
  if (movement.kind === "wasted") return remove(lot, movement);
  if (movement.kind === "labelled") return change(labelState(lot, movement, foods));
  const off = goneOff(lot, movement);
  if (off !== undefined) return refuse(off);
  if (movement.kind === "used") return remove(lot, movement);
  return movement.kind === "opened" ? open(lot, movement.on, foods) : move(lot, movement, lots, foods);
}

const NONE: readonly Doubt[] = [];

function change(lot: LotState): Applied {
  return { lots: [lot], doubts: NONE };
}

function refuse(...doubts: Doubt[]): Applied {
  return { lots: [], doubts };
}

function findLot(id: string, on: CivilDate, lots: ReadonlyMap<string, LotState>): LotState | undefined {
  const lot = lots.get(id);
  return lot === undefined || lot.since > on ? undefined : lot;
}

/** That the lot has gone off by the movement's day, where it is known to have. */
function goneOff({ id, keeps }: LotState, out: Leaving): Doubt | undefined {
  if (!keeps?.ok || !isGoneOff(keeps, out.on)) return undefined;
  const expected = `${keeps.on} at the latest`;
  return { code: "gone-off", key: "on", expected, received: out.on, lot: id, ...shortBy(out.massG) };
}

interface Leaving {
  readonly on: CivilDate;
  readonly massG?: number;
}

function shortBy(massG: number | undefined): { readonly shortG?: number } {
  return massG === undefined ? {} : { shortG: massG };
}

interface Removal extends Leaving {
  readonly kind: "used" | "wasted" | "cooked";
  readonly massG: number;
  readonly for?: string | undefined;
  readonly why?: string | undefined;
}

/** Takes as much as there is. */
function remove(lot: LotState, out: Removal): Applied {
  const rest = takeOut(lot, out);
  if (rest !== undefined) return change(rest);
  const doubts = [tooMuch(lot, out.massG)];
  const emptied = lot.leftG > 0 ? takeOut(lot, { ...out, massG: lot.leftG }) : undefined;
  return { lots: emptied === undefined ? [] : [emptied], doubts };
}

function open(lot: LotState, on: CivilDate, foods: FoodTable): Applied {
  const about = { key: "lot", received: lot.id, lot: lot.id };
  if (lot.loose) return refuse({ code: "never-opened", expected: "a lot that is one pack", ...about });
  if (lot.openedOn !== undefined) return refuse({ code: "opened-twice", expected: "an unopened lot", ...about });
  return change(openState(lot, on, foods));
}

function move(
  lot: LotState,
  movement: MovementOf<"moved">,
  lots: ReadonlyMap<string, LotState>,
  foods: FoodTable,
): Applied {
  const { to, part, on } = movement;
  const about = { key: "to", received: to, lot: lot.id };
  if (to === lot.place) return refuse({ code: "same-place", expected: "another place", ...about });
  if (to === "freezer" && lot.thawedOn !== undefined)
    return refuse({ code: "refrozen", expected: "no freezer again for what was thawed", ...about });
  if (part === undefined) return change(moveState(lot, to, on, foods));
  if (lots.has(part.lot)) return refuse(lotTwice("part", part.lot));
  const divide = (massG: number): readonly LotState[] | undefined => {
    const pieces = splitOff(lot, { massG, lot: part.lot }, on, foods);
    return pieces && [pieces.rest, moveState(pieces.part, to, on, foods)];
  };
  const divided = divide(part.massG);
  if (divided !== undefined) return { lots: divided, doubts: NONE };
  return { lots: (lot.leftG > 0 && divide(lot.leftG)) || [], doubts: [tooMuch(lot, part.massG, "part")] };
}

/** What is missing left without a record, unless the count says how. */
function count(lot: LotState, { massG, on, as }: MovementOf<"counted">): LotState {
  const missingG = lot.leftG - massG;
  if (Math.abs(missingG) <= MASS_TOLERANCE_G) return lot;
  if (missingG < 0) return addFound(lot, -missingG);
  return takeOut(lot, { kind: as ?? "missing", on, massG: missingG }) as LotState;
}

/** The lots that went in give their cost to the portions; a lot that can't have gone in gives none. */
function cook(movement: MovementOf<"cooked">, lots: ReadonlyMap<string, LotState>, foods: FoodTable): Applied {
  const { lot: id, on, uses, unbooked } = movement;
  if (lots.has(id)) return refuse(lotTwice("lot", id));
  const changed = new Map<string, LotState>();
  const doubts: Doubt[] = [];
  let costMinor = 0;
  for (const use of uses) {
    const lot = changed.get(use.lot) ?? findLot(use.lot, on, lots);
    const taken = lot === undefined ? refuse(lotUnknown({ on, ...use })) : takeForCooking(lot, use, on, foods);
    doubts.push(...taken.doubts.map((doubt) => ({ ...doubt, key: "uses" })));
    for (const after of taken.lots) {
      costMinor += (lot as LotState).leftMinor - after.leftMinor;
      changed.set(after.id, after);
    }
  }
  const isUnknown = uses.some((use) => isAtLeast(lots.get(use.lot)));
  const atLeast = isUnknown || doubts.length > 0 || (unbooked !== undefined && unbooked.length > 0);
  const within = foodsWithin(movement, lots);
  const what = { costMinor, atLeast, ...(within && { foods: within }) };
  return { lots: [...changed.values(), lotOfCooked(movement, foods, what)], doubts };
}

/** The foods that went into a cooking, those of cooked portions among them; undefined where a lot is not known. */
function foodsWithin(
  { uses, unbooked = [] }: MovementOf<"cooked">,
  lots: ReadonlyMap<string, LotState>,
): string[] | undefined {
  const within = new Set(unbooked.map(({ food }) => food));
  for (const use of uses) {
    const lot = lots.get(use.lot);
    const foods = lot?.food === undefined ? lot?.cooked?.foods : [lot.food];
    if (foods === undefined) return undefined;
    for (const food of foods) within.add(food);
  }
  return [...within];
}

function takeForCooking(lot: LotState, use: CookedUse, on: CivilDate, foods: FoodTable): Applied {
  const out = { kind: "cooked", on, massG: use.massG } as const;
  const off = goneOff(lot, out);
  if (off !== undefined) return refuse(off);
  const { lots, doubts } = remove(lot, out);
  return { lots: lots.map((rest) => breakInto(rest, use, on, foods)), doubts };
}

/** The rest of a pack that was opened and put elsewhere. What somebody opened or moved before stays as it is. */
function breakInto(lot: LotState, { opens, movesTo }: CookedUse, on: CivilDate, foods: FoodTable): LotState {
  const isOpened = opens && !lot.loose && lot.openedOn === undefined;
  const rest = isOpened ? openState(lot, on, foods) : lot;
  if (movesTo === undefined || movesTo === lot.place || lot.leftG === 0) return rest;
  const [moved] = move(rest, { kind: "moved", on, lot: lot.id, to: movesTo }, new Map(), foods).lots;
  return moved ?? rest;
}

function lotTwice(key: string, received: string): Doubt {
  return { code: "lot-twice", key, expected: "an id not used before", received, lot: received };
}

function lotUnknown({ lot, on, massG }: Leaving & { readonly lot: string }): Doubt {
  const expected = `a lot that is there on ${on}`;
  return { code: "lot-unknown", key: "lot", expected, received: lot, lot, ...shortBy(massG) };
}

function tooMuch({ id, leftG }: LotState, massG: number, key = "massG"): Doubt {
  const shortG = massG - leftG;
  return { code: "too-much", key, expected: `${leftG} g at most`, received: `${massG} g`, lot: id, shortG };
}
