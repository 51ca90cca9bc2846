import type { LinearRow } from "halfloaf/menu/linear";
import type { LpSession } from "./LpSession.ts";
import { SparseRows } from "./SparseRows.ts";

/** Breaks smaller than this are left alone. */
const LEAST_VIOLATION = 1e-4;

/** Rows that hold anyway and enter the model only once a point breaks them. */
export class RowPool {
  private readonly rows = new SparseRows();
  private readonly source: LinearRow[] = [];
  private readonly inside: boolean[] = [];
  private entered: number[] = [];
  private readonly session: LpSession;
  private readonly coreRows: number;

  /** To be created before any other row enters the session. */
  constructor(session: LpSession) {
    this.session = session;
    this.coreRows = session.rowCount;
  }

  add(rows: readonly LinearRow[]): void {
    for (const row of rows) {
      this.source.push(row);
      this.inside.push(false);
      this.rows.push(row, this.session.columnAt);
    }
  }

  /** Brings the `most` worst broken rows into the model and tells how many. */
  enter(point: ArrayLike<number>, most: number): number {
    const broken: { row: number; violation: number }[] = [];
    for (let row = 0; row < this.source.length; row++) {
      if (this.inside[row]) continue;
      const violation = this.rows.violation(row, point);
      if (violation > LEAST_VIOLATION) broken.push({ row, violation });
    }
    const chosen = broken.sort((a, b) => b.violation - a.violation).slice(0, most);
    for (const { row } of chosen) {
      this.inside[row] = true;
      this.entered.push(row);
    }
    this.session.addRows(chosen.map(({ row }) => this.source[row] as LinearRow));
    return chosen.length;
  }

  /** Takes rows that do not bind back out; older bases cannot be used any more. */
  dropLoose(): void {
    const stays = this.session.dropLooseRows(this.coreRows);
    this.entered.forEach((row, i) => {
      if (!stays[i]) this.inside[row] = false;
    });
    this.entered = this.entered.filter((_, i) => stays[i]);
  }
}
