import type { MenuFood, MenuProblem } from "../problem.ts";
import { type CoverTable, findCover } from "./CoverTable.ts";
import type { FoodSources } from "./Sources.ts";

/** Mass below which several needs of a food together may be no more than dust (g). */
const BEYOND_G = 1e-3;
/** Steps of mass in which covers are looked up, for each food; they reach to this share of the most that a menu can use. */
const STEPS = 128;
const REACH = 0.25;
/** Lower than anything that a food comes to, and yet a number that can be taken off again. */
const FAR_MINOR = -1e9;

/**
 * What each food comes to at least for what is needed of it in all, however the needs are spread over the days and whichever
 * trips are made: quickly, as no purchase is looked for. All covers stand in one column, rounded down to steps of mass, since
 * what takes time here is to fetch them.
 */
export class LeastCosts {
  private readonly stockG: Float64Array;
  /** What a gram left is worth, by food. */
  private readonly credit: Float64Array;
  /** What each gram beyond the stock costs at least, by food; FAR_MINOR where that is not known. */
  private readonly minorPerG: Float64Array;
  private readonly stepsPerG: Float64Array;
  /** What covers of at least so many steps cost, from `food * STEPS` on. */
  private readonly coverMinor: Float64Array;

  constructor(problem: MenuProblem, foods: readonly FoodSources[]) {
    const count = foods.length;
    this.stockG = new Float64Array(count);
    for (const { food, massG } of problem.lots) this.stockG[food] = (this.stockG[food] as number) + massG;
    this.credit = Float64Array.from(problem.foods, ({ creditMinorPerG }) => creditMinorPerG);
    this.minorPerG = Float64Array.from(foods, (sources, f) => leastPerG(problem.foods[f] as MenuFood, sources));
    this.stepsPerG = Float64Array.from(foods, ({ reachG }) => (reachG > 0 ? STEPS / (REACH * reachG) : 0));
    this.coverMinor = new Float64Array(count * STEPS);
    foods.forEach(({ anyTable, leastMinorPerG }, food) => {
      if (leastMinorPerG === Number.POSITIVE_INFINITY) return;
      for (let step = 0; step < STEPS; step++)
        this.coverMinor[food * STEPS + step] = leastOf(anyTable, step / (this.stepsPerG[food] as number));
    });
  }

  /** Minor units for `totalG` (g) of a food, with `missingMinor` for each making that cannot be had; negative where nothing is known. */
  of(food: number, totalG: number, missingMinor: number): number {
    const perG = this.minorPerG[food] as number;
    if (perG <= 0) return perG;
    const beyondG = totalG - (this.stockG[food] as number) - BEYOND_G;
    if (beyondG <= 0) return 0;
    const step = Math.floor(beyondG * (this.stepsPerG[food] as number));
    const boughtMinor = perG * beyondG;
    if (step >= STEPS) return Math.min(missingMinor, boughtMinor);
    const coverMinor = (this.coverMinor[food * STEPS + step] as number) + (this.credit[food] as number) * beyondG;
    return Math.min(missingMinor, Math.max(boughtMinor, coverMinor));
  }
}

/** What the cheapest cover of a mass costs, weighed by what is left of it; -Infinity where that is not known. */
function leastOf(table: CoverTable | undefined, massG: number): number {
  const row = table === undefined ? -1 : findCover(table, massG);
  return table === undefined || row < 0 ? Number.NEGATIVE_INFINITY : (table.weighedMinor[row] as number);
}

/**
 * What each gram beyond the stock costs at least: its lowest price, as long as nothing that is left is worth more and
 * stock is worth no more before it is opened.
 */
function leastPerG(food: MenuFood, { leastMinorPerG }: FoodSources): number {
  const { creditMinorPerG, creditOpenedMinorPerG, wasteMinorPerG } = food;
  const isPlain =
    creditMinorPerG <= leastMinorPerG &&
    creditOpenedMinorPerG <= creditMinorPerG &&
    creditOpenedMinorPerG >= 0 &&
    wasteMinorPerG >= 0;
  return isPlain ? leastMinorPerG : FAR_MINOR;
}
