import type { LinearColumn } from "halfloaf/menu/linear";

/**
 * How much each column of a weekly model is worth splitting on, as long as no split tells: shops gone to, trips made, foods
 * bought and dishes served decide most; servings and packs follow. A food counts by the price of its cheapest unit beside
 * that of the middle food, for so much more is paid once a fraction of it becomes a whole. No unit; only ratios mean anything.
 */
export function guessWorths(columns: readonly LinearColumn[]): Float64Array {
  const cheapest = new Map<string, number>();
  for (const { name, cost } of columns) {
    const [kind, food] = name.split(" ");
    const bought = `z ${food}`;
    if (kind === "n" && cost > 0)
      cheapest.set(bought, Math.min(cost, cheapest.get(bought) ?? Number.POSITIVE_INFINITY));
  }
  const costs = [...cheapest.values()].sort((a, b) => a - b);
  const middle = costs[costs.length >> 1] ?? 1;
  return Float64Array.from(columns, ({ name }) => worthOf(name) * ((cheapest.get(name) ?? middle) / middle));
}

function worthOf(name: string): number {
  if (name.startsWith("ts")) return 400;
  if (name.startsWith("t")) return 200;
  if (name.startsWith("z")) return 100;
  if (name.startsWith("y")) return 60;
  return name.startsWith("l") ? 5 : 2;
}
