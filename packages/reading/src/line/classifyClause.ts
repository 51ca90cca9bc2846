import { isAdverb, isPreparation, roleOf } from "./describe.ts";
import { FRUIT_PARTS, PURPOSES } from "./lineWords.ts";
import type { Token } from "./tokenise.ts";

/** What a clause beside the name says. */
export type ClauseKind = "optional" | "to-taste" | "purpose" | "part" | "preparation" | "note";

/** A run of tokens and what it says. */
export interface Clause {
  readonly kind: ClauseKind;
  readonly tokens: readonly Token[];
}

const WISHES = new Set("desired liked wanted preferred like wish using available".split(" "));
const NEEDS = new Set("needed required desired necessary".split(" "));

/** Takes the words beside a name apart: "chopped, for garnish" is a preparation and a purpose. */
export function classifyClause(tokens: readonly Token[]): Clause[] {
  const clauses: Clause[] = [];
  // "or to taste", "and to serve": the word before the phrase only joins it.
  let from = JOINTS.has(wordAt(tokens, 0)) && startsPhrase(tokens, 1) ? 1 : 0;
  for (let at = from + 1; at <= tokens.length; at++) {
    if (at < tokens.length && (isExtra(tokens, from) || !startsPhrase(tokens, at))) continue;
    const run = tokens.slice(from, at);
    if (run.some(({ kind }) => kind !== "mark")) clauses.push({ kind: kindOf(run), tokens: run });
    from = at;
  }
  return clauses;
}

const JOINTS = new Set(["or", "and"]);

/** "plus extra for greasing", "or more to taste": the phrase is about the extra, not about the making. */
function isExtra(tokens: readonly Token[], at: number): boolean {
  const more = ["more", "less"].includes(wordAt(tokens, at + 1));
  return wordAt(tokens, at) === "plus" || (wordAt(tokens, at) === "or" && more);
}

const wordAt = (tokens: readonly Token[], at: number) => tokens[at]?.lower ?? "";

/** Phrases that may follow a preparation without a comma and say something of their own. */
function startsPhrase(tokens: readonly Token[], at: number): boolean {
  return isPurpose(tokens, at) || isTaste(tokens, at) || isOptional(tokens, at) || wordAt(tokens, at) === "plus";
}

function isPurpose(tokens: readonly Token[], at: number): boolean {
  const word = wordAt(tokens, at);
  if (word === "to") return PURPOSES.has(wordAt(tokens, at + 1));
  return word === "for" && (at === 0 || PURPOSES.has(wordAt(tokens, at + 1)) || wordAt(tokens, at + 1) === "the");
}

function isTaste(tokens: readonly Token[], at: number): boolean {
  const [word, next, then] = [wordAt(tokens, at), wordAt(tokens, at + 1), wordAt(tokens, at + 2)];
  if (word === "to") return next === "taste" || (next === "your" && then === "taste");
  return word === "as" && NEEDS.has(next);
}

function isOptional(tokens: readonly Token[], at: number): boolean {
  const word = wordAt(tokens, at);
  if (word === "optional" || word === "optionally") return true;
  return (
    word === "if" &&
    (WISHES.has(wordAt(tokens, at + 1)) || (wordAt(tokens, at + 1) === "you" && WISHES.has(wordAt(tokens, at + 2))))
  );
}

function kindOf(run: readonly Token[]): ClauseKind {
  if (isOptional(run, 0)) return "optional";
  if (isTaste(run, 0)) return "to-taste";
  if (isPurpose(run, 0)) return "purpose";
  if (isFruitPart(run)) return "part";
  return isPrepared(run) ? "preparation" : "note";
}

/** "juice only", "juice of", "grated zest and juice". */
function isFruitPart(run: readonly Token[]): boolean {
  const rest = run.filter((_, at) => roleOf(run, at) === "name");
  return (
    rest.some(({ lower }) => FRUIT_PARTS.has(lower)) &&
    rest.every(({ lower }) => FRUIT_PARTS.has(lower) || PART_JOINTS.has(lower))
  );
}
const PART_JOINTS = new Set(["and", "&", "of", "only", "the"]);

/**
 * A preparation says early what was done ("peeled and cut into chunks", "leaves picked", "very finely chopped") or
 * only how the food is then ("at room temperature").
 */
function isPrepared(run: readonly Token[]): boolean {
  const [first, second, third] = [wordAt(run, 0), wordAt(run, 1), wordAt(run, 2)];
  if (first === "at" && (second === "room" || third === "temperature")) return true;
  if (first === "in" || first === "plus" || first === "see" || first === "such") return false;
  const early = run.slice(0, 4);
  const done = early.findIndex(({ lower }) => isPreparation(lower));
  if (done >= 0) return early.slice(0, done).every(({ kind }) => kind === "word");
  return run.every(
    ({ lower }, at) => isAdverb(lower) || ["size", "state"].includes(roleOf(run, at)) || lower === "and",
  );
}
