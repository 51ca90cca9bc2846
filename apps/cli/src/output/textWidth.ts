/** Scripts and pictures that take two columns of a terminal. **Source**: Unicode Standard Annex 11, classes W and F (coarse). */
const WIDE =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/u;
const SGR = new RegExp(`${String.fromCharCode(0x1b)}\\[\\d+m`, "g");

const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });

/** Columns that a text takes on a terminal; colours take none. */
export function textWidth(text: string): number {
  let width = 0;
  for (const { segment } of graphemes.segment(text.replace(SGR, ""))) width += WIDE.test(segment) ? 2 : 1;
  return width;
}

/** The text filled up with blanks to a width, at its end or, for figures, at its start; a longer one stays as it is. */
export function pad(text: string, width: number, side: "end" | "start" = "end"): string {
  const blanks = " ".repeat(Math.max(0, width - textWidth(text)));
  return side === "end" ? text + blanks : blanks + text;
}

/** The parts of a text that each fit a width, one or more signs each. */
export function cutToWidth(text: string, width: number): string[] {
  const parts: string[] = [];
  let part = "";
  for (const { segment } of graphemes.segment(text)) {
    if (part !== "" && textWidth(part + segment) > width) {
      parts.push(part);
      part = "";
    }
    part += segment;
  }
  return [...parts, part];
}
