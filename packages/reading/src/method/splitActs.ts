import { readTimes } from "./readTimes.ts";
import { HOT, isAdding, kindOfPhrase, kindOfPlace, kindOfVerb, preheated, type StepKind } from "./workWords.ts";

/** One act of a method: a stretch of its text that orders work of one kind. */
export interface Act {
  readonly text: string;
  /** Where it stands in the text given, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  /** The kind that its words tell; absent where they tell none ("add", "cook"). */
  readonly kind?: StepKind;
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Most UTF-16 units of a text that are split; what is longer orders no work. */
const MAX_LENGTH = 5_000;

const SENTENCE_END = /[.!?]+["')\]]*\s+(?=["'(]?[\p{Lu}\d])|;\s*|\n+/gu;
/** What a sentence does not end after, though a stop follows. */
const ABBREVIATION = /\b(?:approx|min|mins|hr|hrs|tbsp|tsp|oz|lb|no|e\.g|i\.e|ca|c|vs|incl|deg|degs)\.$/i;
/** Where within a sentence another act may begin; the word after it must order work. */
const JOINT =
  /(?:,\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?|\s+then\s+)(?:(?:gently|carefully|finely|roughly|lightly|quickly|slowly|thinly|immediately|gradually)\s+)?(?=([\p{L}-]+))/giu;
/** Words of the work that also say how something looks; after "until" and its like that is what they say. */
const LOOKS = new Set(
  "brown crisp clean cool warm set thin open dry top core shell skin stone slice quarter cube form shape line oil butter spoon finish rest stand smooth press bubble simmer boil".split(
    " ",
  ),
);
const STILL_OPEN = /\b(?:until|till|to|without|or|while|when|as|if)(?:\s+[\p{L}'-]+){0,3}$/iu;
const WORD = /\p{L}+(?:-\p{L}+)*/gu;
const LEAD =
  /^(?:(?:meanwhile|then|next|now|finally|first|firstly|lastly|once|gently|carefully|finely|roughly|lightly|quickly|thinly|to|please|and|also)[,\s]+)*/i;

/** The acts that a text orders, in its order; together they hold all of it but the signs between them. */
export function splitActs(text: string): Act[] {
  return splitAt(text.slice(0, MAX_LENGTH), SENTENCE_END, isSentenceEnd).flatMap((sentence) =>
    mergeClauses(text, sentence),
  );
}

function isSentenceEnd(text: string, match: RegExpExecArray): boolean {
  return !/^[.]/.test(match[0]) || !ABBREVIATION.test(text.slice(Math.max(0, match.index - 10), match.index + 1));
}

/** The stretches between the matches that count, without blanks at their ends. */
function splitAt(
  text: string,
  pattern: RegExp,
  counts: (text: string, match: RegExpExecArray) => boolean,
  from = 0,
): Stretch[] {
  const stretches: Stretch[] = [];
  let start = 0;
  for (const match of text.matchAll(pattern)) {
    if (!counts(text, match)) continue;
    stretches.push({ start, end: match.index + (/^[.!?]/.exec(match[0]) ? match[0].trimEnd().length : 0) });
    start = match.index + match[0].length;
  }
  stretches.push({ start, end: text.length });
  return stretches
    .map(({ start: a, end: b }) => trim(text, a, b))
    .filter(({ start: a, end: b }) => b > a && /[\p{L}]/u.test(text.slice(a, b)))
    .map(({ start: a, end: b }) => ({ start: a + from, end: b + from }));
}

function trim(text: string, start: number, end: number): Stretch {
  const piece = text.slice(start, end);
  const lead = piece.length - piece.trimStart().length;
  return { start: start + lead, end: start + lead + piece.trim().length };
}

/** Clauses of a sentence, put together where they are one act: same kind, or one of them of no kind, and one time at most. */
function mergeClauses(text: string, { start, end }: Stretch): Act[] {
  const sentence = text.slice(start, end);
  const clauses = splitAt(sentence, JOINT, (whole, match) => beginsAct(whole, match), start);
  const acts: { start: number; end: number; kind: StepKind | undefined; timed: boolean; isEmpty: boolean }[] = [];
  for (const clause of clauses) {
    const words = text.slice(clause.start, clause.end);
    const kind = kindOfClause(words);
    const timed = readTimes(words).length > 0;
    const last = acts.at(-1);
    // What is heated empty, and water, is an act of its own, though what goes in then is cooked by the same heat.
    const isEmpty = preheated(words) !== undefined || kind === "heat-water";
    const isSame =
      !isEmpty && last?.isEmpty === false && (kind === undefined || last.kind === undefined || kind === last.kind);
    // What is added to something on the fire is cooked on from there, for a time of its own.
    const addsOn = last?.kind !== undefined && HOT.has(last.kind) && kind === undefined && isAdding(firstWord(words));
    if (last !== undefined && isSame && !addsOn && !(timed && last.timed)) {
      last.end = clause.end;
      last.kind ??= kind;
      last.timed ||= timed;
    } else acts.push({ ...clause, kind, timed, isEmpty });
  }
  return acts.map(({ start: from, end: to, kind }) => {
    const act = { text: text.slice(from, to), start: from, end: to };
    return kind === undefined ? act : { ...act, kind };
  });
}

function beginsAct(sentence: string, match: RegExpExecArray): boolean {
  const before = sentence.slice(Math.max(0, match.index - 60), match.index);
  if (kindOfVerb(match[1] as string) === undefined) return false;
  // "Meanwhile, chop": what stands before orders nothing.
  if (`${sentence.slice(0, match.index)} `.replace(LEAD, "") === "") return false;
  return /then/i.test(match[0]) || !LOOKS.has((match[1] as string).toLowerCase()) || !STILL_OPEN.test(before);
}

function firstWord(clause: string): string {
  return clause.replace(LEAD, "").match(WORD)?.[0] ?? "";
}

/** The kind that a clause tells by a phrase, by the word it begins with, or by the first that orders work. */
function kindOfClause(clause: string): StepKind | undefined {
  const certain = preheated(clause) ?? kindOfPlace(clause);
  if (certain !== undefined) return certain;
  const words = clause.replace(LEAD, "").match(WORD) ?? [];
  const verbs = words.slice(0, 25).flatMap((word) => kindOfVerb(word) ?? []);
  const first = words[0] === undefined ? undefined : kindOfVerb(words[0]);
  if (first !== undefined && first !== "weak" && first !== "mix" && first !== "assemble") return first;
  const phrase = kindOfPhrase(clause);
  if (phrase !== undefined) return phrase;
  if (first !== undefined && first !== "weak") return first;
  // Deep within a clause such words are mostly names of things ("the cut side", "a dish").
  return first === undefined
    ? (verbs.find((kind) => kind !== "weak" && kind !== "cut") as StepKind | undefined)
    : undefined;
}
