import type { Issue } from "halfloaf/quantity";
import { classifyClause } from "./classifyClause.ts";
import { isAdverb, isPreparation } from "./describe.ts";
import { findAlternatives } from "./findAlternatives.ts";
import { LineReading } from "./LineReading.ts";
import { FRUIT_PARTS, LINE_MARKS, NAME_ENDS } from "./lineWords.ts";
import type { MakingsAmount, ReadLine } from "./makingsLine.ts";
import { parseAmount } from "./parseAmount.ts";
import { isMeasured } from "./parseMeasure.ts";
import { readChoices } from "./readChoices.ts";
import { splitClauses } from "./splitClauses.ts";
import { type Token, tokenise } from "./tokenise.ts";
import { toTold } from "./toTold.ts";
import { takeTrailingPart, unitAsName } from "./trailingPart.ts";

/** The most characters of a line that are read; a line of makings has far fewer. */
export const MOST_CHARACTERS = 1000;

/**
 * Reads one line of makings in British or American English: amounts, size, food and its alternatives, preparation and
 * whatever else is said, each with the span of the text it came from and how sure it is. Never fails: what is not
 * understood becomes a note or part of the name. A line of more than `MOST_CHARACTERS` is read that far, with an issue.
 */
export function readMakingsLine(text: string): ReadLine {
  const issues = checkLength(text);
  const all = tokenise(text.slice(0, MOST_CHARACTERS));
  const tokens = all.slice(skipBullet(all));
  if (!tokens.some(({ kind }) => kind !== "mark")) return { kind: "empty", issues };
  const heading = findHeading(tokens);
  const reading = new LineReading();
  if (heading > 0) {
    const told = toTold(tokens.slice(0, heading), "likely", "heading-by-form");
    const rest = tokens.slice(heading).filter(({ lower }, at) => at > 0 || lower !== ":");
    if (!rest.some(({ kind }) => kind !== "mark")) return { kind: "heading", heading: told, issues };
    reading.heading = told;
    readMaking(rest, reading);
  } else {
    readMaking(tokens, reading);
  }
  return reading.toLine(tokens, issues);
}

function checkLength(text: string): Issue[] {
  if (text.length <= MOST_CHARACTERS) return [];
  return [
    {
      code: "line-too-long",
      path: [],
      expected: `at most ${MOST_CHARACTERS} characters`,
      received: `${text.length} characters`,
    },
  ];
}

/** Bullets, boxes to tick and numbers of a list ("1) ...") say nothing of the making. */
function skipBullet(tokens: readonly Token[]): number {
  let at = 0;
  while (tokens[at]?.kind === "mark" && LINE_MARKS.has(tokens[at]?.lower ?? "")) at++;
  const [first, second, third] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  const listed = first?.kind === "number" && second?.glued && second.lower === ")" && third !== undefined;
  return listed ? at + 2 : at;
}

/** What is done last, as headings name it. */
const LAST_ACTS = new Set(["serve", "finish", "garnish", "decorate"]);
// Longer runs of words before a colon are no heading.
const MOST_HEADING_TOKENS = 8;

/**
 * How many tokens at the start are a heading: all before a colon where an amount or nothing follows, or the whole of a
 * line that begins "For the", or is "To serve" and the like, and says no amount.
 */
function findHeading(tokens: readonly Token[]): number {
  const colon = tokens.findIndex(({ lower }) => lower === ":");
  const before = tokens.slice(0, colon < 0 ? tokens.length : colon);
  const worded = before.every(({ kind, lower }) => kind === "word" || lower === "(" || lower === ")" || lower === "&");
  if (!worded || before.length > MOST_HEADING_TOKENS || before.length === 0) return 0;
  const isLast = before[0]?.lower === "to" && LAST_ACTS.has(before[1]?.lower ?? "");
  const purpose = before[0]?.lower === "for" || isLast;
  // "To serve (optional)" heads what follows; "To serve lime wedges" tells a making.
  const isBare = isLast && (before.length === 2 || (before[2]?.lower === "(" && before.at(-1)?.lower === ")"));
  if (colon < 0) return isBare || (before[0]?.lower === "for" && before.length > 1) ? before.length : 0;
  const rest = tokens.slice(colon + 1);
  if (!rest.some(({ kind }) => kind !== "mark") || purpose) return colon;
  const amount = parseAmount(rest, 0);
  return amount && amount.next < rest.length ? colon : 0;
}

