import type { PaceOfKind, Retimed, StatedTime, TooLong, WorkSheet } from "halfloaf/kitchen";
import { letterOf } from "halfloaf/sheet";
import type { Page } from "../output/Page.ts";
import type { Names } from "../words/Names.ts";

/** An order of work to be laid out as a page. */
export interface WorkPage extends Page {
  readonly sheet: WorkSheet;
  /** What goes into each dish for its portions, by place, one line a making. */
  readonly makings: readonly (readonly MakingTold[])[];
  readonly kitchen: string;
  readonly names: Pick<Names, "food">;
  readonly tooLong: TooLong | undefined;
  /** The stated times of dishes against their own, by place; undefined where none is stated. */
  readonly stated: readonly (StatedTime | undefined)[];
  /** What is reckoned with of the cook's pace. */
  readonly pace: readonly PaceOfKind[];
  readonly retimed: RetimedNow | undefined;
}

/** A making measured out: the food that goes in by its id, and the line that tells how much of it. */
export interface MakingTold {
  readonly food: string;
  readonly text: string;
}

/** How a cooking that goes on was timed anew. */
interface RetimedNow {
  readonly kind: Retimed["kind"];
  readonly nowMinutes: number;
  /** When it was to be served before. */
  readonly wasServeMinutes: number;
}

const DAY = 24 * 60;

/** Days before the day of serving that a time of day lies, 0 or more. */
export function daysBefore(clock: number): number {
  return Math.max(0, -Math.floor(clock / DAY));
}

/** The letters of dishes, by their places: "A" or "A, B". */
export function tellLetters(dishes: readonly number[]): string {
  return dishes.map(letterOf).join(", ");
}
