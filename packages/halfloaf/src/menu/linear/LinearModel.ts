/** One unknown of a linear model; bounds may be infinite. */
export interface LinearColumn {
  /** Unique among the columns of its model. */
  readonly name: string;
  /** What one unit of it adds to the objective. */
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  /** True where only whole values are allowed; absent means any value. */
  readonly integer?: boolean;
}

/** One limit of a linear model: `lower <= sum of coefficient x column <= upper`; bounds may be infinite. */
export interface LinearRow {
  /** Unique among the rows of its model. */
  readonly name: string;
  readonly lower: number;
  readonly upper: number;
  /** Pairs of column name and coefficient; a column stands at most once in a row. */
  readonly entries: readonly (readonly [column: string, coefficient: number])[];
}

/** A linear or mixed-integer model as plain data: minimise the cost of the columns within bounds and rows. */
export interface LinearModel {
  readonly sense: "min";
  readonly columns: readonly LinearColumn[];
  readonly rows: readonly LinearRow[];
}

/**
 * What a solver answers to a LinearModel.
 *
 * `values` and `rowDuals` are keyed by column and row name. A row dual is the change of the objective for one
 * unit more of the row's binding bound (zero where the row does not bind); a model with integer columns has no
 * duals, so the key is absent. `failed` is for a faulty model, a solver's limit or its breakdown: nothing is
 * known then about the model's optimum.
 */
export type LinearOutcome =
  | {
      readonly status: "optimal";
      readonly objective: number;
      readonly values: ReadonlyMap<string, number>;
      readonly rowDuals?: ReadonlyMap<string, number>;
    }
  | { readonly status: "impossible" }
  | { readonly status: "unbounded" }
  | { readonly status: "failed"; readonly reason: string };

/** Solves a LinearModel; the library calls it and never knows which solver stands behind. */
export type SolveLinear = (model: LinearModel) => Promise<LinearOutcome>;
