import type { MenuPlan, PlannedBatch, Purchase, Use } from "../plan.ts";
import {
  familyOf,
  type MenuDish,
  type MenuLimits,
  type MenuPack,
  type MenuProblem,
  type MenuSitting,
  type MenuTrip,
  type MenuWish,
} from "../problem.ts";
import { cookedBefore, cookingDay, sittingsOf } from "./cookedBefore.ts";
import { keyOfLot, lotsAtHand } from "./lotsAtHand.ts";
import type { ChangedWeek, LotName } from "./MenuChange.ts";
import { paidOf } from "./paidOf.ts";

type Given = Pick<ChangedWeek, "problem" | "plan" | "today" | "losses" | "bought" | "held">;

/**
 * What of a week can still be planned, as a problem of its own over the same days and sittings.
 *
 * What was cooked before today is a dish without makings and minutes, the only one of the sittings it feeds and of the
 * family of the dish that it was, so that energy, components, uses and variety of the whole week still count. What was
 * bought before or is bought already is stock, its money
 * is off the budget; the trips before are gone. The first sitting of such a batch is over, so what is left of it takes the minutes
 * of a leftover. A trip that is begun, as something was bought on it already, costs nothing more and is made whatever follows.
 */
export interface Remainder {
  readonly problem: MenuProblem;
  /** The old plan in it; uses of what is not there any more are left out. */
  readonly plan: MenuPlan;
  /** Which trip of the week each of its trips is. */
  readonly trips: readonly number[];
  /** A plan of the remainder joined to what is over, as a plan of the whole week. */
  readonly join: (plan: MenuPlan) => MenuPlan;
}

/**
 * The remainder of a week from today on. The trips begun either go on, so that whoever makes them all has as many besides as
 * the limit leaves, or they are over: then they are off the limit, and one that more is bought on counts once again. A plan that
 * keeps the limit of the week is one of either remainder; absent = they go on where the old plan has more to buy on them.
 */
export function toRemainder(given: Given, goesOn: boolean = isShopping(given)): Remainder {
  const { losses, bought = [], held = [] } = given;
  if (given.today <= 0 && losses.length + bought.length + held.length === 0) {
    const trips = given.problem.trips.map((_, at) => at);
    return { problem: given.problem, plan: given.plan, trips, join: (plan) => plan };
  }
  const past = readPast(given, goesOn);
  const { trips } = past;
  return {
    problem: cutProblem(given, past),
    plan: cutPlan(given, past),
    trips,
    join: (plan) => joinPlan(given, past, plan),
  };
}

/** The trips of a plan that are begun: something was bought on them, and they are not over. */
export function tripsBegun({ problem, plan, today, bought = [] }: Given): readonly number[] {
  const begun = new Set(bought.map((at) => plan.purchases[at]?.trip));
  return plan.trips.filter((trip) => begun.has(trip) && (problem.trips[trip]?.day ?? 0) >= today);
}

/** True where a plan has more to buy on a trip that is begun. */
export function isShopping(given: Given): boolean {
  const { plan, bought = [] } = given;
  const begun = tripsBegun(given);
  return plan.purchases.some(({ trip }, at) => begun.includes(trip) && !bought.includes(at));
}

interface Past {
  /** Positions of batches cooked before today. */
  readonly cooked: readonly number[];
  readonly fixed: ReadonlySet<number>;
  /** Which trip and which lot of the week each one of the remainder is. */
  readonly trips: readonly number[];
  readonly lots: ReturnType<typeof lotsAtHand>;
  readonly purchases: readonly Purchase[];
  /** Trips of the plan that are over or begun, and of these the latter. */
  readonly made: readonly number[];
  readonly begun: readonly number[];
  readonly goesOn: boolean;
}

function readPast(given: Given, goesOn: boolean): Past {
  const { problem, plan, today, losses, bought = [] } = given;
  const begun = tripsBegun(given);
  const cooked = cookedBefore(problem, plan, today);
  return {
    cooked: [...cooked],
    fixed: sittingsOf(plan, cooked),
    trips: problem.trips.flatMap(({ day }, at) => (day < today ? [] : [at])),
    lots: lotsAtHand(problem, plan, today, losses, bought),
    purchases: plan.purchases.filter(({ trip }, at) => (problem.trips[trip]?.day ?? 0) < today || bought.includes(at)),
    made: plan.trips.filter((trip) => (problem.trips[trip]?.day ?? 0) < today || begun.includes(trip)),
    begun,
    goesOn,
  };
}

