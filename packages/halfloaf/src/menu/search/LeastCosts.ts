import type { MenuFood, MenuLot, MenuProblem } from "../problem.ts";
import { findCover } from "./CoverTable.ts";
import { creditOfOpened, type FoodSources } from "./Sources.ts";

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
  /** What each gram beyond the stock costs at least, by food; FAR_MINOR where that is not known. */
  private readonly minorPerG: Float64Array;
  /** What each gram of the stock that is used would else be worth at the end, by food. */
  private readonly usedMinorPerG: Float64Array;
  /** What the stock that goes off before the end is worth, used or not, by food. */
  private readonly lostMinor: Float64Array;
  private readonly stepsPerG: Float64Array;
  /** What covers of at least so many steps cost, less what is left of them, from `food * STEPS` on. */
  private readonly coverMinor: Float64Array;

  constructor(problem: MenuProblem, foods: readonly FoodSources[]) {
    const count = foods.length;
    this.stockG = new Float64Array(count);
    this.lostMinor = new Float64Array(count);
    for (const lot of problem.lots) {
      const { food, massG } = lot;
      this.stockG[food] = (this.stockG[food] as number) + massG;
      this.lostMinor[food] = (this.lostMinor[food] as number) + massG * lostPerG(problem, lot, foods);
    }
    this.minorPerG = Float64Array.from(foods, (sources, f) => leastPerG(problem.foods[f] as MenuFood, sources));
    this.usedMinorPerG = Float64Array.from(foods, ({ lasting, leftMinorPerG }) => (lasting ? leftMinorPerG : 0));
    this.stepsPerG = Float64Array.from(foods, ({ reachG }) => (reachG > 0 ? STEPS / (REACH * reachG) : 0));
    this.coverMinor = new Float64Array(count * STEPS);
    foods.forEach((sources, food) => {
      if (sources.leastMinorPerG === Number.POSITIVE_INFINITY) return;
      for (let step = 0; step < STEPS; step++)
        this.coverMinor[food * STEPS + step] = leastOf(sources, step / (this.stepsPerG[food] as number));
    });
  }

  /** Minor units for `totalG` (g) of a food, with `missingMinor` for each making that cannot be had; negative where nothing is known. */
  of(food: number, totalG: number, missingMinor: number): number {
    const perG = this.minorPerG[food] as number;
    if (perG <= 0) return perG;
    const stockG = this.stockG[food] as number;
    const beyondG = totalG - stockG - BEYOND_G;
    const usedMinor = this.usedMinorPerG[food] as number;
    const lostMinor = this.lostMinor[food] as number;
    if (beyondG <= 0) return lostMinor + usedMinor * totalG;
    const step = Math.floor(beyondG * (this.stepsPerG[food] as number));
    const boughtMinor = step < STEPS ? (this.coverMinor[food * STEPS + step] as number) : perG * beyondG;
    return lostMinor + usedMinor * stockG + Math.min(missingMinor, boughtMinor);
  }
}

/** What the cheapest cover of a mass costs, less what is left of it: by whole packs where they are known exactly, else by the gram. */
function leastOf({ anyTable, leastMinorPerG, leftMinorPerG }: FoodSources, massG: number): number {
  const byGram = leastMinorPerG * massG;
  const row = anyTable === undefined ? -1 : findCover(anyTable, massG);
  if (anyTable === undefined || row < 0) return byGram;
  return Math.max(byGram, (anyTable.weighedMinor[row] as number) + leftMinorPerG * massG);
}

/** What a gram of stock was worth that goes off before the last day, whether it is used by then or not; else 0. */
function lostPerG(problem: MenuProblem, { food, lastDay, opened }: MenuLot, foods: readonly FoodSources[]): number {
  if (foods[food]?.lasting || lastDay >= problem.days - 1) return 0;
  return opened ? creditOfOpened(problem, food) : (problem.foods[food] as MenuFood).creditMinorPerG;
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
