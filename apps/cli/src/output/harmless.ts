/** Characters that would steer a terminal or reorder a line instead of being shown. */
const STEERING =
  "\\u0000-\\u001f\\u007f-\\u009f\\u061c\\u200e\\u200f\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069\\ufeff";
const ANY_STEERING = new RegExp(`[${STEERING}]`, "g");
const STEERING_BUT_BREAKS = new RegExp(`(?!\\n)[${STEERING}]`, "g");
const SPACING = /[\t\n\r]+/g;

/**
 * A text from a file or the command line, fit to be shown on one line: breaks and tabs become a blank, control characters
 * and marks that turn the direction of writing are spelled out as `\u{1b}`.
 */
export function harmless(text: string): string {
  return text.replace(SPACING, " ").replace(ANY_STEERING, spellOut);
}

/** As `harmless`, but breaks between lines stay. */
export function harmlessLines(text: string): string {
  return text.replace(STEERING_BUT_BREAKS, spellOut);
}

/** A value as JSON text over several lines; what could steer a terminal is escaped, which leaves the data the same. */
export function toJsonText(value: unknown): string {
  const text = JSON.stringify(value, undefined, 2);
  return text.replace(STEERING_BUT_BREAKS, (char) => `\\u${codeOf(char).padStart(4, "0")}`);
}

function spellOut(char: string): string {
  return `\\u{${codeOf(char)}}`;
}

function codeOf(char: string): string {
  return (char.codePointAt(0) as number).toString(16);
}
