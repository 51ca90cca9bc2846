import { checkPlan, type PlanMoney } from "../check/index.ts";
import type { MenuPlan, PlannedBatch } from "../plan.ts";
import { familyOf, type MenuDish, type MenuProblem, type MenuSitting } from "../problem.ts";
import { CookedAtOnce } from "../search/CookedAtOnce.ts";
import { reckonLoads } from "../search/reckonLoads.ts";
import { fillCold } from "./fillCold.ts";

/** One limit of a problem. */
export type MenuLimit =
  /** Money at the tills and for trips, in minor units. */
  | { readonly kind: "budget" }
  /** Hands-on minutes of a day. */
  | { readonly kind: "hands-on"; readonly day: number }
  /** Minutes from the first step to the plate at a sitting. */
  | { readonly kind: "elapsed"; readonly sitting: number }
  /** Difference of a day's energy from what is wanted, as a share. */
  | { readonly kind: "energy"; readonly profile: number; readonly day: number }
  /** A hard bound on a component. */
  | { readonly kind: "bound"; readonly profile: number; readonly bound: number }
  | { readonly kind: "uses"; readonly dish: number }
  | { readonly kind: "main"; readonly main: number }
  /** Different dishes where variety counts; a limit from below, as bounds and wishes can be. */
  | { readonly kind: "distinct" }
  /** Servings of a wish that must hold. */
  | { readonly kind: "wish"; readonly wish: number }
  | { readonly kind: "trips" }
  /** Standard portions of a batch. */
  | { readonly kind: "pot"; readonly dish: number; readonly sitting: number }
  /** Grams carried home from a shop on one trip. */
  | { readonly kind: "carry"; readonly trip: number }
  /** Litres. */
  | { readonly kind: "fridge" }
  | { readonly kind: "freezer" }
  /** Grams left of a lot that must be used up. */
  | { readonly kind: "must-use"; readonly lot: number };

/** A limit, what it allows and what a plan comes to, in the unit of the limit. */
export interface LimitReading {
  readonly limit: MenuLimit;
  readonly allowed: number;
  readonly reached: number;
  /** How far the plan goes beyond the limit; below 0 what is left of it. */
  readonly excess: number;
}

/** What is paid, where it is known already. */
type Paid = Pick<PlanMoney, "highTillMinor" | "tripMinor">;

/** Differences below this are the rounding of sums. */
const EXCESS_SLACK = 1e-6;
/** So much left of a lot is nothing (g). */
const MASS_SLACK_G = 1e-4;

/** Every limit that a plan can be measured by, broken or not. The plan need not keep any. */
export function readLimits(problem: MenuProblem, plan: MenuPlan, money?: Paid): LimitReading[] {
  return [
    ...readMoney(problem, plan, money),
    ...readMinutes(problem, plan),
    ...readIntake(problem, plan),
    ...readVariety(problem, plan),
    ...readWishes(problem, plan),
    ...readLoads(problem, plan),
    ...readMustUse(problem, plan),
  ];
}

/** The limits that a plan goes beyond. */
export function readExcesses(problem: MenuProblem, plan: MenuPlan, money?: Paid): LimitReading[] {
  return readLimits(problem, plan, money).filter(({ allowed, excess }) => excess > EXCESS_SLACK * Math.max(1, allowed));
}

function atMost(limit: MenuLimit, allowed: number, reached: number): LimitReading {
  return { limit, allowed, reached, excess: reached - allowed };
}

function atLeast(limit: MenuLimit, allowed: number, reached: number): LimitReading {
  return { limit, allowed, reached, excess: allowed - reached };
}

function readMoney(problem: MenuProblem, plan: MenuPlan, money?: Paid): LimitReading[] {
  const { budgetMinor, maxTrips } = problem.limits;
  const trips = atMost({ kind: "trips" }, maxTrips, plan.trips.length);
  if (budgetMinor === undefined) return [trips];
  const { highTillMinor, tripMinor } = money ?? checkPlan(problem, plan).money;
  return [atMost({ kind: "budget" }, budgetMinor, highTillMinor + tripMinor), trips];
}

function portionsOf(problem: MenuProblem, { sittings }: PlannedBatch): number {
  return sittings.reduce((sum, k) => sum + (problem.sittings[k]?.portions ?? 0), 0);
}

function readMinutes(problem: MenuProblem, plan: MenuPlan): LimitReading[] {
  const { limits, worth, sittings, dishes } = problem;
  const handsOn = limits.handsOnMinutes.map(() => 0);
  const spend = (day: number, minutes: number): void => {
    handsOn[day] = (handsOn[day] ?? 0) + minutes;
  };
  const cookings = plan.batches.flatMap((batch): LimitReading[] => {
    const [first, ...later] = batch.sittings;
    const sitting = sittings[first as number] as MenuSitting;
    const { handsOn: hands, elapsed } = dishes[batch.dish] as MenuDish;
    const portions = portionsOf(problem, batch);
    spend(sitting.day, hands.fixed + hands.perPortion * portions);
    for (const k of later) spend((sittings[k] as MenuSitting).day, worth.leftoverMinutes);
    const place = { dish: batch.dish, sitting: first as number };
    return [
      atMost(
        { kind: "elapsed", sitting: place.sitting },
        sitting.minutes,
        elapsed.fixed + elapsed.perPortion * portions,
      ),
      atMost({ kind: "pot", ...place }, limits.batchPortions, portions),
    ];
  });
  const atOnce = readAtOnce(problem, plan);
  const together = atOnce
    .readMinutes()
    .map(({ sitting, minutes }) =>
      atMost({ kind: "elapsed", sitting }, (sittings[sitting] as MenuSitting).minutes, minutes),
    );
  atOnce.washMinutes.forEach((minutes, day) => {
    spend(day, minutes);
  });
  const days = limits.handsOnMinutes.map((most, day) =>
    atMost({ kind: "hands-on", day }, most, handsOn[day] as number),
  );
  return [...days, ...cookings, ...together];
}

