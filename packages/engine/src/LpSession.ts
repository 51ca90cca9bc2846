import type { LinearModel, LinearRow } from "halfloaf/menu/linear";
import type { Highs, Model } from "highs";
import { SparseRows } from "./SparseRows.ts";

/** Where a simplex run stood: a status for each column and each row that was there. */
export interface LpBasis {
  readonly columns: Int8Array;
  readonly rows: Int8Array;
}

/** What a solve of the relaxation brought. */
export interface LpReport {
  /** `cut-off` where it was stopped early: the bound holds, the values mean little. */
  readonly status: "optimal" | "impossible" | "cut-off";
  /** No point of the model within the present bounds costs less; -Infinity where nothing is proven. */
  readonly bound: number;
  readonly values: Float64Array;
}

/** Where a solve may stop early. */
interface LpLimits {
  readonly mostIterations?: number;
  readonly enough?: number;
}

const BASIC = 1;
const DEVEX = 1;
/** How far above 0 a proof that there is no point must reach, its dearest price being 1. */
const LEAST_PROOF = 1e-7;
/** More than any point costs. */
const NO_COST = 1e30;
/** A price smaller than this is noise of the simplex method and is taken for 0. */
const NO_PRICE = 1e-9;

/**
 * The relaxation of a model to fractions, kept in the solver's memory while bounds change and rows come.
 *
 * Every bound is reckoned from the row prices alone, with all prices that the solver gets wrong set right: for any
 * prices u the least of `c x + u (b - A x)` over the bounds of the columns is a lower bound. So a solver's tolerance
 * cannot lift a bound above the truth. Columns need finite bounds for that.
 * **Source**: Neumaier and Shcherbina, Safe bounds in linear and mixed-integer linear programming, Mathematical
 * Programming 99 (2004).
 */
export class LpSession {
  readonly columnAt: ReadonlyMap<string, number>;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  iterations = 0;
  private isWarm = false;
  private readonly cost: Float64Array;
  private readonly rows: SparseRows;
  private readonly solver: Model;
  private readonly highs: Highs;
  private readonly reduced: Float64Array;
  private readonly free: Float64Array;

  constructor(highs: Highs, model: LinearModel) {
    this.highs = highs;
    this.columnAt = new Map(model.columns.map(({ name }, at) => [name, at]));
    this.cost = Float64Array.from(model.columns, ({ cost }) => cost);
    this.lower = Float64Array.from(model.columns, ({ lower }) => lower);
    this.upper = Float64Array.from(model.columns, ({ upper }) => upper);
    this.reduced = new Float64Array(this.cost.length);
    this.free = new Float64Array(this.cost.length);
    this.rows = new SparseRows();
    for (const row of model.rows) this.rows.push(row, this.columnAt);
    this.solver = highs.createModel({
      numCols: this.cost.length,
      numRows: this.rows.count,
      colCost: this.cost,
      colLower: this.lower.map((value) => this.clamp(value)),
      colUpper: this.upper.map((value) => this.clamp(value)),
      rowLower: this.rows.lower.map((value) => this.clamp(value)),
      rowUpper: this.rows.upper.map((value) => this.clamp(value)),
      matrix: this.rows.toMatrix(0, this.cost.length),
    });
    this.solver.options.set({ output_flag: false, solver: "simplex" });
  }

  private clamp(value: number): number {
    return Math.min(this.highs.infinity, Math.max(-this.highs.infinity, value));
  }

  get rowCount(): number {
    return this.rows.count;
  }

  /** Appends rows; the basis stays usable. */
  addRows(rows: readonly LinearRow[]): void {
    if (rows.length === 0) return;
    const from = this.rows.count;
    for (const row of rows) this.rows.push(row, this.columnAt);
    this.solver.addRows({
      lower: Float64Array.from(rows, ({ lower }) => this.clamp(lower)),
      upper: Float64Array.from(rows, ({ upper }) => this.clamp(upper)),
      matrix: this.rows.toMatrix(from, this.cost.length),
    });
  }

  setBounds(column: number, lower: number, upper: number): void {
    this.lower[column] = lower;
    this.upper[column] = upper;
    this.solver.changeColBounds(column, lower, upper);
  }

