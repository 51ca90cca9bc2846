import type { Supply } from "./listSupplies.ts";

/** Rows of the table; a coarser grid rounds needs down and packs up, so that costs are never too high. */
const MOST_ROWS = 3000;
const SLACK_G = 0.01;

/**
 * The least cost of units that hold a mass: a covering knapsack with whole, limited units.
 *
 * Given units cost nothing. The function returned takes a need in g and gives minor units, Infinity where the units
 * cannot reach it; it never exceeds the true least cost for needs up to `reachG`. Beyond, it is that of `reachG`.
 */
export function coverCosts(
  supplies: readonly Supply[],
  costOf: (supply: Supply) => number,
  reachG: number,
): (needG: number) => number {
  const givenG = supplies.reduce((sum, supply) => sum + (supply.given ? supply.massG : 0), 0);
  const items = supplies.filter((supply) => !supply.given && supply.massG > 0);
  const top = Math.max(0, reachG - givenG);
  const grid = Math.max(1, top / MOST_ROWS);
  const rows = Math.floor(top / grid) + 1;
  const cost = new Float64Array(rows + 1).fill(Number.POSITIVE_INFINITY);
  cost[0] = 0;
  const limited = items.filter(({ most, massG }) => most * massG < top + massG);
  const free = items.filter((item) => !limited.includes(item));
  for (const item of free) addUnlimited(cost, stepOf(item, grid), Math.max(0, costOf(item)));
  for (const item of limited) addLimited(cost, stepOf(item, grid), Math.max(0, costOf(item)), item.most);
  return (needG) => {
    const need = needG * (1 - 2e-6) - givenG - SLACK_G;
    return need <= 0 ? 0 : (cost[Math.min(rows, Math.ceil(need / grid - 1e-9))] as number);
  };
}

function stepOf({ massG }: Supply, grid: number): number {
  return Math.max(1, Math.ceil(massG / grid));
}

/** Row i means "at least i steps". */
function addUnlimited(cost: Float64Array, step: number, price: number): void {
  for (let row = 1; row < cost.length; row++) {
    cost[row] = Math.min(cost[row] as number, (cost[Math.max(0, row - step)] as number) + price);
  }
}

function addLimited(cost: Float64Array, step: number, price: number, most: number): void {
  const before = cost.slice();
  for (let row = 1; row < cost.length; row++) {
    for (let n = 1; n <= most; n++) {
      const from = Math.max(0, row - n * step);
      cost[row] = Math.min(cost[row] as number, (before[from] as number) + n * price);
      if (from === 0) break;
    }
  }
}
