import { addDays, type CivilDate } from "../../quantity/index.ts";
import type { Lot } from "../../stores/index.ts";
import { type DayJob, jobsOfDay, thawsAtOnce } from "../cooking/jobsOfDay.ts";
import type { Pace } from "../cooking/pace.ts";
import type { Tables } from "../tables.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { portionsShort } from "./act/eat.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { menuOn } from "./menuOn.ts";
import { keyOfBegun, keyOfPlanned, keyOfSitting, type LotToCount, type RecordState } from "./recordState.ts";
import { toKitchen } from "./toKitchen.ts";
import { type UseUpLine, useUpList } from "./useUpList.ts";

/** A job as it stands by the stores. */
interface Standing<Job extends DayJob> {
  readonly job: Job;
  /**
   * Portions of what is to be heated again or taken out that the stores do not have, or not good on its day: all of them where
   * it was not told as cooked or is gone, and telling it eaten would book nothing. Absent where all are there, and of other jobs.
   */
  readonly shortPortions?: number;
  /** True where all of them are short, as the cooking itself is still among the jobs of that day. */
  readonly isToCook?: true;
}

/** One thing that a person should be told on a day. */
export type Reminder =
  /**
   * A job of the accepted week: to cook, to heat again, to thaw tonight, to soak now, … `isLate` where it should have begun on
   * a day before the week was accepted.
   */
  | ({ readonly kind: "job"; readonly isLate?: true } & Standing<DayJob>)
  /** A lot that may be eaten today for the last time. */
  | { readonly kind: "last-day"; readonly line: UseUpLine }
  /** A lot that has gone off and is still in the stores. */
  | { readonly kind: "gone-off"; readonly line: UseUpLine }
  /** A lot whose record is known to be wrong. */
  | { readonly kind: "to-count"; readonly count: LotToCount };

/** A dish of an accepted week on a day that is over, of which nothing was told. */
export interface UntoldJob extends Standing<Extract<DayJob, { readonly portions: number }>> {
  readonly week: WeekPlan;
}

/** A soak or thawing begins at most so many days before its sitting. */
const MOST_DAYS_AHEAD = 3;

/**
 * What to be told on a day: first what should have begun before the week was accepted, then the jobs of the accepted weeks by
 * time, without those that were done and those for sittings at which nobody eats here, then what ends today, what has gone
 * off and what is to be counted.
 */
export function remindersOf(
  edited: EditedKitchen,
  state: RecordState,
  tables: Pick<Tables, "dishes" | "foods" | "safety">,
  day: CivilDate,
  pace: Pace = {},
): Reminder[] {
  const jobsOn = askJobs(edited, state, tables, day, pace);
  const jobs = weeksAround(state, day).flatMap((week) => jobsOn(week, day));
  const open = openJobs(state, jobs);
  const lines = useUpList(state, day, 0).filter(({ daysLeft }) => daysLeft !== undefined);
  return [
    ...openJobs(state, listLate(state, day, jobsOn)).map((job): Reminder => ({ kind: "job", job, isLate: true })),
    ...open.map((job): Reminder => ({ kind: "job", job, ...shortOf(state, job, open, day) })),
    ...lines.map((line): Reminder => ({ kind: line.daysLeft === 0 ? "last-day" : "gone-off", line })),
    ...[...state.toCount.values()].map((count): Reminder => ({ kind: "to-count", count })),
  ];
}

/**
 * What the accepted weeks had to cook, to heat again or to take out on the last days before a day and nobody told anything of,
 * the oldest first; neither are there sittings at which nobody ate here.
 */
export function untoldJobs(
  edited: EditedKitchen,
  state: RecordState,
  tables: Pick<Tables, "dishes" | "foods" | "safety">,
  day: CivilDate,
  days = 7,
): UntoldJob[] {
  const jobsOn = askJobs(edited, state, tables, day);
  return Array.from({ length: days }, (_, at) => addDays(day, at - days)).flatMap((date) => {
    const week = menuOn(state, date)?.week;
    if (week === undefined) return [];
    const open = openJobs(state, jobsOn(week, date));
    return open.flatMap((job) => ("portions" in job ? [{ week, job, ...shortOf(state, job, open, day) }] : []));
  });
}

/**
 * Where a dish that is served from the stores is short, by how much: on its day, or today where that is to come. `open` are the
 * jobs of that day that are still to be told.
 */