  /** Solves from the present basis; it may stop after `mostIterations`, and where no point can cost less than `enough`. */
  solve({ mostIterations = 2_147_483_647, enough = NO_COST }: LpLimits = {}): LpReport {
    this.solver.options.set({ simplex_iteration_limit: mostIterations, objective_bound: Math.min(enough, NO_COST) });
    this.solver.run();
    const status = this.solver.getModelStatus();
    this.iterations += Math.max(0, Number(this.solver.info.get("simplex_iteration_count")));
    const { modelStatus } = this.highs.constants;
    const { colValue, rowDual } = this.solver.getSolution();
    if (status === modelStatus.infeasible && (!this.isWarm || this.isRuledOut()))
      return { status: "impossible", bound: Number.POSITIVE_INFINITY, values: colValue };
    const bound = rowDual.length === this.rows.count ? this.reckonBound(rowDual) : Number.NEGATIVE_INFINITY;
    return { status: status === modelStatus.optimal ? "optimal" : "cut-off", bound, values: colValue };
  }

  /** From the first warm start on, presolve would only throw the basis away. */
  keepWarm(): void {
    this.isWarm = true;
    this.solver.options.set({ presolve: "off", simplex_dual_edge_weight_strategy: DEVEX });
  }

  readBasis(): LpBasis {
    const { colStatus, rowStatus } = this.solver.getBasis();
    return { columns: Int8Array.from(colStatus), rows: Int8Array.from(rowStatus) };
  }

  /** Restores a basis; rows that came since are basic. */
  useBasis({ columns, rows }: LpBasis): void {
    const rowStatus = new Int32Array(this.rows.count).fill(BASIC);
    rowStatus.set(rows);
    this.solver.setBasis({ colStatus: Int32Array.from(columns), rowStatus });
  }

  /** Takes rows out that do not bind, from `from` on, and tells which of those from there on stay. */
  dropLooseRows(from: number): boolean[] {
    const { columns, rows } = this.readBasis();
    const stays = Array.from(rows.subarray(from), (status) => status !== BASIC);
    const dropped = stays.flatMap((stay, i) => (stay ? [] : [from + i]));
    if (dropped.length === 0) return stays;
    this.solver.deleteRows({ kind: "set", indices: Int32Array.from(dropped) });
    this.rows.remove(new Set(dropped));
    this.useBasis({ columns, rows: rows.filter((status, row) => row < from || status !== BASIC) });
    return stays;
  }

  /**
   * Bounds that the points costing no more than `mostCost` keep, by the last solve's reduced costs: a column that must cost d
   * a unit off its bound is no further off it than what is open between `bound` and that cost allows.
   */
  listTighter(
    columns: readonly number[],
    bound: number,
    mostCost: number,
  ): { column: number; lower: number; upper: number }[] {
    const open = Math.max(0, mostCost - bound) * (1 + 1e-9) + 1e-6 * Math.max(1, Math.abs(mostCost));
    return columns.flatMap((column) => {
      const price = this.reduced[column] as number;
      const [lower, upper] = [this.lower[column] as number, this.upper[column] as number];
      const units = price === 0 ? Number.POSITIVE_INFINITY : Math.floor(open / Math.abs(price) + 1e-9);
      if (units >= upper - lower) return [];
      return [price > 0 ? { column, lower, upper: lower + units } : { column, lower: upper - units, upper }];
    });
  }

  /** Whether the solver's ray proves that the present bounds leave no point: at its prices even one that costs nothing costs more than 0. */
  private isRuledOut(): boolean {
    const ray = Float64Array.from(this.solver.getDualRay()?.values ?? []);
    const largest = ray.reduce((most, price) => Math.max(most, Math.abs(price)), 0);
    if (ray.length !== this.rows.count || largest === 0) return false;
    return (
      this.reckonBound(
        ray.map((price) => price / largest),
        this.free,
      ) > LEAST_PROOF
    );
  }

  private reckonBound(prices: ArrayLike<number>, cost = this.cost): number {
    const { reduced, rows } = this;
    reduced.set(cost);
    let bound = 0;
    for (let row = 0; row < rows.count; row++) {
      const price = prices[row] as number;
      if (Math.abs(price) < NO_PRICE) continue;
      const limit = (price > 0 ? rows.lower[row] : rows.upper[row]) as number;
      if (!Number.isFinite(limit)) continue;
      bound += price * limit;
      rows.subtract(row, price, reduced);
    }
    for (let column = 0; column < reduced.length; column++) {
      const price = reduced[column] as number;
      if (price !== 0) bound += price * ((price > 0 ? this.lower[column] : this.upper[column]) as number);
    }
    return Number.isNaN(bound) ? Number.NEGATIVE_INFINITY : bound;
  }

  dispose(): void {
    this.solver.dispose();
  }
}
