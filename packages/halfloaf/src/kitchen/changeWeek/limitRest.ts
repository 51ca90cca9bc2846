import {
  cookedBefore,
  familyOf,
  type MenuPlan,
  type MenuProblem,
  type MenuWish,
  paidOf,
  sittingsOf,
} from "../../menu/index.ts";
import { type CivilDate, daysBetween } from "../../quantity/index.ts";
import { datedSittings } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import { toLimits } from "../toLimits.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import { type StatedWish, toWishes } from "../toWishes.ts";
import { countBesides, payBesides } from "./comeBesides.ts";
import { nowOf } from "./kitchenChanges.ts";
import type { RestoredWeek } from "./restoreWeek.ts";
import type { KitchenNow, WeekChange } from "./WeekChange.ts";

/** More minutes than any day has. */
const WHOLE_DAY_MINUTES = 24 * 60;

/**
 * A kept week as it is stated with the limits that the rest of it has from today on: those of a change, or those it was planned with,
 * the trips besides off them. What is over breaks none: its minutes are not asked about, budget and trips are never less than
 * what is spent, and variety is never stricter than what is cooked leaves.
 */
export function limitRest(
  kitchen: Kitchen,
  tables: Pick<Tables, "foods">,
  restored: RestoredWeek,
  changes: readonly WeekChange[],
  today: CivilDate,
): KitchenProblem {
  const { plan } = restored;
  const now = nowOf(changes);
  const stated = now === undefined ? restored.stated : withLimits(kitchen, tables, restored, now);
  const problem = excusePast(countBesides(stated.problem, plan, changes), plan, daysBetween(stated.from, today));
  return { ...stated, problem };
}

function withLimits(
  kitchen: Kitchen,
  tables: Pick<Tables, "foods">,
  { stated: given, plan, week }: RestoredWeek,
  now: KitchenNow,
): KitchenProblem {
  const stated = withVariety(kitchen, tables, given, now);
  const { problem, from } = stated;
  const asked = toLimits({ ...kitchen, limits: now.limits }, eatenOf(stated), [], from, problem.days);
  const { batchPortions, fridgeLitres, freezerLitres } = problem.limits;
  const isSamePot = now.kit.potPortions === kitchen.kit.potPortions;
  const limits = {
    ...asked,
    batchPortions: isSamePot
      ? batchPortions
      : Math.max(now.kit.potPortions, ...problem.sittings.map(({ portions }) => portions)),
    ...(fridgeLitres !== undefined && { fridgeLitres }),
    ...(freezerLitres !== undefined && { freezerLitres }),
  };
  const maxUses = now.limits.usesPerDish * Math.ceil(problem.days / 7);
  const dishes = problem.dishes.map((dish, at) => (at < stated.dishes.length ? { ...dish, maxUses } : dish));
  const dated = datedSittings(now, from, problem.days);
  const sameAt = stated.sittings.map((own) =>
    own.putBy
      ? undefined
      : dated.find(
          ({ date, kind, packed, eaters }) =>
            date === own.date &&
            kind === own.kind &&
            packed === own.packed &&
            eaters.some((id) => own.eaters.includes(id)),
        ),
  );
  const takeOver = <Sitting extends { readonly minutes: number; readonly heat: boolean }>(own: Sitting, k: number) => {
    const same = sameAt[k];
    return same === undefined ? own : { ...own, minutes: same.minutes, heat: same.heat };
  };
  return {
    ...stated,
    sittings: stated.sittings.map(takeOver),
    problem: payBesides({ ...problem, dishes, limits, sittings: problem.sittings.map(takeOver) }, plan, week),
  };
}

