import type { MenuProblem } from "../problem.ts";

/** What money is weighed against. */
export type Against = "minutes" | "variety" | "intake";

/** One step along the choices: the problem with other weights or a narrower limit. A plan for it keeps all limits. */
export interface Step {
  readonly problem: MenuProblem;
}

/** Times the usual worth: from nothing to so much that money hardly counts. */
const FACTORS = [0, 0.5, 1, 2, 4, 8, 16, 32] as const;
/** Worth of a minute, in minor units, that is taken as usual where the problem gives it none. */
const USUAL_MINUTE_MINOR = 5;
/** Prices of a whole shortfall that are taken as usual where the problem gives it none. */
const USUAL_SHORTFALL_MINOR = { first: 400, rest: 1200 } as const;

/** The steps in order, each asking more of what money is weighed against than the one before. */
export function listSteps(problem: MenuProblem, against: Against): Step[] {
  const { worth, limits, sittings } = problem;
  if (against === "minutes") {
    const usual = worth.minuteMinor || USUAL_MINUTE_MINOR;
    return FACTORS.map((factor) => ({ problem: { ...problem, worth: { ...worth, minuteMinor: usual * factor } } }));
  }
  if (against === "intake") {
    const first = worth.shortfallFirstMinor || USUAL_SHORTFALL_MINOR.first;
    const rest = worth.shortfallRestMinor || USUAL_SHORTFALL_MINOR.rest;
    return FACTORS.map((factor) => ({
      problem: {
        ...problem,
        worth: { ...worth, shortfallFirstMinor: first * factor, shortfallRestMinor: rest * factor },
      },
    }));
  }
  const most = sittings.filter(({ variety }) => variety).length;
  return Array.from({ length: Math.max(1, most - limits.distinct + 1) }, (_, more) => ({
    problem: { ...problem, limits: { ...limits, distinct: limits.distinct + more } },
  }));
}
