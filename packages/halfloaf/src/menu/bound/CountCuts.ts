import type { LinearRow } from "../linear/LinearModel.ts";
import { familyOf, type MenuDish } from "../problem.ts";
import type { SittingKind } from "./groupSittings.ts";
import type { ViolatedCut } from "./LevelCuts.ts";
import type { FoodMeasure } from "./listMeasures.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/** Servings of which no plan has more than `most` together. */
interface ServingGroup {
  readonly columns: readonly string[];
  readonly most: number;
}

/** Servings of a group that use a food, the largest use first. */
interface GroupUse {
  readonly most: number;
  readonly uses: readonly { readonly column: string; readonly massG: number }[];
}

/** A straight line under the costs of 0, 1, ... servings. */
interface Line {
  readonly slope: number;
  readonly base: number;
}

interface FoundCut {
  readonly violation: number;
  readonly columns: readonly string[];
  readonly line: Line;
  readonly scale: number;
}

const LEAST_VIOLATION = 1e-3;
/** Cuts taken of a food and measure at one point. */
const MOST_EACH = 4;
/** How much of a line is taken back for the rounding of sums. */
const SAFE = 1e-7;

/**
 * Cuts by counts of servings. Of a group of servings (those of one kind of sitting, of one family of dishes, of one main
 * ingredient, all of them) no plan has more than U. If each of its servings S takes `least use` grams of a food or more,
 * j of them cost at least phi(j x least use), with phi the least cost of units that hold so much. Every straight line
 * below the points (j, phi(j x least use)), j = 0 .. U, is a cut:
 *
 *     sum of cost n[f,i] >= slope (sum over S of x[r,c]) + base
 *
 * and likewise for z[f], which is 1 from the first serving on that what is given cannot feed. They say what counts of
 * single dishes do not: a food bought for a tenth is there for a tenth of the sittings only, however many dishes share it.
 */
export class CountCuts {
  private readonly measures: readonly FoodMeasure[];
  private readonly givenG: readonly number[];
  private readonly useOf: ReadonlyMap<number, readonly GroupUse[]>;
  private made = 0;

  constructor(facts: WeeklyFacts, measures: readonly FoodMeasure[]) {
    this.measures = measures;
    this.givenG = facts.supplies.map((supplies) =>
      supplies.reduce((sum, { given, massG }) => (given ? sum + massG : sum), 0),
    );
    const groups = listGroups(facts);
    const groupsOf = new Map<string, number[]>();
    groups.forEach(({ columns }, g) => {
      for (const column of columns) groupsOf.set(column, [...(groupsOf.get(column) ?? []), g]);
    });
    this.useOf = new Map(
      [...new Set(measures.map(({ food }) => food))].map((food) => {
        const byGroup = new Map<number, { column: string; massG: number }[]>();
        for (const { dish, massG } of facts.users[food] ?? [])
          for (const { column, portions } of facts.counts[dish] ?? [])
            for (const g of groupsOf.get(column) ?? [])
              byGroup.set(g, [...(byGroup.get(g) ?? []), { column, massG: massG * portions }]);
        return [
          food,
          [...byGroup].flatMap(([g, uses]): GroupUse[] =>
            uses.length < 2
              ? []
              : [{ most: (groups[g] as ServingGroup).most, uses: uses.sort((a, b) => b.massG - a.massG) }],
          ),
        ];
      }),
    );
  }

  /** Cuts that the point breaks; a few a food and measure. */
  separate(point: (column: string) => number): ViolatedCut[] {
    return this.measures.flatMap((measure) => {
      const { food, name, paid, least } = measure;
      const paying = paid.reduce((sum, [column, cost]) => sum + cost * point(column), 0);
      const ofCost = this.search(food, point, paying, least).map((cut) => this.toRow(`${name} ${food}`, paid, cut));
      if (name !== "c") return ofCost;
      const givenG = (this.givenG[food] as number) + 0.01;
      const isBought = (needG: number): number => (needG * (1 - 2e-6) > givenG ? 1 : 0);
      const any = [[`z ${food}`, 1]] as const;
      const ofAny = this.search(food, point, point(`z ${food}`), isBought).map((cut) =>
        this.toRow(`z ${food}`, any, cut),
      );
      return [...ofCost, ...ofAny];
    });
  }