/** Reads a making: what of the food, its amount, its names, and the clauses beside them. */
function readMaking(tokens: readonly Token[], reading: LineReading): void {
  const part = findPart(tokens);
  if (part > 0) reading.addClause("part", tokens.slice(0, part));
  const from = BINDS.has(tokens[part]?.lower ?? "") && part > 0 ? part + 1 : part;
  const amount = parseAmount(tokens, from);
  if (amount) {
    reading.amount = amount.amount;
    readFood(tokens, amount.next, reading);
    return;
  }
  const after = findAmountAfter(tokens, from);
  if (!after) {
    readFood(tokens, from, reading);
    return;
  }
  reading.amount = { ...after.amount, sure: "likely", reason: "amount-after-name" };
  readFood(tokens.slice(0, after.at), from, reading);
}

const BINDS = new Set(["of", "from"]);

/** Reads names and clauses from `from` on; the amount before them is known to the reading. */
function readFood(tokens: readonly Token[], from: number, reading: LineReading): void {
  const each = tokens[from]?.lower === "each" ? from + 1 : from;
  const start = each > from && BINDS.has(tokens[each]?.lower ?? "") ? each + 1 : each;
  const { clauses, brackets } = splitClauses(tokens, start);
  const bare = isBareEnd(tokens[start]) ? unitAsName(tokens, start, reading.amount) : undefined;
  if (bare) {
    reading.amount = bare.amount;
    reading.addNames(readChoices(bare.name));
  }
  let named = 0;
  while (named < clauses.length && !reading.hasName()) {
    const choices = readChoices(clauses[named++] as Token[]);
    const trailing = takeTrailingPart(choices, reading.amount);
    reading.amount = trailing.amount;
    reading.addNames(trailing.choices);
  }
  for (const clause of clauses.slice(named)) readClause(clause, reading);
  for (const bracket of brackets) readClause(bracket, reading);
}

function isBareEnd(token: Token | undefined): boolean {
  return token === undefined || (token.kind === "mark" && token.lower !== '"') || ["to", "for"].includes(token.lower);
}

/** How many tokens at the start say what of a fruit is meant: "juice of", "finely grated zest and juice of". */
function findPart(tokens: readonly Token[]): number {
  let at = 0;
  let parts = 0;
  for (; at < Math.min(tokens.length, MOST_HEADING_TOKENS); at++) {
    const word = (tokens[at] as Token).lower;
    if (FRUIT_PARTS.has(word)) parts++;
    else if (!isAdverb(word) && !isPreparation(word) && !JOINTS.has(word)) break;
  }
  const next = tokens[at];
  const bound = BINDS.has(next?.lower ?? "") || next?.kind === "number" || next?.kind === "fraction";
  return parts > 0 && bound ? at : 0;
}

const JOINTS = new Set(["and", "&", "the", "plus"]);

/** A clause or bracket beside the name: an alternative, an amount told again, or something said of the food. */
function readClause(clause: readonly Token[], reading: LineReading): void {
  const alternatives = findAlternatives(clause);
  if (alternatives) {
    reading.addNames(alternatives);
    return;
  }
  const again = parseAmount(clause, 0);
  if (again && reading.addAgain(again.amount, clause.slice(again.next))) return;
  for (const { kind, tokens } of classifyClause(clause)) reading.addClause(kind, tokens);
}

// Where an amount stands last, only a colon, comma or dash may stand between it and the name, or its unit must measure.
const MARKS_BEFORE_AMOUNT = new Set([":", ",", "-"]);

/** "Butter, 50 g" and "eggs: 2": the amount stands last. Gives it and where the name before it ends. */
function findAmountAfter(tokens: readonly Token[], from: number): { amount: MakingsAmount; at: number } | undefined {
  const at = tokens.findIndex(({ kind }, position) => position > from && (kind === "number" || kind === "fraction"));
  const amount = at < 0 ? undefined : parseAmount(tokens, at);
  if (!amount || amount.next !== tokens.length) return undefined;
  const before = tokens.slice(from, at);
  if (before.some(({ lower }) => NAME_ENDS.has(lower) || lower === "(")) return undefined;
  const marked = MARKS_BEFORE_AMOUNT.has(before.at(-1)?.lower ?? "");
  if (!marked && !isMeasured(amount.amount.told[0]?.parts[0]?.unit) && before.length > 1) return undefined;
  return { amount: amount.amount, at: marked ? at - 1 : at };
}
