/** What a line of a list is numbered or marked with: "1.", "2)", "Step 3:", "Step 3" alone, a bullet or a box to tick. */
const NUMBERING = /^\s*(?:step\s*)?\d{1,2}\s*[.):]\s+|^\s*step\s+\d{1,2}(?!\d)\s*[-–—:.)]?\s*|^\s*[-–•*▪◦·☐□]\s*/i;

/** A line without its number or mark; nothing is left of one that is only that. */
export function withoutNumbering(line: string): string {
  return line.replace(NUMBERING, "").trim();
}
