import { type Dish, markAhead, orderSteps, type Step } from "../../dish/index.ts";
import { addDays, type CivilDate, daysBetween } from "../../quantity/index.ts";
import type { SittingKind } from "../datedSittings.ts";
import { type Pace, stepMinutes } from "./pace.ts";

/** Something that begins minutes before a sitting; the sitting's own clock time is the kitchen's affair. */
export interface BeforeSitting {
  readonly date: CivilDate;
  readonly sitting: SittingKind;
  /** Minutes before the sitting at which it begins at the latest; 0 = at the sitting itself. */
  readonly beforeMinutes: number;
}

/**
 * About when sittings are, in minutes after midnight: tells on which day something hours before falls, and stands in where
 * nobody says when a sitting is. Common practice, no source.
 */
export const USUAL_MINUTES: Readonly<Record<SittingKind, number>> = {
  morning: 7 * 60 + 30,
  midday: 12 * 60 + 30,
  between: 16 * 60,
  evening: 19 * 60,
};
/** What would have to begin before so many minutes after midnight is done the evening before. */
const NIGHT_ENDS = 6 * 60;
const DAY = 24 * 60;
const FIRST_DAY: CivilDate = "2000-01-01";
/** In the fridge raw meat thaws in a day. **Source**: FSIS, safe defrosting: small amounts need a full day (from memory). */
export const THAW_MINUTES = DAY;
/** In cold water it thaws in so long. **Source**: FSIS, safe defrosting: a pound within 1 h, 3 to 4 pounds in 2 to 3 h (from memory). */
export const THAW_IN_WATER_MINUTES = 120;

/** Minutes after midnight of a common first day, by the usual times of the sittings; for the order of jobs alone. */
export function timeToBegin({ date, sitting, beforeMinutes }: BeforeSitting): number {
  return daysBetween(FIRST_DAY, date) * DAY + USUAL_MINUTES[sitting] - beforeMinutes;
}

/** The day on which it begins: what would fall into the night, on the evening before it. */
export function dayToBegin(job: BeforeSitting): CivilDate {
  const time = timeToBegin(job);
  const day = Math.floor(time / DAY);
  const isNight = job.beforeMinutes > 0 && time - day * DAY < NIGHT_ENDS;
  return addDays(FIRST_DAY, isNight ? day - 1 : day);
}

/** A step done ahead, and the minutes from its start until the cooking at the sitting begins. */
export interface BegunStep {
  readonly step: Step;
  readonly untilCooking: number;
}

/** The steps of a dish that are done ahead, in the order of its method, each with the minutes of all that hangs on it. */
export function listBegunSteps({ method }: Pick<Dish, "method">, portions: number, pace: Pace = {}): BegunStep[] {
  if (!method.some(({ ahead }) => ahead)) return [];
  const isAhead = markAhead(method, orderSteps(method));
  const untilCooking = (step: Step): number => {
    const then = method.filter(({ after }, place) => isAhead[place] && after.includes(step.id));
    return stepMinutes(step, portions, pace) + Math.max(0, ...then.map(untilCooking));
  };
  return method.filter((_, place) => isAhead[place]).map((step) => ({ step, untilCooking: untilCooking(step) }));
}
