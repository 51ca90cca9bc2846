import { type MenuPlan, type MenuProblem, paidOf } from "../../menu/index.ts";
import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import { datedSittings } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";
import { toLimits } from "../toLimits.ts";
import { countBesides, payBesides } from "./comeBesides.ts";
import type { RestoredWeek } from "./restoreWeek.ts";
import type { WeekChange } from "./WeekChange.ts";

type LimitsNow = Extract<WeekChange, { kind: "limits" }>["now"];

/** More minutes than any day has. */
const WHOLE_DAY_MINUTES = 24 * 60;

/**
 * The change that a week planned in one kitchen has to follow in another: none where the minutes of its days and sittings, its
 * budget and its most trips are the same.
 */
export function limitChanges(then: LimitsNow, { limits, sittings }: LimitsNow): WeekChange[] {
  const now = { limits, sittings };
  return tellLimits(then) === tellLimits(now) ? [] : [{ kind: "limits", now }];
}

function tellLimits({ limits: { handsOnMinutes, budgetMinor, tripsPerWeek }, sittings }: LimitsNow): string {
  const atHand = sittings.map(({ kind, on, eaters, minutes, packed }) => [kind, on, eaters, minutes, packed]);
  return JSON.stringify([handsOnMinutes, budgetMinor, tripsPerWeek, atHand]);
}

/**
 * A kept week's problem with the limits that the rest of it has from today on: those of a change, or those it was planned with, the
 * trips besides off them. What is over breaks none: its minutes are not asked about, and budget and trips are never less than
 * what is spent.
 */
export function limitRest(
  kitchen: Kitchen,
  restored: RestoredWeek,
  changes: readonly WeekChange[],
  today: CivilDate,
): MenuProblem {
  const { stated, plan } = restored;
  const now = changes.flatMap((change) => (change.kind === "limits" ? [change.now] : [])).at(-1);
  const asked = now === undefined ? stated.problem : withLimits(kitchen, restored, now);
  return excusePast(countBesides(asked, plan, changes), plan, daysBetween(stated.from, today));
}

function withLimits(kitchen: Kitchen, { stated, plan, week }: RestoredWeek, now: LimitsNow): MenuProblem {
  const { problem, from } = stated;
  const asked = toLimits({ ...kitchen, limits: now.limits }, [], [], from, problem.days);
  const { handsOnMinutes, maxTrips, budgetMinor } = asked;
  const { budgetMinor: _, ...rest } = problem.limits;
  const limits = { ...rest, handsOnMinutes, maxTrips, ...(budgetMinor !== undefined && { budgetMinor }) };
  const dated = datedSittings(now, from, problem.days);
  const sittings = problem.sittings.map((sitting, k) => {
    const own = stated.sittings[k];
    const same = dated.find(
      ({ date, kind, packed, eaters }) =>
        date === own?.date &&
        kind === own.kind &&
        packed === own.packed &&
        eaters.some((id) => own.eaters.includes(id)),
    );
    return same === undefined || own?.putBy ? sitting : { ...sitting, minutes: same.minutes };
  });
  return payBesides({ ...problem, limits, sittings }, plan, week);
}

function excusePast(problem: MenuProblem, { trips, purchases }: MenuPlan, day: number): MenuProblem {
  if (day <= 0) return problem;
  const { limits } = problem;
  const isOver = (trip: number): boolean => (problem.trips[trip]?.day ?? 0) < day;
  const made = trips.filter(isOver);
  const paid = paidOf(
    problem,
    made,
    purchases.filter(({ trip }) => isOver(trip)),
  );
  return {
    ...problem,
    sittings: problem.sittings.map((sitting) =>
      sitting.day < day ? { ...sitting, minutes: WHOLE_DAY_MINUTES } : sitting,
    ),
    limits: {
      ...limits,
      handsOnMinutes: limits.handsOnMinutes.map((minutes, at) => (at < day ? WHOLE_DAY_MINUTES : minutes)),
      maxTrips: Math.max(limits.maxTrips, made.length),
      ...(limits.budgetMinor !== undefined && { budgetMinor: Math.max(limits.budgetMinor, paid) }),
    },
  };
}
