import { checkPlan } from "../check/index.ts";
import { toRemainder } from "../replan/Remainder.ts";
import type { UnplannedWeek } from "../replan/replan.ts";
import { type ExplainWish, explainImpossible, type Relaxation, type WhyImpossible } from "./explainImpossible.ts";
import { readExcesses } from "./readLimits.ts";

/**
 * Explains why a changed week could not be planned again: what `explainImpossible` finds for what is left of it, told of the
 * whole week. Every plan shown is one of the whole week, what is over included, and every limit is named by the indices of its problem.
 */
export function explainRest(week: UnplannedWeek, wish: Omit<ExplainWish, "start">): WhyImpossible {
  const { problem, plan, join } = toRemainder(week);
  const why = explainImpossible(problem, { ...wish, start: plan });
  const toWhole = <Rest extends Relaxation>(relaxation: Rest): Rest => {
    const whole = join(relaxation.found.plan);
    const { money } = checkPlan(week.problem, whole);
    const kinds = new Set(relaxation.excesses.map(({ limit }) => limit.kind));
    const excesses = readExcesses(week.problem, whole, money).filter(({ limit }) => kinds.has(limit.kind));
    return { ...relaxation, excesses, found: { plan: whole, moneyMinor: money.totalMinor } };
  };
  switch (why.kind) {
    case "gaps":
      return why;
    case "possible": {
      const whole = join(why.found.plan);
      return { ...why, found: { plan: whole, moneyMinor: checkPlan(week.problem, whole).money.totalMinor } };
    }
    case "collision":
      return { ...why, alone: why.alone.map(toWhole), ...(why.jointly && { jointly: toWhole(why.jointly) }) };
  }
}