function cutProblem({ problem, plan, today, bought: made = [], held = [] }: Given, past: Past): MenuProblem {
  const ready = past.cooked.map((at) => toReady(problem, plan.batches[at] as PlannedBatch));
  const readyAt = new Map<number, number>();
  past.cooked.forEach((at, i) => {
    for (const k of plan.batches[at]?.sittings ?? []) readyAt.set(k, problem.dishes.length + i);
  });
  const isToday = ({ trip }: Purchase): boolean => problem.trips[trip]?.day === today;
  const bought = (pack: number): number =>
    past.purchases.reduce((sum, each) => (each.pack === pack ? sum + each.count : sum), 0);
  const isOpenToday = (pack: number): boolean =>
    plan.purchases.some((each) => each.pack === pack && isToday(each) && !past.purchases.includes(each));
  return {
    ...problem,
    dishes: [...problem.dishes, ...ready],
    sittings: problem.sittings.map(({ keep, ...sitting }, k): MenuSitting => {
      const dish = readyAt.get(k);
      return dish === undefined ? { ...sitting, ...(keep && { keep }) } : { ...sitting, dishes: [dish] };
    }),
    lots: past.lots.map(({ lot }) => lot),
    packs: problem.packs.map((pack, at): MenuPack => {
      // A list has one line for a pack, and who has ticked it does not buy more of it that day, unless another trip of the day has it, too.
      const isTicked = made.some((purchase) => plan.purchases[purchase]?.pack === at) && !isOpenToday(at);
      const heldUntil = held.flatMap((each) => (each.pack === at ? [each.untilDay] : []));
      const fromDay = Math.max(pack.fromDay, isTicked ? today + 1 : 0, ...heldUntil.map((day) => day + 1));
      return { ...pack, fromDay, limit: pack.limit - bought(at) };
    }),
    trips: past.trips.map((at) => lighten(problem, at, past)),
    limits: cutLimits(problem, past),
    ...(problem.wishes && { wishes: problem.wishes.map((wish) => countReady(wish, problem, plan, past)) }),
  };
}

/** What was cooked before counts for a wish like the dish that it is. */
function countReady(wish: MenuWish, { dishes }: MenuProblem, plan: MenuPlan, { cooked }: Past): MenuWish {
  const ready = cooked.flatMap((at, i) =>
    wish.dishes.includes(plan.batches[at]?.dish as number) ? [dishes.length + i] : [],
  );
  return { ...wish, dishes: [...wish.dishes, ...ready] };
}

/** A trip that is paid for where it is begun, and carries what is bought on it already. */
function lighten({ trips, packs }: MenuProblem, at: number, { begun, purchases }: Past): MenuTrip {
  const whole = trips[at] as MenuTrip;
  const trip = begun.includes(at) ? { ...whole, costMinor: 0, minutes: 0 } : whole;
  if (trip.carryG === undefined) return trip;
  const boughtG = purchases.reduce(
    (sum, { trip: on, pack, count }) => (on === at ? sum + count * (packs[pack] as MenuPack).massG : sum),
    0,
  );
  return { ...trip, carryG: Math.max(0, trip.carryG - boughtG) };
}

function toReady(problem: MenuProblem, { dish }: PlannedBatch): MenuDish {
  const none = { fixed: 0, perPortion: 0 };
  return {
    ...(problem.dishes[dish] as MenuDish),
    family: familyOf(problem, dish),
    makings: [],
    handsOn: none,
    elapsed: none,
    loads: [],
    vessels: 0,
    dislikeMinor: 0,
    needsHeat: false,
    servedCold: true,
    travels: true,
  };
}

