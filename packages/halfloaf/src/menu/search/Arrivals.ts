/** Ways kept for each need; more would cost more to look through than they spare. */
const MOST_WAYS = 8;

/**
 * Ways in which a search has come to a need: what of it was still to be had, and what was spent by then. A way that
 * comes with no less to be had and no less spent than an earlier one hardly ever ends cheaper.
 */
export class Arrivals {
  private readonly counts: Uint8Array;
  private readonly rest: Float64Array;
  private readonly spent: Float64Array;

  constructor(needs: number) {
    this.counts = new Uint8Array(needs);
    this.rest = new Float64Array(needs * MOST_WAYS);
    this.spent = new Float64Array(needs * MOST_WAYS);
  }

  clear(): void {
    this.counts.fill(0);
  }

  /** True where an earlier way was as good in both; else this one is kept, in place of those that it betters. */
  isBettered(need: number, rest: number, spent: number): boolean {
    const from = need * MOST_WAYS;
    const count = this.counts[need] as number;
    let kept = 0;
    for (let k = from; k < from + count; k++) {
      const [oldRest, oldSpent] = [this.rest[k] as number, this.spent[k] as number];
      if (oldRest <= rest && oldSpent <= spent) return true;
      if (oldRest >= rest && oldSpent >= spent) continue;
      this.rest[from + kept] = oldRest;
      this.spent[from + kept++] = oldSpent;
    }
    const at = Math.min(kept, MOST_WAYS - 1);
    this.rest[from + at] = rest;
    this.spent[from + at] = spent;
    this.counts[need] = at + 1;
    return false;
  }
}
