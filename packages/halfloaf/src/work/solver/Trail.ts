import { atLeast, atMost, FLIP, type Literal, VALUE, ZERO } from "./literal.ts";

/** Why an entry holds: the kind of rule in the three lowest bits of `why`, the index of the rule above them. */
export const WHY = { decision: 0, clause: 1, edge: 2, switch: 3, task: 4, overload: 5, limit: 6, energy: 7 } as const;

/**
 * The bounds of all variables and the order in which they came about.
 *
 * Every entry raises one bound from `entryOld` to `entryLiteral`, and names the rule that made it do so; the reason
 * itself, as literals, is only written out when a conflict asks for it. Bounds found before any decision become the
 * root: they leave no entries and need no reasons.
 */
export class Trail {
  readonly variables: number;
  readonly bounds: Int32Array;
  readonly root: Int32Array;
  /** Latest entry of each bound, or -1. */
  readonly last: Int32Array;
  readonly entryLiteral: Int32Array;
  readonly entryOld: Int32Array;
  /** The entry before of the same bound, or -1. */
  readonly entryPrevious: Int32Array;
  readonly entryWhy: Int32Array;
  readonly entryDetail: Int32Array;
  readonly entryLevel: Int32Array;
  readonly levelStart: Int32Array;
  size = 0;
  level = 0;
  /** The conflict: this literal would have to hold for this reason, but its negation does. */
  conflictLiteral: Literal = 0;
  conflictWhy = 0;
  conflictDetail = 0;

  constructor(lows: readonly number[], highs: readonly number[]) {
    this.variables = lows.length;
    this.bounds = new Int32Array(2 * lows.length);
    let steps = 16;
    for (let v = 0; v < lows.length; v++) {
      const [low, high] = [lows[v] as number, highs[v] as number];
      this.bounds[2 * v] = atLeast(v, low);
      this.bounds[2 * v + 1] = atMost(v, high);
      steps += Math.max(0, high - low) + 2;
    }
    this.root = this.bounds.slice();
    this.last = new Int32Array(2 * lows.length).fill(-1);
    // Every entry takes at least one value from a range, so the ranges bound the entries and the levels.
    this.entryLiteral = new Int32Array(steps);
    this.entryOld = new Int32Array(steps);
    this.entryPrevious = new Int32Array(steps);
    this.entryWhy = new Int32Array(steps);
    this.entryDetail = new Int32Array(steps);
    this.entryLevel = new Int32Array(steps);
    this.levelStart = new Int32Array(2 * steps);
  }

  low(variable: number): number {
    return ((this.bounds[2 * variable] as number) & VALUE) - ZERO;
  }

  high(variable: number): number {
    return ZERO - ((this.bounds[2 * variable + 1] as number) & VALUE);
  }

  isTrue(literal: Literal): boolean {
    return (this.bounds[literal >>> 16] as number) >= literal;
  }

  isFalse(literal: Literal): boolean {
    const opposite = literal ^ FLIP;
    return (this.bounds[opposite >>> 16] as number) >= opposite;
  }

  /** Makes the literal hold; false, with the conflict noted, where its negation holds already. */
  raise(literal: Literal, why: number, detail: number): boolean {
    const b = literal >>> 16;
    const old = this.bounds[b] as number;
    if (old >= literal) return true;
    const opposite = literal ^ FLIP;
    if ((this.bounds[b ^ 1] as number) >= opposite) return this.fail(literal, why, detail);
    const k = this.size++;
    this.entryLiteral[k] = literal;
    this.entryOld[k] = old;
    this.entryPrevious[k] = this.last[b] as number;
    this.entryWhy[k] = why;
    this.entryDetail[k] = detail;
    this.entryLevel[k] = this.level;
    this.last[b] = k;
    this.bounds[b] = literal;
    return true;
  }

  fail(literal: Literal, why: number, detail: number): false {
    this.conflictLiteral = literal;
    this.conflictWhy = why;
    this.conflictDetail = detail;
    return false;
  }

  openLevel(): void {
    this.levelStart[++this.level] = this.size;
  }

  /** Takes back all that was found above the level. */
  backTo(level: number): void {
    if (this.level <= level) return;
    const to = this.levelStart[level + 1] as number;
    for (let k = this.size - 1; k >= to; k--) {
      const b = (this.entryLiteral[k] as number) >>> 16;
      this.bounds[b] = this.entryOld[k] as number;
      this.last[b] = this.entryPrevious[k] as number;
    }
    this.size = to;
    this.level = level;
  }

  /** Makes what is known at level 0 the root. */
  settleRoot(): void {
    for (let k = 0; k < this.size; k++) this.last[(this.entryLiteral[k] as number) >>> 16] = -1;
    this.size = 0;
    this.root.set(this.bounds);
  }

  /** The strongest literal of a bound when the trail had `at` entries. */
  boundAt(b: number, at: number): Literal {
    let k = this.last[b] as number;
    while (k >= at) k = this.entryPrevious[k] as number;
    return k < 0 ? (this.root[b] as number) : (this.entryLiteral[k] as number);
  }

  /** The entry that first made a true literal hold; -1 for the root. */
  entryOf(literal: Literal): number {
    const b = literal >>> 16;
    if ((this.root[b] as number) >= literal) return -1;
    let k = this.last[b] as number;
    while ((this.entryOld[k] as number) >= literal) k = this.entryPrevious[k] as number;
    return k;
  }
}
