import type { MenuProblem } from "../problem.ts";

/** Which dish stands at each sitting, and at which sittings each dish stands. All whole numbers. */
export class ServingLists {
  readonly dishOf: Int16Array;
  /** Sittings of each dish, ascending: from `dish * sittings` on, so many as `counts[dish]`. */
  readonly lists: Int16Array;
  readonly counts: Int32Array;
  private readonly K: number;

  constructor(problem: MenuProblem) {
    this.K = problem.sittings.length;
    this.dishOf = new Int16Array(this.K).fill(-1);
    this.lists = new Int16Array(problem.dishes.length * this.K);
    this.counts = new Int32Array(problem.dishes.length);
  }

  /** The sittings of a dish, ascending, as a fresh array. */
  of(dish: number): number[] {
    const from = dish * this.K;
    return Array.from(this.lists.subarray(from, from + (this.counts[dish] as number)));
  }

  /** Puts a dish (-1 = none) at a sitting in place of the one there. */
  place(sitting: number, dish: number): void {
    const old = this.dishOf[sitting] as number;
    if (old >= 0) this.remove(old, sitting);
    this.dishOf[sitting] = dish;
    if (dish >= 0) this.add(dish, sitting);
  }

  private remove(dish: number, sitting: number): void {
    const from = dish * this.K;
    const n = this.counts[dish] as number;
    let i = from;
    while (this.lists[i] !== sitting) i++;
    for (; i < from + n - 1; i++) this.lists[i] = this.lists[i + 1] as number;
    this.counts[dish] = n - 1;
  }

  private add(dish: number, sitting: number): void {
    const from = dish * this.K;
    const n = this.counts[dish] as number;
    let i = from + n;
    while (i > from && (this.lists[i - 1] as number) > sitting) {
      this.lists[i] = this.lists[i - 1] as number;
      i--;
    }
    this.lists[i] = sitting;
    this.counts[dish] = n + 1;
  }
}
