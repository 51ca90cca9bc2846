import type { LinearModel, LinearRow } from "halfloaf/menu/linear";

/** A column held between two bounds. */
export interface Hold {
  readonly column: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * What holding one column says of others. Of rows `x[a] - x[b] >= 0` the lesser column can't rise above the greater one: a dish
 * needs all its foods, so that none of those that use a food is left where the food is not bought, and where a dish is served
 * all its foods are. Told as bounds, such rows need not enter the model part by part.
 */
export class ImpliedHolds {
  private readonly lesser: (readonly number[])[] = [];
  private readonly greater: (readonly number[])[] = [];

  /** Columns by their position in the model; rows that say anything else are passed over. */
  constructor({ columns, rows }: LinearModel, lazyRows: readonly LinearRow[]) {
    const columnAt = new Map(columns.map(({ name }, at) => [name, at]));
    for (const { entries, lower } of [...rows, ...lazyRows]) {
      const [one, other] = entries;
      if (entries.length !== 2 || lower < 0 || one === undefined || other === undefined) continue;
      const [above, below] = one[1] > 0 ? [one, other] : [other, one];
      if (above[1] <= 0 || above[1] !== -below[1]) continue;
      const [a, b] = [columnAt.get(above[0]) as number, columnAt.get(below[0]) as number];
      this.lesser[a] = [...(this.lesser[a] ?? []), b];
      this.greater[b] = [...(this.greater[b] ?? []), a];
    }
  }

  /**
   * The hold and all that follow from it beside the bounds that columns have; undefined where they leave a column no value,
   * so that no point keeps them.
   */
  follow(hold: Hold, lower: Float64Array, upper: Float64Array): readonly Hold[] | undefined {
    const holds = new Map([[hold.column, hold]]);
    const waiting = [hold];
    const tighten = (column: number, least: number, most: number): void => {
      const now = holds.get(column) ?? { lower: lower[column] as number, upper: upper[column] as number };
      if (least <= now.lower && most >= now.upper) return;
      const tighter = { column, lower: Math.max(least, now.lower), upper: Math.min(most, now.upper) };
      holds.set(column, tighter);
      waiting.push(tighter);
    };
    for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
      if (one.lower > one.upper) return undefined;
      for (const column of this.lesser[one.column] ?? []) tighten(column, Number.NEGATIVE_INFINITY, one.upper);
      for (const column of this.greater[one.column] ?? []) tighten(column, one.lower, Number.POSITIVE_INFINITY);
    }
    return [...holds.values()];
  }
}
