import type { Issue } from "halfloaf/quantity";

/** A piece of text as it was found: clean, without markup, and where. */
export interface Passage {
  readonly text: string;
  /** Leads to it in what was read: keys and positions of an item, or `line` and its number from 1. */
  readonly path: Issue["path"];
  /** The heading it stands under, as in "For the sauce". */
  readonly heading?: string;
}

/** Where a dish was read from. */
export type DishForm = "json-ld" | "microdata" | "rdfa" | "text";

/** The texts of a dish, sorted by what they tell, not yet understood. */
export interface DishText {
  readonly form: DishForm;
  readonly title?: Passage;
  /** What is said of how much it makes ("Serves 4", "1 loaf"), the most telling first. */
  readonly yields: readonly Passage[];
  readonly makings: readonly Passage[];
  readonly method: readonly Passage[];
  readonly times: { readonly prep?: Passage; readonly cook?: Passage; readonly total?: Passage };
  readonly cooking?: Passage;
  /** What kind of dish it is said to be: courses, keywords. */
  readonly categories: readonly Passage[];
  readonly note?: Passage;
  /** What was found and belongs to none of the others. */
  readonly unread: readonly Passage[];
  /** A whole dish as this program writes it into its own pages, not yet checked; absent on any other page. */
  readonly written?: unknown;
}

/** How much text of one dish is read: more is no dish. Lines beyond go to `unread`. */
export const MOST_MAKINGS = 100;
export const MOST_STEPS = 100;
/** Most UTF-16 units of one passage. */
export const MOST_CHARACTERS = 5_000;
/** Most UTF-16 units of a text that a dish is looked for in. */
export const MOST_TEXT = 100_000;
