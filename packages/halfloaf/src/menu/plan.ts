/**
 * A plan as data: what is cooked where, what is bought on which trip, and which lot feeds which batch.
 * It says nothing about money; `menu/check` and the accounts compute that from it.
 */
export interface MenuPlan {
  readonly batches: readonly PlannedBatch[];
  /** Indices of `MenuProblem.trips` that are made, ascending. */
  readonly trips: readonly number[];
  readonly purchases: readonly Purchase[];
  readonly uses: readonly Use[];
}

/** One cooking of a dish: served at the first of its sittings, as a leftover at the others. */
export interface PlannedBatch {
  readonly dish: number;
  /** Indices of `MenuProblem.sittings`, ascending; each sitting belongs to one batch. */
  readonly sittings: readonly number[];
}

export interface Purchase {
  readonly trip: number;
  readonly pack: number;
  readonly count: number;
}

/**
 * Grams as purchased taken from one lot for one batch. A lot is one of `MenuProblem.lots`, or the
 * `copy`-th pack (from 0) of one of the plan's purchases.
 */
export interface Use {
  readonly lot: { readonly stock: number } | { readonly purchase: number; readonly copy: number };
  readonly batch: number;
  readonly massG: number;
}
