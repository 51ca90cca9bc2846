import { type MenuPlan, type MenuProblem, paidOf } from "../../menu/index.ts";
import type { Issue } from "../../quantity/index.ts";
import type { Tables } from "../tables.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { WeekChange } from "./WeekChange.ts";

type Besides = NonNullable<WeekPlan["besides"]>[number];

/** What came besides according to changes, and each of them whose food nobody knows as an issue. */
export function listCome(
  changes: readonly WeekChange[],
  { foods }: Pick<Tables, "foods">,
): { readonly come: readonly Besides[]; readonly issues: readonly Issue[] } {
  const come: Besides[] = [];
  const issues: Issue[] = [];
  for (const [at, change] of changes.entries()) {
    if (change.kind !== "came") continue;
    const { stock, paidMinor } = change;
    if (foods.has(stock.food)) come.push({ stock, paidMinor });
    else
      issues.push({
        code: "food-unknown",
        path: ["changes", at],
        expected: "a food of the table",
        received: stock.food,
      });
  }
  return { come, issues };
}

/** A week that knows of what came besides; the same week where it knows of all already. */
export function withBesides(week: WeekPlan, come: readonly Besides[]): WeekPlan {
  const { besides = [], lots } = week;
  const known = new Set([...besides.map(({ stock }) => stock.id), ...lots.map(({ id }) => id)]);
  const fresh = come.filter(({ stock }) => !known.has(stock.id));
  return fresh.length === 0 ? week : { ...week, besides: [...besides, ...fresh] };
}

/**
 * A week's problem with what was paid besides off its budget, as far as the plan leaves it: what is spent can't be unspent, so
 * it alone makes no plan impossible that was possible.
 */
export function payBesides(
  problem: MenuProblem,
  plan: MenuPlan,
  { besides = [] }: Pick<WeekPlan, "besides">,
): MenuProblem {
  const paid = besides.reduce((sum, { paidMinor }) => sum + paidMinor, 0);
  const { budgetMinor } = problem.limits;
  if (paid === 0 || budgetMinor === undefined) return problem;
  const planned = paidOf(problem, plan.trips, plan.purchases);
  const left = Math.min(budgetMinor, Math.max(budgetMinor - paid, planned));
  return { ...problem, limits: { ...problem.limits, budgetMinor: left } };
}
