import type { MenuPlan } from "../plan.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import type { Judge } from "./Judge.ts";
import type { ChangedWeek } from "./MenuChange.ts";
import { toRemainder } from "./Remainder.ts";

/** What keeping to the old plan costs, in minor units. */
export interface KeepingPrice {
  /** Money of the kept plan less that of the best plan known for the same week; never negative. */
  readonly priceMinor: number;
  /** The plan that owes nothing to the old one, where it is cheaper than the kept one. */
  readonly cheaper?: MenuPlan;
  readonly moves: number;
}

/**
 * Holds a kept plan against a search of the same week that knows nothing of the old menu. The better of the two is the
 * best known, so that the price is what one would save by giving the old plan up, as far as these moves can tell.
 */
export function priceKeeping(
  week: Omit<ChangedWeek, "sittingBefore" | "packBefore" | "isCheaper" | "skippedShare">,
  kept: MenuPlan,
  { judge, seed = 1, moves }: { readonly judge: Judge; readonly seed?: number; readonly moves: number },
): KeepingPrice {
  const { problem, join } = toRemainder(week);
  if (problem.sittings.length === 0) return { priceMinor: 0, moves: 0 };
  const search = new MenuSearch(problem, seed, { expectedMoves: moves });
  let made = 0;
  if (search.gaps.length === 0) while (made < moves) made = search.advance().moves;
  const best = search.gaps.length === 0 ? search.best() : undefined;
  const none = { priceMinor: 0, moves: made };
  if (best === undefined) return none;
  const plan = join(best);
  const verdict = judge(week.problem, plan);
  const savedMinor = judge(week.problem, kept).money.totalMinor - verdict.money.totalMinor;
  if (verdict.faults.length > 0 || savedMinor <= 0) return none;
  return { priceMinor: savedMinor, cheaper: plan, moves: made };
}
