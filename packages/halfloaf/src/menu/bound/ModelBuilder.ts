import type { LinearColumn, LinearModel, LinearRow } from "../linear/LinearModel.ts";

type Entries = (readonly [column: string, coefficient: number])[];

/** Gathers columns and rows; coefficients of one column in one row add up, zeros are left out. */
export class ModelBuilder {
  private readonly columns: LinearColumn[] = [];
  private readonly costs = new Map<string, number>();
  private readonly rows: LinearRow[] = [];
  readonly lazyRows: LinearRow[] = [];

  column(name: string, cost: number, upper: number, integer = false, lower = 0): string {
    this.columns.push({ name, cost, lower, upper, ...(integer ? { integer } : {}) });
    return name;
  }

  /** Adds to the cost of a column stated before or later. */
  charge(name: string, cost: number): void {
    this.costs.set(name, (this.costs.get(name) ?? 0) + cost);
  }

  row(name: string, lower: number, upper: number, entries: Entries): void {
    const sums = new Map<string, number>();
    for (const [column, coefficient] of entries) sums.set(column, (sums.get(column) ?? 0) + coefficient);
    const kept = [...sums].filter(([, coefficient]) => coefficient !== 0);
    if (kept.length > 0 || lower > 0 || upper < 0) this.rows.push({ name, lower, upper, entries: kept });
  }

  atLeast(name: string, lower: number, entries: Entries): void {
    this.row(name, lower, Number.POSITIVE_INFINITY, entries);
  }

  atMost(name: string, upper: number, entries: Entries): void {
    this.row(name, Number.NEGATIVE_INFINITY, upper, entries);
  }

  /** A row that the others imply for whole numbers: a solver may do without it, but its bound is better with it. */
  lazy(name: string, lower: number, entries: Entries): void {
    this.lazyRows.push({ name, lower, upper: Number.POSITIVE_INFINITY, entries });
  }

  build(): LinearModel {
    const columns = this.columns.map((column) => ({
      ...column,
      cost: column.cost + (this.costs.get(column.name) ?? 0),
    }));
    return { sense: "min", columns, rows: this.rows };
  }
}
