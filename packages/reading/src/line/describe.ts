import {
  ADVERBS,
  IRREGULAR_PREPARATIONS,
  KIND_ADJECTIVES,
  KINDS_IN_ED,
  LIQUIDS,
  MINCED_MEATS,
  NOT_ADVERBS,
  SIZES,
  STATES,
} from "./lineWords.ts";
import type { Token } from "./tokenise.ts";

/** What a word does in front of a food's name, or that it belongs to the name. */
export type Role = "size" | "state" | "preparation" | "adverb" | "name";

/** True where the word says what was or is to be done to a food: "chopped", "torn". */
export function isPreparation(lower: string): boolean {
  if (KINDS_IN_ED.has(lower)) return false;
  if (IRREGULAR_PREPARATIONS.has(lower)) return true;
  const last = lower.slice(lower.lastIndexOf("-") + 1);
  return last.length > 4 && last.endsWith("ed") && !last.endsWith("seed") && !last.endsWith("weed");
}

/** True where the word tells kinds of one food apart and names none by itself: "white", "powdered". */
export function isKindAdjective(lower: string): boolean {
  return KIND_ADJECTIVES.has(lower) || (KINDS_IN_ED.has(lower) && lower.endsWith("ed") && !lower.endsWith("seed"));
}

/** True where the word says how something is done: "finely". */
export function isAdverb(lower: string): boolean {
  return ADVERBS.has(lower) || (lower.length > 4 && lower.endsWith("ly") && !NOT_ADVERBS.has(lower));
}

/**
 * The role of the word at `at` in front of a name. A word in doubt belongs to the name: a food named wrongly is found
 * wrongly, while a word too many costs little.
 */
export function roleOf(tokens: readonly Token[], at: number): Role {
  const word = tokens[at]?.lower ?? "";
  const next = tokens[at + 1]?.lower ?? "";
  const then = tokens[at + 2]?.lower ?? "";
  if (SIZES.has(word)) return next === "gem" ? "name" : "size";
  if (word === "extra" && SIZES.has(next)) return "size";
  if (word === "extra" && (next === "virgin" || next === "-")) return "name";
  if (isAdverb(word) && (isPreparation(next) || isGround(next) || (isAdverb(next) && isPreparation(then))))
    return "adverb";
  if (isGround(word) && at > 0 && isAdverb(tokens[at - 1]?.lower ?? "")) return "preparation";
  if (word === "minced" && MINCED_MEATS.has(next)) return "name";
  if (STATES.has(word)) return isState(tokens, at) ? "state" : "name";
  return isPreparation(word) ? "preparation" : "name";
}

// "Ground" and "frozen" make another food of it, unless an adverb says that it is done in this kitchen.
const isGround = (word: string) => word === "ground" || word === "packed";

const HOT_OR_COLD = new Set(["hot", "warm", "cold", "strong"]);
const BEFORE_STATES = new Set(["butter", "cooked", "brewed", ",", "and", ""]);

/** Some states make another food of what follows: "whole milk", "dry sherry", "ground beef", "hot sauce". */
function isState(tokens: readonly Token[], at: number): boolean {
  const word = tokens[at]?.lower ?? "";
  const next = tokens[at + 1]?.lower ?? "";
  if (HOT_OR_COLD.has(word)) {
    const liquid = tokens.slice(at + 1, at + 4).some(({ lower }) => LIQUIDS.has(lower) && lower !== "sauce");
    return liquid || STATES.has(next) || BEFORE_STATES.has(next) || isPreparation(next);
  }
  const names = NAMING_STATES.get(word);
  return !(names?.has(next) ?? false) && !(word === "ground" && MINCED_MEATS.has(next));
}

const NAMING_STATES: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["ground", new Set(["rice", "almonds", "almond"])],
  ["whole", new Set(["milk", "grain", "wheat", "wheatmeal", "meal", "milk-powder"])],
  ["dry", new Set(["white", "red", "sherry", "vermouth", "cider", "wine", "mustard", "milk", "yeast"])],
]);
