import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { checkPlan } from "./checkPlan.ts";
import type { PlanFault } from "./PlanFault.ts";

/** What the check says of the best plan that the search finds, and by how much its money exceeds what the search says. */
export interface Comparison {
  readonly plan: MenuPlan;
  readonly faults: readonly PlanFault[];
  readonly excessMinor: number;
}

/** Searches a little and has the best plan checked; undefined where the search finds no plan. */
export function compareWithSearch(problem: MenuProblem, seed: number): Comparison | undefined {
  const search = new MenuSearch(problem, seed);
  if (search.gaps.length > 0) return undefined;
  let costMinor: number | undefined;
  for (let report = 0; report < 3; report++) costMinor = search.advance().costMinor;
  const plan = search.best();
  if (plan === undefined || costMinor === undefined) return undefined;
  const { faults, money } = checkPlan(problem, plan);
  return { plan, faults, excessMinor: money.totalMinor - costMinor };
}

/** True where check and search agree: no fault, and the same money to a hundredth of a minor unit. */
export function isAgreed({ faults, excessMinor }: Comparison): boolean {
  return faults.length === 0 && Math.abs(excessMinor) <= 0.01;
}
