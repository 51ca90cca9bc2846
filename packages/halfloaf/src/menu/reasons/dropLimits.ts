import type { MenuProblem } from "../problem.ts";
import type { Penalties } from "../search/Penalties.ts";
import type { LimitKind } from "./relaxLimit.ts";

/** Prices of the kinds of limit that the search can bend; the others are loosened as a whole and measured afterwards. */
export const BENDABLE: Readonly<Partial<Record<LimitKind, keyof Penalties>>> = {
  budget: "budget",
  "hands-on": "minute",
  uses: "use",
  main: "main",
  distinct: "distinct",
  wish: "wish",
  trips: "trip",
  bound: "bound",
  "must-use": "unused",
};

const BOUNDLESS = 1e9;
/** No day's energy may be further off than this, however a limit is loosened. */
const MOST_TOLERANCE = 0.5;

/** The kinds of limit that a problem states at all, those that people change most easily first. */
export function statedKinds({ limits, trips, profiles, lots, wishes = [] }: MenuProblem): LimitKind[] {
  const isStated: Readonly<Record<LimitKind, boolean>> = {
    budget: limits.budgetMinor !== undefined,
    "hands-on": true,
    elapsed: true,
    trips: limits.maxTrips < trips.length,
    uses: true,
    distinct: limits.distinct > 1,
    main: true,
    wish: wishes.some(({ missMinor }) => missMinor === undefined),
    energy: profiles.length > 0 && limits.energyTolerance < MOST_TOLERANCE,
    bound: profiles.some(({ bounds }) => bounds.some(({ hard }) => hard)),
    pot: true,
    carry: trips.some(({ carryG }) => carryG !== undefined),
    fridge: limits.fridgeLitres !== undefined,
    freezer: limits.freezerLitres !== undefined,
    "must-use": lots.some(({ mustUse }) => mustUse),
  };
  return (Object.keys(isStated) as LimitKind[]).filter((kind) => isStated[kind]);
}

/**
 * The problem without any limit of some kinds. Energy is never let go altogether: a day stays within half of what is
 * wanted and above its floor, since plates must feed.
 */
export function dropLimits(problem: MenuProblem, kinds: Iterable<LimitKind>): MenuProblem {
  let left = problem;
  for (const kind of kinds) left = dropKind(left, kind);
  return left;
}

function dropKind(problem: MenuProblem, kind: LimitKind): MenuProblem {
  const { limits } = problem;
  const withLimits = (dropped: Partial<MenuProblem["limits"]>): MenuProblem => {
    return { ...problem, limits: { ...limits, ...dropped } };
  };
  switch (kind) {
    case "budget":
      return { ...problem, limits: withoutKey(limits, "budgetMinor") };
    case "hands-on":
      return withLimits({ handsOnMinutes: limits.handsOnMinutes.map(() => BOUNDLESS) });
    case "elapsed":
      return { ...problem, sittings: problem.sittings.map((sitting) => ({ ...sitting, minutes: BOUNDLESS })) };
    case "energy":
      return withLimits({ energyTolerance: Math.max(limits.energyTolerance, MOST_TOLERANCE) });
    case "bound":
      return { ...problem, profiles: problem.profiles.map(softenBounds) };
    case "uses":
      return { ...problem, dishes: problem.dishes.map((dish) => ({ ...dish, maxUses: problem.sittings.length })) };
    case "main":
      return withLimits({ mainMax: problem.sittings.length });
    case "distinct":
      return withLimits({ distinct: 0 });
    case "wish":
      return { ...problem, wishes: (problem.wishes ?? []).filter(({ missMinor }) => missMinor !== undefined) };
    case "trips":
      return withLimits({ maxTrips: problem.trips.length });
    case "pot":
      return withLimits({ batchPortions: BOUNDLESS });
    case "carry":
      return { ...problem, trips: problem.trips.map((trip) => withoutKey(trip, "carryG")) };
    case "fridge":
      return { ...problem, limits: withoutKey(limits, "fridgeLitres") };
    case "freezer":
      return { ...problem, limits: withoutKey(limits, "freezerLitres") };
    case "must-use":
      return { ...problem, lots: problem.lots.map((lot) => ({ ...lot, mustUse: false })) };
  }
}

function softenBounds(profile: MenuProblem["profiles"][number]): MenuProblem["profiles"][number] {
  return { ...profile, bounds: profile.bounds.filter(({ hard }) => !hard) };
}

function withoutKey<Whole extends object, Key extends keyof Whole>(whole: Whole, key: Key): Omit<Whole, Key> {
  const { [key]: _, ...rest } = whole;
  return rest;
}
