/** One way to buy: a pack, or a bundle of an offer, with the cost by which covers are compared. */
export interface CoverItem {
  /** Index into `MenuProblem.packs`. */
  readonly pack: number;
  /** Packs in it: 1, or the count of an offer. */
  readonly count: number;
  readonly massG: number;
  readonly priceMinor: number;
  /** Price corrected for what surplus grams are worth; positive. */
  readonly weighedMinor: number;
}

/** Rows of the knapsack; above this the mass grid is coarsened, always on the safe side. */
const MOST_ROWS = 6000;

/**
 * The cheapest ways to buy at least x grams of a food from a set of items: an unbounded covering knapsack,
 * kept as its breakpoints. Breakpoint i covers every need up to `massG[i]` for `weighedMinor[i]` (ascending in both).
 */
export interface CoverTable {
  readonly massG: Float64Array;
  readonly weighedMinor: Float64Array;
  readonly priceMinor: Float64Array;
  readonly items: readonly CoverItem[];
  /** How many of each item breakpoint i takes: `counts[i * items.length + item]`. */
  readonly counts: Uint16Array;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** A whole number of grams that divides every mass, or a coarser one where that would need too many rows. */
function gridG(items: readonly CoverItem[], reachG: number): number {
  const exact = items.reduce((g, item) => greatestCommonDivisor(g, Math.max(1, Math.floor(item.massG))), 0);
  return Math.max(exact, Math.ceil(reachG / MOST_ROWS));
}

/**
 * Builds the table for needs up to `reachG` (0 or more) from one or more items.
 * `limitMassG`, where given, is the most that may be bought; larger needs have no cover.
 */
export function buildCoverTable(items: readonly CoverItem[], reachG: number, limitMassG = Infinity): CoverTable {
  const largest = Math.max(...items.map((item) => item.massG));
  const smallest = Math.min(...items.map((item) => item.massG));
  const top = Math.min(limitMassG, reachG + largest);
  const grid = Math.min(gridG(items, top), Math.max(1, Math.floor(smallest)));
  const rows = Math.floor(top / grid) + 1;
  const best = new Float64Array(rows).fill(Infinity);
  const took = new Int16Array(rows).fill(-1);
  best[0] = 0;
  const steps = items.map((item) => Math.floor(item.massG / grid));
  for (let row = 1; row < rows; row++) {
    for (let i = 0; i < items.length; i++) {
      const from = row - (steps[i] as number);
      if (from < 0) continue;
      const cost = (best[from] as number) + (items[i] as CoverItem).weighedMinor;
      if (cost < (best[row] as number)) {
        best[row] = cost;
        took[row] = i;
      }
    }
  }
  return keepBreakpoints(items, steps, best, took, grid);
}

function keepBreakpoints(
  items: readonly CoverItem[],
  steps: readonly number[],
  best: Float64Array,
  took: Int16Array,
  grid: number,
): CoverTable {
  const kept: number[] = [];
  let cheapest = Infinity;
  for (let row = best.length - 1; row > 0; row--) {
    if ((best[row] as number) < cheapest - 1e-9) {
      cheapest = best[row] as number;
      kept.push(row);
    }
  }
  kept.reverse();
  const n = kept.length;
  const table = {
    massG: new Float64Array(n),
    weighedMinor: new Float64Array(n),
    priceMinor: new Float64Array(n),
    items,
    counts: new Uint16Array(n * items.length),
  };
  for (let i = 0; i < n; i++) {
    let row = kept[i] as number;
    table.massG[i] = row * grid;
    table.weighedMinor[i] = best[row] as number;
    while (row > 0) {
      const item = took[row] as number;
      const at = i * items.length + item;
      table.counts[at] = (table.counts[at] as number) + 1;
      table.priceMinor[i] = (table.priceMinor[i] as number) + (items[item] as CoverItem).priceMinor;
      row -= steps[item] as number;
    }
  }
  return table;
}

/** The first breakpoint that covers `needG`, or -1 where the table does not reach so far. */
export function findCover(table: CoverTable, needG: number): number {
  const { massG } = table;
  let low = 0;
  let high = massG.length;
  const need = needG - 1e-6;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((massG[middle] as number) < need) low = middle + 1;
    else high = middle;
  }
  return low < massG.length ? low : -1;
}
