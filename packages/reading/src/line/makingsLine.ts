import type { Issue } from "halfloaf/quantity";
import type { Span, Sureness, Told } from "./told.ts";
import type { UnitWord } from "./unitWords.ts";

/** A number of one unit, such as 2 lb in "2lb 4oz". */
export interface MeasurePart {
  /** Absent where the text gives none ("splash of oil", "a few sprigs"). */
  readonly value?: number;
  /** Absent for pieces of the food itself. */
  readonly unit?: UnitWord;
}

/** One telling of an amount: the sum of its parts, up to the sum of `upTo` where it is a range. */
export interface Measure {
  readonly parts: readonly MeasurePart[];
  readonly upTo?: readonly MeasurePart[];
  /** What is said about the unit: "heaped", "large", "packed". */
  readonly manner: readonly string[];
  /** True where the number is an article or a word such as "couple", or is only implied. */
  readonly inWords: boolean;
  readonly span: Span;
}

/** How much of a food a line asks for. */
export interface MakingsAmount {
  /** One amount, told once or several times ("150g/5oz"), in the order of the text; never to be added up. */
  readonly told: readonly Measure[];
  /** What each of the counted packs or pieces holds or measures ("2 x 400 g tins"); told once or several times. */
  readonly each: readonly Measure[];
  /** True for "about" and its like. */
  readonly approximate: boolean;
  readonly span: Span;
  readonly sure: Sureness;
  readonly reason?: string;
}

/** One food that a line allows, with its own amount where it has one. */
export interface MakingsChoice {
  readonly amount?: MakingsAmount;
  /** "large", "medium to large". */
  readonly size?: Told;
  /** What of the food is meant: "juice", "grated zest". */
  readonly part?: Told;
  /** The food's name without size, preparation and praise. */
  readonly name: Told;
  /** The names that "and" joins in `name`, where it joins any: one food or several. */
  readonly together?: readonly Told[];
  /** What is said of the food before its name that is no preparation: "fresh", "ripe", "cold". */
  readonly states: readonly Told[];
}

/** What a line of makings says. */
export interface MakingsLine {
  readonly kind: "making";
  /** The food asked for first, then those that may stand in for it ("butter or oil"). */
  readonly choices: readonly [MakingsChoice, ...MakingsChoice[]];
  /** How it is made ready, each by itself: "finely chopped", "drained". */
  readonly preparation: readonly Told[];
  /** Everything else said: "such as ...", "plus more for the tin". */
  readonly notes: readonly Told[];
  /** What it is for: "for garnish", "to serve". */
  readonly purpose?: Told;
  readonly optional?: Told;
  /** "to taste" or "as needed". */
  readonly toTaste?: Told;
  /** A heading in front of the making in the same line. */
  readonly heading?: Told;
  readonly issues: readonly Issue[];
}

/** A line that names the makings after it: "For the sauce:". */
export interface HeadingLine {
  readonly kind: "heading";
  readonly heading: Told;
  readonly issues: readonly Issue[];
}

/** A line in which nothing is said. */
export interface EmptyLine {
  readonly kind: "empty";
  readonly issues: readonly Issue[];
}

export type ReadLine = MakingsLine | HeadingLine | EmptyLine;
