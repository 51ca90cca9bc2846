import type { Issue } from "halfloaf/quantity";
import { quote } from "../table/IssueLog.ts";

/** What a text of JSON holds. Objects are maps, so that no key can reach a prototype. */
export type LooseValue = string | number | boolean | null | readonly LooseValue[] | ReadonlyMap<string, LooseValue>;

/** Deepest nesting that is read. */
const MAX_DEPTH = 100;

const ESCAPES: ReadonlyMap<string, string> = new Map([
  ["n", "\n"],
  ["r", "\r"],
  ["t", "\t"],
  ["b", "\b"],
  ["f", "\f"],
]);

/** Blanks, comments of scripts, and the wrappings that once hid scripts from browsers. */
const FILLER = /[\s\ufeff;]+|\/\*[\s\S]*?\*\/|\/\/[^\n]*|<!--|-->|<!\[CDATA\[|\]\]>/y;
const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/iy;
const WORD = /[\p{L}_$@][\p{L}\p{N}_$@.-]*/uy;
const PLAIN = { '"': /[^"\\]+/y, "'": /[^'\\]+/y } as const;

/**
 * The values of a text of JSON as pages hold it, also where it is broken in the usual ways: comments, commas too many or
 * missing, line breaks and other controls within strings, quotes within strings, single quotes, keys without quotes,
 * several values one after the other, an end that is missing.
 *
 * What stands before the first place that can't be read is given; that place is told as an issue with path `[line, column]`,
 * both from 1. Codes: `json`, `json-too-deep`.
 */
export function parseLooseJson(text: string): {
  readonly values: readonly LooseValue[];
  readonly issues: readonly Issue[];
} {
  const reader = new LooseReader(text);
  const values: LooseValue[] = [];
  for (;;) {
    reader.fill();
    if (reader.atEnd || reader.issue !== undefined) break;
    const value = reader.readValue(0);
    if (value !== undefined) values.push(value);
  }
  return { values, issues: reader.issue === undefined ? [] : [reader.issue] };
}

class LooseReader {
  issue: Issue | undefined;
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  get atEnd(): boolean {
    return this.#at >= this.#text.length;
  }

  fill(): void {
    while (this.#take(FILLER) !== undefined);
  }

  /** The value that begins here; undefined where none does, and then the issue says so. */
  readValue(depth: number): LooseValue | undefined {
    const sign = this.#text[this.#at];
    if (sign === "{" || sign === "[") {
      if (depth >= MAX_DEPTH) return this.#fail("json-too-deep", `at most ${MAX_DEPTH} values within each other`);
      this.#at++;
      return sign === "{" ? this.#readMap(depth + 1) : this.#readList(depth + 1);
    }
    if (sign === '"' || sign === "'") return this.#readString(sign);
    const number = this.#take(NUMBER);
    if (number !== undefined) return Number(number);
    const word = this.#take(WORD);
    if (word === undefined) return this.#fail("json", "a value");
    return word === "true" ? true : word === "false" ? false : null;
  }

  #readMap(depth: number): LooseValue {
    const map = new Map<string, LooseValue>();
    while (this.#hasMore("}")) {
      const sign = this.#text[this.#at];
      const key = sign === '"' || sign === "'" ? this.#readString(sign) : (this.#take(WORD) ?? this.#take(NUMBER));
      if (key === undefined) {
        this.#fail("json", "a key");
        break;
      }
      this.fill();
      if (this.#text[this.#at] === ":") this.#at++;
      else if (!this.atEnd) this.#fail("json", '":"');
      this.fill();
      if (this.atEnd || this.issue !== undefined) break;
      const value = this.readValue(depth);
      if (value !== undefined) map.set(key, value);
    }
    return map;
  }

  #readList(depth: number): LooseValue {
    const list: LooseValue[] = [];
    while (this.#hasMore("]")) {
      const value = this.readValue(depth);
      if (value !== undefined) list.push(value);
    }
    return list;
  }

  /** Passes commas, however many, and the end; true where another member begins. A missing end is told as an issue. */
  #hasMore(end: string): boolean {
    if (this.issue !== undefined) return false;
    this.fill();
    while (this.#text[this.#at] === ",") {
      this.#at++;
      this.fill();
    }
    if (this.atEnd) {
      this.#fail("json", `"${end}"`);
      return false;
    }
    if (this.#text[this.#at] !== end) return true;
    this.#at++;
    return false;
  }

  #readString(quote: '"' | "'"): string {
    const parts: string[] = [];
    this.#at++;
    while (!this.atEnd) {
      const plain = this.#take(PLAIN[quote]);
      if (plain !== undefined) parts.push(plain);
      const sign = this.#text[this.#at++];
      if (sign === "\\") parts.push(this.#readEscape());
      else if (sign === quote && this.#isEndOfString()) return parts.join("");
      else if (sign !== undefined) parts.push(sign);
    }
    this.#fail("json", quote);
    return parts.join("");
  }

  #readEscape(): string {
    const sign = this.#text[this.#at++] ?? "";
    const hex = sign === "u" ? /^[\da-f]{4}/i.exec(this.#text.slice(this.#at, this.#at + 4))?.[0] : undefined;
    if (hex === undefined) return ESCAPES.get(sign) ?? sign;
    this.#at += 4;
    return String.fromCharCode(Number.parseInt(hex, 16));
  }

  /** A quote ends a string where what follows is no text: the next sign, the end, or a quote on another line. */
  #isEndOfString(): boolean {
    const blanks = /\s*/y;
    blanks.lastIndex = this.#at;
    const between = blanks.exec(this.#text)?.[0] ?? "";
    const place = this.#at + between.length;
    const next = this.#text[place];
    if (next === undefined || ",:}]".includes(next) || (between.includes("\n") && `"'`.includes(next))) return true;
    return /^\/[/*]/.test(this.#text.slice(place, place + 2));
  }

  #take(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.#at;
    const taken = pattern.exec(this.#text)?.[0];
    if (taken !== undefined) this.#at += taken.length;
    return taken;
  }

  #fail(code: string, expected: string): undefined {
    if (this.issue !== undefined) return undefined;
    const before = this.#text.slice(0, this.#at).split("\n");
    const path = [before.length, (before.at(-1) as string).length + 1];
    const received = this.atEnd ? "the end" : quote(this.#text.slice(this.#at, this.#at + 20));
    this.issue = { code, path, expected, received };
    return undefined;
  }
}
