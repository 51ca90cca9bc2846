import type { LinearRow } from "../linear/LinearModel.ts";
import type { ViolatedCut } from "./LevelCuts.ts";
import type { FoodMeasure } from "./listMeasures.ts";
import { listOptions, NO_SHARE } from "./listOptions.ts";
import { PatternMix } from "./PatternMix.ts";
import { type FoodBlock, MASS_STEPS, PatternTable } from "./PatternTable.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/** Patterns brought for one cut, and columns of a point that it reckons with; dishes beyond are left out, which only weakens it. */
const MOST_ROUNDS = 50;
const MOST_COLUMNS = 40;
/** A cut is taken once it reaches so much of what the patterns brought leave open. */
const GOOD_SHARE = 0.7;
/** Least violation, and how much of a cut is taken back for the rounding of sums, as shares of the dearest pattern. */
const LEAST_VIOLATION = 5e-3;
const SAFE = 1e-7;

/**
 * Cuts from whole patterns of the use of one food. A pattern gives each dish a whole number of servings; it costs the cheapest
 * whole packs that hold what it needs. Every plan has one pattern of each food, so that no mix of patterns whose servings
 * come to those of the point may cost more than the point pays for units. Prices of that mix are a cut:
 *
 *     sum of cost n[f,i] >= sum of prices l[r,k] + sum of prices x[r,c] + base
 *
 * where `base` is the least, over all patterns, of cost less prices. The mix is found by bringing the pattern that helps
 * most until none does, each found by a table over mass: column generation with packs in whole numbers as its subproblem.
 *
 * **Source**: Dantzig and Wolfe, Decomposition principle for linear programs, Operations Research 8 (1960); cuts from
 * its subproblem after Boyd, Fenchel cutting planes for integer programs, Operations Research 42 (1994).
 */
export class HullCuts {
  private readonly facts: WeeklyFacts;
  private readonly measures: readonly FoodMeasure[];
  /** For each dish the most standard portions in 1, 2, ... servings. */
  private readonly mostPortions: readonly (readonly number[])[];
  private made = 0;

  constructor(facts: WeeklyFacts, measures: readonly FoodMeasure[]) {
    this.facts = facts;
    this.measures = measures;
    this.mostPortions = facts.counts.map((counts) => {
      const each = counts.flatMap(({ portions, most }) => Array<number>(most).fill(portions)).sort((a, b) => b - a);
      let sum = 0;
      return each.map((portions) => {
        sum += portions;
        return sum;
      });
    });
  }

  /** Cuts that the point breaks; at most one a food and measure. */
  separate(point: (column: string) => number): ViolatedCut[] {
    return this.measures.flatMap((measure) => {
      let paying = 0;
      for (const [column, cost] of measure.paid) paying += cost * point(column);
      if (this.costAlone(measure, point) <= paying) return [];
      const block = this.gather(measure, point);
      return block === undefined ? [] : this.separateBlock(measure, block, paying);
    });
  }

  /** What the point's servings would cost if no two dishes shared units: where that is paid, no cut is looked for. */
  private costAlone({ food, least }: FoodMeasure, point: (column: string) => number): number {
    let sum = 0;
    for (const { dish, massG } of this.facts.users[food] ?? []) {
      const columns = this.facts.levels[dish] as readonly string[];
      for (let k = 0; k < columns.length; k++) {
        const share = point(columns[k] as string);
        if (share > NO_SHARE) sum += share * least(massG * (this.mostPortions[dish]?.[k] as number));
      }
    }
    return sum;
  }

  private gather({ food, least }: FoodMeasure, point: (column: string) => number): FoodBlock | undefined {
    const columns: string[] = [];
    const place = (column: string): number => columns.push(column) - 1;
    const dishes = (this.facts.users[food] ?? []).flatMap((user) => {
      const isServed = this.facts.levels[user.dish]?.some((column) => point(column) > NO_SHARE);
      if (!isServed || columns.length > MOST_COLUMNS) return [];
      return [listOptions(this.facts, user, point, place)];
    });
    const largest = dishes.reduce((sum, options) => sum + Math.max(0, ...options.map(({ massG }) => massG)), 0);
    if (largest <= 0) return undefined;
    const stepG = Math.min(largest, this.facts.reachG[food] as number) / MASS_STEPS;
    const costs = new Float64Array(MASS_STEPS + 1);
    for (let step = 0; step <= MASS_STEPS; step++) costs[step] = least(step * stepG);
    return { columns, target: Float64Array.from(columns, point), dishes, costs, stepG };
  }

  private separateBlock(measure: FoodMeasure, block: FoodBlock, paying: number): ViolatedCut[] {
    let dearest = 0;
    for (const cost of block.costs) if (cost > dearest && cost < Number.POSITIVE_INFINITY) dearest = cost;
    if (dearest <= 0) return [];
    const mix = new PatternMix(block.target, dearest);
    const table = new PatternTable(block);
    for (const { raised, cost } of table.listShared()) if (Number.isFinite(cost)) mix.bring(raised, cost);
    let best: { reached: number; prices: Float64Array; base: number } | undefined;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      if (!mix.settle() || mix.value - paying < LEAST_VIOLATION * dearest) return [];
      const { raised, cost, rest } = table.findBest(mix.prices);
      const reached = mix.value - mix.base + rest;
      if (best === undefined || reached > best.reached) best = { reached, prices: mix.prices.slice(), base: rest };
      if (reached - paying >= GOOD_SHARE * (mix.value - paying)) break;
      if (!mix.bring(raised, cost)) break;
    }
    if (best === undefined || best.reached - paying < LEAST_VIOLATION * dearest) return [];
    const row = this.toRow(measure, block, best.prices, best.base, dearest);
    return [{ violation: (best.reached - paying) / dearest, row }];
  }

  private toRow(
    { food, name, paid }: FoodMeasure,
    { columns }: FoodBlock,
    prices: Float64Array,
    base: number,
    scale: number,
  ): LinearRow {
    return {
      name: `hull ${name} ${food} ${this.made++}`,
      lower: (base - SAFE * scale) / scale,
      upper: Number.POSITIVE_INFINITY,
      entries: [
        ...paid.filter(([, cost]) => cost > 0).map(([column, cost]) => [column, cost / scale] as const),
        ...columns.flatMap((column, j): [string, number][] => {
          const price = prices[j] as number;
          return price > 0 ? [[column, -price / scale]] : [];
        }),
      ],
    };
  }
}
