import { type HeldPack, type MenuPlan, type MenuProblem, paidOf } from "../../menu/index.ts";
import { addDays, type CivilDate, daysBetween, type Issue } from "../../quantity/index.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { Tables } from "../tables.ts";
import type { KitchenProblem } from "../toMenuProblem.ts";
import type { WeekPlan } from "../weekPlan.ts";
import type { WeekChange } from "./WeekChange.ts";

type Besides = NonNullable<WeekPlan["besides"]>[number];

/** What came besides according to changes, and each of them whose food nobody knows as an issue. */
export function listCome(
  changes: readonly WeekChange[],
  { foods }: Pick<Tables, "foods">,
): { readonly come: readonly Besides[]; readonly issues: readonly Issue[] } {
  const come: Besides[] = [];
  const issues: Issue[] = [];
  for (const [at, change] of changes.entries()) {
    if (change.kind !== "came") continue;
    const { kind: _, ...one } = change;
    const { stock } = one;
    if (foods.has(stock.food)) come.push(one);
    else
      issues.push({
        code: "food-unknown",
        path: ["changes", at],
        expected: "a food of the table",
        received: stock.food,
      });
  }
  return { come, issues };
}

/**
 * A week that knows of what came besides; the same week where it knows of all already. What came before its trip is taken of the
 * lots at hand and bought no more, and a trip that has nothing else to bring is not made.
 */
export function withBesides(week: WeekPlan, come: readonly Besides[]): WeekPlan {
  const { besides = [], lots } = week;
  const known = new Set([...besides.map(({ stock }) => stock.id), ...lots.map(({ id }) => id)]);
  const fresh = come.filter(({ stock }) => !known.has(stock.id));
  if (fresh.length === 0) return week;
  const early = fresh.flatMap(({ stock, planned }) => (planned === undefined ? [] : [[planned, stock.id] as const]));
  return takeEarly({ ...week, besides: [...besides, ...fresh] }, new Map(early));
}

/** A week whose lots of these names are others at hand: the lines that were to bring them are gone, whole. */
function takeEarly(week: WeekPlan, early: ReadonlyMap<string, string>): WeekPlan {
  const gone = new Set<string>();
  const trips = week.trips.flatMap((trip) => {
    const lines = trip.lines.filter((line) => {
      const names = lotsOfLine(week, trip.date, line);
      const isEarly = names.some((name) => early.has(name));
      for (const name of isEarly ? names : []) gone.add(name);
      return !isEarly;
    });
    return lines.length === 0 && trip.lines.length > 0 ? [] : [{ ...trip, lines }];
  });
  const batches = week.batches.map((batch) => ({
    ...batch,
    uses: batch.uses.flatMap((use) => {
      const lot = early.get(use.lot);
      if (lot !== undefined) return [{ ...use, lot }];
      return gone.has(use.lot) ? [] : [use];
    }),
  }));
  return { ...week, trips, batches, lots: week.lots.filter(({ id }) => !gone.has(id)) };
}

/**
 * The packs of what came before its trip: of none of them is more bought until the day of that trip is over, unless the plan itself does
 * before. A week has one name for the packs that it buys on a day, and that one is taken.
 */
export function holdEarly(
  { besides = [], from, days }: Pick<WeekPlan, "besides" | "from" | "days">,
  { problem, packs }: Pick<KitchenProblem, "problem" | "packs">,
  plan: MenuPlan,
  today: CivilDate,
): HeldPack[] {
  const first = daysBetween(from, today);
  const names = besides.flatMap(({ planned }) => planned ?? []);
  return packs.flatMap((facts, pack): HeldPack[] => {
    const heldDays = Array.from({ length: days }, (_, day) => day).filter((day) => {
      const [name = ""] = lotsOfLine({ from }, addDays(from, day), { pack: facts.id, count: 1 });
      const stem = name.slice(0, -1);
      return day >= first && names.some((each) => each.startsWith(stem));
    });
    const untilDay = Math.max(-1, ...heldDays);
    const buys = plan.purchases.some(({ pack: bought, trip }) => {
      const day = problem.trips[trip]?.day ?? 0;
      return packs[bought]?.id === facts.id && day >= first && day <= untilDay;
    });
    return untilDay < 0 || buys ? [] : [{ pack, untilDay }];
  });
}

/**
 * A week's problem with the trips made besides off the most trips, as far as the plan leaves them: those it has still to make are never
 * in question.
 */
export function countBesides(problem: MenuProblem, plan: MenuPlan, changes: readonly WeekChange[]): MenuProblem {
  const count = new Set(changes.flatMap((change) => (change.kind === "went" ? [`${change.date} ${change.shop}`] : [])))
    .size;
  if (count === 0) return problem;
  const { maxTrips } = problem.limits;
  const left = Math.min(maxTrips, Math.max(maxTrips - count, plan.trips.length));
  return { ...problem, limits: { ...problem.limits, maxTrips: left } };
}

/**
 * A week's problem with what was paid besides off its budget, as far as the plan leaves it: what is spent can't be unspent, so
 * it alone makes no plan impossible that was possible.
 */
export function payBesides(
  problem: MenuProblem,
  plan: MenuPlan,
  { besides = [] }: Pick<WeekPlan, "besides">,
): MenuProblem {
  const paid = besides.reduce((sum, { paidMinor }) => sum + paidMinor, 0);
  const { budgetMinor } = problem.limits;
  if (paid === 0 || budgetMinor === undefined) return problem;
  const planned = paidOf(problem, plan.trips, plan.purchases);
  const left = Math.min(budgetMinor, Math.max(budgetMinor - paid, planned));
  return { ...problem, limits: { ...problem.limits, budgetMinor: left } };
}
