import { type CivilDate, splitByLargestRemainder } from "../quantity/index.ts";
import type { Lot } from "./lot.ts";
import type { MovementOf } from "./movement.ts";

/** What left a lot at once, and its part of the lot's cost in whole minor units. */
export interface Outflow {
  /** "missing" was found gone when counting; "moved" became a lot of its own. */
  readonly kind: "used" | "wasted" | "missing" | "moved";
  readonly on: CivilDate;
  readonly massG: number;
  readonly costMinor: number;
  /** What it was used for, where that was said. */
  readonly for?: string | undefined;
}

/**
 * A lot as its movements left it. Masses in g, money in whole minor units: what came in is what went out and what is left,
 * in money exactly and in mass with what counting found besides.
 */
export interface LotState extends Omit<Lot, "massG" | "costMinor"> {
  /** How it came to be: at hand at the start, bought, or split off another lot. */
  readonly origin: "opening" | "bought" | "split";
  readonly broughtG: number;
  readonly broughtMinor: number;
  readonly foundG: number;
  readonly leftG: number;
  readonly leftMinor: number;
  readonly outflows: readonly Outflow[];
  /** The mass and cost that what leaves the lot takes its share of: what came in, or what was left when more was found. */
  readonly basis: { readonly massG: number; readonly costMinor: number };
}

/** Masses closer than this are the same: a millionth of a gram, far below any scale and above what adding up loses. */
export const MASS_TOLERANCE_G = 1e-6;

/** A lot at hand at the start. */
export function lotOfStock({ massG, costMinor, ...facts }: Lot): LotState {
  return { ...facts, origin: "opening", ...bring(massG, costMinor) };
}

/** A lot as it was bought. */
export function lotOfBought(movement: MovementOf<"bought">): LotState {
  const { kind: _kind, on, lot, massG, costMinor, ...facts } = movement;
  return { ...facts, id: lot, boughtOn: on, origin: "bought", ...bring(massG, costMinor) };
}

function bring(massG: number, costMinor: number) {
  const basis = { massG, costMinor };
  return {
    broughtG: massG,
    broughtMinor: costMinor,
    foundG: 0,
    leftG: massG,
    leftMinor: costMinor,
    outflows: [],
    basis,
  };
}

/**
 * The lot after so much left it; undefined where less is left.
 *
 * What is left costs its share by largest remainder of the cost that came in, and what went now costs by how much that
 * fell. So the costs add up after every movement, all that ever went is priced within half a minor unit however small each
 * part was, the last gram takes the last coin, and a cost once told never changes.
 */
export function takeOut(lot: LotState, out: Pick<Outflow, "kind" | "on" | "massG" | "for">): LotState | undefined {
  if (out.massG > lot.leftG + MASS_TOLERANCE_G) return undefined;
  const isAll = Math.abs(lot.leftG - out.massG) <= MASS_TOLERANCE_G;
  const massG = isAll ? lot.leftG : out.massG;
  const leftG = isAll ? 0 : lot.leftG - massG;
  const leftMinor = costOfRest(lot, leftG);
  const outflow = { kind: out.kind, on: out.on, massG, costMinor: lot.leftMinor - leftMinor };
  const told: Outflow = out.for === undefined ? outflow : { ...outflow, for: out.for };
  return { ...lot, leftG, leftMinor, outflows: [...lot.outflows, told] };
}

function costOfRest({ basis, leftMinor }: LotState, leftG: number): number {
  if (leftG === 0) return 0;
  const parts = splitByLargestRemainder(basis.costMinor, [basis.massG - leftG, leftG]);
  // Adding up what went can end a hair below the basis, so the rest never costs more than it did.
  return Math.min(leftMinor, parts[1] as number);
}

/** The lot where counting found more than the record; what was found was never gone and costs nothing more. */
export function addFound(lot: LotState, foundG: number): LotState {
  const leftG = lot.leftG + foundG;
  return { ...lot, foundG: lot.foundG + foundG, leftG, basis: { massG: leftG, costMinor: lot.leftMinor } };
}

/** The lot, opened on a day. */
export function openState(lot: LotState, on: CivilDate): LotState {
  return { ...lot, openedOn: on };
}

/** The lot in two, of which the part has an id of its own; undefined where less is left. Dividing a pack opens it. */
export function splitOff(
  lot: LotState,
  part: { readonly massG: number; readonly lot: string },
  on: CivilDate,
): { readonly rest: LotState; readonly part: LotState } | undefined {
  const whole = lot.loose || lot.openedOn !== undefined ? lot : openState(lot, on);
  const rest = takeOut(whole, { kind: "moved", on, massG: part.massG });
  const out = rest?.outflows.at(-1);
  if (rest === undefined || out === undefined) return undefined;
  return { rest, part: { ...whole, id: part.lot, origin: "split", ...bring(out.massG, out.costMinor) } };
}
