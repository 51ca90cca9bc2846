import type { FoodFacts, FoodTable } from "../food/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import { type KeepsUntil, keepsUntil, unopenedLife } from "./keepsUntil.ts";
import type { Lot, StockedPortions } from "./lot.ts";
import type { MovementOf } from "./movement.ts";
import { splitCost } from "./splitCost.ts";

/** What left a lot at once, and its part of the lot's cost in whole minor units. */
export interface Outflow {
  /** "missing" was found gone when counting; "moved" became a lot of its own, "cooked" went into cooked portions. */
  readonly kind: "used" | "wasted" | "missing" | "moved" | "cooked";
  readonly on: CivilDate;
  readonly massG: number;
  readonly costMinor: number;
  /** What it was used for, where that was said. */
  readonly for?: string | undefined;
  /** Why it was thrown away, where that was said: one of `WASTE_REASONS`, or what somebody wrote. */
  readonly why?: string | undefined;
}

/** What a lot of cooked portions is: of which dish, and how long it keeps, as the dish said on the day. */
export interface CookedPortions extends Pick<FoodFacts, "keeping"> {
  readonly dish: string;
  /** Cooked mass of one portion in g. */
  readonly portionG: number;
  /** True where something went in whose cost is not known, so that the lot's cost is the least it was. */
  readonly atLeast: boolean;
  /** All foods that went in; absent where a lot went in that nobody knows. */
  readonly foods?: readonly string[];
}

/**
 * A lot as its movements left it. Masses in g, money in whole minor units: what came in is what went out and what is left,
 * in money exactly and in mass with what counting found besides.
 */
