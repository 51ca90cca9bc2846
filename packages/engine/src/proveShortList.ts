import type { MenuProblem } from "halfloaf/menu";
import { type BoundOutcome, type BoundRequest, proveBound } from "./proveBound.ts";

/**
 * Proves how little a plan can cost that serves only the dishes given, as indices of the problem's dishes. Far tighter
 * than the bound on all plans, and said of the short list alone.
 */
export function proveShortList(
  problem: MenuProblem,
  dishes: readonly number[],
  request: Omit<BoundRequest, "dishes">,
): Promise<BoundOutcome> {
  return proveBound(problem, { ...request, dishes: new Set(dishes) });
}
