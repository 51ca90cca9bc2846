import { cookedBefore, familyOf, type MenuPlan, type MenuProblem, paidOf, sittingsOf } from "../../menu/index.ts";
import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import { datedSittings } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";
import { toLimits } from "../toLimits.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { countBesides, payBesides } from "./comeBesides.ts";
import type { RestoredWeek } from "./restoreWeek.ts";
import type { WeekChange } from "./WeekChange.ts";

type LimitsNow = Extract<WeekChange, { kind: "limits" }>["now"];

/** More minutes than any day has. */
const WHOLE_DAY_MINUTES = 24 * 60;

/**
 * The change that a week planned in one kitchen has to follow in another: none where the minutes of its days and sittings, its
 * budget, its most trips, the tolerance of a day's energy and the numbers of variety are the same.
 */
export function limitChanges(then: LimitsNow, { limits, sittings }: LimitsNow): WeekChange[] {
  const now = { limits, sittings };
  return tellLimits(then) === tellLimits(now) ? [] : [{ kind: "limits", now }];
}

function tellLimits({ limits, sittings }: LimitsNow): string {
  const { standRisePct: _, variety: __, ...numbers } = limits;
  const told = Object.entries(numbers).sort(([a], [b]) => (a < b ? -1 : 1));
  const atHand = sittings.map(({ kind, on, minutes }) => [kind, on, minutes]);
  return JSON.stringify([told, atHand]);
}

/**
 * A kept week's problem with the limits that the rest of it has from today on: those of a change, or those it was planned with, the
 * trips besides off them. What is over breaks none: its minutes are not asked about, budget and trips are never less than
 * what is spent, and variety is never stricter than what is cooked leaves.
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
  const asked = toLimits({ ...kitchen, limits: now.limits }, eatenOf(stated), [], from, problem.days);
  const { batchPortions, fridgeLitres, freezerLitres } = problem.limits;
  const limits = {
    ...asked,
    batchPortions,
    ...(fridgeLitres !== undefined && { fridgeLitres }),
    ...(freezerLitres !== undefined && { freezerLitres }),
  };
  const maxUses = now.limits.usesPerDish * Math.ceil(problem.days / 7);
  const dishes = problem.dishes.map((dish, at) => (at < stated.dishes.length ? { ...dish, maxUses } : dish));
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
  return payBesides({ ...problem, dishes, limits, sittings }, plan, week);
}

/** The sittings at which somebody sits down. */
function eatenOf({ sittings }: Pick<KitchenProblem, "sittings">): KitchenProblem["sittings"] {
  return sittings.filter(({ putBy }) => !putBy);
}

/** The week's problem without the energy of days that are over, which nothing can change any more. */
export function excuseEnergy(problem: MenuProblem, day: number): MenuProblem {
  if (day <= 0) return problem;
  const profiles = problem.profiles.map((profile) => ({
    ...profile,
    energyKj: profile.energyKj.map((wanted, at) => (at < day ? 0 : wanted)),
  }));
  return { ...problem, profiles };
}

/** The numbers of variety, none of them stricter than what is cooked already leaves. */
function excuseVariety(problem: MenuProblem, plan: MenuPlan, day: number): Pick<MenuProblem, "dishes" | "limits"> {
  const { dishes, limits, sittings } = problem;
  const cooked = cookedBefore(problem, plan, day);
  const fixed = sittingsOf(plan, cooked);
  const served = [...cooked].flatMap((at) => {
    const { dish, sittings: eaten } = plan.batches[at] as MenuPlan["batches"][number];
    return eaten.map((k) => ({ family: familyOf(problem, dish), main: dishes[dish]?.main, k }));
  });
  const evenings = served.filter(({ k }) => sittings[k]?.variety);
  const open = sittings.filter(({ variety }, k) => variety && !fixed.has(k)).length;
  const most = (counted: readonly unknown[]): number =>
    Math.max(0, ...[...new Set(counted)].map((each) => counted.filter((other) => other === each).length));
  const usesOf = (at: number): number => served.filter(({ family }) => family === familyOf(problem, at)).length;
  const distinct = new Set(evenings.map(({ family }) => family)).size + open;
  return {
    dishes: dishes.map((dish, at) => (usesOf(at) > dish.maxUses ? { ...dish, maxUses: usesOf(at) } : dish)),
    limits: {
      ...limits,
      distinct: Math.min(limits.distinct, distinct),
      mainMax: Math.max(limits.mainMax, most(evenings.map(({ main }) => main))),
    },
  };
}

function excusePast(given: MenuProblem, plan: MenuPlan, day: number): MenuProblem {
  if (day <= 0) return given;
  const problem = { ...given, ...excuseVariety(given, plan, day) };
  const { trips, purchases } = plan;
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
