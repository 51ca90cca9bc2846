import type { CivilDate } from "../quantity/index.ts";
import { leaveSeats, reseat, toSeats, withoutSittings } from "./changeWeek/Seats.ts";
import { USUAL_MINUTES } from "./cooking/timeToBegin.ts";
import { type DatedSitting, datedSittings, type SittingKind } from "./datedSittings.ts";
import type { Kitchen } from "./kitchen.ts";
import type { KitchenProblem } from "./toMenuProblem.ts";

/** So many minutes after its time nobody sits down any more. Common practice, no source. */
const OVER_AFTER_MINUTES = 60;

/** A moment by the clock of the kitchen. */
export interface ClockTime {
  readonly date: CivilDate;
  /** Minutes after midnight. */
  readonly minutes: number;
}

/**
 * The kinds of sittings of the first of some days that are over at a moment, in order of time: an hour after their time, which
 * is in minutes after midnight, or the usual one where `times` has none. None where the days do not begin at that moment's
 * day, and none where no sitting at all would be left.
 */
export function listOver(
  kitchen: Pick<Kitchen, "sittings">,
  { from, days }: { readonly from: CivilDate; readonly days: number },
  now: ClockTime,
  times: Readonly<Partial<Record<SittingKind, number>>> = {},
): SittingKind[] {
  if (from !== now.date) return [];
  const isOver = ({ day, kind }: DatedSitting): boolean =>
    day === 0 && (times[kind] ?? USUAL_MINUTES[kind]) + OVER_AFTER_MINUTES <= now.minutes;
  const sittings = datedSittings(kitchen, from, days);
  const over = sittings.filter(isOver);
  return over.length === sittings.length ? [] : [...new Set(over.map(({ kind }) => kind))];
}

/**
 * The days without the sittings of these kinds on the first of them, as `listOver` gives them: nobody is planned to sit there,
 * and what they would have brought is wanted of no other plate.
 */
export function leaveOutOver(stated: KitchenProblem, kitchen: Kitchen, over: readonly SittingKind[]): KitchenProblem {
  const isOver = ({ day, kind, putBy }: DatedSitting): boolean => day === 0 && putBy !== true && over.includes(kind);
  const gone = stated.sittings.flatMap((sitting, k) => (isOver(sitting) ? [k] : []));
  if (gone.length === 0) return stated;
  let seats = toSeats(stated);
  for (const { eater, sittings } of stated.shares) {
    const away = sittings.filter((k) => gone.includes(k));
    seats = leaveSeats(seats, kitchen, eater.id, away);
  }
  const problem = withoutSittings(seats.stated.problem, gone);
  const kept = stated.sittings.filter((sitting) => !isOver(sitting));
  return reseat(kitchen, { ...seats.stated, problem }, kept);
}
