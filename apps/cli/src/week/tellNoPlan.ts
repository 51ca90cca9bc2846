import type { Kitchen, KitchenProblem, Tables } from "halfloaf/kitchen";
import type { MenuPlan } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { Fault } from "../words/Fault.ts";
import type { Names } from "../words/Names.ts";
import { sittingAt, tellPlanFault } from "../words/planFaultWords.ts";
import { listHindrances, tellHindrance } from "../words/unfitWords.ts";

const MOST_REASONS = 4;

/** Sittings for which there is no dish at all, each with the commonest reasons. */
export function tellGaps(
  kitchen: Kitchen,
  tables: Tables,
  stated: KitchenProblem,
  gaps: readonly number[],
  names: Names,
): Fault[] {
  return gaps.map((k) => {
    const hindrances = listHindrances(kitchen, tables, stated, k, names);
    const kind = stated.sittings[k]?.kind ?? "sitting";
    const reasons =
      hindrances.length === 0
        ? [`no dish is meant for "${kind}"`]
        : hindrances.slice(0, MOST_REASONS).map(tellHindrance);
    return {
      code: "sitting-without-dish",
      path: [],
      value: kind,
      sentence: `${sittingAt({ stated, names }, k)}: there is no dish for it. ${reasons.join("; ")}.`,
      remedy: "Mend one of these reasons, or take this sitting out of the kitchen.",
    };
  });
}

/** The limits that the menu which comes nearest to all of them could not keep. */
export function tellBroken(stated: KitchenProblem, plan: MenuPlan, currency: string, names: Names): Fault[] {
  const { faults } = checkPlan(stated.problem, plan);
  return faults.map((fault) => tellPlanFault(fault, { stated, plan, currency, names }));
}
