import type { MenuPlan } from "../plan.ts";
import type { MenuDish, MenuPack, MenuProblem, MenuSitting, MenuTrip } from "../problem.ts";
import type { PlanFault } from "./PlanFault.ts";

/** A sitting at which a batch is served; `at` is its position in the list of the batch. */
export interface Serving {
  readonly at: number;
  readonly index: number;
  readonly sitting: MenuSitting;
}

/** A batch whose dish and sittings exist. */
export interface ReadBatch {
  /** Its position in the plan. */
  readonly at: number;
  readonly dishIndex: number;
  readonly dish: MenuDish;
  /** The fresh serving, where it is cooked. */
  readonly fresh: Serving;
  /** The other servings, ascending. */
  readonly leftovers: readonly Serving[];
  /** Standard portions of all servings. */
  readonly portions: number;
}

/** A purchase whose trip, pack and count exist. */
export interface ReadPurchase {
  /** Its position in the plan. */
  readonly at: number;
  readonly tripIndex: number;
  readonly trip: MenuTrip;
  readonly packIndex: number;
  readonly pack: MenuPack;
  readonly count: number;
}

/** What one use takes; the batch is undefined where it does not exist or is malformed. */
export interface ReadUse {
  /** Its position in the plan. */
  readonly at: number;
  readonly lot: { readonly stock: number } | { readonly purchase: ReadPurchase; readonly copy: number };
  readonly batch: ReadBatch | undefined;
  readonly massG: number;
}

/** The well-formed parts of a plan with what they point at, and a fault for each part that is not. */
export interface ReadPlan {
  readonly batches: readonly ReadBatch[];
  /** Trips made, each once. */
  readonly trips: readonly { readonly at: number; readonly index: number; readonly trip: MenuTrip }[];
  readonly purchases: readonly ReadPurchase[];
  readonly uses: readonly ReadUse[];
  readonly faults: readonly PlanFault[];
}

/** Follows the indices of a plan; what does not exist or has no sense is reported and left out. */
export function readPlan(problem: MenuProblem, plan: MenuPlan): ReadPlan {
  const faults: PlanFault[] = [];
  const batches = readBatches(problem, plan, faults);
  const trips = readTrips(problem, plan, faults);
  const purchases = readPurchases(problem, plan, faults);
  const uses = readUses(problem, plan, batches, purchases, faults);
  return { batches: isolate(batches), trips, purchases: isolate(purchases), uses, faults };
}

function isolate<Part>(parts: readonly (Part | undefined)[]): Part[] {
  return parts.filter((part) => part !== undefined);
}

/** The element that an index points at; undefined, with a fault, where it points at nothing. */
function follow<Item>(list: readonly Item[], index: number, path: PlanFault["path"], faults: PlanFault[]) {
  if (Number.isInteger(index) && index >= 0 && index < list.length) return list[index] as Item;
  faults.push({ code: "index", path, expected: `a whole number from 0 below ${list.length}`, received: String(index) });
  return undefined;
}

/** Batches by their position in the plan; undefined where one is malformed. */
function readBatches(problem: MenuProblem, plan: MenuPlan, faults: PlanFault[]): (ReadBatch | undefined)[] {
  const served = new Set<number>();
  const batches = plan.batches.map((batch, at): ReadBatch | undefined => {
    const dish = follow(problem.dishes, batch.dish, ["batches", at, "dish"], faults);
    const servings = readServings(problem, batch.sittings, ["batches", at, "sittings"], faults);
    const own = servings.filter(({ at: position, index }) => {
      if (!served.has(index)) return served.add(index);
      const path = ["batches", at, "sittings", position];
      faults.push({ code: "sitting-twice", path, expected: "each sitting once", received: `sitting ${index} again` });
      return false;
    });
    // Cooking happens at the earliest sitting, whatever the order they are listed in.
    const [fresh, ...leftovers] = own.sort((a, b) => a.index - b.index);
    if (dish === undefined || fresh === undefined) return undefined;
    const portions = own.reduce((sum, { sitting }) => sum + sitting.portions, 0);
    return { at, dishIndex: batch.dish, dish, fresh, leftovers, portions };
  });
  problem.sittings.forEach((_, index) => {
    if (served.has(index)) return;
    faults.push({ code: "sitting-unserved", path: ["sittings", index], expected: "a dish", received: "none" });
  });
  return batches;
}

