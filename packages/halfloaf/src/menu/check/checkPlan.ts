import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { checkBatches } from "./checkBatches.ts";
import { checkCold } from "./checkCold.ts";
import { checkLimits } from "./checkLimits.ts";
import { checkPurchases } from "./checkPurchases.ts";
import { checkStock } from "./checkStock.ts";
import { checkWishes } from "./checkWishes.ts";
import { openLots } from "./openLots.ts";
import type { PlanFault } from "./PlanFault.ts";
import type { PlanMoney } from "./PlanMoney.ts";
import { readPlan } from "./readPlan.ts";
import { reckonMoney } from "./reckonMoney.ts";

/**
 * Judges a plan from the problem and the plan alone: every rule it breaks, all at once, and what it costs.
 *
 * An empty list of faults means that the plan can be carried out as it stands. Parts of a plan that point at nothing
 * are reported and left out of all sums, so that one such fault can bring on others, and then the money is only that
 * of what is left. The problem itself is taken as it is.
 */
export function checkPlan(
  problem: MenuProblem,
  plan: MenuPlan,
): { readonly faults: readonly PlanFault[]; readonly money: PlanMoney } {
  const read = readPlan(problem, plan);
  const lots = openLots(problem, read);
  const money = reckonMoney(problem, read, lots);
  const faults = [
    ...read.faults,
    ...checkBatches(problem, read),
    ...checkPurchases(problem, read),
    ...checkStock(problem, read, lots),
    ...checkCold(problem, read, lots),
    ...checkLimits(problem, read, money),
    ...checkWishes(problem, read),
  ];
  return { faults, money };
}
