/** The rule that a plan breaks. */
export type PlanFaultCode =
  /** A dish, sitting, trip, pack, lot, purchase, copy or batch that does not exist, or a number that is not whole. */
  | "index"
  /** A count of packs that is not a whole number from 1. */
  | "count"
  /** A mass taken that is not a number of grams above 0. */
  | "mass"
  /** Trips that do not ascend, each once. */
  | "trips-order"
  /** A batch without a sitting. */
  | "batch-empty"
  /** Sittings of a batch that do not ascend. */
  | "sittings-order"
  | "sitting-twice"
  | "sitting-unserved"
  /** A dish served where it is not among the dishes of the sitting. */
  | "dish-unfit"
  /** A dish that needs heat, cooked where there is none. */
  | "heat"
  /**
   * A batch that is not done within the minutes of the sitting it is cooked for, or batches cooked at once that are not
   * within the fewest of theirs; then the path names them all.
   */
  | "elapsed"
  /** A plate taken along that does not travel or is not eaten cold. */
  | "packed"
  /** A leftover that would have to be heated where that cannot be done. */
  | "leftover-cold"
  /** A leftover served after the batch has stopped keeping. */
  | "keeps"
  | "batch-size"
  /** A dish cooked more than once on a day. */
  | "cooked-twice"
  /** A purchase on a trip that is not made. */
  | "purchase-trip"
  /** A pack bought on a trip to another shop. */
  | "purchase-shop"
  /** A pack bought on a day on which it is not for sale. */
  | "purchase-day"
  | "pack-limit"
  | "making-short"
  | "making-over"
  /** More taken from a lot than it holds. */
  | "lot-overdrawn"
  /** A lot used before it is brought home. */
  | "lot-early"
  /** A lot used after its last day. */
  | "lot-late"
  | "must-use"
  | "budget"
  | "hands-on"
  | "energy"
  /** A hard bound on a component that does not hold. */
  | "bound"
  | "distinct"
  | "main"
  | "uses"
  /** A wish that must hold, met too rarely or too often. */
  | "wish"
  | "max-trips"
  | "carry"
  | "fridge"
  | "freezer";

/**
 * One broken rule: where, what the rule asks for, what the plan does.
 *
 * `path` leads into the plan (`batches`, `trips`, `purchases`, `uses`) or, where no single part of the plan is at
 * fault, to what the problem asks (`sittings`, `lots`, `packs`, `dishes`, `profiles`, `limits`, `wishes`); a bought pack is
 * `["purchases", purchase, copy]`.
 */
export interface PlanFault {
  readonly code: PlanFaultCode;
  readonly path: readonly (string | number)[];
  readonly expected: string;
  readonly received: string;
}

/** Masses that differ by less are the same (g). */
export const MASS_SLACK_G = 1e-4;
const SHARE_SLACK = 1e-6;

/** True where a value is above its limit by more than the rounding of floating-point sums can explain. */
export function exceeds(value: number, limit: number): boolean {
  return value > limit + SHARE_SLACK * Math.max(1, Math.abs(limit));
}

/** True where a mass is above another by more than 0.0001 g and a millionth of it (g). */
export function exceedsMass(massG: number, limitG: number): boolean {
  return massG > limitG + Math.max(MASS_SLACK_G, SHARE_SLACK * limitG);
}

/** A number as faults show it: nine significant digits at most. */
export function showNumber(value: number): string {
  return String(Number(value.toPrecision(9)));
}
