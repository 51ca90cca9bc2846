import { type KitchenProblem, settleTogether } from "halfloaf/kitchen";
import { checkPlan } from "halfloaf/menu/check";
import type { OpenKitchen } from "../input/openKitchen.ts";
import type { SearchOutcome } from "./searchWeek.ts";

/** The plan found, or the nearest one in which all that is cooked at once is done in time. */
export function settleFound(
  { kitchen, tables }: Pick<OpenKitchen, "kitchen" | "tables">,
  given: KitchenProblem,
  found: Extract<SearchOutcome, { kind: "found" }>,
): { readonly stated: KitchenProblem; readonly outcome: SearchOutcome } {
  const { seed, stopped } = found;
  const week = { problem: given.problem, plan: found.plan, today: 0, losses: [], isCheaper: false, skippedShare: 0 };
  const { stated, outcome } = settleTogether({ stated: given, kitchen, tables }, week, { judge: checkPlan, seed });
  const moves = found.moves + outcome.moves;
  if (outcome.kind === "none")
    return { stated, outcome: { kind: "broken", plan: outcome.leastBroken, moves, stopped } };
  const { plan, moneyMinor } = outcome;
  return { stated, outcome: { kind: "found", plan, seed, moves, moneyMinor, stopped } };
}
