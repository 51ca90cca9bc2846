import type { SittingKind } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Named, PriceSource, SheetCaution } from "../day/DaySheet.ts";

/** One pack that a cooking took from. Masses in g as purchased, money in whole minor units. */
export interface LessonPack {
  readonly label: string;
  readonly price: Omit<PriceSource, "foods" | "costMinor">;
  /** The whole pack; absent where the price is not that of a pack. */
  readonly pack?: { readonly massG: number; readonly costMinor: number };
  /** What the cooking took of it. */
  readonly massG: number;
  readonly costMinor: number;
}

/** One portion, and what it used of each pack, in the order of the packs. */
export interface LessonPlate {
  /** Who eats it; absent for portions that wait for later weeks, and on a card, where nobody does yet. */
  readonly eater?: Named;
  readonly date?: CivilDate;
  readonly sitting?: SittingKind;
  readonly costMinor: number;
  /** Masses add up to what the cooking took to a tenth of a gram, costs exactly: by plate and by pack. */
  readonly parts: readonly { readonly massG: number; readonly costMinor: number }[];
}

/** One cooking with its sums unfolded. */
export interface LessonCooking {
  readonly dish: Named;
  readonly portions: number;
  readonly elapsedMinutes: number;
  /** Makings as lines to be read. */
  readonly makings: readonly string[];
  readonly steps: readonly {
    readonly text: string;
    readonly minutes: number;
    readonly isHandsFree: boolean;
    readonly ahead: boolean;
  }[];
  readonly packs: readonly LessonPack[];
  readonly plates: readonly LessonPlate[];
  /** Exactly the sum of the packs' parts, and of the plates. */
  readonly costMinor: number;
  readonly cautions: readonly SheetCaution[];
}

/** A dish or a day for teaching: plain data with every sum unfolded. */
export interface LessonSheet {
  readonly kitchen: string;
  readonly currency: string;
  /** The day it shows; absent for a dish. */
  readonly date?: CivilDate;
  readonly cookings: readonly LessonCooking[];
}
