import { type ChangedWeek, changeProblem, type MenuChange, type UnfitReason } from "../../menu/index.ts";
import { addDays, type CivilDate, daysBetween, type Issue, type Parsed } from "../../quantity/index.ts";
import type { DatedSitting } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { barPlates } from "./barPlates.ts";
import { holdEarly, listCome, withBesides } from "./comeBesides.ts";
import { haveSameTaste, nowOf } from "./kitchenChanges.ts";
import { leaveTable } from "./leaveTable.ts";
import { excuseChanged, limitRest } from "./limitRest.ts";
import { repricePacks } from "./repricePacks.ts";
import { onDay, type RestoredWeek, restoreWeek, weekIssue } from "./restoreWeek.ts";
import { reseat, weighSittings } from "./Seats.ts";
import { findSittings, toMenuChanges } from "./toMenuChanges.ts";
import type { KitchenNow, WeekChange } from "./WeekChange.ts";

/** A kept week after changes: to be planned again, and then to be written down with `stated`. */
export interface ChangedKitchenWeek {
  /** The week as it was kept. */
  readonly before: RestoredWeek;
  /** The meaning of every index after the changes. */
  readonly stated: KitchenProblem;
  /** For `replan` and `priceKeeping`. */
  readonly week: ChangedWeek;
}

/**
 * A kept week with its changes, as a problem of the kitchen's and the old plan in it. `today` is the first day that is not
 * over; absent = the week has not begun. What was begun for the old plan counts, and nothing else is begun before today. Everything that is wrong comes back at once: what of the file no longer fits the
 * kitchen with its path in the file, what can't be changed with the path `changes`, position.
 */
export function changeWeek(
  kitchen: Kitchen,
  tables: Tables,
  week: WeekPlan,
  changes: readonly WeekChange[],
  today: CivilDate = week.from,
): Parsed<ChangedKitchenWeek> {
  const last = addDays(week.from, week.days - 1);
  if (today < week.from || today > last)
    return { ok: false, issues: [weekIssue("day-outside", ["today"], `a day from ${week.from} to ${last}`, today)] };
  const { come } = listCome(changes, tables);
  const restored = restoreWeek(kitchen, tables, withBesides(week, come), nowOf(changes));
  if (!restored.ok) return restored;
  return changeRestored(kitchen, tables, restored.value, changes, today);
}

/**
 * The same for a week that is restored already, which takes most of the time; `today` is one of its days. Where something came
 * besides that it does not know of, or its eaters take other foods now, it is restored anew, since other dishes may be possible then.
 */
export function changeRestored(
  kitchen: Kitchen,
  tables: Tables,
  restored: RestoredWeek,
  changes: readonly WeekChange[],
  today: CivilDate,
): Parsed<ChangedKitchenWeek> {
  const { come, issues } = listCome(changes, tables);
  if (issues.length > 0) return { ok: false, issues };
  const now = nowOf(changes);
  const known = restoreAnew(kitchen, tables, restored, withBesides(restored.week, come), now);
  if (!known.ok) return known;
  const before = onDay(known.value, kitchen, today);
  const all = now === undefined ? changes : [...changes, ...leaveTable(before, now, changes, today)];
  const asked = toMenuChanges(kitchen, tables, before, all);
  if (!asked.ok) return asked;
  const day = daysBetween(before.stated.from, today);
  const energyWeight = weighSittings(kitchen, before.stated.sittings);
  const limited = limitRest(kitchen, tables, before, changes, today);
  const barred = barPlates(kitchen, tables, { stated: limited, plan: before.plan }, { now, changes, today });
  const menuChanges = asked.value.flatMap(({ menu, at }) =>
    menu.flatMap((each) => (isSettled(each, all[at], barred.settled) ? [] : [{ each, at }])),
  );
  const list = menuChanges.map(({ each }) => each);
  const outcome = changeProblem(barred.stated.problem, barred.plan, list, { today: day, energyWeight });
  if (!outcome.ok) {
    const toOwner = (at: number): number => (menuChanges[at] as (typeof menuChanges)[number]).at;
    return { ok: false, issues: outcome.unfit.map(({ at, reason }) => toIssue(toOwner(at), reason)) };
  }
  const value = { ...outcome.value, problem: excuseChanged(outcome.value, day) };
  const losses = [...before.losses, ...barred.losses, ...value.losses];
  const stated = restate(kitchen, barred.stated, value, all, today);
  const held = holdEarly(before.week, stated, value.plan, today);
  return { ok: true, value: { before, stated, week: { ...value, losses, held, hasMore: come.length > 0 } } };
}

