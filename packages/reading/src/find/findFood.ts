import { distanceWithin } from "./distanceWithin.ts";
import { type FoodIndex, type FoodName, headOf } from "./FoodIndex.ts";
import type { Standing } from "./foodSynonyms.ts";

/** What is looked for: a name as a line or receipt writes it, and what else is known of it. */
export interface FoodQuery {
  readonly name: string;
  /** What is said of its state beside its name: "frozen", "ripe". */
  readonly said?: readonly string[];
  /** What is done to it: "drained", "finely chopped". It hints at a food, and excludes none. */
  readonly prepared?: readonly string[];
  /** How it stands in its line. */
  readonly standing?: Standing;
  /** True where it comes in a tin, can or jar. */
  readonly tinned?: boolean;
  readonly english?: "british" | "american";
}

/** A food that a name may mean. */
export interface FoodCandidate {
  /** Id in the table. */
  readonly food: string;
  /** The name by which it was found. */
  readonly name: string;
  /** How well the names agree, from 0 to 1. */
  readonly score: number;
}

/**
 * What a name was found to mean: one food, surely; or the nearest, none of them sure; or no food of the table, with the
 * nearest there are. The nearest are at most three, the best first.
 */
export type FoodFinding =
  | { readonly kind: "found"; readonly best: FoodCandidate; readonly nearest: readonly FoodCandidate[] }
  | { readonly kind: "unsure"; readonly best: FoodCandidate; readonly nearest: readonly FoodCandidate[] }
  | { readonly kind: "not-in-table"; readonly nearest: readonly FoodCandidate[] };

// Chosen on lines of our own (findFoodOfChoice.test.ts) so that no wrong food is taken silently; no source but that.
const SURE_SCORE = 0.91;
const SURE_MARGIN = 0.03;
const LEAST_SCORE = 0.62;
const MOST_NEAREST = 3;
// A longer name is a sentence; the rest of its words would tell nothing.
const MOST_WORDS = 12;

/**
 * Finds the food of a table that a name means, among the English names and, where these have none for sure and not all of its words,
 * among the German ones. Never guesses silently: what is not sure says so.
 */
export function findFood(index: FoodIndex, query: FoodQuery): FoodFinding {
  const english = findAmong(index, query);
  const { fold, idle } = index.tongue;
  const words = fold(query.name).filter((word) => !idle.has(word));
  const known = words.filter((word) => index.namesWith(word).length > 0);
  if (english.kind === "found" || words.length === 0) return english;
  const german = findAmong(index.german, query);
  if (german.kind === "found") return known.length < words.length ? german : alsoOffered(english, german.best);
  // A word of both languages, as in "beef dripping", makes no German name of it.
  if (known.length > 0) return english;
  return (german.nearest[0]?.score ?? 0) > (english.nearest[0]?.score ?? 0) ? german : english;
}

/** "Germ" is yeast in Austria, and in English part of wheat: then both are offered, the English one first. */
function alsoOffered(finding: FoodFinding, { score, ...other }: FoodCandidate): FoodFinding {
  if (finding.nearest.some(({ food }) => food === other.food)) return finding;
  const most = finding.nearest[0]?.score ?? score;
  const nearest = [...finding.nearest, { ...other, score: Math.min(most, score) }].sort((a, b) => b.score - a.score);
  return { ...finding, nearest: nearest.slice(0, MOST_NEAREST) };
}

function findAmong(index: FoodIndex, query: FoodQuery): FoodFinding {
  const asked = toAsked(index, query);
  const best = new Map<string, Judged>();
  for (const name of candidatesOf(index, asked)) {
    const judged = judge(index, asked, name);
    if (judged && judged.score > (best.get(name.food.id)?.score ?? 0)) best.set(name.food.id, judged);
  }
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  const nearest = ranked.slice(0, MOST_NEAREST).map(({ name, score }) => ({
    food: name.food.id,
    name: name.name,
    score: Math.min(1, Math.max(0, Math.round(score * 1000) / 1000)),
  }));
  const [first, second] = ranked;
  const [top] = nearest;
  if (!first || !top || first.score < LEAST_SCORE) return { kind: "not-in-table", nearest };
  const clear = first.score - (second?.score ?? 0) >= SURE_MARGIN;
  const sure = first.exact && clear && first.score >= SURE_SCORE;
  return { kind: sure ? "found" : "unsure", best: top, nearest };
}

