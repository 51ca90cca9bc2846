import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { cookedBefore, sittingsOf } from "./cookedBefore.ts";
import type { LotName, MenuChange } from "./MenuChange.ts";

/** Why a change can't be made. */
export type UnfitReason =
  /** It names a dish, sitting, pack, lot or profile that is none, or a number that has no sense. */
  | "unknown"
  /** The wished dish is none of the sitting's, or is refused at the same time. */
  | "dish-unfit"
  /** What the sitting eats is cooked already. */
  | "cooked-already"
  /** The lot is not at hand yet. */
  | "not-bought-yet"
  /** Two wishes for one sitting, or a wish or a guest for one that is skipped. */
  | "at-odds";

/** A change that can't be made, by its position in the list. */
export interface UnfitChange {
  readonly at: number;
  readonly reason: UnfitReason;
}

interface Context {
  readonly problem: MenuProblem;
  readonly plan: MenuPlan;
  readonly changes: readonly MenuChange[];
  readonly today: number;
  /** Sittings whose plates are cooked. */
  readonly fixed: ReadonlySet<number>;
}

/** Every change of the list that can't be made; empty = all can. */
export function findUnfitChanges(
  problem: MenuProblem,
  plan: MenuPlan,
  changes: readonly MenuChange[],
  today: number,
): UnfitChange[] {
  const fixed = sittingsOf(plan, cookedBefore(problem, plan, today));
  const context: Context = { problem, plan, changes, today, fixed };
  return changes.flatMap((change, at) => {
    const reason = judgeChange(change, at, context);
    return reason === undefined ? [] : [{ at, reason }];
  });
}

function judgeChange(change: MenuChange, at: number, context: Context): UnfitReason | undefined {
  const { problem } = context;
  switch (change.kind) {
    case "refuse":
      return problem.dishes[change.dish] ? undefined : "unknown";
    case "wish":
      return judgeWish(change, at, context);
    case "price":
      return problem.packs[change.pack] && change.priceMinor >= 0 ? undefined : "unknown";
    case "gone":
      return problem.packs[change.pack] ? undefined : "unknown";
    case "skip":
      return judgeSkip(change, context);
    case "guest":
      if (!problem.sittings[change.sitting] || !(change.portions > 0)) return "unknown";
      if (isSkipped(change.sitting, context)) return "at-odds";
      return context.fixed.has(change.sitting) ? "cooked-already" : undefined;
    case "bought":
      return problem.trips[context.plan.purchases[change.purchase]?.trip ?? -1] ? undefined : "unknown";
    case "off":
      return judgeLot(change.lot, context);
  }
}

function judgeWish(
  { sitting, dish }: Extract<MenuChange, { kind: "wish" }>,
  at: number,
  { problem, changes, fixed, ...rest }: Context,
): UnfitReason | undefined {
  const facts = problem.sittings[sitting];
  if (facts === undefined || problem.dishes[dish] === undefined) return "unknown";
  const before = changes.slice(0, at).some((other) => other.kind === "wish" && other.sitting === sitting);
  if (before || isSkipped(sitting, { problem, changes, fixed, ...rest })) return "at-odds";
  if (fixed.has(sitting)) return "cooked-already";
  const refused = changes.some((other) => other.kind === "refuse" && other.dish === dish);
  return refused || !facts.dishes.includes(dish) ? "dish-unfit" : undefined;
}

function isSkipped(sitting: number, { changes }: Context): boolean {
  return changes.some((other) => other.kind === "skip" && !other.absent && other.sittings.includes(sitting));
}

function judgeSkip(
  { sittings, absent }: Extract<MenuChange, { kind: "skip" }>,
  { problem }: Context,
): UnfitReason | undefined {
  if (sittings.some((k) => problem.sittings[k] === undefined)) return "unknown";
  if (absent === undefined) return undefined;
  const { portions, profile } = absent;
  if (!(portions > 0)) return "unknown";
  if (profile === undefined) return undefined;
  return problem.profiles[profile.index] !== undefined && profile.eaters >= 1 ? undefined : "unknown";
}

function judgeLot(lot: LotName, { problem, plan, changes, today }: Context): UnfitReason | undefined {
  if ("stock" in lot) return problem.lots[lot.stock] ? undefined : "unknown";
  const purchase = plan.purchases[lot.purchase];
  if (purchase === undefined || !(lot.copy >= 0 && lot.copy < purchase.count)) return "unknown";
  const isMade = changes.some((other) => other.kind === "bought" && other.purchase === lot.purchase);
  return isMade || (problem.trips[purchase.trip]?.day ?? 0) < today ? undefined : "not-bought-yet";
}
