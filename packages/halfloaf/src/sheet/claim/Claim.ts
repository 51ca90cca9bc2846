import type { SittingKind } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Named } from "../day/DaySheet.ts";

/**
 * Something a sheet says of itself, true only where every figure it speaks of is below the bound: money in minor units, or
 * minutes.
 *
 * plate: each plate costs less; day: the plates of one eater's day together cost less; ready: each dish is on the table in
 * less, from the first step on, without what was begun hours before; hands-on: each takes less work; waste: less than this
 * is thrown away on each day.
 */
export interface Claim {
  readonly kind: "plate" | "day" | "ready" | "hands-on" | "waste";
  readonly below: number;
}

/** Kinds of claim that speak of money; the others speak of minutes. */
export const MONEY_CLAIMS: readonly Claim["kind"][] = ["plate", "day", "waste"];

/** A line of a sheet that makes a claim false. */
export interface BrokenClaim {
  readonly claim: Claim;
  /** What the line says. */
  readonly value: number;
  /** By how much it is too much; 0 where it is just the bound, which is not below it. */
  readonly over: number;
  readonly date?: CivilDate;
  readonly sitting?: SittingKind;
  readonly dish?: Named;
  readonly eater?: Named;
}

/** A page, or the lines of the sheet that contradict what it was to claim. */
export type Printed =
  | { readonly kind: "printed"; readonly html: string }
  | { readonly kind: "refused"; readonly broken: readonly BrokenClaim[] };
