import {
  type ChangedKitchenWeek,
  changeRestored,
  onDay,
  replanWeek,
  type WeekChange,
  type WeekPlan,
  writeWeek,
} from "halfloaf/kitchen";
import { followWeek } from "halfloaf/kitchen/record";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate } from "halfloaf/quantity";
import { SEED } from "./effort.ts";
import { hindranceOf } from "./hindranceOf.ts";
import { indexOf, moneyOf, type Stage } from "./Stage.ts";
import type { MoveTold, WeekAsked } from "./Told.ts";
import { listChanged } from "./tellInstead.ts";
import { toWish } from "./toWish.ts";

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

/** A changed week in which a dish is not eaten any more at one of the sittings of the week that it was made of. */
export function leaveSitting(
  changed: ChangedKitchenWeek,
  week: WeekPlan,
  { dish, from }: Required<Omit<Serving, "to">>,
): ChangedKitchenWeek {
  const emptied = indexOf(changed.stated, week, from);
  const { problem } = changed.week;
  const sittings = problem.sittings.map((sitting, k) =>
    k === emptied
      ? { ...sitting, dishes: sitting.dishes.filter((each) => problem.dishes[each]?.id !== dish) }
      : sitting,
  );
  return { ...changed, week: { ...changed.week, problem: { ...problem, sittings } } };
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
  const wish = toWish(week, to, dish);
  if (wish === undefined) return { kind: "breaks" };
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
  const left = from === undefined ? changed : leaveSitting(changed, week, { dish, from });
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