function readServings(
  problem: MenuProblem,
  sittings: readonly number[],
  path: PlanFault["path"],
  faults: PlanFault[],
): Serving[] {
  if (sittings.length === 0) {
    faults.push({ code: "batch-empty", path, expected: "at least one sitting", received: "none" });
  }
  if (sittings.some((index, at) => at > 0 && index < (sittings[at - 1] as number))) {
    faults.push({ code: "sittings-order", path, expected: "ascending sittings", received: sittings.join(", ") });
  }
  return sittings.flatMap((index, at) => {
    const sitting = follow(problem.sittings, index, [...path, at], faults);
    return sitting ? [{ at, index, sitting }] : [];
  });
}

function readTrips(problem: MenuProblem, plan: MenuPlan, faults: PlanFault[]): ReadPlan["trips"] {
  if (plan.trips.some((index, at) => at > 0 && index <= (plan.trips[at - 1] as number))) {
    faults.push({
      code: "trips-order",
      path: ["trips"],
      expected: "ascending trips, each once",
      received: plan.trips.join(", "),
    });
  }
  return plan.trips.flatMap((index, at) => {
    const trip = follow(problem.trips, index, ["trips", at], faults);
    return trip && plan.trips.indexOf(index) === at ? [{ at, index, trip }] : [];
  });
}

/** Purchases by their position in the plan; undefined where one is malformed. */
function readPurchases(problem: MenuProblem, plan: MenuPlan, faults: PlanFault[]): (ReadPurchase | undefined)[] {
  return plan.purchases.map((purchase, at): ReadPurchase | undefined => {
    const { count } = purchase;
    const trip = follow(problem.trips, purchase.trip, ["purchases", at, "trip"], faults);
    const pack = follow(problem.packs, purchase.pack, ["purchases", at, "pack"], faults);
    const counted = Number.isInteger(count) && count >= 1;
    if (!counted) {
      const path = ["purchases", at, "count"];
      faults.push({ code: "count", path, expected: "a whole number from 1", received: String(count) });
    }
    if (trip === undefined || pack === undefined || !counted) return undefined;
    return { at, tripIndex: purchase.trip, trip, packIndex: purchase.pack, pack, count };
  });
}

function readUses(
  problem: MenuProblem,
  plan: MenuPlan,
  batches: readonly (ReadBatch | undefined)[],
  purchases: readonly (ReadPurchase | undefined)[],
  faults: PlanFault[],
): ReadUse[] {
  return plan.uses.flatMap((use, at): ReadUse[] => {
    const path = ["uses", at];
    const batch = follow(batches, use.batch, [...path, "batch"], faults);
    const lot = readLot(problem, use.lot, purchases, [...path, "lot"], faults);
    const weighed = Number.isFinite(use.massG) && use.massG > 0;
    if (!weighed) {
      const received = `${use.massG} g`;
      faults.push({ code: "mass", path: [...path, "massG"], expected: "a mass above 0 g", received });
    }
    return lot && weighed ? [{ at, lot, batch, massG: use.massG }] : [];
  });
}

function readLot(
  problem: MenuProblem,
  lot: MenuPlan["uses"][number]["lot"],
  purchases: readonly (ReadPurchase | undefined)[],
  path: PlanFault["path"],
  faults: PlanFault[],
): ReadUse["lot"] | undefined {
  if ("stock" in lot) {
    return follow(problem.lots, lot.stock, [...path, "stock"], faults) && { stock: lot.stock };
  }
  const purchase = follow(purchases, lot.purchase, [...path, "purchase"], faults);
  if (purchase === undefined) return undefined;
  if (Number.isInteger(lot.copy) && lot.copy >= 0 && lot.copy < purchase.count) return { purchase, copy: lot.copy };
  const expected = `a whole number from 0 below ${purchase.count}`;
  faults.push({ code: "index", path: [...path, "copy"], expected, received: String(lot.copy) });
  return undefined;
}