export interface LotState extends Omit<Lot, "massG" | "costMinor" | "food"> {
  /** Id of the food; undefined for cooked portions. */
  readonly food: string | undefined;
  /** Undefined for what is as purchased. */
  readonly cooked: CookedPortions | undefined;
  /** How it came to be: at hand without a purchase, bought, split off another lot, or cooked from others. */
  readonly origin: "opening" | "bought" | "split" | "cooked";
  /** The day from which on it is in the stores. */
  readonly since: CivilDate;
  /** Its last day as it is now, or why that is not known; undefined where its food is not in the table. */
  readonly keeps: KeepsUntil | undefined;
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

/** How long what is in a lot keeps: as its dish said when it was cooked, else as the food table says. */
export function keepingOf(
  { food, cooked }: Pick<LotFacts, "food" | "cooked">,
  foods: FoodTable,
): Pick<FoodFacts, "keeping"> | undefined {
  if (cooked !== undefined) return cooked;
  return food === undefined ? undefined : foods.get(food);
}

/** True where what a lot cost is the least it was: something in it has a cost that nobody knows. */
export function isAtLeast(lot: Pick<LotState, "cooked" | "costUnknown"> | undefined): boolean {
  return lot?.costUnknown === true || lot?.cooked?.atLeast === true;
}

/** The lot with its last day reckoned anew. */
function reckonKeeping(lot: LotState, foods: FoodTable): LotState {
  return { ...lot, keeps: findKeeps(lot, foods) };
}

function findKeeps(lot: LotFacts, foods: FoodTable): KeepsUntil | undefined {
  const keeping = keepingOf(lot, foods);
  return keeping === undefined ? undefined : keepsUntil(lot, keeping);
}

/** What of a lot does not change when some of it leaves. */
interface LotFacts extends Partial<Omit<Lot, "massG" | "costMinor">> {
  readonly id: string;
  readonly place: Lot["place"];
  readonly boughtOn: CivilDate;
  readonly cooked?: CookedPortions | undefined;
}

type Coming = Pick<LotState, "origin" | "since" | "keeps">;

/** A lot when it comes in. Every key is written out, so that all lots have one shape: copying them is what costs time. */
function bringIn(facts: LotFacts, how: Coming, what: LotState["basis"]): LotState {
  return {
    id: facts.id,
    food: facts.food,
    cooked: facts.cooked,
    place: facts.place,
    boughtOn: facts.boughtOn,
    placedOn: facts.placedOn,
    openedOn: facts.openedOn,
    thawedOn: facts.thawedOn,
    unopenedUntil: facts.unopenedUntil,
    useBy: facts.useBy,
    bestBefore: facts.bestBefore,
    loose: facts.loose,
    pack: facts.pack,
    costUnknown: facts.costUnknown,
    origin: how.origin,
    since: how.since,
    keeps: how.keeps,
    broughtG: what.massG,
    broughtMinor: what.costMinor,
    foundG: 0,
    leftG: what.massG,
    leftMinor: what.costMinor,
    outflows: [],
    basis: what,
  };
}

/** A lot at hand without a purchase, from a day on; by default since it was bought, wherever that was. */
export function lotOfStock(stock: Lot, foods: FoodTable, since: CivilDate = stock.boughtOn): LotState {
  const { massG, costMinor } = stock;
  return bringIn(stock, { origin: "opening", since, keeps: findKeeps(stock, foods) }, { massG, costMinor });
}

/** Cooked portions at hand that were not cooked here, from a day on. */
export function lotOfPortions(stock: StockedPortions, foods: FoodTable, since: CivilDate): LotState {
  const { id, dish, portions, portionG, place, cookedOn, keeps, costMinor, foods: within } = stock;
  const cooked = { dish, portionG, keeping: toKeeping(keeps, dish), atLeast: false, ...(within && { foods: within }) };
  const facts = { id, cooked, place, boughtOn: cookedOn, loose: true } as const;
  const how = { origin: "opening", since, keeps: findKeeps(facts, foods) } as const;
  return bringIn(facts, how, { massG: portions * portionG, costMinor });
}

/** Portions are never opened. */
function toKeeping(
  { fridgeDays: fridge, freezerDays: freezer }: StockedPortions["keeps"],
  authority: string,
): CookedPortions["keeping"] {
  const days = { fridge, freezer };
  return { unopened: days, opened: days, authority };
}

/** A lot as it was bought. */
export function lotOfBought(movement: MovementOf<"bought">, foods: FoodTable): LotState {
  const { lot: id, on, food, place, useBy, bestBefore, loose, pack, massG, costMinor } = movement;
  const facts = { id, food, place, boughtOn: on, useBy, bestBefore, loose, pack };
  return bringIn(facts, { origin: "bought", since: on, keeps: findKeeps(facts, foods) }, { massG, costMinor });
}

/** Cooked portions at the cost of what went in; each can be taken without opening the others. */
export function lotOfCooked(
  movement: MovementOf<"cooked">,
  foods: FoodTable,
  { costMinor, ...known }: Pick<CookedPortions, "atLeast" | "foods"> & { readonly costMinor: number },
): LotState {
  const { lot: id, on, dish, portions, portionG, keeps } = movement;
  const keeping = toKeeping(keeps, dish);
  const facts = {
    id,
    cooked: { dish, portionG, keeping, ...known },
    place: "fridge",
    boughtOn: on,
    loose: true,
  } as const;
  const what = { massG: portions * portionG, costMinor };
  return bringIn(facts, { origin: "cooked", since: on, keeps: findKeeps(facts, foods) }, what);
}

/**
 * The lot after so much left it; undefined where less is left.
 *
 * What is left costs its share by largest remainder of the cost that came in, and what went now costs by how much that
 * fell. So the costs add up after every movement, all that ever went is priced within half a minor unit however small each
 * part was, the last gram takes the last coin, and a cost once told never changes.
 */
export function takeOut(lot: LotState, out: Omit<Outflow, "costMinor">): LotState | undefined {
  if (out.massG > lot.leftG + MASS_TOLERANCE_G) return undefined;
  const isAll = Math.abs(lot.leftG - out.massG) <= MASS_TOLERANCE_G;
  const massG = isAll ? lot.leftG : out.massG;
  const leftG = isAll ? 0 : lot.leftG - massG;
  const leftMinor = costOfRest(lot, leftG);
  const costMinor = lot.leftMinor - leftMinor;
  const { kind, on } = out;
  const told = { kind, on, massG, costMinor, ...(out.for && { for: out.for }), ...(out.why && { why: out.why }) };
  return withLess(lot, leftG, leftMinor, told);
}

/** Written out like `bringIn`, since this happens most often by far. */
function withLess(lot: LotState, leftG: number, leftMinor: number, out: Outflow): LotState {
  return {
    id: lot.id,
    food: lot.food,
    cooked: lot.cooked,
    place: lot.place,
    boughtOn: lot.boughtOn,
    placedOn: lot.placedOn,
    openedOn: lot.openedOn,
    thawedOn: lot.thawedOn,
    unopenedUntil: lot.unopenedUntil,
    useBy: lot.useBy,
    bestBefore: lot.bestBefore,
    loose: lot.loose,
    pack: lot.pack,
    costUnknown: lot.costUnknown,
    origin: lot.origin,
    since: lot.since,
    keeps: lot.keeps,
    broughtG: lot.broughtG,
    broughtMinor: lot.broughtMinor,
    foundG: lot.foundG,
    leftG,
    leftMinor,
    outflows: [...lot.outflows, out],
    basis: lot.basis,
  };
}

function costOfRest({ basis, leftMinor }: LotState, leftG: number): number {
  if (leftG === 0) return 0;
  // Adding up what went can end a hair below the basis, so the rest never costs more than it did.
  return Math.min(leftMinor, splitCost(basis.costMinor, basis.massG - leftG, leftG));
}

/** The lot where counting found more than the record; what was found was never gone and costs nothing more. */
export function addFound(lot: LotState, foundG: number): LotState {
  const leftG = lot.leftG + foundG;
  return { ...lot, foundG: lot.foundG + foundG, leftG, basis: { massG: leftG, costMinor: lot.leftMinor } };
}

/** The lot, opened on a day. */
export function openState(lot: LotState, on: CivilDate, foods: FoodTable): LotState {
  return reckonKeeping({ ...lot, openedOn: on }, foods);
}

/** The lot with the days of its label as they were read. */
export function labelState(
  lot: LotState,
  { useBy, bestBefore }: Pick<LotState, "useBy" | "bestBefore">,
  foods: FoodTable,
): LotState {
  return reckonKeeping({ ...lot, useBy, bestBefore }, foods);
}

/**
 * The lot in another place. What was left of its unopened life goes with it; in the freezer that life stands still, and
 * what comes out of it was thawed that day.
 */
export function moveState(lot: LotState, to: Lot["place"], on: CivilDate, foods: FoodTable): LotState {
  if (lot.place === "freezer") return reckonKeeping({ ...lot, place: to, placedOn: on, thawedOn: on }, foods);
  const keeping = keepingOf(lot, foods);
  const life = keeping === undefined ? undefined : unopenedLife(lot, keeping);
  const unopenedUntil = earlier(lot.unopenedUntil, life);
  return reckonKeeping({ ...lot, place: to, placedOn: on, unopenedUntil }, foods);
}

function earlier(a: CivilDate | undefined, b: CivilDate | undefined): CivilDate | undefined {
  return a === undefined || (b !== undefined && b < a) ? b : a;
}

/** The lot in two, of which the part has an id of its own; undefined where less is left. Dividing a pack opens it. */
export function splitOff(
  lot: LotState,
  part: { readonly massG: number; readonly lot: string },
  on: CivilDate,
  foods: FoodTable,
): { readonly rest: LotState; readonly part: LotState } | undefined {
  const whole = lot.loose || lot.openedOn !== undefined ? lot : openState(lot, on, foods);
  const rest = takeOut(whole, { kind: "moved", on, massG: part.massG });
  const out = rest?.outflows.at(-1);
  if (rest === undefined || out === undefined) return undefined;
  const { massG, costMinor } = out;
  const how = { origin: "split", since: on, keeps: whole.keeps } as const;
  return { rest, part: bringIn({ ...whole, id: part.lot }, how, { massG, costMinor }) };
}
