import { harmless } from "../harmless.ts";

const MOST_SIGNS = 60;

/** What is said of a value that is not there, and of a list too long to be shown. */
export interface ValueWords {
  readonly nothing: string;
  readonly listOf: (count: number) => string;
}

/** A value as a fault shows it: on one line, harmless, shortened. */
export function showValue(value: unknown, words: ValueWords): string {
  if (value === undefined) return words.nothing;
  if (Array.isArray(value) && value.length > 4) return words.listOf(value.length);
  return shorten(harmless(typeof value === "object" && value !== null ? tellObject(value) : JSON.stringify(value)));
}

/** A text of the input in quotation marks, harmless and shortened. */
export function quote(text: string): string {
  return `"${shorten(harmless(text))}"`;
}

/** The value at a path; undefined where there is none. */
export function valueAt(root: unknown, path: readonly (string | number)[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string | number, unknown>)[key];
  }
  return value;
}

/** A path as it is written in JavaScript: `packs[3].priceMinor`. */
export function tellPath(path: readonly (string | number)[]): string {
  return path
    .map((key, at) => (typeof key === "number" ? `[${key}]` : `${at > 0 ? "." : ""}${harmless(key)}`))
    .join("");
}

/** Members of an object without brackets around names, so that the value reads as it stands in the file. */
function tellObject(value: object): string {
  const text = JSON.stringify(value, (_key, member) =>
    typeof member === "object" && member !== null && member !== value ? "..." : member,
  );
  return text.replaceAll('"..."', "...");
}

function shorten(text: string): string {
  const signs = Array.from(text);
  return signs.length <= MOST_SIGNS ? text : `${signs.slice(0, MOST_SIGNS - 3).join("")}...`;
}
