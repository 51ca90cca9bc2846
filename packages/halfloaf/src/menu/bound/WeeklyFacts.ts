import type { MenuProblem } from "../problem.ts";
import { groupSittings, type SittingKind } from "./groupSittings.ts";
import { listSupplies, type Supply } from "./listSupplies.ts";
import { type DishServings, reckonServings } from "./reckonServings.ts";

/** A dish at a kind of sitting: the column that counts its servings there. */
export interface ServingCount {
  readonly dish: number;
  readonly kind: number;
  readonly portions: number;
  /** Most servings: sittings of the kind it can be served at. */
  readonly most: number;
  readonly column: string;
}

/** Use of a food by a dish. */
interface FoodUser {
  readonly dish: number;
  /** Grams as purchased per standard portion. */
  readonly massG: number;
}

/** What the weekly model is built from, reckoned once. */
export interface WeeklyFacts {
  readonly problem: MenuProblem;
  readonly kinds: readonly SittingKind[];
  readonly servings: readonly DishServings[];
  /** Counts of each dish. */
  readonly counts: readonly (readonly ServingCount[])[];
  /** Columns of the levels of each dish, served 1, 2, ... times; none where it is not on the menu. */
  readonly levels: readonly (readonly string[])[];
  readonly supplies: readonly (readonly Supply[])[];
  readonly constantMinor: number;
  readonly users: readonly (readonly FoodUser[])[];
  /** The most of each food that dishes can use (g). */
  readonly reachG: readonly number[];
}

/** Reckons the facts; `dishes` narrows the menu to those, absent means all. */
export function gatherWeeklyFacts(problem: MenuProblem, dishes?: ReadonlySet<number>): WeeklyFacts {
  const kinds = groupSittings(problem);
  const servings = reckonServings(problem);
  const counts = problem.dishes.map((_, dish) => {
    const { sittings, most } = servings[dish] as DishServings;
    if (most === 0 || (dishes && !dishes.has(dish))) return [];
    return kinds.flatMap((kind, k): ServingCount[] => {
      const here = kind.sittings.filter((sitting) => sittings.includes(sitting)).length;
      return here === 0
        ? []
        : [{ dish, kind: k, portions: kind.portions, most: Math.min(most, here), column: `x ${dish} ${k}` }];
    });
  });
  const levels = counts.map((own, dish) =>
    Array.from(
      { length: own.length === 0 ? 0 : (servings[dish] as DishServings).most },
      (_, i) => `l ${dish} ${i + 1}`,
    ),
  );
  const { ofFood, constantMinor } = listSupplies(problem);
  const users = problem.foods.map((): FoodUser[] => []);
  problem.dishes.forEach((dish, r) => {
    if (counts[r]?.length)
      for (const { food, massG } of dish.makings) if (massG > 0) users[food]?.push({ dish: r, massG });
  });
  const reachG = users.map((list) => {
    const largest = new Map<number, number>();
    for (const { dish, massG } of list)
      for (const { kind } of counts[dish] ?? []) largest.set(kind, Math.max(largest.get(kind) ?? 0, massG));
    return [...largest].reduce(
      (sum, [k, massG]) => sum + massG * (kinds[k] as SittingKind).portions * (kinds[k] as SittingKind).sittings.length,
      0,
    );
  });
  return { problem, kinds, servings, counts, levels, supplies: ofFood, constantMinor, users, reachG };
}