/** What the plan cooks at once. */
function readAtOnce(problem: MenuProblem, plan: MenuPlan): CookedAtOnce {
  const atOnce = new CookedAtOnce(problem);
  for (const batch of plan.batches) {
    const [first] = batch.sittings;
    if (first !== undefined && atOnce.has(first)) atOnce.count(first, batch.dish, portionsOf(problem, batch), 1);
  }
  atOnce.reckon();
  return atOnce;
}

function readIntake({ profiles, dishes, sittings, limits }: MenuProblem, plan: MenuPlan): LimitReading[] {
  return profiles.flatMap(({ energyKj, bounds, sittings: attended }, profile) => {
    const eaten = plan.batches.flatMap(({ dish, sittings: served }) =>
      served.flatMap((k) => (attended.includes(k) ? [{ day: sittings[k]?.day, dish: dishes[dish] as MenuDish }] : [])),
    );
    const sum = (of: (dish: MenuDish) => number, day?: number): number =>
      eaten.reduce((total, one) => (day === undefined || one.day === day ? total + of(one.dish) : total), 0);
    const days = energyKj.flatMap((wanted, day): LimitReading[] => {
      const off = Math.abs(sum((dish) => dish.energyKj, day) - wanted) / wanted;
      return wanted > 0 ? [atMost({ kind: "energy", profile, day }, limits.energyTolerance, off)] : [];
    });
    const hard = bounds.flatMap(({ component, kind, amount, hard: isHard }, bound): LimitReading[] => {
      if (!isHard) return [];
      const reached = sum((dish) => dish.components[component] as number);
      return [(kind === "at-least" ? atLeast : atMost)({ kind: "bound", profile, bound }, amount, reached)];
    });
    return [...days, ...hard];
  });
}

function readVariety(problem: MenuProblem, plan: MenuPlan): LimitReading[] {
  const { dishes, sittings, limits } = problem;
  const uses = new Map<number, number>();
  const evenings = new Map<number, number>();
  const mains = new Map<number, number>();
  const count = (map: Map<number, number>, key: number): Map<number, number> => map.set(key, (map.get(key) ?? 0) + 1);
  for (const { dish, sittings: served } of plan.batches) {
    for (const k of served) {
      count(uses, familyOf(problem, dish));
      if (!sittings[k]?.variety) continue;
      count(evenings, familyOf(problem, dish));
      count(mains, (dishes[dish] as MenuDish).main);
    }
  }
  return [
    ...[...uses].map(([dish, times]) => atMost({ kind: "uses", dish }, (dishes[dish] as MenuDish).maxUses, times)),
    ...[...mains].map(([main, times]) => atMost({ kind: "main", main }, limits.mainMax, times)),
    atLeast({ kind: "distinct" }, limits.distinct, evenings.size),
  ];
}

function readWishes({ wishes = [] }: MenuProblem, plan: MenuPlan): LimitReading[] {
  return wishes.flatMap(({ dishes, sittings, least, most, missMinor }, wish): LimitReading[] => {
    if (missMinor !== undefined) return [];
    const served = plan.batches.flatMap((batch) => (dishes.includes(batch.dish) ? batch.sittings : []));
    const count = served.filter((k) => sittings.includes(k)).length;
    return [
      ...(least === undefined || least === 0 ? [] : [atLeast({ kind: "wish", wish }, least, count)]),
      ...(most === undefined ? [] : [atMost({ kind: "wish", wish }, most, count)]),
    ];
  });
}

/** A load is what a carrying of nothing would be gone beyond by; room is what the judge reckons is taken. */
function readLoads(problem: MenuProblem, plan: MenuPlan): LimitReading[] {
  const trips = problem.trips.map((trip) => ({ ...trip, ...(trip.carryG !== undefined && { carryG: 0 }) }));
  const { fridgeLitres, freezerLitres, ...roomFree } = problem.limits;
  const loads = reckonLoads({ ...problem, trips, limits: roomFree }, plan);
  return [
    ...loads.map(({ at, over }) => atMost({ kind: "carry", trip: at }, problem.trips[at]?.carryG as number, over)),
    ...readRoom("fridge", fridgeLitres),
    ...readRoom("freezer", freezerLitres),
  ];

  function readRoom(place: "fridge" | "freezer", litres: number | undefined): LimitReading[] {
    return litres === undefined ? [] : [atMost({ kind: place }, litres, fillCold(problem, plan, place))];
  }
}

function readMustUse({ lots }: MenuProblem, plan: MenuPlan): LimitReading[] {
  return lots.flatMap(({ mustUse, massG }, lot): LimitReading[] => {
    if (!mustUse) return [];
    const usedG = plan.uses.reduce(
      (sum, use) => ("stock" in use.lot && use.lot.stock === lot ? sum + use.massG : sum),
      0,
    );
    const leftG = massG - usedG;
    return [atMost({ kind: "must-use", lot }, 0, leftG <= MASS_SLACK_G ? 0 : leftG)];
  });
}
