/** Which rules to look at again once a bound has moved. */
export class Agenda {
  readonly isDue: Uint8Array;
  /** Rules by bound: `rules[first[b] .. first[b + 1])`. */
  private readonly first: Int32Array;
  private readonly rules: Int32Array;

  /** `watches` holds pairs of a bound and a rule that depends on it; all rules are due at first. */
  constructor(bounds: number, rules: number, watches: readonly number[]) {
    this.isDue = new Uint8Array(rules).fill(1);
    const first = new Int32Array(bounds + 1);
    for (let k = 0; k < watches.length; k += 2) {
      const b = watches[k] as number;
      first[b + 1] = (first[b + 1] as number) + 1;
    }
    for (let b = 0; b < bounds; b++) first[b + 1] = (first[b + 1] as number) + (first[b] as number);
    this.rules = new Int32Array(watches.length / 2);
    const next = first.slice();
    for (let k = 0; k < watches.length; k += 2) {
      const b = watches[k] as number;
      this.rules[next[b] as number] = watches[k + 1] as number;
      next[b] = (next[b] as number) + 1;
    }
    this.first = first;
  }

  touch(b: number): void {
    const { first, rules, isDue } = this;
    const end = first[b + 1] as number;
    for (let k = first[b] as number; k < end; k++) isDue[rules[k] as number] = 1;
  }

  clear(): void {
    this.isDue.fill(0);
  }
}
