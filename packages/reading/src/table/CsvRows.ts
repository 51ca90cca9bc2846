/** One row of a CSV file: the line it begins on, counted from 1, and its cells. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** Why the row cannot be trusted, in which case it has no cells; absent for a sound one. */
  readonly fault?: CsvFault;
}

/** Text behind a closing quotation mark, a quotation that never closes, a row longer than any row is. */
export type CsvFault = "text-after-quote" | "quote-unclosed" | "row-too-long";

const MOST_CHARACTERS = 1 << 17;
const MOST_CELLS = 4096;
const QUOTE = 34;
const LF = 10;
const CR = 13;

/** A row as far as it was found: where it ends, or that more text is needed. */
type Scan = { readonly cells: string[]; readonly end: number } | "open" | CsvFault;

/**
 * Takes the text of a CSV file in pieces and gives the rows that are complete. A quotation mark opens a quoted cell only
 * at the start of a cell; within one it is doubled. Lines end with LF, CR LF or CR. Blank lines are no rows. A faulty
 * row ends with its first line, so that the lines behind it are still read.
 * **Source**: RFC 4180, with other delimiters and line ends.
 */
export class CsvRows {
  private text = "";
  private pending: string[] = [];
  private pendingLength = 0;
  private line = 1;
  private readonly delimiter: number;
  private isLast = false;
  /** True while the rest of a line is passed over that was too long to be kept. */
  private isSkipping = false;

  constructor(delimiter: string) {
    this.delimiter = delimiter.charCodeAt(0);
  }

  /** The rows that this piece completes; with `isLast` what is left is the last row. */
  push(piece: string, isLast: boolean): CsvRow[] {
    this.isLast = isLast;
    this.pending.push(piece);
    this.pendingLength += piece.length;
    // Looking again only when the text has doubled keeps a long row in small pieces from being scanned over and over.
    if (!isLast && this.pendingLength < this.text.length) return [];
    this.text += this.pending.join("");
    this.pending = [];
    this.pendingLength = 0;
    const rows: CsvRow[] = [];
    let at = this.isSkipping ? this.passLine(0) : 0;
    while (at < this.text.length) {
      const scan = this.scan(at);
      if (scan === "open") break;
      if (typeof scan === "string") {
        if (this.isLineOpen(at) && this.text.length - at <= MOST_CHARACTERS) break;
        rows.push({ line: this.line, cells: [], fault: scan });
        at = this.passLine(at);
        continue;
      }
      const { end } = scan;
      if (scan.cells.length > 1 || scan.cells[0] !== "") rows.push({ line: this.line, cells: scan.cells });
      this.line += this.countLines(at, end);
      at = end;
    }
    this.text = this.text.slice(at);
    return rows;
  }

  private scan(from: number): Scan {
    const cells: string[] = [];
    let at = from;
    for (;;) {
      if (at - from > MOST_CHARACTERS || cells.length > MOST_CELLS) return "row-too-long";
      const cell = this.text.charCodeAt(at) === QUOTE ? this.scanQuoted(at) : this.scanPlain(at);
      if (typeof cell === "string") return cell;
      cells.push(cell.value);
      at = cell.end;
      if (at >= this.text.length) return this.isLast ? { cells, end: at } : this.waitOrRefuse(from);
      const next = this.text.charCodeAt(at);
      if (next === this.delimiter) at++;
      else if (next === LF) return { cells, end: at + 1 };
      else if (at + 1 < this.text.length) return { cells, end: at + (this.text.charCodeAt(at + 1) === LF ? 2 : 1) };
      // A CR at the very end may be half of a CR LF.
      else return this.isLast ? { cells, end: at + 1 } : "open";
    }
  }

  private scanPlain(from: number): { value: string; end: number } {
    let at = from;
    for (; at < this.text.length; at++) {
      const code = this.text.charCodeAt(at);
      if (code === this.delimiter || code === LF || code === CR) break;
    }
    return { value: this.text.slice(from, at), end: at };
  }

  private scanQuoted(from: number): { value: string; end: number } | "open" | CsvFault {
    let value = "";
    let at = from + 1;
    for (;;) {
      const close = this.text.indexOf('"', at);
      if (close < 0 || close - from > MOST_CHARACTERS) return this.isLast ? "quote-unclosed" : this.waitOrRefuse(from);
      value += this.text.slice(at, close);
      const next = this.text.charCodeAt(close + 1);
      if (next === QUOTE) {
        value += '"';
        at = close + 2;
        continue;
      }
      if (close + 1 >= this.text.length && !this.isLast) return "open";
      const isEnd = Number.isNaN(next) || next === this.delimiter || next === LF || next === CR;
      return isEnd ? { value, end: close + 1 } : "text-after-quote";
    }
  }

  private waitOrRefuse(from: number): "open" | CsvFault {
    return this.text.length - from > MOST_CHARACTERS ? "row-too-long" : "open";
  }

  /** True where the line from here on may go on in the next piece; a CR at the very end may be half of a CR LF. */
  private isLineOpen(from: number): boolean {
    const end = this.endOfLine(from);
    return !this.isLast && end >= this.text.length && this.text.charCodeAt(end - 1) !== LF;
  }

  private passLine(from: number): number {
    const end = this.endOfLine(from);
    this.isSkipping = this.isLineOpen(from);
    this.line += this.countLines(from, end);
    return end;
  }

  /** Behind the line end that follows `from`; the end of the text where no line end does. */
  private endOfLine(from: number): number {
    let at = from;
    while (at < this.text.length && this.text.charCodeAt(at) !== LF && this.text.charCodeAt(at) !== CR) at++;
    return Math.min(this.text.length, at + (this.text.startsWith("\r\n", at) ? 2 : 1));
  }

  private countLines(from: number, to: number): number {
    let lines = 0;
    for (let at = from; at < to; at++) {
      const code = this.text.charCodeAt(at);
      if (code === LF || (code === CR && this.text.charCodeAt(at + 1) !== LF)) lines++;
    }
    return lines;
  }
}
