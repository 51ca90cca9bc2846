/**
 * What has happened to a step; minutes count from the beginning of the cooking, steps by the indices of the problem. A
 * step that is begun and not done is still going on; `leftMinutes` says how long yet, absent = as planned.
 */
export interface StepHappened {
  readonly kind: "step";
  readonly step: number;
  readonly begunMinutes: number;
  readonly doneMinutes?: number;
  readonly leftMinutes?: number;
}

/** The board, the knife and the hands were washed. */
export interface BoardWashed {
  readonly kind: "board-wash";
  readonly startMinutes: number;
}

/** A vessel was washed for a use, by the index of the use. */
export interface KitWashed {
  readonly kind: "kit-wash";
  readonly use: number;
  readonly startMinutes: number;
}

export type Happening = StepHappened | BoardWashed | KitWashed;
