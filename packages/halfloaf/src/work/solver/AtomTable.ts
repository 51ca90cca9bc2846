import { FLIP, type Literal, VALUE } from "./literal.ts";

/**
 * Numbers the literals that are open at the start without gaps.
 *
 * The literals [v >= t] with low < t <= high of all variables come first, in order: these are the **atoms**, one for
 * each literal and its negation. The **slot** of a literal is its number among all literals; literals of one bound
 * have neighbouring slots, so raising a bound passes over a run of slots.
 */
export class AtomTable {
  readonly atoms: number;
  readonly slots: number;
  /** slot = slotBase[bound] + (literal & 0xffff) */
  readonly slotBase: Int32Array;
  readonly literalOfAtom: Int32Array;

  constructor(bounds: Int32Array) {
    const n = bounds.length >> 1;
    this.slotBase = new Int32Array(2 * n);
    let atoms = 0;
    const widths = new Int32Array(n);
    for (let v = 0; v < n; v++) {
      const low = bounds[2 * v] as number;
      const beyond = (bounds[2 * v + 1] as number) ^ FLIP;
      widths[v] = Math.max(0, beyond - low - 1);
      this.slotBase[2 * v] = atoms - (low & VALUE) - 1;
      atoms += widths[v] as number;
    }
    this.atoms = atoms;
    this.slots = 2 * atoms;
    this.literalOfAtom = new Int32Array(atoms);
    for (let v = 0, slot = atoms; v < n; v++) {
      const [low, high] = [bounds[2 * v] as number, bounds[2 * v + 1] as number];
      this.slotBase[2 * v + 1] = slot - (high & VALUE) - 1;
      slot += widths[v] as number;
      const base = (this.slotBase[2 * v] as number) - (low & ~VALUE);
      for (let k = 1; k <= (widths[v] as number); k++) this.literalOfAtom[base + low + k] = low + k;
    }
  }

  slotOf(literal: Literal): number {
    return (this.slotBase[literal >>> 16] as number) + (literal & VALUE);
  }

  atomOf(literal: Literal): number {
    return this.slotOf((literal & 0x10000) === 0 ? literal : literal ^ FLIP);
  }
}
