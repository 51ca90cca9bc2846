import type { Dish } from "../dish/index.ts";
import type { MenuPlan, MenuProblem, MenuSitting } from "../menu/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import type { Pace } from "./cooking/pace.ts";
import { dayToBegin, listBegunSteps, THAW_MINUTES } from "./cooking/timeToBegin.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { FittedDish } from "./fitDish.ts";
import type { Kitchen } from "./kitchen.ts";
import { isWarmed } from "./statePutBy.ts";

type Paced = Pick<Kitchen, "pace">;

/** Of a kitchen's problem, what tells when dishes are begun. */
interface StatedDays {
  readonly problem: MenuProblem;
  readonly sittings: readonly DatedSitting[];
  readonly dishes: readonly FittedDish[];
  /** First day on which anything can be begun. */
  readonly beginsOn: CivilDate;
}

/**
 * The days without a dish at any sitting for which something of it would have to begin before a day: soaking, thawing, what
 * else its method does ahead. That day is the first on which anything can be begun: the first that is planned, as nothing that
 * the plan buys is there before; of a week under way, today. Where a plan has a dish, fresh or left over, it stays: what was
 * begun counts.
 */
export function leaveOutLate<Stated extends StatedDays>(
  stated: Stated,
  kitchen: Paced,
  beginsOn: CivilDate,
  plan?: Pick<MenuPlan, "batches">,
): Stated {
  const { problem } = stated;
  const isPlanned = (dish: number, k: number): boolean =>
    plan?.batches.some((batch) => batch.dish === dish && batch.sittings.includes(k)) ?? false;
  const sittings = problem.sittings.map((sitting, k): MenuSitting => {
    const own = stated.sittings[k] as DatedSitting;
    // Into a box goes what is cooked for a sitting of its day.
    if (own.putBy) return sitting;
    const isInTime = (dish: number): boolean => (dayBegun(stated, kitchen, own, dish) ?? beginsOn) >= beginsOn;
    return { ...sitting, dishes: sitting.dishes.filter((dish) => isInTime(dish) || isPlanned(dish, k)) };
  });
  return { ...stated, beginsOn, problem: { ...problem, sittings } };
}

/**
 * The day on which a dish of the problem, by its index, is begun at the latest to be cooked for a sitting; undefined where
 * nothing of it is done ahead. As `jobsOfDay` has it, with all the minutes at hand for the cooking, all the portions that a
 * pot takes and a cook no quicker than the dish says, so that no plan begins it on an earlier day.
 */
export function dayBegun(
  { dishes, problem }: Pick<StatedDays, "dishes" | "problem">,
  { pace = {} }: Paced,
  sitting: DatedSitting,
  dish: number,
): CivilDate | undefined {
  const one = dishes[dish];
  if (one === undefined) return undefined;
  const beforeMinutes =
    one.putBy === undefined ? minutesAhead(one.dish, problem, sitting, pace) : minutesThawing(one, sitting);
  if (beforeMinutes === undefined) return undefined;
  return dayToBegin({ date: sitting.date, sitting: sitting.kind, beforeMinutes });
}

function minutesAhead(
  dish: Dish,
  { limits }: Pick<MenuProblem, "limits">,
  { minutes }: DatedSitting,
  pace: Pace,
): number | undefined {
  const most = limits.batchPortions;
  const begun = [...listBegunSteps(dish, most), ...listBegunSteps(dish, most, pace)];
  return begun.length === 0 ? undefined : minutes + Math.max(...begun.map(({ untilCooking }) => untilCooking));
}

/** What was put by frozen and is not warmed thaws in the fridge. */
function minutesThawing({ dish, putBy }: FittedDish, sitting: DatedSitting): number | undefined {
  return putBy === "freezer" && !isWarmed(dish, sitting) ? THAW_MINUTES : undefined;
}