function cutLimits(problem: MenuProblem, { made, begun, goesOn, purchases }: Past): MenuLimits {
  const { limits } = problem;
  const paid = paidOf(problem, made, purchases);
  return {
    ...limits,
    ...(limits.budgetMinor !== undefined && { budgetMinor: limits.budgetMinor - paid }),
    maxTrips: Math.max(0, limits.maxTrips - made.length + (goesOn ? begun.length : 0)),
  };
}

/** The old plan's names of lots and trips in the remainder. */
function cutPlan({ problem, plan, today }: Given, past: Past): MenuPlan {
  const tripAt = new Map(past.trips.map((before, at) => [before, at]));
  const lotAt = new Map(past.lots.map(({ name }, at) => [keyOfLot(name), at]));
  const open = plan.purchases.flatMap((purchase, at) => (past.purchases.includes(purchase) ? [] : [at]));
  const purchaseAt = new Map(open.map((before, at) => [before, at]));
  const readyAt = new Map(past.cooked.map((batch, i) => [batch, problem.dishes.length + i]));
  const rename = (name: LotName): LotName | undefined => {
    const stock = lotAt.get(keyOfLot(name));
    if (stock !== undefined) return { stock };
    const purchase = "stock" in name ? undefined : purchaseAt.get(name.purchase);
    return purchase === undefined || "stock" in name ? undefined : { purchase, copy: name.copy };
  };
  // Where the trips begun are over, one that nothing more is bought on is not made again.
  const isOver = (trip: number): boolean =>
    !past.goesOn && past.begun.includes(trip) && !open.some((at) => plan.purchases[at]?.trip === trip);
  return {
    batches: plan.batches.map((batch, at) => ({ ...batch, dish: readyAt.get(at) ?? batch.dish })),
    trips: plan.trips.flatMap((trip) => (isOver(trip) ? [] : (tripAt.get(trip) ?? []))),
    purchases: open.map((at) => {
      const purchase = plan.purchases[at] as Purchase;
      return { ...purchase, trip: tripAt.get(purchase.trip) as number };
    }),
    uses: plan.uses.flatMap((use): Use[] => {
      if (cookingDay(problem, plan.batches[use.batch] as PlannedBatch) < today) return [];
      const lot = rename(use.lot);
      return lot === undefined ? [] : [{ ...use, lot }];
    }),
  };
}

function joinPlan({ problem, plan }: Given, past: Past, rest: MenuPlan): MenuPlan {
  const batchAt = new Map<number, number>();
  const over = past.cooked.map((at, i) => {
    batchAt.set(at, i);
    return plan.batches[at] as PlannedBatch;
  });
  const fresh = rest.batches.flatMap((batch, at) => (batch.dish < problem.dishes.length ? [at] : []));
  const freshAt = new Map(fresh.map((before, at) => [before, over.length + at]));
  const boughtAt = new Map(past.purchases.map((purchase, at) => [plan.purchases.indexOf(purchase), at]));
  const nameOver = (name: LotName): LotName =>
    "stock" in name ? name : { purchase: boughtAt.get(name.purchase) as number, copy: name.copy };
  const nameFresh = (name: LotName): LotName =>
    "stock" in name
      ? nameOver((past.lots[name.stock] as Past["lots"][number]).name)
      : { purchase: past.purchases.length + name.purchase, copy: name.copy };
  const usesOver = plan.uses.flatMap((use): Use[] => {
    const batch = batchAt.get(use.batch);
    return batch === undefined ? [] : [{ ...use, batch, lot: nameOver(use.lot) }];
  });
  const usesFresh = rest.uses.flatMap((use): Use[] => {
    const batch = freshAt.get(use.batch);
    return batch === undefined ? [] : [{ ...use, batch, lot: nameFresh(use.lot) }];
  });
  const { made } = past;
  const toCome = rest.trips.map((trip) => past.trips[trip] as number).filter((trip) => !made.includes(trip));
  return {
    batches: [...over, ...fresh.map((at) => rest.batches[at] as PlannedBatch)],
    trips: [...made, ...toCome].sort((a, b) => a - b),
    purchases: [
      ...past.purchases,
      ...rest.purchases.map((each) => ({ ...each, trip: past.trips[each.trip] as number })),
    ],
    uses: [...usesOver, ...usesFresh],
  };
}