/** A query in the words of the index. */
interface Asked {
  readonly words: readonly string[];
  /** For a word that stands in no name: the nearest that does. */
  readonly mended: ReadonlyMap<string, string>;
  readonly head: string;
  readonly said: ReadonlySet<string>;
  readonly kept: ReadonlySet<string>;
  /** How it is kept by what is done to it; holds where nothing else is said. */
  readonly hinted: ReadonlySet<string>;
  readonly standing: Standing | undefined;
  readonly english: "british" | "american" | undefined;
}

function toAsked(index: FoodIndex, query: FoodQuery): Asked {
  const { fold, kept: keeping } = index.tongue;
  const wordsOf = (texts: readonly string[]): string[] => texts.flatMap((text) => fold(text).slice(0, MOST_WORDS));
  const given = joinParted(index, fold(query.name).slice(0, MOST_WORDS));
  const said = wordsOf(query.said ?? []);
  const prepared = wordsOf(query.prepared ?? []);
  const kept = new Set([...given, ...said].filter((word) => keeping.has(word)));
  if (given.includes("powder")) kept.add("ground");
  if (query.tinned) kept.add("tinned");
  const mended = new Map<string, string>();
  const words = given
    .filter((word) => !keeping.has(word))
    .map((word) => {
      const near = mend(index, word);
      if (near !== undefined) mended.set(near, word);
      return near ?? word;
    });
  const head = headOf(query.name, index.tongue);
  return {
    words: [...new Set(words)],
    mended,
    head: mend(index, head) ?? head,
    said: new Set([...said, ...prepared]),
    kept,
    hinted: new Set(prepared.map((word) => KEPT_BY_PREPARATION.get(word) ?? word)),
    standing: query.standing,
    english: query.english,
  };
}

/** "chick peas": two words that the table writes as one, where it does not know them both apart. */
function joinParted(index: FoodIndex, words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const word of words) {
    const before = joined.at(-1);
    const whole = before === undefined ? "" : before + word;
    const apart = before !== undefined && index.namesWith(before).length > 0 && index.namesWith(word).length > 0;
    if (!apart && index.namesWith(whole).length > 0) joined[joined.length - 1] = whole;
    else joined.push(word);
  }
  return joined;
}

/** What is done to a food may tell how it was kept. */
const KEPT_BY_PREPARATION: ReadonlyMap<string, string> = new Map([
  ["drained", "tinned"],
  ["rinsed", "tinned"],
  ["soaked", "dried"],
  ["thawed", "frozen"],
  ["defrosted", "frozen"],
]);

// Shorter words have too many neighbours, and one slip in four letters is another word.
const LEAST_MENDED = 5;
const LEAST_TWICE_MENDED = 8;

/** The word of the table that an unknown word slips from; undefined where it is known or nothing is near enough. */
function mend(index: FoodIndex, word: string): string | undefined {
  const { idle, classes } = index.tongue;
  if (word.length < LEAST_MENDED || index.namesWith(word).length > 0 || idle.has(word) || classes.has(word)) {
    return undefined;
  }
  const most = word.length >= LEAST_TWICE_MENDED ? 2 : 1;
  let nearest: string | undefined;
  let least = most + 1;
  for (const known of index.wordsLike(word)) {
    // A slip of two letters changes them; a word two letters longer or shorter is another word.
    if (known.length < LEAST_MENDED - 1 || Math.abs(known.length - word.length) > 1) continue;
    const distance = distanceWithin(word, known, least - 1);
    if (distance !== undefined) {
      nearest = known;
      least = distance;
      if (least <= 1) break;
    }
  }
  return nearest;
}

function candidatesOf(index: FoodIndex, { words }: Asked): Set<FoodName> {
  const names = new Set<FoodName>();
  for (const word of words) for (const name of index.namesWith(word)) names.add(name);
  return names;
}

interface Judged {
  readonly name: FoodName;
  readonly score: number;
  /** True where no word is left over that could tell another food. */
  readonly exact: boolean;
}

/** How well a name agrees with what is asked; undefined where it cannot be meant. */
function judge(index: FoodIndex, asked: Asked, name: FoodName): Judged | undefined {
  if (name.when !== undefined && name.when !== asked.standing) return undefined;
  const asks = weighAsked(index, asked, name);
  const names = weighName(index, asked, name);
  if (asks.matched === 0) return undefined;
  const agreement = (2 * asks.matched) / (2 * asks.matched + asks.left + names.left);
  const head = headsAgree(index, asked, name) ? 1 : 0.55;
  const mended = name.words.some((word) => asked.mended.has(word)) ? 0.06 : 0;
  const score = agreement * head + compareKept(asked, name.kept) - mended - shadesOf(asked, name);
  return { name, score, exact: !asks.telling && !names.telling && head === 1 && mended === 0 && !name.near };
}

