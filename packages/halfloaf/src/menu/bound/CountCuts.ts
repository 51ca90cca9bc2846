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
  readonly uses: readonly ServingUse[];
}

interface ServingUse {
  readonly column: string;
  readonly massG: number;
  /** Lines below the costs of so many servings of that mass, as far as they were asked for. */
  readonly lines: Map<Cost, CostLines>;
}

type Cost = (needG: number) => number;

/** The corners of the lower hull of the costs of 0, 1, ... servings. */
interface CostLines {
  readonly corners: readonly number[];
  readonly costs: readonly number[];
  /** Cost of the most servings that any units reach, and their number. */
  readonly topMinor: number;
  readonly reach: number;
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
  /** For each food whether so many grams take more than is given, as a cost of 0 or 1. */
  private readonly isBought: readonly Cost[];
  private readonly useOf: ReadonlyMap<number, readonly GroupUse[]>;
  private made = 0;

  constructor(facts: WeeklyFacts, measures: readonly FoodMeasure[]) {
    this.measures = measures;
    this.isBought = facts.supplies.map((supplies): Cost => {
      const givenG = supplies.reduce((sum, { given, massG }) => (given ? sum + massG : sum), 0) + 0.01;
      return (needG) => (needG * (1 - 2e-6) > givenG ? 1 : 0);
    });
    const groups = listGroups(facts);
    const groupsOf = new Map<string, number[]>();
    groups.forEach(({ columns }, g) => {
      for (const column of columns) groupsOf.set(column, [...(groupsOf.get(column) ?? []), g]);
    });
    this.useOf = new Map(
      [...new Set(measures.map(({ food }) => food))].map((food) => {
        const byGroup = new Map<number, ServingUse[]>();
        for (const { dish, massG } of facts.users[food] ?? [])
          for (const { column, portions } of facts.counts[dish] ?? [])
            for (const g of groupsOf.get(column) ?? [])
              byGroup.set(g, [...(byGroup.get(g) ?? []), { column, massG: massG * portions, lines: new Map() }]);
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
    return this.measures.flatMap(({ food, name, paid, least }) => {
      let paying = 0;
      for (const [column, cost] of paid) paying += cost * point(column);
      const ofCost = this.search(food, point, paying, least).map((cut) => this.toRow(`${name} ${food}`, paid, cut));
      if (name !== "c") return ofCost;
      const any = [[`z ${food}`, 1]] as const;
      const ofAny = this.search(food, point, point(`z ${food}`), this.isBought[food] as Cost).map((cut) =>
        this.toRow(`z ${food}`, any, cut),
      );
      return [...ofCost, ...ofAny];
    });
  }

  private search(food: number, point: (column: string) => number, paying: number, least: Cost): FoundCut[] {
    const found: FoundCut[] = [];
    for (const { most, uses } of this.useOf.get(food) ?? []) {
      let servings = 0;
      let best: Omit<FoundCut, "columns"> | undefined;
      let last = 0;
      for (let i = 0; i < uses.length; i++) {
        const use = uses[i] as ServingUse;
        const value = point(use.column);
        servings += value;
        if (value < 1e-7 || servings < 1e-4) continue;
        const lines = linesOf(use, least, most);
        const line = lineBelow(lines, Math.min(servings, lines.reach));
        const scale = Math.max(1e-3, lines.topMinor);
        const violation = (line.slope * servings + line.base - paying) / scale;
        if (violation < LEAST_VIOLATION || violation <= (best?.violation ?? 0)) continue;
        best = { violation, line, scale };
        last = i;
      }
      if (best !== undefined) found.push({ ...best, columns: uses.slice(0, last + 1).map(({ column }) => column) });
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

/** The costs of 0, 1, ... servings of a use, as far as any units reach, from below; reckoned once. */
function linesOf({ massG, lines }: ServingUse, least: Cost, most: number): CostLines {
  const known = lines.get(least);
  if (known !== undefined) return known;
  const costs = [0];
  for (let j = 1; j <= most; j++) {
    const cost = least(j * massG);
    if (!Number.isFinite(cost)) break;
    costs.push(cost);
  }
  const reach = costs.length - 1;
  const found = { corners: findCorners(costs), costs, topMinor: costs[reach] as number, reach };
  lines.set(least, found);
  return found;
}

function slopeOf(costs: readonly number[], a: number, b: number): number {
  return ((costs[b] as number) - (costs[a] as number)) / (b - a);
}

function findCorners(costs: readonly number[]): number[] {
  const corners: number[] = [];
  for (let j = 0; j < costs.length; j++) {
    while (
      corners.length > 1 &&
      slopeOf(costs, corners.at(-2) as number, corners.at(-1) as number) >= slopeOf(costs, corners.at(-1) as number, j)
    )
      corners.pop();
    corners.push(j);
  }
  return corners;
}

/** The highest line at `at` that lies nowhere above the points (j, costs[j]). */
function lineBelow({ corners, costs }: CostLines, at: number): Line {
  let right = 0;
  while (right < corners.length && (corners[right] as number) < at) right++;
  const isInside = right > 0 && right < corners.length;
  const [from, to] = isInside ? [corners[right - 1] as number, corners[right] as number] : [0, corners[1] ?? 0];
  if (from === to) return { slope: 0, base: 0 };
  const rise = slopeOf(costs, from, to);
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
