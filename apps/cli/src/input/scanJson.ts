/** Where a text stops being JSON, and why; the offset counts UTF-16 code units from 0. */
export interface JsonFault {
  readonly offset: number;
  readonly expected: string;
}

/** An object or list that is being read, and the key or position reached in it. */
interface Level {
  readonly kind: "object" | "array";
  key: string | number;
}

/** Is told where a value starts, and by the keys of the levels around it the way to it; the levels change afterwards. */
export type OnValue = (levels: readonly Readonly<Level>[], offset: number) => void;

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|true\b|false\b|null\b/y;

/**
 * Reads a text by the grammar of JSON without building its value: the first fault, or undefined where it is sound.
 * `onValue` is told every value in order. A depth of any size is read.
 * **Source**: RFC 8259.
 */
export function scanJson(text: string, onValue?: OnValue): JsonFault | undefined {
  const levels: Level[] = [];
  let at = match(SPACE, text, 0);
  let wantsValue = true;
  while (true) {
    if (wantsValue) {
      onValue?.(levels, at);
      const opened = openLevel(text, at);
      if (opened !== undefined) {
        at = match(SPACE, text, at + 1);
        levels.push(opened);
        if (text[at] !== closerOf(opened)) {
          const key = opened.kind === "object" ? readKey(text, at, levels) : at;
          if (typeof key !== "number") return key;
          at = key;
          continue;
        }
      } else {
        const end = matchEither(text, at);
        if (end === undefined) return toValueFault(text, at);
        at = match(SPACE, text, end);
      }
      wantsValue = false;
    }
    const level = levels.at(-1);
    if (level === undefined) return at === text.length ? undefined : { offset: at, expected: "the end of the file" };
    if (text[at] === closerOf(level)) {
      levels.pop();
      at = match(SPACE, text, at + 1);
    } else if (text[at] === ",") {
      at = match(SPACE, text, at + 1);
      if (level.kind === "array") level.key = (level.key as number) + 1;
      const next = level.kind === "object" ? readKey(text, at, levels) : at;
      if (typeof next !== "number") return next;
      at = next;
      wantsValue = true;
    } else return { offset: at, expected: `a comma or "${closerOf(level)}"` };
  }
}

/** The place of a fault as people count: lines and columns from 1. */
export function toLineAndColumn(text: string, offset: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length, column: Array.from(before.at(-1) as string).length + 1 };
}

function match(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

function matchEither(text: string, at: number): number | undefined {
  const end = match(text[at] === '"' ? STRING : SCALAR, text, at);
  return end === at ? undefined : end;
}

function openLevel(text: string, at: number): Level | undefined {
  if (text[at] === "{") return { kind: "object", key: "" };
  return text[at] === "[" ? { kind: "array", key: 0 } : undefined;
}

function closerOf({ kind }: Level): string {
  return kind === "object" ? "}" : "]";
}

/** Reads a key and its colon into the innermost level; the offset of the value, or the fault. */
function readKey(text: string, at: number, levels: readonly Level[]): number | JsonFault {
  const end = match(STRING, text, at);
  if (end === at) return { offset: at, expected: "a key in double quotes" };
  (levels.at(-1) as Level).key = JSON.parse(text.slice(at, end)) as string;
  const colon = match(SPACE, text, end);
  return text[colon] === ":" ? match(SPACE, text, colon + 1) : { offset: colon, expected: "a colon after the key" };
}

function toValueFault(text: string, at: number): JsonFault {
  if (text[at] === '"')
    return { offset: at, expected: "a text in double quotes, ended on its line and soundly escaped" };
  if (text[at] === "'") return { offset: at, expected: "double quotes instead of single ones" };
  return { offset: at, expected: "a value" };
}
