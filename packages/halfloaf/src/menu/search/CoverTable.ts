/** One way to buy: a pack, or a bundle of an offer, with the cost by which covers are compared. */
export interface CoverItem {
  /** Index into `MenuProblem.packs`. */
  readonly pack: number;
  /** Packs in it: 1, or the count of an offer. */
  readonly count: number;
  readonly massG: number;
  readonly priceMinor: number;
  /** Its price where prices come out high. */
  readonly highMinor: number;
  /** Price corrected for what its grams are worth where they are not needed. */
  readonly weighedMinor: number;
}

/** Rows of the knapsack; above this the mass grid is coarsened, always on the safe side. */
const MOST_ROWS = 6000;
/** An item counts with at least this when covers are compared, or no mass would ever be enough. */
const LEAST_MINOR = 0.01;

/**
 * The cheapest ways to buy at least x grams of a food from a set of items: an unbounded covering knapsack,
 * kept as its breakpoints. Breakpoint i brings home `massG[i]` (ascending) and is the cheapest for every need
 * above that of the one before; its costs stand in `weighedMinor[i]`, ascending too while no gram is worth more
 * than it costs, and `priceMinor[i]`,
 * and `highMinor[i]` is its price where prices come out high.
 */
export interface CoverTable {
  readonly massG: Float64Array;
  readonly weighedMinor: Float64Array;
  readonly priceMinor: Float64Array;
  readonly highMinor: Float64Array;
  readonly items: readonly CoverItem[];
  /** How many of each item breakpoint i takes: `counts[i * items.length + item]`. */
  readonly counts: Uint16Array;
  /** How many items breakpoint i takes in all. */
  readonly itemCount: Uint16Array;
  /** True where no mass was rounded, so that no way to buy is cheaper than the table says. */
  readonly isExact: boolean;
  /** The first breakpoint that brings home at least so many times `stepG`. */
  readonly firstRow: Uint16Array;
  readonly stepG: number;
}

/** Steps by which a breakpoint is looked up. */
const STEPS = 64;

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** A mass that divides every item's whole grams, or a coarser one where that would need too many rows. */
function gridG(items: readonly CoverItem[], topG: number): number {
  const smallest = Math.min(...items.map((item) => item.massG));
  if (smallest < 1) return smallest;
  const exact = items.reduce((g, item) => greatestCommonDivisor(g, Math.floor(item.massG)), 0);
  return Math.min(Math.max(exact, Math.ceil(topG / MOST_ROWS)), Math.floor(smallest));
}

/** Builds the table for needs up to `reachG` (0 or more) from one or more items. */
export function buildCoverTable(items: readonly CoverItem[], reachG: number): CoverTable {
  const top = reachG + Math.max(...items.map((item) => item.massG));
  const grid = gridG(items, top);
  const steps = items.map((item) => Math.floor(item.massG / grid));
  const isExact = items.every(({ massG }, i) => massG === (steps[i] as number) * grid);
  return solve(items, steps, Math.floor(top / grid), isExact);
}

/**
 * Builds the table for needs up to `reachG` from one pack, alone and as a bundle where there is an offer, of which
 * at most `limit` can be bought. Larger needs have no cover.
 */
export function buildLimitedTable(items: readonly CoverItem[], reachG: number, limit: number): CoverTable {
  const counts = items.map(({ count }) => count);
  const single = (items[0] as CoverItem).massG;
  return solve(items, counts, Math.min(limit, Math.ceil(reachG / single) + Math.max(...counts)), true);
}

/** Row r of the knapsack is bought from `steps` that add up to r; the row of an item is never above its mass. */
function solve(items: readonly CoverItem[], steps: readonly number[], top: number, isExact: boolean): CoverTable {
  const best = new Float64Array(top + 1).fill(Infinity);
  const took = new Int16Array(top + 1).fill(-1);
  const costs = items.map(({ weighedMinor }) => Math.max(LEAST_MINOR, weighedMinor));
  best[0] = 0;
  for (let row = 1; row <= top; row++) {
    for (let i = 0; i < items.length; i++) {
      const from = row - (steps[i] as number);
      if (from < 0) continue;
      const cost = (best[from] as number) + (costs[i] as number);
      if (cost < (best[row] as number)) {
        best[row] = cost;
        took[row] = i;
      }
    }
  }
  return { ...tabulate(items, keepBreakpoints(best), steps, took), isExact };
}

/** Rows that are cheaper than every row above them, ascending. */
function keepBreakpoints(best: Float64Array): number[] {
  const kept: number[] = [];
  let cheapest = Infinity;
  for (let row = best.length - 1; row > 0; row--) {
    if ((best[row] as number) >= cheapest - 1e-9) continue;
    cheapest = best[row] as number;
    kept.push(row);
  }
  return kept.reverse();
}

/** Reckons what each row brings home to the gram; a row that brings no more than a cheaper one is left out. */
function tabulate(
  items: readonly CoverItem[],
  rows: readonly number[],
  steps: readonly number[],
  took: Int16Array,
): Omit<CoverTable, "isExact"> {
  const counts = new Uint16Array(rows.length * items.length);
  const massG: number[] = [];
  const weighedMinor: number[] = [];
  const priceMinor: number[] = [];
  const highMinor: number[] = [];
  const itemCount: number[] = [];
  for (const row of rows) {
    const at = massG.length * items.length;
    let [mass, weighed, price, high, taken] = [0, 0, 0, 0, 0];
    counts.fill(0, at, at + items.length);
    for (let left = row; left > 0; taken++) {
      const i = took[left] as number;
      const item = items[i] as CoverItem;
      counts[at + i] = (counts[at + i] as number) + 1;
      mass += item.massG;
      weighed += item.weighedMinor;
      price += item.priceMinor;
      high += item.highMinor;
      left -= steps[i] as number;
    }
    if (massG.length > 0 && mass <= (massG[massG.length - 1] as number)) continue;
    massG.push(mass);
    weighedMinor.push(weighed);
    priceMinor.push(price);
    highMinor.push(high);
    itemCount.push(taken);
  }
  return {
    massG: Float64Array.from(massG),
    weighedMinor: Float64Array.from(weighedMinor),
    priceMinor: Float64Array.from(priceMinor),
    highMinor: Float64Array.from(highMinor),
    items,
    counts: counts.slice(0, massG.length * items.length),
    itemCount: Uint16Array.from(itemCount),
    ...indexRows(massG),
  };
}

function indexRows(massG: readonly number[]): Pick<CoverTable, "firstRow" | "stepG"> {
  const stepG = (massG[massG.length - 1] ?? 0) / STEPS;
  const firstRow = new Uint16Array(STEPS + 1);
  for (let step = 0, row = 0; step <= STEPS; step++) {
    while (row < massG.length && (massG[row] as number) < step * stepG) row++;
    firstRow[step] = row;
  }
  return { firstRow, stepG };
}

/** The first breakpoint that covers `needG`, or -1 where the table does not reach so far. */
export function findCover({ massG, firstRow, stepG }: CoverTable, needG: number): number {
  const rows = massG.length;
  const need = needG - 1e-6;
  if (rows === 0 || need > (massG[rows - 1] as number)) return -1;
  let row = need > 0 ? (firstRow[Math.floor(need / stepG)] as number) : 0;
  while ((massG[row] as number) < need) row++;
  return row;
}
