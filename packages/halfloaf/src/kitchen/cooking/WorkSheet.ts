import type { KitPart, Step } from "../../dish/index.ts";
import type { Caution } from "../../safety/index.ts";

/** A caution at its place; for core temperatures with times at other temperatures that do as much. */
export interface PlacedCaution {
  readonly code: Caution["code"] | "wash-after-raw" | "hot-holding" | "thawed" | "dish";
  readonly text: string;
  readonly authority: string;
  /** Ids of the foods it is about; empty = the dish as a whole. */
  readonly foods: readonly string[];
  /** Whoever made the rule, by other temperatures: held so many minutes, each does as much. */
  readonly otherTimes?: readonly { readonly tempC: number; readonly minutes: number }[];
  /** Latest minute of the cooking for what it asks; absent where it names none. */
  readonly byMinutes?: number;
}

/** Minutes of all lines count from the moment the cook begins; what is done ahead has minutes below 0. */
interface Timed {
  readonly startMinutes: number;
  readonly endMinutes: number;
}

/** A step of a dish, by whom and with what. */
export interface StepLine extends Timed {
  readonly kind: "step";
  /** Place of the dish on the sheet. */
  readonly dish: number;
  readonly step: Step["id"];
  readonly stepKind: Step["kind"];
  readonly text: string;
  readonly hands: Step["hands"];
  /** Cooks from 1 on; empty where it does itself. An eye that is handed over names both. */
  readonly cooks: readonly number[];
  readonly kit: readonly { readonly part: KitPart; readonly number?: number }[];
  /** Degrees Celsius of oven or fat, where the step has one. */
  readonly tempC?: number;
  readonly cautions: readonly PlacedCaution[];
}

/** A wash between two uses, of the board with knife and hands or of a vessel. */
export interface WashLine extends Timed {
  readonly kind: "board-wash" | "kit-wash";
  /** What is washed. */
  readonly part: KitPart;
  readonly cooks: readonly number[];
}

/** The moment the oven is turned to a temperature, and when it is there. */
export interface OvenLine extends Timed {
  readonly kind: "oven";
  readonly tempC: number;
}

export type SheetLine = StepLine | WashLine | OvenLine;

/** What is done hours before, and when it must have begun at the latest. */
export interface AheadLine {
  readonly dish: number;
  readonly step: Step["id"];
  readonly text: string;
  readonly kind: "thaw" | "soak" | "other";
  readonly minutes: number;
  /** Below 0: before the cooking begins. */
  readonly latestStartMinutes: number;
  readonly cautions: readonly PlacedCaution[];
}

/** A dish on the sheet. */
export interface SheetDish {
  readonly dish: string;
  readonly title: string;
  readonly portions: number;
  /** When its last step ends, and how long it then waits for the plate. */
  readonly readyMinutes: number;
  readonly waitMinutes: number;
  readonly isHot: boolean;
  /** Where it is more than the largest pot takes: what that takes. */
  readonly potPortions?: number;
  /** Makings taken otherwise than the dish first states; absent where none is. */
  readonly taken?: readonly { readonly food: string; readonly insteadOf: string }[];
}

/** A hold that could not be kept. */
export interface BrokenHold {
  readonly dish: number;
  /** Id and text of the step after which it waits. */
  readonly step: Step["id"];
  readonly text: string;
  readonly waitMinutes: number;
  readonly holdMinutes: number;
}

/** One row of the timeline, and what it shows. */
export interface TimelineRow {
  readonly kind: "hands" | "ring" | "oven" | "microwave" | "kettle" | "blender" | "waiting";
  /** From 1 on, where there is more than one of a kind; for what waits the place of the dish, from 1 on. */
  readonly number?: number;
  readonly bars: readonly TimelineBar[];
}

/** A stretch of a row. */
export interface TimelineBar extends Timed {
  /** Absent for what is of no dish. */
  readonly dish?: number;
  readonly label: string;
  readonly fill: "full" | "eye" | "held" | "wash" | "warming" | "waiting";
}

/** One cooking as a cook needs it. */
export interface WorkSheet {
  readonly cooks: 1 | 2;
  readonly serveMinutes: number;
  /** Minutes after midnight of the day at which it is served; absent where no time was given. */
  readonly serveAtMinutes?: number;
  /** False where a better order of work may exist. */
  readonly isProven: boolean;
  readonly dishes: readonly SheetDish[];
  /** In the order of their starts. */
  readonly lines: readonly SheetLine[];
  readonly ahead: readonly AheadLine[];
  readonly brokenHolds: readonly BrokenHold[];
  readonly rows: readonly TimelineRow[];
  /** Cautions for before the first step and for after the last, each with its dishes. */
  readonly before: readonly DishCaution[];
  readonly after: readonly DishCaution[];
}

export type DishCaution = PlacedCaution & { readonly dishes: readonly number[] };

/** The time of day of a minute of the cooking, in minutes after midnight of the day it is served; below 0 = days before. */
export function clockMinutes(
  sheet: Pick<WorkSheet, "serveMinutes" | "serveAtMinutes">,
  minutes: number,
): number | undefined {
  return sheet.serveAtMinutes === undefined ? undefined : sheet.serveAtMinutes - sheet.serveMinutes + minutes;
}