  private search(
    food: number,
    point: (column: string) => number,
    paying: number,
    least: (needG: number) => number,
  ): FoundCut[] {
    const found: FoundCut[] = [];
    for (const { most, uses } of this.useOf.get(food) ?? []) {
      let servings = 0;
      let best: FoundCut | undefined;
      for (let i = 0; i < uses.length; i++) {
        const { column, massG } = uses[i] as GroupUse["uses"][number];
        const value = point(column);
        servings += value;
        if (value < 1e-7 || servings < 1e-4) continue;
        const costs = listCosts(least, massG, most);
        const line = lineBelow(costs, Math.min(servings, costs.length - 1));
        const scale = Math.max(1e-3, costs[costs.length - 1] as number);
        const violation = (line.slope * servings + line.base - paying) / scale;
        if (violation < LEAST_VIOLATION || violation <= (best?.violation ?? 0)) continue;
        best = { violation, columns: uses.slice(0, i + 1).map((use) => use.column), line, scale };
      }
      if (best !== undefined) found.push(best);
    }
    return found.sort((a, b) => b.violation - a.violation).slice(0, MOST_EACH);
  }

  private toRow(
    name: string,
    paid: readonly (readonly [string, number])[],
    { violation, columns, line, scale }: FoundCut,
  ): ViolatedCut {
    const row: LinearRow = {
      name: `count ${name} ${this.made++}`,
      lower: (line.base - SAFE * Math.max(1, Math.abs(line.base))) / scale,
      upper: Number.POSITIVE_INFINITY,
      entries: [
        ...paid.filter(([, cost]) => cost > 0).map(([column, cost]) => [column, cost / scale] as const),
        ...columns.map((column) => [column, -line.slope / scale] as const),
      ],
    };
    return { violation, row };
  }
}

/** Costs of 0, 1, ... servings of so many grams each, as far as any units reach. */
function listCosts(least: (needG: number) => number, massG: number, most: number): number[] {
  const costs = [0];
  for (let j = 1; j <= most; j++) {
    const cost = least(j * massG);
    if (!Number.isFinite(cost)) break;
    costs.push(cost);
  }
  return costs;
}

/** The highest line at `at` that lies nowhere above the points (j, costs[j]). */
function lineBelow(costs: readonly number[], at: number): Line {
  const hull: number[] = [];
  const slope = (a: number, b: number): number => ((costs[b] as number) - (costs[a] as number)) / (b - a);
  costs.forEach((_, j) => {
    while (hull.length > 1 && slope(hull.at(-2) as number, hull.at(-1) as number) >= slope(hull.at(-1) as number, j))
      hull.pop();
    hull.push(j);
  });
  const right = hull.findIndex((j) => j >= at);
  const [from, to] = right > 0 ? [hull[right - 1] as number, hull[right] as number] : [0, hull[1] ?? 0];
  if (from === to) return { slope: 0, base: 0 };
  const rise = slope(from, to);
  return { slope: rise, base: (costs[from] as number) - rise * from };
}

/** Groups of servings with a common limit that every plan keeps. */
function listGroups({ problem, counts, kinds }: WeeklyFacts): ServingGroup[] {
  const all = counts.flat();
  const columnsOf = (keeps: (count: (typeof all)[number]) => boolean): string[] =>
    all.filter(keeps).map(({ column }) => column);
  const families = new Map<number, string[]>();
  const mains = new Map<number, string[]>();
  for (const { dish, kind, column } of all) {
    const family = familyOf(problem, dish);
    families.set(family, [...(families.get(family) ?? []), column]);
    const { main } = problem.dishes[dish] as MenuDish;
    if ((kinds[kind] as SittingKind).variety) mains.set(main, [...(mains.get(main) ?? []), column]);
  }
  return [
    { columns: columnsOf(() => true), most: problem.sittings.length },
    ...kinds.map(({ sittings }, c) => ({ columns: columnsOf(({ kind }) => kind === c), most: sittings.length })),
    ...[...families].map(([family, columns]) => ({
      columns,
      most: Math.min(problem.sittings.length, Math.floor((problem.dishes[family] as MenuDish).maxUses)),
    })),
    ...[...mains].map(([, columns]) => ({ columns, most: Math.min(problem.sittings.length, problem.limits.mainMax) })),
  ];
}
