import type { SittingKind } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";

/** Something a person reads, with what it is called; the id is for programs. */
export interface Named {
  readonly id: string;
  readonly name: string;
}

/** One plate: who eats it, and what it used up in whole minor units. */
export interface DayPlate {
  readonly eater: Named;
  readonly costMinor: number;
}

/** One sitting of the day. Minutes are whole and rounded up, so that none promises less than it takes. */
export interface DaySittingLine {
  readonly kind: SittingKind;
  readonly dish: Named;
  /** Position in the week's batches. */
  readonly batch: number;
  readonly packed: boolean;
  readonly leftover: boolean;
  /** Where its portions lay cooked already. */
  readonly putBy?: "fridge" | "freezer";
  /** Day it was cooked, where that is another day. */
  readonly cookedOn?: CivilDate;
  /** True where something was begun hours before, which the minutes do not hold. */
  readonly ahead: boolean;
  readonly handsOnMinutes: number;
  readonly elapsedMinutes: number;
  readonly plates: readonly DayPlate[];
  /** Exactly the sum of the plates. */
  readonly costMinor: number;
}

/** Packs of one kind on one bill. */
export interface DayPurchase {
  readonly label: string;
  readonly section: string;
  readonly count: number;
  readonly massG: number;
  readonly priceMinor: number;
  readonly savedMinor: number;
  readonly estimate: boolean;
  /** Day the price was seen; absent for an estimate. */
  readonly seenOn?: CivilDate;
}

export interface DayTrip {
  readonly shop: Named;
  readonly lines: readonly DayPurchase[];
  /** Exactly the sum of the lines. */
  readonly tillMinor: number;
  /** Paid besides the till. */
  readonly fareMinor: number;
  readonly minutes: number;
}

/** What is left of a pack. */
export interface DayRest {
  readonly label: string;
  readonly massG: number;
  readonly costMinor: number;
  /** Last day it may be used; absent where nobody knows. */
  readonly keepsUntil?: CivilDate;
}

/** Cooked portions that wait for a later day. */
export interface DayWaiting {
  readonly dish: Named;
  readonly portions: number;
  readonly costMinor: number;
}

/** What of the stores is there in the evening; the lines and the rest of the stores add up to `totalMinor`. */
export interface DayLeft {
  /** Packs whose last day comes within five days, soonest first, and those used today whose last day nobody knows. */
  readonly soon: readonly DayRest[];
  readonly waiting: readonly DayWaiting[];
  /** All other packs of the stores. */
  readonly others: { readonly packs: number; readonly costMinor: number };
  readonly totalMinor: number;
}

/** Where the money of the day went: opening + till = plates + waste + left, in whole minor units. */
export interface DayFlow {
  readonly openingMinor: number;
  readonly tillMinor: number;
  readonly platesMinor: number;
  readonly wasteMinor: number;
  readonly leftMinor: number;
}

/** One component of what an eater gets, against the reference for the part of the day that is eaten here. */
export interface IntakeCell {
  readonly component: string;
  readonly kind: "at-least" | "at-most";
  readonly reference: number;
  /** The known part; absent where nothing is known. */
  readonly amount?: number;
  readonly knownShare: number;
  readonly verdict: "met" | "short" | "above" | "open";
  readonly source: string;
}

/** What one eater gets on the day. */
export interface DayIntake {
  readonly eater: Named;
  readonly energyKj: number;
  /** Need of the part of the day that is eaten here; absent where it is left to care. */
  readonly energyNeedKj?: number;
  /** Share of the day's energy that is eaten here, 0 to 1. */
  readonly hereShare: number;
  readonly lines: readonly IntakeCell[];
  /** Why there is no assessment, where there is none. */
  readonly referred?: string;
}

export interface SheetCaution {
  readonly code: string;
  readonly text: string;
  readonly authority: string;
  /** Empty where it is about every dish of the page. */
  readonly dishes: readonly Named[];
}

/** Where the costs of what was used come from. */
export interface PriceSource {
  /** seen: at a place on a day; estimate: never seen; stock: what the stores at hand had cost. */
  readonly kind: "seen" | "estimate" | "stock";
  readonly at?: string;
  readonly on?: CivilDate;
  readonly foods: readonly string[];
  /** So much of the plates of the day rests on it. */
  readonly costMinor: number;
}

/** One day of a week as it is printed: plain data, every sum the sum of its lines. Money in minor units, masses in g. */
export interface DaySheet {
  readonly kitchen: string;
  readonly currency: string;
  readonly date: CivilDate;
  readonly sittings: readonly DaySittingLine[];
  readonly platesMinor: number;
  /** What each eater's plates of the day come to, in the order of the kitchen. */
  readonly eaters: readonly DayPlate[];
  readonly handsOnMinutes: number;
  readonly trips: readonly DayTrip[];
  readonly flow: DayFlow;
  readonly left: DayLeft;
  readonly wasted: readonly DayRest[];
  readonly intake: readonly DayIntake[];
  readonly cautions: readonly SheetCaution[];
  /** Costs of what was cooked for the plates of the day; they add up to `platesMinor`. */
  readonly sources: readonly PriceSource[];
}
