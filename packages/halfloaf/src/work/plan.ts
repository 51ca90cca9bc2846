/** An order of work as data, in minutes from the beginning; it says nothing about how good it is. */
export interface WorkPlan {
  /** Start of each step. */
  readonly starts: readonly number[];
  readonly serveMinutes: number;
  /** Starts of the washes of the one board, ascending. */
  readonly boardWashes: readonly number[];
  /** Kit washed up before a use: index of the use and start of the wash. */
  readonly kitWashes: readonly { readonly use: number; readonly startMinutes: number }[];
}

/** What a plan is judged by, in the order of importance. */
export interface WorkMeasures {
  readonly excessMinutes: number;
  readonly serveMinutes: number;
  readonly keeping: number;
  readonly turns: number;
}

/** A hold that could not be kept: the dish (or the wait, by index) and the minutes beyond it. */
export interface HoldExcess {
  readonly dish: number;
  /** Index of the wait between two steps; absent = the wait of the finished dish for the plate. */
  readonly wait?: number;
  readonly minutes: number;
}