function shortOf(
  state: RecordState,
  job: DayJob,
  open: readonly DayJob[],
  today: CivilDate,
): Omit<Standing<DayJob>, "job"> {
  if (!isServed(job)) return {};
  const shortPortions = portionsShort(state, job, job.date < today ? job.date : today);
  if (shortPortions <= 0) return {};
  const isToCook =
    shortPortions >= job.portions &&
    open.some(({ kind, batch, dish }) => kind === "cook" && batch === job.batch && dish === job.dish);
  return isToCook ? { shortPortions, isToCook } : { shortPortions };
}

type Served = Extract<DayJob, { readonly kind: "re-heat" | "take-out" }>;

function isServed(job: DayJob): job is Served {
  return job.kind === "re-heat" || job.kind === "take-out";
}

type AskJobs = (week: WeekPlan, on: CivilDate) => DayJob[];

/** The jobs of a week on a day, in the kitchen as it is today. */
function askJobs(
  edited: EditedKitchen,
  state: RecordState,
  tables: Pick<Tables, "dishes" | "foods" | "safety">,
  today: CivilDate,
  pace: Pace = {},
): AskJobs {
  const kitchen = toKitchen(edited, state, tables.foods, today);
  return (week, on) => {
    const there = { ...kitchen, stores: namedAsIn(week, kitchen.stores, state) };
    // On the first day of a week they are among its jobs.
    const late = on === today && on > week.from ? thawsAtOnce(week, there, tables, on) : [];
    return [...late, ...jobsOfDay(week, there, tables, on, pace)];
  };
}

/** What a week that was accepted today should have begun before, and no week accepted earlier told of; `askJobs` has what is to thaw at once. */
function listLate(state: RecordState, day: CivilDate, jobsOn: AskJobs): DayJob[] {
  const menu = menuOn(state, day);
  if (menu?.on !== day) return [];
  const known = state.menus.filter(({ on }) => on < day).flatMap(({ week }) => week.batches);
  const before = Array.from({ length: MOST_DAYS_AHEAD }, (_, at) => addDays(day, at - MOST_DAYS_AHEAD));
  return before
    .flatMap((date) => jobsOn(menu.week, date))
    .filter(({ date, sitting, dish, ...job }) => {
      const isKnown = known.some((batch) => batch.dish === dish && batch.date === date && batch.kind === sitting);
      return !("portions" in job) && !isThawOfStores(job) && date >= day && !isKnown;
    });
}

/** True for what lies frozen in the stores and has no step of its dish to thaw it. */
function isThawOfStores(job: Pick<DayJob, "kind">): boolean {
  return job.kind === "thaw" && !("step" in job) && !("putBy" in job);
}

/** The week of the day and the weeks of the next two days, whose soaks and thawing may begin today; each once. */
function weeksAround(state: RecordState, day: CivilDate): WeekPlan[] {
  const next = state.menus.filter(({ week }) => week.from > day).map(({ week }) => week.from);
  const first = next.reduce<string | undefined>(
    (least, from) => (least === undefined || from < least ? from : least),
    undefined,
  );
  const menus = [menuOn(state, day), first === undefined ? undefined : menuOn(state, first)];
  return [...new Set(menus.flatMap((menu) => menu?.week ?? []))];
}

/** The stores with each lot under the name that the week has for it. */
function namedAsIn(week: WeekPlan, stores: readonly Lot[], { planned }: RecordState): Lot[] {
  const names = new Map(week.lots.map(({ id }) => [planned.get(keyOfPlanned(week.from, id)) ?? id, id]));
  return stores.map((lot) => ({ ...lot, id: names.get(lot.id) ?? lot.id }));
}

/** Jobs that are neither done nor for a sitting at which nobody eats here. */
function openJobs(state: RecordState, jobs: readonly DayJob[]): DayJob[] {
  // A record goes back years; what was done for the sittings of the jobs is picked from it once.
  const dates = new Set(jobs.map(({ date }) => date));
  const cookings = [...state.cookings.values()].filter(({ on }) => dates.has(on));
  const plates = state.plates.filter(({ on }) => dates.has(on));
  return jobs.filter((job) => {
    const { dish, date, sitting } = job;
    if (state.sittings.get(keyOfSitting(date, sitting))?.allAway) return false;
    if (!("portions" in job) && state.begun.has(keyOfBegun({ ...job, servedOn: date }))) return false;
    const isDone = (lot: { readonly dish?: string; readonly on: CivilDate; readonly sitting?: string }): boolean =>
      lot.dish === dish && lot.on === date && lot.sitting === sitting;
    return !(cookings.some(isDone) || (isServed(job) && plates.some(isDone)));
  });
}
