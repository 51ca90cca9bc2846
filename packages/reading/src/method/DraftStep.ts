import type { KitPart, Step } from "halfloaf/dish";
import type { Issue } from "halfloaf/quantity";
import type { Passage } from "../dish/DishText.ts";
import type { Sureness } from "../line/told.ts";

/** A value as read or reckoned, how sure it is, and why it is less than sure. */
export interface Field<Value> {
  readonly value: Value;
  readonly sure: Sureness;
  /** A code; absent where the text says it and nothing speaks against it. */
  readonly reason?: string;
  /** What it was read from; absent where it was reckoned, and in steps and makings, which name their passage once. */
  readonly from?: Passage;
}

/** A step as read from a method; whatever is less than sure is for a person to look at. */
export interface DraftStep {
  /** Unlike that of every other step of the method. */
  readonly id: string;
  readonly text: string;
  /** Where the passage stands that it was read from, and which stretch of it, in UTF-16 units. */
  readonly path: Issue["path"];
  readonly start: number;
  readonly end: number;
  readonly heading?: string;
  readonly kind: Field<Step["kind"]>;
  readonly minutes: Field<Step["minutes"]>;
  readonly hands: Field<Step["hands"]>;
  readonly kit: Field<readonly KitPart[]>;
  /** Absent where the text tells none. */
  readonly tempC?: Field<number>;
  /** Ids of the steps that must be finished before. */
  readonly after: Field<readonly string[]>;
  readonly ahead: Field<boolean>;
  readonly holdMinutes?: Field<number>;
  /** Positions of the makings handled in it. */
  readonly makings: Field<readonly number[]>;
  /** Ids of the foods handled, where they are told as such. */
  readonly foods?: Field<readonly string[]>;
}

/** A field that the text itself says. */
export function told<Value>(value: Value): Field<Value> {
  return { value, sure: "sure" };
}

/** A field by a rule of thumb ("likely") or without more than a habit to go by ("guess"). */
export function reckoned<Value>(value: Value, sure: "likely" | "guess", reason: string): Field<Value> {
  return { value, sure, reason };
}
