import type { Token } from "./tokenise.ts";

/** A number or a range of a line; both values are equal where it is no range. */
export interface NumberRead {
  readonly low: number;
  readonly high: number;
  /** True where it is said in words: "a", "half a dozen", "a couple of". */
  readonly inWords: boolean;
  /** The position of the token after it. */
  readonly next: number;
}

const SMALL: ReadonlyMap<string, number> = new Map(
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty"
    .split(" ")
    .map((word, value) => [word, value]),
);
const TENS: ReadonlyMap<string, number> = new Map([
  ["twenty", 20],
  ["thirty", 30],
  ["forty", 40],
  ["fifty", 50],
  ["sixty", 60],
  ["eighty", 80],
  ["hundred", 100],
]);
const SHARES: ReadonlyMap<string, number> = new Map([
  ["half", 1 / 2],
  ["halves", 1 / 2],
  ["third", 1 / 3],
  ["thirds", 1 / 3],
  ["quarter", 1 / 4],
  ["quarters", 1 / 4],
  ["eighth", 1 / 8],
  ["eighths", 1 / 8],
]);
const GROUPS: ReadonlyMap<string, number> = new Map([
  ["dozen", 12],
  ["couple", 2],
  ["pair", 2],
]);
const ARTICLES = new Set(["a", "an"]);
const TO = new Set(["-", "to", "or"]);

/** Reads a number or range at `at`: "1 1/2", "1-1/2", "2 to 3", "half a dozen". Undefined where none stands there. */
export function parseNumber(tokens: readonly Token[], at: number): NumberRead | undefined {
  const between = tokens[at]?.lower === "between";
  const low = parseValue(tokens, between ? at + 1 : at);
  if (!low) return undefined;
  const high = parseUpTo(tokens, low.next, between);
  if (!high || high.value < low.value) return { ...range(low.value, low.value), inWords: low.inWords, next: low.next };
  return { ...range(low.value, high.value), inWords: low.inWords || high.inWords, next: high.next };
}

const range = (low: number, high: number) => ({ low, high });

interface ValueRead {
  readonly value: number;
  readonly inWords: boolean;
  readonly next: number;
}

/** The end of a range, after its dash or word. An article ends none: "1 or a bit more". */
function parseUpTo(tokens: readonly Token[], at: number, between: boolean): ValueRead | undefined {
  // "3-to-4-pound", "3 1/2- to 4-pound": hyphens around the word belong to it.
  const hyphened = tokens[at]?.lower === "-" && tokens[at + 1]?.lower === "to";
  const from = hyphened ? at + 1 : at;
  const word = tokens[from]?.lower ?? "";
  if (!TO.has(word) && !(between && word === "and")) return undefined;
  const to = hyphened && tokens[from + 1]?.lower === "-" ? from + 2 : from + 1;
  return ARTICLES.has(tokens[to]?.lower ?? "") ? undefined : parseValue(tokens, to);
}

function parseValue(tokens: readonly Token[], at: number): ValueRead | undefined {
  const token = tokens[at];
  // A share in percent tells a kind of the food ("2% milk"), not how much of it.
  if (!token || tokens[at + 1]?.lower === "%") return undefined;
  if (token.kind === "number") return withGroup(tokens, parseNumeral(tokens, at));
  // "1/2 a lemon", "3/4 of a tin".
  if (token.kind === "fraction") return { ...afterShare(tokens, token.value, at + 1), inWords: false };
  return token.kind === "word" ? parseNumberWords(tokens, at) : undefined;
}

