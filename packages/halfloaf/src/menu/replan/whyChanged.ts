import type { MenuPlan } from "../plan.ts";
import { familyOf, type MenuProblem } from "../problem.ts";
import type { Judge, JudgedFault } from "./Judge.ts";
import { MenuBoard } from "./MenuBoard.ts";
import type { Remainder } from "./Remainder.ts";

/** Why a sitting does not have the dish it had, everything else being as it now is. */
export type ChangeReason =
  /** It is not to be had there any more: refused, another one wished for, or no makings for it in time. */
  | { readonly kind: "not-offered" }
  /** With it the plan would break these limits. */
  | { readonly kind: "breaks"; readonly faults: readonly JudgedFault[] }
  /** It could stay, and the week would cost so much more. */
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

/** The sittings whose dish differs from the old plan's, each with its reason, found by putting the old dish back. */
export function whyChanged(whole: MenuProblem, remainder: Remainder, plan: MenuPlan, judge: Judge): SittingChange[] {
  const { problem, join } = remainder;
  const [before, after] = [remainder.plan, plan].map((each) => dishesOf(problem, each)) as [number[], number[]];
  const board = new MenuBoard(problem, plan);
  const nowMinor = judge(whole, join(plan)).money.totalMinor;
  return after.flatMap((to, sitting): SittingChange[] => {
    const from = before[sitting] as number;
    if (from < 0 || familyOf(problem, from) === familyOf(problem, to)) return [];
    return [{ sitting, from, to, why: tryBack(sitting, from) }];
  });

  function tryBack(sitting: number, dish: number): ChangeReason {
    if (!board.takes(dish, sitting)) return { kind: "not-offered" };
    board.put(sitting, dish);
    const { faults, money } = judge(whole, join(board.plan()));
    board.takeBack();
    return faults.length > 0 ? { kind: "breaks", faults } : { kind: "dearer", byMinor: money.totalMinor - nowMinor };
  }
}
