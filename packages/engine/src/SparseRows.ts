import type { LinearRow } from "halfloaf/menu/linear";

/** Rows of a model as arrays, in the order in which the solver has them. */
export class SparseRows {
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  private readonly indices: Int32Array[] = [];
  private readonly values: Float64Array[] = [];

  get count(): number {
    return this.lower.length;
  }

  push({ lower, upper, entries }: LinearRow, columnAt: ReadonlyMap<string, number>): void {
    this.lower.push(lower);
    this.upper.push(upper);
    this.indices.push(Int32Array.from(entries, ([column]) => columnAt.get(column) as number));
    this.values.push(Float64Array.from(entries, ([, value]) => value));
  }

  remove(rows: ReadonlySet<number>): void {
    for (const list of [this.lower, this.upper, this.indices, this.values] as unknown[][]) {
      const kept = list.filter((_, row) => !rows.has(row));
      list.length = 0;
      for (const item of kept) list.push(item);
    }
  }

  /** target -= price x row */
  subtract(row: number, price: number, target: Float64Array): void {
    const at = this.indices[row] as Int32Array;
    const value = this.values[row] as Float64Array;
    for (let i = 0; i < at.length; i++)
      target[at[i] as number] = (target[at[i] as number] as number) - price * (value[i] as number);
  }

  /** How far a point breaks the row, as a distance; 0 or less where it holds. */
  violation(row: number, point: ArrayLike<number>): number {
    const at = this.indices[row] as Int32Array;
    const value = this.values[row] as Float64Array;
    let activity = 0;
    let norm = 0;
    for (let i = 0; i < at.length; i++) {
      const coefficient = value[i] as number;
      activity += coefficient * (point[at[i] as number] as number);
      norm += coefficient * coefficient;
    }
    return Math.max((this.lower[row] as number) - activity, activity - (this.upper[row] as number)) / Math.sqrt(norm);
  }

  toMatrix(from: number, numCols: number) {
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    for (let row = from; row < this.count; row++) {
      for (const at of this.indices[row] as Int32Array) indices.push(at);
      for (const value of this.values[row] as Float64Array) values.push(value);
      starts.push(indices.length);
    }
    const matrix = {
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    };
    return { format: "csr" as const, numRows: this.count - from, numCols, ...matrix };
  }
}
