import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import type { Choice, ChoiceJudge } from "./Choice.ts";

/** A plan with the figures that choices are made by; absent where the judge finds a fault. */
export function measurePlan(problem: MenuProblem, plan: MenuPlan, judge: ChoiceJudge): Choice | undefined {
  const { faults, money } = judge(problem, plan);
  if (faults.length > 0) return undefined;
  const { tillMinor, tripMinor, creditMinor, minutes, shortfallMinor } = money;
  return {
    plan,
    moneyMinor: tillMinor + tripMinor - creditMinor,
    minutes,
    distinct: countDistinct(problem, plan),
    shortfallMinor,
  };
}

function countDistinct({ sittings }: MenuProblem, { batches }: MenuPlan): number {
  const served = batches.filter((batch) => batch.sittings.some((k) => sittings[k]?.variety));
  return new Set(served.map(({ dish }) => dish)).size;
}
