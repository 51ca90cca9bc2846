import type { MenuDish } from "../problem.ts";
import { widen } from "./isWithin.ts";
import type { ModelBuilder } from "./ModelBuilder.ts";
import type { DishServings } from "./reckonServings.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/**
 * Servings of each dish, and what cooking them costs at least.
 *
 *     x[r,c]   servings of dish r at sittings of kind c
 *     l[r,k]   1 where dish r is served exactly k times
 *     y[r]     1 where it is served at all
 *
 *     sum over r of x[r,c] = sittings of kind c
 *     sum over c of x[r,c] = sum over k of k l[r,k],   y[r] = sum over k of l[r,k]
 *
 * b batches of k servings take `fixed b + perPortion portions + leftoverMinutes (k - b)` minutes hands-on. With
 * fixed >= leftoverMinutes that is least for the fewest batches that k servings can come from, else for b = k; both
 * depend on k alone and stand at l[r,k]. The minutes of washing up count in money as a part of what is fixed.
 */
export function addServings(model: ModelBuilder, facts: WeeklyFacts): void {
  const { problem, kinds } = facts;
  facts.counts.forEach((counts, r) => {
    if (counts.length === 0) return;
    const dish = problem.dishes[r] as MenuDish;
    model.column(`y ${r}`, 0, 1, true);
    const perServing = minutesPerServing(facts, dish);
    const washUp = (dish.vessels ?? 0) * (problem.worth.vesselMinutes ?? 0);
    for (const { column, kind, portions, most: here } of counts) {
      const worthMinor = kinds[kind]?.putBy ? portions * (dish.putBy?.creditMinor ?? 0) : 0;
      model.column(
        column,
        dish.dislikeMinor - worthMinor + problem.worth.minuteMinor * perServing(portions),
        here,
        true,
      );
    }
    const { most } = facts.servings[r] as DishServings;
    const levels = (facts.levels[r] ?? []).map((name, i) =>
      model.column(name, problem.worth.minuteMinor * minutesOfBatches(facts, r, i + 1, washUp), 1, true),
    );
    model.row(`use ${r}`, 0, 0, [...levels.map((name) => [name, 1] as const), [`y ${r}`, -1]]);
    model.row(`count ${r}`, 0, 0, [
      ...levels.map((name, i) => [name, i + 1] as const),
      ...counts.map(({ column }) => [column, -1] as const),
    ]);
    if (counts.length > 1)
      for (const { column, most: here } of counts)
        if (here < most)
          model.lazy(`kind ${column}`, 0, [
            [column, -1],
            ...levels.map((name, i) => [name, Math.min(i + 1, here)] as const),
          ]);
  });
  kinds.forEach((kind, c) => {
    const entries = facts.counts
      .flat()
      .filter((count) => count.kind === c)
      .map(({ column }) => [column, 1] as const);
    model.row(`kind ${c}`, kind.sittings.length, kind.sittings.length, entries);
  });
  addMinutes(model, facts);
}

function minutesPerServing({ problem }: WeeklyFacts, dish: MenuDish): (portions: number) => number {
  return (portions) => dish.handsOn.perPortion * portions + problem.worth.leftoverMinutes;
}

/** Fewest minutes of the cookings that feed k servings; `moreEach` is what each takes beyond its hands-on minutes. */
function minutesOfBatches({ problem, servings }: WeeklyFacts, r: number, k: number, moreEach = 0): number {
  const more = (problem.dishes[r] as MenuDish).handsOn.fixed + moreEach - problem.worth.leftoverMinutes;
  return more * (more >= 0 ? (servings[r]?.fewestBatches[k] as number) : k);
}

/** The hands-on minutes of all days together within the sum of what is allowed. */
function addMinutes(model: ModelBuilder, facts: WeeklyFacts): void {
  const allowed = facts.problem.limits.handsOnMinutes.reduce((sum, minutes) => sum + widen(minutes), 0);
  const entries = facts.counts.flatMap((counts, r) => {
    const perServing = minutesPerServing(facts, facts.problem.dishes[r] as MenuDish);
    return [
      ...counts.map(({ column, portions }) => [column, perServing(portions) / 60] as const),
      ...(facts.levels[r] ?? []).map((name, i) => [name, minutesOfBatches(facts, r, i + 1) / 60] as const),
    ];
  });
  model.atMost("minutes", allowed / 60, entries);
}