/** A number in digits, with the fraction after it: "1 1/2", "1-1/2", "1 & 1/2", "1 and 1/2". */
function parseNumeral(tokens: readonly Token[], at: number): ValueRead {
  const token = tokens[at] as Token;
  const alone = { value: token.value, inWords: false, next: at + 1 };
  if (!Number.isInteger(token.value)) return alone;
  const joint = ["-", "&", "and"].includes(tokens[at + 1]?.lower ?? "") ? 1 : 0;
  const [word, article, last] = [tokens[at + 1]?.lower, tokens[at + 2]?.lower ?? "", tokens[at + 3]?.lower ?? ""];
  const half = word === "and" && ARTICLES.has(article) ? SHARES.get(last) : undefined;
  if (half !== undefined) return { value: token.value + half, inWords: false, next: at + 4 };
  // "1 half", "3 quarters"; but "1 half and half" counts something of that name.
  const share = SHARES.get(word ?? "");
  if (share !== undefined && article !== "and" && article !== "") {
    return { value: token.value * share, inWords: false, next: at + 2 };
  }
  const fraction = tokens[at + 1 + joint];
  if (fraction?.kind !== "fraction" || fraction.value >= 1) return alone;
  return { value: token.value + fraction.value, inWords: false, next: at + 2 + joint };
}

/** "2 dozen", "1 couple of". */
function withGroup(tokens: readonly Token[], read: ValueRead): ValueRead {
  const group = GROUPS.get(tokens[read.next]?.lower ?? "");
  if (group === undefined) return read;
  return { value: read.value * group, inWords: true, next: afterOf(tokens, read.next + 1) };
}

function parseNumberWords(tokens: readonly Token[], at: number): ValueRead | undefined {
  const word = (tokens[at] as Token).lower;
  const hyphened = fromHyphened(word);
  if (hyphened !== undefined) return afterShare(tokens, hyphened, at + 1);
  const share = SHARES.get(word);
  if (share !== undefined) return parseShare(tokens, at, share);
  const article = ARTICLES.has(word);
  const whole = article ? 1 : (SMALL.get(word) ?? TENS.get(word));
  if (whole === undefined) return parseGroup(tokens, at);
  const next = tokens[at + 1]?.lower ?? "";
  const nextShare = SHARES.get(next);
  if (nextShare !== undefined) return afterShare(tokens, whole * nextShare, at + 2);
  // "one and a half"
  if (next === "and" && ARTICLES.has(tokens[at + 2]?.lower ?? "") && SHARES.has(tokens[at + 3]?.lower ?? "")) {
    return { value: whole + (SHARES.get((tokens[at + 3] as Token).lower) as number), inWords: true, next: at + 4 };
  }
  return withGroup(tokens, { value: whole, inWords: true, next: at + 1 });
}

/** "half", "half a", "half a dozen"; but "half and half" and "half fat" are no numbers. */
function parseShare(tokens: readonly Token[], at: number, share: number): ValueRead | undefined {
  const next = tokens[at + 1]?.lower;
  if (next === undefined || next === "and" || next === "&" || next === "fat" || next === "-") return undefined;
  return afterShare(tokens, share, at + 1);
}

/** After a share: "of", an article, and a dozen it may be of. */
function afterShare(tokens: readonly Token[], value: number, at: number): ValueRead {
  const of = afterOf(tokens, at);
  const next = ["a", "an", "the", "one"].includes(tokens[of]?.lower ?? "") ? of + 1 : of;
  return withGroup(tokens, { value, inWords: true, next });
}

function parseGroup(tokens: readonly Token[], at: number): ValueRead | undefined {
  const group = GROUPS.get((tokens[at] as Token).lower);
  return group === undefined ? undefined : { value: group, inWords: true, next: afterOf(tokens, at + 1) };
}

function afterOf(tokens: readonly Token[], at: number): number {
  return tokens[at]?.lower === "of" ? at + 1 : at;
}

/** "twenty-four", "two-thirds". */
function fromHyphened(word: string): number | undefined {
  const [first = "", second = "", ...rest] = word.split("-");
  if (rest.length > 0 || second === "") return undefined;
  const [tens, units] = [TENS.get(first), SMALL.get(second)];
  if (tens !== undefined && units !== undefined && units < 10) return tens + units;
  const [count, share] = [SMALL.get(first), SHARES.get(second)];
  return count !== undefined && share !== undefined ? count * share : undefined;
}