/** True for a dish that is told as done where that is known already, or where it is not to be eaten after all. */
function isSettled(menu: MenuChange, change: WeekChange | undefined, settled: ReadonlySet<number>): boolean {
  return menu.kind === "wish" && change?.kind === "want" && change.done !== undefined && settled.has(menu.sitting);
}

/** The week as it was restored, or anew where it is another one now, or is to have other dishes or another rise of prices. */
function restoreAnew(
  kitchen: Kitchen,
  tables: Tables,
  restored: RestoredWeek,
  week: WeekPlan,
  now: KitchenNow | undefined,
): Parsed<RestoredWeek> {
  const isNow =
    now === undefined ||
    (haveSameTaste((restored.now ?? kitchen).eaters, now.eaters) &&
      now.limits.standRisePct === restored.stated.standRisePct);
  if (isNow && week === restored.week) return { ok: true, value: restored };
  return restoreWeek(kitchen, tables, week, now);
}

function toIssue(at: number, reason: UnfitReason): Issue {
  return weekIssue(`change-${reason}`, ["changes", at], EXPECTED[reason], reason);
}

const EXPECTED: Readonly<Record<UnfitReason, string>> = {
  unknown: "a change of something that is there",
  "dish-unfit": "a dish that fits the sitting and is not refused",
  "cooked-already": "a sitting whose plates are not cooked yet",
  "not-bought-yet": "a lot that is at hand",
  "at-odds": "one wish for a sitting, and none where nobody eats",
};

/** The kitchen's side of a changed problem: who sits where, and what packs now cost. */
function restate(
  kitchen: Kitchen,
  stated: KitchenProblem,
  { problem, sittingBefore, packBefore }: ChangedWeek,
  changes: readonly WeekChange[],
  today: CivilDate,
): KitchenProblem {
  const seated = seatEaters(kitchen, stated, changes);
  const sittings = sittingBefore.map((k) => seated[k] as DatedSitting);
  const packs = repricePacks(kitchen, problem, stated.packs, packBefore, today);
  return reseat(kitchen, { ...stated, problem, packs }, sittings);
}

function seatEaters(kitchen: Kitchen, stated: KitchenProblem, changes: readonly WeekChange[]): DatedSitting[] {
  const eatersAt = stated.sittings.map(({ eaters }): readonly string[] => eaters);
  for (const change of changes) {
    if (change.kind !== "skip" && change.kind !== "guest") continue;
    for (const k of findSittings(stated, change.at)) {
      const eaters = eatersAt[k] as readonly string[];
      const { eater } = change.at;
      eatersAt[k] =
        change.kind === "guest"
          ? addGuests(kitchen, eaters, change.portions)
          : eaters.filter((id) => eater !== undefined && id !== eater);
    }
  }
  return stated.sittings.map((sitting, k) => ({ ...sitting, eaters: eatersAt[k] as readonly string[] }));
}

/** A guest for each portion, under names that no eater of the kitchen has. */
function addGuests(kitchen: Kitchen, eaters: readonly string[], portions: number): string[] {
  const taken = new Set([...kitchen.eaters.map(({ id }) => id), ...eaters]);
  const guests: string[] = [];
  for (let number = 1; guests.length < portions; number++)
    if (!taken.has(`guest-${number}`)) guests.push(`guest-${number}`);
  return [...eaters, ...guests];
}
