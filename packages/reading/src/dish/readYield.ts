import { type Field, reckoned, told } from "../method/DraftStep.ts";
import type { Passage } from "./DishText.ts";

/** How many portions a dish makes, as far as what is said of its yield tells. */
export interface YieldFound {
  /** Absent where only pieces are counted ("1 loaf", "makes 12"): how many of them are a portion is not for us to say. */
  readonly portions?: Field<number>;
  /** What is said, as written; absent where nothing is. */
  readonly text?: string;
}

const COUNT = "(\\d{1,3})(?:\\s*(?:-|–|—|to|or)\\s*(\\d{1,3}))?";
const PEOPLE = new RegExp(
  `\\b(?:serves|feeds|servings?|portions?|for|people)\\b\\s*:?\\s*(?:about |approx\\.? |around )?${COUNT}(?!\\s*(?:g|ml|min|cm|oz)\\b)` +
    `|${COUNT}\\s*(?:-?\\s*)(?:generous |small |large |hearty )?(?:servings?|portions?|people|persons?|serves|adults)\\b`,
  "i",
);
const BARE = new RegExp(`^\\s*${COUNT}\\s*$`);
const WORDS = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
const WORD = new RegExp(`\\b(?:${WORDS.join("|")})\\b`, "gi");

/** Most portions that one dish is believed to make. */
const MOST_PORTIONS = 500;

/**
 * Portions from what is said of the yield, the first of the texts that tells them. Of a range the lower end counts: who is
 * planned for gets no less than the author meant.
 */
export function readYield(yields: readonly Passage[]): YieldFound {
  for (const passage of yields) {
    const { text } = passage;
    const figures = text.slice(0, 200).replace(WORD, (word) => String(WORDS.indexOf(word.toLowerCase()) + 1));
    const people = PEOPLE.exec(figures);
    const match = people ?? BARE.exec(figures);
    if (match === null) continue;
    const [least, most] = people === null ? [match[1], match[2]] : [match[1] ?? match[3], match[2] ?? match[4]];
    const portions = Number(least);
    if (!(portions >= 1 && portions <= MOST_PORTIONS)) continue;
    return { portions: { ...fieldOf(portions, most !== undefined, people === null), from: passage }, text };
  }
  const [first] = yields;
  return first === undefined ? {} : { text: first.text };
}

function fieldOf(portions: number, isRange: boolean, isBare: boolean): Field<number> {
  if (isRange) return reckoned(portions, "likely", "yield-range");
  return isBare ? reckoned(portions, "likely", "yield-bare") : told(portions);
}
