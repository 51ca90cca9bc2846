/** A text made plain, with where each of its UTF-16 units stands in the text as given. */
export interface CleanText {
  readonly text: string;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

// Zero-width characters, marks of direction, soft hyphens and variation selectors show nothing and say nothing.
const INVISIBLE = /\p{Cf}|\p{Variation_Selector}/u;
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}]/u;
const HAS_COMPATIBLE = /[\p{No}\u{ff10}-\u{ff19}]/u;

const each = (characters: string, plain: string) => [...characters].map((one): [string, string] => [one, plain]);

/** Characters that mean the same here, written as one. */
const SAME: ReadonlyMap<string, string> = new Map([
  ...each("‐‑‒–—―−", "-"),
  ...each("’‘ʼ´`", "'"),
  ...each("“”″", '"'),
  ...each("×✕", "x"),
  ...each("⁄∕／", "/"),
  ...each("（[", "("),
  ...each("）]", ")"),
  ["，", ","],
  // What is left of a tag that never closes must not look like one.
  ...each("<>", " "),
]);

/**
 * Makes a text plain for reading: invisible characters and markup go, control characters become spaces, the
 * dashes, slashes and quotes become one of each, and fractions of one character become digits ("½" is " 1/2").
 */
export function cleanText(given: string): CleanText {
  let text = "";
  const starts: number[] = [];
  const ends: number[] = [];
  for (let at = 0; at < given.length; ) {
    const tagEnd = given[at] === "<" ? findTagEnd(given, at) : undefined;
    const character = String.fromCodePoint(given.codePointAt(at) as number);
    const piece = tagEnd === undefined ? toPlain(character) : " ";
    const end = tagEnd ?? at + character.length;
    text += piece;
    for (let unit = 0; unit < piece.length; unit++) {
      starts.push(at);
      ends.push(end);
    }
    at = end;
  }
  return { text, starts, ends };
}

function toPlain(character: string): string {
  const same = SAME.get(character);
  if (same !== undefined) return same;
  if (character >= " " && character <= "~") return character;
  if (INVISIBLE.test(character)) return "";
  if (CONTROL.test(character)) return " ";
  if (!HAS_COMPATIBLE.test(character)) return character;
  // Compatibility decomposition writes every vulgar fraction of Unicode as digits around a fraction slash.
  const digits = character.normalize("NFKC").replace("⁄", "/");
  return digits.includes("/") ? ` ${digits}` : digits;
}

/** The end of the tag that opens at `at`; undefined where it opens none. */
function findTagEnd(given: string, at: number): number | undefined {
  if (!/[a-z/!]/i.test(given[at + 1] ?? "")) return undefined;
  const end = given.indexOf(">", at);
  return end < 0 ? undefined : end + 1;
}