/**
 * The weight of the asked words that stand in the name, and of those that do not; `telling` where one of these could
 * tell another food. Idle words and the nouns of a class count little: enough to prefer a name that has them.
 */
function weighAsked(
  index: FoodIndex,
  asked: Asked,
  name: FoodName,
): { matched: number; left: number; telling: boolean } {
  const { idle, classes } = index.tongue;
  let matched = 0;
  let left = 0;
  let telling = false;
  for (const word of asked.words) {
    const weight = index.weightOf(word);
    const known = index.namesWith(word).length > 0;
    if (name.words.includes(word) || name.qualifiers.includes(word)) matched += weight;
    else if (idle.has(word) || NUMBER.test(word)) left += known ? LITTLE * weight : 0;
    else if (classes.get(word)?.includes(name.food.group)) left += LITTLE * weight;
    else {
      left += weight;
      telling = true;
    }
  }
  return { matched, left, telling };
}

const LITTLE = 0.12;
const NUMBER = /^\d+$/;

/** The weight of the name's words that nobody asked for; words of no weight count little. */
function weighName(index: FoodIndex, asked: Asked, name: FoodName): { left: number; telling: boolean } {
  const { idle } = index.tongue;
  let left = 0;
  let telling = false;
  for (const word of name.words) {
    if (asked.words.includes(word) || asked.said.has(word)) continue;
    left += index.weightOf(word) * (idle.has(word) ? LITTLE : 1);
    telling ||= !idle.has(word);
  }
  return { left, telling };
}

function headsAgree({ tongue }: FoodIndex, asked: Asked, name: FoodName): boolean {
  if (!asked.words.includes(name.head) && !asked.said.has(name.head)) return false;
  if (name.words.includes(asked.head) || name.qualifiers.includes(asked.head)) return true;
  return tongue.classes.get(asked.head)?.includes(name.food.group) ?? false;
}

/** A small step up where both say the same of how it is kept, down where they differ or only one says it. */
function compareKept({ kept: asked, hinted }: Asked, kept: readonly string[]): number {
  if (asked.size === 0 && kept.some((word) => hinted.has(word))) return 0.05;
  if (kept.some((word) => asked.has(word))) return 0.05;
  const plain = [...asked].every((word) => NATURAL.has(word));
  if (kept.length === 0) return plain ? 0 : -0.1;
  const unsaid = asked.size === 0 || (asked.size === 1 && asked.has("raw"));
  if (kept.includes("ground")) return unsaid ? -0.05 : -0.1;
  if (kept.every((word) => NATURAL.has(word))) return asked.size === 0 ? 0 : -0.1;
  // Who means the dried one must soak it, and so says it more often.
  if (unsaid) return kept.includes("dried") ? -0.07 : -0.06;
  return -0.2;
}

// What a food is without anybody saying so: most are fresh or raw, most spices ground.
const NATURAL = new Set(["fresh", "raw", "ground"]);

/** What tells two names apart that agree alike: qualifiers asked for or not, the order of names, the English. */
function shadesOf(asked: Asked, name: FoodName): number {
  const unasked = name.qualifiers.filter((word) => !asked.words.includes(word) && !asked.said.has(word)).length;
  const foreign = name.english !== "both" && asked.english !== undefined && name.english !== asked.english;
  // What the line says of the food beside its name, and how it stands there, speaks for the name that says the same.
  // A food kept in a way that nobody asked for is not meant because it is sold cut: "onion, chopped" is no frozen one.
  const isKeptUnasked = name.kept.some(
    (word) => !NATURAL.has(word) && !asked.kept.has(word) && !asked.hinted.has(word),
  );
  const isSaid = name.words.some((word) => asked.said.has(word) && !asked.words.includes(word));
  const said = isSaid && !isKeptUnasked ? -0.035 : 0;
  const standing = name.when !== undefined ? -0.04 : said;
  return 0.01 * Math.min(unasked, 3) + 0.001 * name.rank + (foreign ? 0.02 : 0) + (name.near ? 0.01 : 0) + standing;
}
