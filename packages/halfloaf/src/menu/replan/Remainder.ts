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

type Given = Pick<ChangedWeek, "problem" | "plan" | "today" | "losses" | "bought">;

/**
 * What of a week can still be planned, as a problem of its own over the same days and sittings.
 *
 * What was cooked before today is a dish without makings and minutes, the only one of the sittings it feeds and of the
 * family of the dish that it was, so that energy, components, uses and variety of the whole week still count. What was
 * bought before or is bought already is stock, its money
 * is off the budget; the trips before are gone. The first sitting of such a batch is over, so what is left of it takes the minutes
 * of a leftover.
 */
export interface Remainder {
  readonly problem: MenuProblem;
  /** The old plan in it; uses of what is not there any more are left out. */
  readonly plan: MenuPlan;
  /** A plan of the remainder joined to what is over, as a plan of the whole week. */
  readonly join: (plan: MenuPlan) => MenuPlan;
}

/** The remainder of a week from today on. */
export function toRemainder(given: Given): Remainder {
  if (given.today <= 0 && given.losses.length === 0 && (given.bought ?? []).length === 0) {
    return { problem: given.problem, plan: given.plan, join: (plan) => plan };
  }
  const past = readPast(given);
  return { problem: cutProblem(given, past), plan: cutPlan(given, past), join: (plan) => joinPlan(given, past, plan) };
}

interface Past {
  /** Positions of batches cooked before today. */
  readonly cooked: readonly number[];
  readonly fixed: ReadonlySet<number>;
  /** Which trip and which lot of the week each one of the remainder is. */
  readonly trips: readonly number[];
  readonly lots: ReturnType<typeof lotsAtHand>;
  readonly purchases: readonly Purchase[];
}

function readPast({ problem, plan, today, losses, bought = [] }: Given): Past {
  const cooked = cookedBefore(problem, plan, today);
  return {
    cooked: [...cooked],
    fixed: sittingsOf(plan, cooked),
    trips: problem.trips.flatMap(({ day }, at) => (day < today ? [] : [at])),
    lots: lotsAtHand(problem, plan, today, losses, bought),
    purchases: plan.purchases.filter(({ trip }, at) => (problem.trips[trip]?.day ?? 0) < today || bought.includes(at)),
  };
}

function cutProblem({ problem, plan, today, bought: made = [] }: Given, past: Past): MenuProblem {
  const ready = past.cooked.map((at) => toReady(problem, plan.batches[at] as PlannedBatch));
  const readyAt = new Map<number, number>();
  past.cooked.forEach((at, i) => {
    for (const k of plan.batches[at]?.sittings ?? []) readyAt.set(k, problem.dishes.length + i);
  });
  const bought = (pack: number): number =>
    past.purchases.reduce((sum, each) => (each.pack === pack ? sum + each.count : sum), 0);
  return {
    ...problem,
    dishes: [...problem.dishes, ...ready],
    sittings: problem.sittings.map(({ keep, ...sitting }, k): MenuSitting => {
      const dish = readyAt.get(k);
      return dish === undefined ? { ...sitting, ...(keep && { keep }) } : { ...sitting, dishes: [dish] };
    }),
    lots: past.lots.map(({ lot }) => lot),
    packs: problem.packs.map((pack, at): MenuPack => {
      // A list has one line for a pack, and who has ticked it does not buy more of it that day: it would end alike, too.
      const isTicked = made.some((purchase) => plan.purchases[purchase]?.pack === at);
      const fromDay = isTicked ? Math.max(pack.fromDay, today + 1) : pack.fromDay;
      return { ...pack, fromDay, limit: pack.limit - bought(at) };
    }),
    trips: past.trips.map((at) => lighten(problem, at, past.purchases)),
    limits: cutLimits(problem, plan, past, today),
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

/** A trip that carries what is bought on it already. */
function lighten({ trips, packs }: MenuProblem, at: number, purchases: readonly Purchase[]): MenuTrip {
  const trip = trips[at] as MenuTrip;
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

function cutLimits(problem: MenuProblem, plan: MenuPlan, past: Past, today: number): MenuLimits {
  const { limits, trips } = problem;
  const made = plan.trips.filter((trip) => (trips[trip]?.day ?? 0) < today);
  const paid = paidOf(problem, made, past.purchases);
  return {
    ...limits,
    ...(limits.budgetMinor !== undefined && { budgetMinor: limits.budgetMinor - paid }),
    maxTrips: limits.maxTrips - made.length,
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
  return {
    batches: plan.batches.map((batch, at) => ({ ...batch, dish: readyAt.get(at) ?? batch.dish })),
    trips: plan.trips.flatMap((trip) => tripAt.get(trip) ?? []),
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

function joinPlan({ problem, plan, today }: Given, past: Past, rest: MenuPlan): MenuPlan {
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
  const isMade = (trip: number): boolean =>
    (problem.trips[trip]?.day ?? 0) < today || past.purchases.some((each) => each.trip === trip);
  const made = plan.trips.filter(isMade);
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