/** The week under the rules of variety of now; wishes stay those that it was planned with. */
function withVariety(
  kitchen: Kitchen,
  { foods }: Pick<Tables, "foods">,
  stated: KitchenProblem,
  { limits }: KitchenNow,
): KitchenProblem {
  if (JSON.stringify(limits.variety) === JSON.stringify(kitchen.limits.variety)) return stated;
  const { problem, dishes, sittings } = stated;
  const stay = stated.wishes.flatMap(({ path, ...wish }, at): StatedWish[] => {
    const menu = problem.wishes?.[at];
    return path[0] === "limits" || menu === undefined ? [] : [{ ...wish, path, menu }];
  });
  const rules = toWishes({ ...kitchen, wishes: [], limits }, foods, dishes, sittings, problem.days);
  const { wishes: _, ...rest } = problem;
  const wishes = [...stay, ...rules];
  return {
    ...stated,
    wishes,
    problem: wishes.length === 0 ? rest : { ...rest, wishes: wishes.map(({ menu }) => menu) },
  };
}

/** The sittings at which somebody sits down. */
function eatenOf({ sittings }: Pick<KitchenProblem, "sittings">): KitchenProblem["sittings"] {
  return sittings.filter(({ putBy }) => !putBy);
}

/**
 * A changed week's problem without the energy of days that are over, which nothing can change any more, and with no more variety than
 * what is cooked leaves once some sittings are gone.
 */
export function excuseChanged(
  { problem, plan }: { readonly problem: MenuProblem; readonly plan: MenuPlan },
  day: number,
): MenuProblem {
  return excuseEnergy(day <= 0 ? problem : { ...problem, ...excuseCooked(problem, plan, day) }, day);
}

function excuseEnergy(problem: MenuProblem, day: number): MenuProblem {
  if (day <= 0) return problem;
  const profiles = problem.profiles.map((profile) => ({
    ...profile,
    energyKj: profile.energyKj.map((wanted, at) => (at < day ? 0 : wanted)),
  }));
  return { ...problem, profiles };
}

/** The pot, the numbers and the rules of variety, none of them stricter than what is cooked already leaves. */
function excuseCooked(
  problem: MenuProblem,
  plan: MenuPlan,
  day: number,
): Pick<MenuProblem, "dishes" | "limits" | "wishes"> {
  const { dishes, limits, sittings, wishes } = problem;
  const cooked = cookedBefore(problem, plan, day);
  const fixed = sittingsOf(plan, cooked);
  const served = [...cooked].flatMap((at) => {
    const { dish, sittings: eaten } = plan.batches[at] as MenuPlan["batches"][number];
    return eaten.map((k) => ({ dish, family: familyOf(problem, dish), main: dishes[dish]?.main, k }));
  });
  const evenings = served.filter(({ k }) => sittings[k]?.variety);
  const open = sittings.filter(({ variety }, k) => variety && !fixed.has(k)).length;
  const most = (counted: readonly unknown[]): number =>
    Math.max(0, ...[...new Set(counted)].map((each) => counted.filter((other) => other === each).length));
  const usesOf = (at: number): number => served.filter(({ family }) => family === familyOf(problem, at)).length;
  const countOf = (wish: MenuWish): number =>
    served.filter(({ dish, k }) => wish.dishes.includes(dish) && wish.sittings.includes(k)).length;
  const excuse = (wish: MenuWish): MenuWish =>
    wish.most === undefined ? wish : { ...wish, most: Math.max(wish.most, countOf(wish)) };
  const portionsOf = (at: number): number =>
    (plan.batches[at]?.sittings ?? []).reduce((sum, k) => sum + (sittings[k]?.portions ?? 0), 0);
  const distinct = new Set(evenings.map(({ family }) => family)).size + open;
  return {
    dishes: dishes.map((dish, at) => (usesOf(at) > dish.maxUses ? { ...dish, maxUses: usesOf(at) } : dish)),
    limits: {
      ...limits,
      distinct: Math.min(limits.distinct, distinct),
      batchPortions: Math.max(limits.batchPortions, ...[...cooked].map(portionsOf)),
      mainMax: Math.max(limits.mainMax, most(evenings.map(({ main }) => main))),
    },
    ...(wishes && { wishes: wishes.map(excuse) }),
  };
}

function excusePast(given: MenuProblem, plan: MenuPlan, day: number): MenuProblem {
  if (day <= 0) return given;
  const problem = { ...given, ...excuseCooked(given, plan, day) };
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
