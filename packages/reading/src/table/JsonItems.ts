/** One element of the list that is looked for: its JSON text and where it begins, line and column counted from 1. */
export interface JsonItem {
  readonly line: number;
  readonly column: number;
  /** Absent where the element is too long or too deep to be read. */
  readonly text?: string;
}

const MOST_CHARACTERS = 1 << 22;
const MOST_DEPTH = 64;
const MOST_KEY = 200;

const QUOTE = 34;
const BACKSLASH = 92;
const LF = 10;
const OPENING = new Set([91, 123]);
const CLOSING = new Set([93, 125]);
const BETWEEN = new Set([9, 10, 13, 32, 44, 58]);

/**
 * Cuts a JSON text that comes in pieces into the elements of one list: the list that stands under one of `keys` of the
 * outermost object, or that is the outermost value itself. Only one element is held at a time, so a file of any length
 * is read in constant memory. What stands outside the elements is not checked further than it takes to find them.
 * **Source**: RFC 8259.
 */
export class JsonItems {
  /** True once the list was found. */
  isFound = false;
  /** Open braces and brackets; above 0 at the end where the text was cut off. */
  depth = 0;
  private readonly keys: ReadonlySet<string>;
  private line = 1;
  /** Characters before this piece, and before the line that is read. */
  private offset = 0;
  private lineStart = 0;
  private isInString = false;
  private isEscaped = false;
  private key: string | undefined;
  /** Depth inside the list; undefined while outside of it. */
  private listDepth: number | undefined;
  private isKeyOpen = false;
  private outermost = 0;
  private item: { line: number; column: number; parts: string[]; length: number; isTooMuch: boolean } | undefined;

  constructor(keys: Iterable<string>) {
    this.keys = new Set(keys);
  }

  /** The elements that this piece completes. */
  push(piece: string): JsonItem[] {
    const items: JsonItem[] = [];
    let from = 0;
    for (let at = 0; at < piece.length; at++) {
      if (this.item !== undefined && this.depth > (this.listDepth as number)) at = this.passWithin(piece, at);
      if (at >= piece.length) break;
      const hadItem = this.item !== undefined;
      const end = this.take(piece.charCodeAt(at), piece, at);
      if (!hadItem && this.item !== undefined) from = at;
      if (end !== undefined) items.push(this.finish(piece.slice(from, end)));
    }
    if (this.item !== undefined) this.keep(piece.slice(from));
    this.offset += piece.length;
    return items;
  }

  /** Passes over what is within an element, which is nearly all of the file, and gives the place that ends it. */
  private passWithin(piece: string, from: number): number {
    let at = from;
    for (; at < piece.length; at++) {
      const code = piece.charCodeAt(at);
      if (this.isInString) {
        if (this.isEscaped) this.isEscaped = false;
        else if (code === BACKSLASH) this.isEscaped = true;
        else if (code === QUOTE) this.isInString = false;
      } else if (code === QUOTE) this.isInString = true;
      else if (code === 123 || code === 91) this.open(code);
      else if (code === 125 || code === 93) {
        if (this.depth - 1 === this.listDepth) return at;
        this.depth--;
      } else if (code === LF) this.beginLine(at);
    }
    return at;
  }

  /** Moves on by one character; gives where the open element ends if it is now complete. */
  private take(code: number, piece: string, at: number): number | undefined {
    if (code === LF) this.beginLine(at);
    if (this.isInString) return this.takeInString(code, piece[at] as string);
    if (BETWEEN.has(code) || CLOSING.has(code)) {
      // A bare value ends before the character that ends it.
      const isBareEnd = this.item !== undefined && this.depth === this.listDepth;
      if (CLOSING.has(code)) this.close();
      if (isBareEnd) return at;
      return CLOSING.has(code) && this.item !== undefined && this.depth === this.listDepth ? at + 1 : undefined;
    }
    if (this.item === undefined && this.listDepth !== undefined && this.depth === this.listDepth) this.begin(at);
    if (code === QUOTE) {
      this.isInString = true;
      this.isKeyOpen = this.depth === 1 && this.outermost === 123;
      if (this.isKeyOpen) this.key = "";
    } else if (OPENING.has(code)) this.open(code);
    return undefined;
  }

  private beginLine(at: number): void {
    this.line++;
    this.lineStart = this.offset + at + 1;
  }

  private takeInString(code: number, character: string): undefined {
    if (this.isEscaped) this.isEscaped = false;
    else if (code === BACKSLASH) this.isEscaped = true;
    else if (code === QUOTE) {
      this.isInString = false;
      return;
    }
    if (this.isKeyOpen && this.key !== undefined && this.key.length < MOST_KEY) this.key += character;
  }

  private open(code: number): void {
    if (this.depth === 0) this.outermost = code;
    const isList = code === 91 && this.listDepth === undefined;
    const isNamed = this.depth === 1 && this.outermost === 123 && this.key !== undefined && this.keys.has(this.key);
    this.depth++;
    if (isList && !this.isFound && (this.depth === 1 || isNamed)) {
      this.isFound = true;
      this.listDepth = this.depth;
    }
    if (this.item && this.depth - (this.listDepth as number) > MOST_DEPTH) this.drop();
  }

  private close(): void {
    this.depth--;
    if (this.listDepth !== undefined && this.depth < this.listDepth) this.listDepth = undefined;
  }

  private begin(at: number): void {
    this.item = {
      line: this.line,
      column: this.offset + at - this.lineStart + 1,
      parts: [],
      length: 0,
      isTooMuch: false,
    };
  }

  private keep(part: string): void {
    if (this.item === undefined) return;
    this.item.length += part.length;
    if (this.item.length > MOST_CHARACTERS) this.drop();
    else if (!this.item.isTooMuch) this.item.parts.push(part);
  }

  private drop(): void {
    if (this.item === undefined) return;
    this.item.isTooMuch = true;
    this.item.parts = [];
  }

  private finish(part: string): JsonItem {
    this.keep(part);
    const { line, column, parts, isTooMuch } = this.item as NonNullable<typeof this.item>;
    this.item = undefined;
    return isTooMuch ? { line, column } : { line, column, text: parts.join("") };
  }
}
