import { unitColumn } from "./addFoods.ts";
import { coverCosts } from "./coverCosts.ts";
import type { Supply } from "./listSupplies.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/** What the units of a food cost in one of the sums that the weekly model reckons with. */
export interface FoodMeasure {
  readonly food: number;
  /** `c` for the money that plans minimise, `b` for what the budget counts. */
  readonly name: "c" | "b";
  /** Columns of the units that hold anything, with the cost of one; units given are left out. */
  readonly paid: readonly (readonly [column: string, cost: number])[];
  /** Least cost of units that hold so many grams. */
  readonly least: (needG: number) => number;
}

/** The measures of all foods that a dish uses and that are not given altogether. */
export function listMeasures(facts: WeeklyFacts): FoodMeasure[] {
  const budget = facts.problem.limits.budgetMinor !== undefined;
  return facts.supplies.flatMap((supplies, food): FoodMeasure[] => {
    if (!facts.users[food]?.length || supplies.every(({ given }) => given)) return [];
    const measure = (name: FoodMeasure["name"], of: (supply: Supply) => number): FoodMeasure => ({
      food,
      name,
      paid: supplies.flatMap((supply, i) =>
        supply.given || supply.massG === 0 ? [] : [[unitColumn(food, i), of(supply)] as const],
      ),
      least: coverCosts(supplies, of, facts.reachG[food] as number),
    });
    const money = measure("c", ({ unitMinor }) => Math.max(0, unitMinor));
    const isSame = supplies.every(({ given, unitMinor, tillMinor }) => given || unitMinor === tillMinor);
    return budget && !isSame ? [money, measure("b", ({ tillMinor }) => tillMinor)] : [money];
  });
}
