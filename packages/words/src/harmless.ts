/** Characters that would steer a terminal or reorder a line instead of being shown, for a class of a regular expression. */
export const STEERING =
  "\\u0000-\\u001f\\u007f-\\u009f\\u061c\\u200e\\u200f\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069\\ufeff";
const ANY_STEERING = new RegExp(`[${STEERING}]`, "g");
const SPACING = /[\t\n\r]+/g;

/**
 * A text from a file or the command line, fit to be shown on one line: breaks and tabs become a blank, control characters
 * and marks that turn the direction of writing are spelled out as `\u{1b}`.
 */
export function harmless(text: string): string {
  return text.replace(SPACING, " ").replace(ANY_STEERING, spellOut);
}

/** A character by its number: `\u{1b}`. */
export function spellOut(char: string): string {
  return `\\u{${(char.codePointAt(0) as number).toString(16)}}`;
}
