import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import type { JudgedFault } from "./Judge.ts";

/** Why a sitting does not have the dish it had, everything else being as it now is. */
export type ChangeReason =
  /** It is not to be had there any more: refused, another one wished for, or no makings for it in time. */
  | { readonly kind: "not-offered" }
  /** With it the plan would break these limits. */
  | { readonly kind: "breaks"; readonly faults: readonly JudgedFault[] }
  /** It could stay, and the week would cost so much more: more than another dish must save. */
  | { readonly kind: "dearer"; readonly byMinor: number };

/** A sitting that has another dish than before. */
export interface SittingChange {
  readonly sitting: number;
  readonly from: number;
  readonly to: number;
  readonly why: ChangeReason;
}

/** The dish of each sitting of a plan; -1 where there is none. */
export function dishesOf(problem: MenuProblem, plan: Pick<MenuPlan, "batches">): number[] {
  const dishes = problem.sittings.map(() => -1);
  for (const { dish, sittings } of plan.batches) for (const k of sittings) dishes[k] = dish;
  return dishes;
}
