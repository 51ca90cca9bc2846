import { changeRestored, onDay, replanWeek, type WeekChange, writeWeek } from "halfloaf/kitchen";
import { followWeek } from "halfloaf/kitchen/record";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate } from "halfloaf/quantity";
import { SEED } from "./effort.ts";
import { hindranceOf } from "./hindranceOf.ts";
import { indexOf, moneyOf, type Stage } from "./Stage.ts";
import type { MoveTold, WeekAsked } from "./Told.ts";
import { listChanged } from "./tellInstead.ts";

/** So much must another dish save that nobody asked for, when one plate is moved; our own choice, no source. */
const CHANGE_MINOR = 40;
/** Moves of the search near the old menu where the answer is waited for. */
const NEAR_MOVES = 20_000;

/** A dish that is wanted at a sitting of a week. */
export interface Serving {
  readonly dish: string;
  /** Positions of the sitting it is to be eaten at, and of the one it leaves. */
  readonly to: number;
  readonly from?: number;
}

/**
 * The week with a dish at a sitting in place of the one there, as near to the old one as it can be; its own leaves the other.
 * With `isNear` only menus near the old one are looked at, which takes a tenth of the time.
 */
export function serve(
  { kitchen, tables, before }: Stage,
  { week, known }: WeekAsked,
  { dish, to, from }: Serving,
  { day, isNear }: { readonly day: CivilDate; readonly isNear: boolean },
): MoveTold {
  const target = week.sittings[to];
  if (target === undefined) return { kind: "breaks" };
  const { date, kind, eaters } = target;
  const wish = { kind: "want" as const, dish, at: { date, kind, eater: eaters[0] as string } };
  const today = day > week.from ? day : week.from;
  const change = (changes: readonly WeekChange[]) => changeRestored(kitchen, tables, before, changes, today);
  const followed = followWeek(change, [wish], known);
  if (!followed.ok)
    return {
      kind: "unfit",
      ...hindranceOf(
        { kitchen, tables, before: onDay(before, kitchen, today) },
        indexOf(before.stated, week, to),
        dish,
      ),
    };
  const { changed } = followed.value;
  const { stated } = changed;
  const emptied = from === undefined ? undefined : indexOf(stated, week, from);
  const { problem } = changed.week;
  const sittings = problem.sittings.map((sitting, k) =>
    k === emptied
      ? { ...sitting, dishes: sitting.dishes.filter((each) => problem.dishes[each]?.id !== dish) }
      : sitting,
  );
  const left = { ...changed, week: { ...changed.week, problem: { ...problem, sittings } } };
  const options = {
    judge: checkPlan,
    seed: SEED,
    changeMinor: CHANGE_MINOR,
    ...(isNear && { moves: NEAR_MOVES, wideMoves: 0 }),
  };
  const { changed: moved, outcome } = replanWeek(kitchen, tables, left, options);
  if (outcome.kind === "none") return { kind: "breaks" };
  const { plan, moneyMinor, moves } = outcome;
  const written = writeWeek(kitchen, tables, moved, plan, { seed: SEED, moves, moneyMinor });
  const extraMinor = moneyMinor - moneyOf({ before });
  return { kind: "fits", extraMinor, week: written, changed: listChanged(week, written) };
}
