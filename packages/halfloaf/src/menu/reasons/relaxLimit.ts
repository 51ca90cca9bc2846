import type { MenuProblem, MenuWish } from "../problem.ts";
import type { MenuLimit } from "./readLimits.ts";

export type LimitKind = MenuLimit["kind"];

/** One natural step by which a limit is loosened, in its unit: minor units, minutes, shares, counts, g, litres. */
export const LIMIT_STEPS: Readonly<Record<LimitKind, number>> = {
  budget: 500,
  "hands-on": 10,
  elapsed: 10,
  energy: 0.02,
  bound: 0.05,
  uses: 1,
  main: 1,
  distinct: 1,
  wish: 1,
  trips: 1,
  pot: 1,
  carry: 2000,
  fridge: 10,
  freezer: 10,
  // A lot that must be used up may stay: there is no half of it.
  "must-use": 1,
};

/**
 * A knob of the problem that a limit hangs on. Energy, main ingredients, uses, pot and the like have one knob for the
 * whole plan, so that loosening it loosens every limit of its kind; days, sittings, trips and lots have their own.
 */
export function knobOf(limit: MenuLimit): string {
  switch (limit.kind) {
    case "hands-on":
      return `hands-on ${limit.day}`;
    case "elapsed":
      return `elapsed ${limit.sitting}`;
    case "bound":
      return `bound ${limit.profile} ${limit.bound}`;
    case "carry":
      return `carry ${limit.trip}`;
    case "wish":
      return `wish ${limit.wish}`;
    case "must-use":
      return `must-use ${limit.lot}`;
    default:
      return limit.kind;
  }
}

/** The problem with the knob of a limit loosened by an amount in its unit (a bound by a share of itself). */
export function relaxLimit(problem: MenuProblem, limit: MenuLimit, amount: number): MenuProblem {
  const { limits } = problem;
  const withLimits = (loosened: Partial<MenuProblem["limits"]>): MenuProblem => {
    return { ...problem, limits: { ...limits, ...loosened } };
  };
  switch (limit.kind) {
    case "budget":
      return limits.budgetMinor === undefined ? problem : withLimits({ budgetMinor: limits.budgetMinor + amount });
    case "hands-on":
      return withLimits({ handsOnMinutes: raiseAt(limits.handsOnMinutes, limit.day, amount) });
    case "elapsed":
      return { ...problem, sittings: problem.sittings.map(loosenAt(limit.sitting, "minutes", amount)) };
    case "energy":
      return withLimits({ energyTolerance: limits.energyTolerance + amount });
    case "bound":
      return relaxBound(problem, limit.profile, limit.bound, amount);
    case "uses":
      return { ...problem, dishes: problem.dishes.map((dish) => ({ ...dish, maxUses: dish.maxUses + amount })) };
    case "main":
      return withLimits({ mainMax: limits.mainMax + amount });
    case "distinct":
      return withLimits({ distinct: Math.max(0, limits.distinct - amount) });
    case "wish":
      return {
        ...problem,
        wishes: (problem.wishes ?? []).map((wish, at) => (at === limit.wish ? widen(wish, amount) : wish)),
      };
    case "trips":
      return withLimits({ maxTrips: limits.maxTrips + amount });
    case "pot":
      return withLimits({ batchPortions: limits.batchPortions + amount });
    case "carry":
      return { ...problem, trips: problem.trips.map(loosenAt(limit.trip, "carryG", amount)) };
    case "fridge":
      return limits.fridgeLitres === undefined ? problem : withLimits({ fridgeLitres: limits.fridgeLitres + amount });
    case "freezer":
      return limits.freezerLitres === undefined
        ? problem
        : withLimits({ freezerLitres: limits.freezerLitres + amount });
    case "must-use":
      return { ...problem, lots: problem.lots.map((lot, at) => (at === limit.lot ? { ...lot, mustUse: false } : lot)) };
  }
}

function widen(wish: MenuWish, amount: number): MenuWish {
  const { least, most } = wish;
  return {
    ...wish,
    ...(least !== undefined && { least: Math.max(0, least - amount) }),
    ...(most !== undefined && { most: most + amount }),
  };
}

function raiseAt(values: readonly number[], index: number, amount: number): number[] {
  return values.map((value, at) => (at === index ? value + amount : value));
}

/** Raises a number of the entry at an index; what the entry leaves open stays open. */
function loosenAt<Key extends string, Entry extends { readonly [key in Key]?: number }>(
  index: number,
  key: Key,
  amount: number,
): (entry: Entry, at: number) => Entry {
  return (entry, at) => {
    const value = entry[key];
    return at === index && value !== undefined ? { ...entry, [key]: value + amount } : entry;
  };
}

function relaxBound(problem: MenuProblem, profile: number, bound: number, share: number): MenuProblem {
  const profiles = problem.profiles.map((one, p) => {
    if (p !== profile) return one;
    const bounds = one.bounds.map((each, b) => {
      if (b !== bound) return each;
      const factor = each.kind === "at-least" ? Math.max(0, 1 - share) : 1 + share;
      return { ...each, amount: each.amount * factor };
    });
    return { ...one, bounds };
  });
  return { ...problem, profiles };
}

/** The problem with every limit of a kind loosened by some steps. */
export function loosenKind(problem: MenuProblem, kind: LimitKind, steps: number): MenuProblem {
  const amount = steps * LIMIT_STEPS[kind];
  const each = (limits: readonly MenuLimit[]): MenuProblem =>
    limits.reduce((loose, limit) => relaxLimit(loose, limit, amount), problem);
  switch (kind) {
    case "hands-on":
      return each(problem.limits.handsOnMinutes.map((_, day) => ({ kind, day })));
    case "elapsed":
      return each(problem.sittings.map((_, sitting) => ({ kind, sitting })));
    case "carry":
      return each(problem.trips.map((_, trip) => ({ kind, trip })));
    case "wish":
      return each((problem.wishes ?? []).map((_, wish) => ({ kind, wish })));
    case "must-use":
      return each(problem.lots.map((_, lot) => ({ kind, lot })));
    case "bound":
      return each(
        problem.profiles.flatMap(({ bounds }, profile) =>
          bounds.flatMap(({ hard }, bound) => (hard ? [{ kind, profile, bound }] : [])),
        ),
      );
    case "energy":
      return relaxLimit(problem, { kind, profile: 0, day: 0 }, amount);
    case "uses":
      return relaxLimit(problem, { kind, dish: 0 }, amount);
    case "main":
      return relaxLimit(problem, { kind, main: 0 }, amount);
    case "pot":
      return relaxLimit(problem, { kind, dish: 0, sitting: 0 }, amount);
    default:
      return relaxLimit(problem, { kind }, amount);
  }
}
