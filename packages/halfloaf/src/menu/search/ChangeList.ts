import type { Change } from "./WeekState.ts";

/** The changes of one move after another, in the same objects each time: a search makes some hundred thousand moves a second. */
export class ChangeList {
  private count = 0;
  private readonly changes: Change[] = [];
  /** The first of them, by how many. */
  private readonly firsts: (readonly Change[])[] = [[]];

  clear(): void {
    this.count = 0;
  }

  add(sitting: number, dish: number): void {
    const change = this.changes[this.count++];
    if (change === undefined) this.changes.push({ sitting, dish });
    else {
      change.sitting = sitting;
      change.dish = dish;
    }
  }

  /** The changes since `clear`, good until the next `add`. */
  list(): readonly Change[] {
    const { count } = this;
    let list = this.firsts[count];
    if (list === undefined) {
      list = this.changes.slice(0, count);
      this.firsts[count] = list;
    }
    return list;
  }
}
