import { cleanText } from "./cleanText.ts";

/** One word, number or mark of a line, with where it stands in the line as given. */
export interface Token {
  readonly kind: "word" | "number" | "fraction" | "mark";
  readonly text: string;
  /** The text in lower case. */
  readonly lower: string;
  /** The number of a number or fraction; NaN for words and marks. */
  readonly value: number;
  /** True where no space stands before it. */
  readonly glued: boolean;
  readonly start: number;
  readonly end: number;
}

// More digits than any amount of food has; what is longer is no amount.
const MOST_DIGITS = 7;

// The denominators that spoons, cups and scales are divided by; "150/5" is no fraction.
const DENOMINATORS = new Set([2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 32]);

const LETTER = /[a-zA-Z]|\p{L}|\p{M}/u;
const SPACE = /\s/u;
const DIGIT = /[0-9]/;

/** The words, numbers and marks of a line. Markup and invisible characters give nothing. Linear in the length. */
export function tokenise(line: string): Token[] {
  const { text, starts, ends } = cleanText(line);
  const tokens: Token[] = [];
  let at = 0;
  let glued = false;
  while (at < text.length) {
    if (SPACE.test(text[at] as string)) {
      at++;
      glued = false;
      continue;
    }
    const from = at;
    const scanned = scanNumber(text, at) ?? scanWord(text, at, tokens.at(-1)) ?? scanMark(text, at);
    at = scanned.end;
    tokens.push({
      kind: scanned.kind,
      text: text.slice(from, at),
      lower: text.slice(from, at).toLowerCase(),
      value: scanned.value,
      glued,
      start: starts[from] as number,
      end: ends[at - 1] as number,
    });
    glued = true;
  }
  return tokens;
}

interface Scanned {
  readonly kind: Token["kind"];
  readonly value: number;
  readonly end: number;
}

function scanNumber(text: string, from: number): Scanned | undefined {
  const whole = digitsFrom(text, from);
  if (whole === from && !(text[from] === "." && DIGIT.test(text[from + 1] ?? ""))) return undefined;
  const fraction = scanFraction(text, from, whole);
  if (fraction) return fraction;
  const [end, numeral] = scanDecimal(text, from, whole);
  if (end - from > MOST_DIGITS + 1) return { kind: "word", value: Number.NaN, end };
  return { kind: "number", value: Number(numeral), end };
}

function digitsFrom(text: string, from: number): number {
  let at = from;
  while (at < text.length && DIGIT.test(text[at] as string)) at++;
  return at;
}

/** "1/2" with any of the slashes, also with a space on both sides. */
function scanFraction(text: string, from: number, whole: number): Scanned | undefined {
  const spaced = text[whole] === " " && text[whole + 1] === "/" && text[whole + 2] === " ";
  const slash = spaced ? whole + 1 : whole;
  if (text[slash] !== "/") return undefined;
  const below = spaced ? slash + 2 : slash + 1;
  const end = digitsFrom(text, below);
  const [above, denominator] = [Number(text.slice(from, whole)), Number(text.slice(below, end))];
  if (whole - from > 2 || end === below || !DENOMINATORS.has(denominator) || above >= 4 * denominator) return undefined;
  return { kind: "fraction", value: above / denominator, end };
}

/**
 * The end of a number and how it is written with a point. A comma before three digits groups thousands unless the
 * number starts with 0; before one or two digits it is a decimal comma.
 */
function scanDecimal(text: string, from: number, whole: number): [number, string] {
  const mark = text[whole];
  const end = digitsFrom(text, whole + 1);
  const digits = end - whole - 1;
  if (digits > 0 && mark === ".") return [end, text.slice(from, end)];
  if (digits > 0 && mark === ",") {
    const before = text.slice(from, whole);
    const after = text.slice(whole + 1, end);
    if (digits === 3 && before.length <= 3 && !before.startsWith("0")) return [end, before + after];
    if (digits <= 2 || before === "0") return [end, `${before}.${after}`];
  }
  return [whole, text.slice(from, whole)];
}

function scanWord(text: string, from: number, before: Token | undefined): Scanned | undefined {
  if (!isLetter(text, from)) return undefined;
  // "2x400g": the x between two numbers is a mark of its own.
  if (text[from]?.toLowerCase() === "x" && before?.kind === "number" && DIGIT.test(text[from + 1] ?? "")) {
    return { kind: "word", value: Number.NaN, end: from + 1 };
  }
  let at = from + 1;
  while (at < text.length) {
    const joins = (text[at] === "-" || text[at] === "'") && isLetter(text, at + 1);
    if (isLetter(text, at) || DIGIT.test(text[at] as string)) at++;
    else if (joins) at += 2;
    else break;
  }
  // The plural's apostrophe belongs to the word ("confectioners' sugar").
  if (text[at] === "'" && text[at - 1] === "s") at++;
  return { kind: "word", value: Number.NaN, end: at };
}

function isLetter(text: string, at: number): boolean {
  return at < text.length && LETTER.test(text[at] as string);
}

function scanMark(text: string, from: number): Scanned {
  const end = (text.codePointAt(from) as number) > 0xffff ? from + 2 : from + 1;
  return { kind: "mark", value: Number.NaN, end };
}
