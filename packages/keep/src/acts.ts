import { deviceOf, type Edit, type RecordEvent } from "halfloaf/kitchen/record";

/** A row of the ledger: something that happened, or something that was set by hand. */
export type LedgerRow = RecordEvent | Edit;

/** What was written together, and is taken back together. */
export interface Act {
  /** Id of its first row. */
  readonly id: string;
  /** Who wrote it: the id of the opening of the kitchen on a device. */
  readonly writer: string;
  readonly atMs: number;
  /** Id of the eater who did it, where that was said. */
  readonly by?: string;
  readonly rows: readonly LedgerRow[];
  /** Id of the act that it takes back. */
  readonly undoes?: string;
}

/** The acts of a record in the order in which they were written; rows that come last are added without a look at the others. */
export class ActLog {
  readonly #acts = new Map<string, Act>();
  readonly #actOfRow = new Map<string, string>();
  #listed: readonly Act[] | undefined;

  /** Rows in the order in which they were written. */
  constructor(written: readonly LedgerRow[]) {
    this.add(written);
  }

  /** All acts, the first written first. */
  get acts(): readonly Act[] {
    this.#listed ??= [...this.#acts.values()];
    return this.#listed;
  }

  /** Adds rows that were written after all that are there, in their order. */
  add(written: readonly LedgerRow[]): void {
    const touched = new Map<string, LedgerRow[]>();
    for (const row of written) {
      const id = row.act ?? row.id;
      this.#actOfRow.set(row.id, id);
      const rows = touched.get(id);
      if (rows === undefined) touched.set(id, [...(this.#acts.get(id)?.rows ?? []), row]);
      else rows.push(row);
    }
    for (const [id, rows] of touched) this.#acts.set(id, this.#toAct(id, rows));
    this.#listed = undefined;
  }

  #toAct(id: string, rows: readonly LedgerRow[]): Act {
    const first = rows[0] as LedgerRow;
    const undoes = this.#undoneBy(rows);
    return {
      id,
      writer: deviceOf(first.id),
      atMs: first.atMs,
      rows,
      ...(first.by === undefined ? {} : { by: first.by }),
      ...(undoes === undefined ? {} : { undoes }),
    };
  }

  #undoneBy(rows: readonly LedgerRow[]): string | undefined {
    for (const row of rows) {
      if (row.kind === "edited" && row.undoes !== undefined) return row.undoes;
      const first = row.kind === "withdrawn" ? row.events[0] : undefined;
      if (first !== undefined) return this.#actOfRow.get(first) ?? first;
    }
    return undefined;
  }
}

/** What can be taken back next, and what was taken back last. */
export interface Undoable {
  readonly undo?: Act;
  readonly redo?: Act;
}

/**
 * The act of the given writers that would be undone next, and the taking-back that would be undone itself. A new act
 * clears what could be redone; acts of others are left out of it.
 */
export function findUndoable(acts: readonly Act[], isOurs: (writer: string) => boolean): Undoable {
  const done: Act[] = [];
  const undone: { readonly act: Act; readonly by: Act }[] = [];
  for (const act of acts.filter(({ writer }) => isOurs(writer))) {
    if (act.undoes === undefined) {
      done.push(act);
      undone.length = 0;
      continue;
    }
    const again = undone.findLastIndex(({ by }) => by.id === act.undoes);
    const at = done.findLastIndex(({ id }) => id === act.undoes);
    if (again >= 0) done.push(...undone.splice(again, 1).map(({ act: back }) => back));
    else if (at >= 0) undone.push(...done.splice(at, 1).map((back) => ({ act: back, by: act })));
  }
  const [undo, redo] = [done.at(-1), undone.at(-1)?.by];
  return { ...(undo === undefined ? {} : { undo }), ...(redo === undefined ? {} : { redo }) };
}
