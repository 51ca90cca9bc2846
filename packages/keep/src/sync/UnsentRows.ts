/** A row with its id, as far as it matters here. */
interface NamedRow {
  readonly id: string;
  readonly act?: unknown;
}

/** Rows, and characters, that are sent at once where acts allow it; and the most that one message may hold. */
const USUAL = { rows: 200, chars: 300_000 };
const MOST_ROWS = 500;

/** Rows of this device that the server has not told as kept, in the order in which they were written. */
export class UnsentRows {
  readonly #rows = new Map<string, NamedRow>();

  get size(): number {
    return this.#rows.size;
  }

  add(row: NamedRow): void {
    this.#rows.set(row.id, row);
  }

  remove(id: string): void {
    this.#rows.delete(id);
  }

  ids(): string[] {
    return [...this.#rows.keys()];
  }

  clear(): void {
    this.#rows.clear();
  }

  /** The rows to be sent next: whole acts, unless one act alone is more than a message may hold. */
  next(messageChars: number): readonly NamedRow[] {
    const batch: NamedRow[] = [];
    let [chars, act] = [0, ""];
    for (const row of this.#rows.values()) {
      const own = typeof row.act === "string" ? row.act : row.id;
      const length = JSON.stringify(row).length + 1;
      const isEnough = batch.length >= USUAL.rows || chars + length > USUAL.chars;
      const isTooMuch = batch.length >= MOST_ROWS || chars + length > messageChars;
      if (batch.length > 0 && (isTooMuch || (isEnough && own !== act))) break;
      batch.push(row);
      chars += length;
      act = own;
    }
    return batch;
  }
}

/** Reads a row as far as its id; undefined where it has none and can't be sent. */
export function nameRow(row: unknown): NamedRow | undefined {
  const hasId = typeof row === "object" && row !== null && "id" in row && typeof row.id === "string";
  return hasId ? (row as NamedRow) : undefined;
}
