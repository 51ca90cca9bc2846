import type { Edge } from "./ConstraintModel.ts";
import type { LiteralBuffer } from "./LiteralBuffer.ts";
import { FLIP, type Literal, TRUE, VALUE } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

/**
 * Minimal and maximal lags: x_to >= x_from + lag, some only where a switch is on.
 *
 * In bounds an edge is two **arcs**, y_q >= y_p + lag for (p, q) = (lower of from, lower of to) and, since
 * -x_from >= -x_to + lag, for (upper of to, upper of from). Where an arc is on,
 *
 *     [y_p >= m] and [when]  imply  [y_q >= m + lag]            for every m.
 *
 * Where y_p + lag is out of reach of y_q the switch goes off: [y_p >= m] and not [y_q >= m + lag] imply not [when],
 * for each m that both sides allow; the middle one is taken, so that neither side is asked for more than needed.
 */
export class EdgeNetwork {
  private readonly trail: Trail;
  /** Arcs by the bound they start from: `first[b] .. first[b + 1]`. */
  private readonly first: Int32Array;
  private readonly source: Int32Array;
  private readonly target: Int32Array;
  private readonly lag: Int32Array;
  private readonly when: Int32Array;
  /** Arcs that a literal of the bound switches on: `firstSwitched[b] .. firstSwitched[b + 1]` in `switched`. */
  private readonly firstSwitched: Int32Array;
  private readonly switched: Int32Array;

  constructor(trail: Trail, edges: readonly Edge[]) {
    this.trail = trail;
    const arcs = 2 * edges.length;
    this.source = new Int32Array(arcs);
    this.target = new Int32Array(arcs);
    this.lag = new Int32Array(arcs);
    this.when = new Int32Array(arcs);
    const sources = new Int32Array(arcs);
    for (let k = 0; k < edges.length; k++) {
      const { from, to } = edges[k] as Edge;
      sources[2 * k] = 2 * from;
      sources[2 * k + 1] = 2 * to + 1;
    }
    this.first = indexFrom(trail.bounds.length, sources);
    // Of each bound, arcs that are always on come first: what they say needs no further reason.
    const next = this.first.slice();
    for (const isAlways of [true, false]) {
      for (let k = 0; k < edges.length; k++) {
        const { from, to, lag, when } = edges[k] as Edge;
        if ((when === TRUE) !== isAlways) continue;
        this.put(next, 2 * from, 2 * to, lag, when);
        this.put(next, 2 * to + 1, 2 * from + 1, lag, when);
      }
    }
    const bySwitch = Array.from(this.when, (_, a) => a).filter((a) => this.when[a] !== TRUE);
    const switchOf = (a: number) => (this.when[a] as number) >>> 16;
    bySwitch.sort((a, b) => switchOf(a) - switchOf(b));
    this.switched = Int32Array.from(bySwitch);
    this.firstSwitched = indexFrom(trail.bounds.length, Int32Array.from(bySwitch, switchOf));
  }

  private put(next: Int32Array, source: number, target: number, lag: number, when: Literal): void {
    const a = next[source] as number;
    next[source] = a + 1;
    this.source[a] = source;
    this.target[a] = target;
    this.lag[a] = lag;
    this.when[a] = when;
  }

  /** Brings every arc to rest at level 0; false = conflict. */
  start(): boolean {
    for (let a = 0; a < this.source.length; a++) if (!this.pass(a)) return false;
    return true;
  }

  /** Passes on that a bound was raised from `old`; false = conflict. */
  follow(b: number, old: Literal): boolean {
    const { first, trail, target, lag, when } = this;
    const { bounds } = trail;
    const end = first[b + 1] as number;
    for (let a = first[b] as number; a < end; a++) {
      if (when[a] !== TRUE) {
        if (!this.pass(a)) return false;
        continue;
      }
      const q = target[a] as number;
      const implied = (q << 16) + ((bounds[b] as number) & VALUE) + (lag[a] as number);
      if (implied > (bounds[q] as number) && !trail.raise(implied, WHY.edge | (a << 3), 0)) return false;
    }
    const endSwitched = this.firstSwitched[b + 1] as number;
    for (let k = this.firstSwitched[b] as number; k < endSwitched; k++) {
      const a = this.switched[k] as number;
      const on = when[a] as number;
      if (on > old && on <= (bounds[b] as number) && !this.pass(a)) return false;
    }
    return true;
  }

  private pass(a: number): boolean {
    const { trail } = this;
    const { bounds } = trail;
    const p = this.source[a] as number;
    const q = this.target[a] as number;
    const lag = this.lag[a] as number;
    const when = this.when[a] as number;
    const implied = (q << 16) + ((bounds[p] as number) & VALUE) + lag;
    if (implied <= (bounds[q] as number)) return true;
    if ((bounds[when >>> 16] as number) >= when) return trail.raise(implied, WHY.edge | (a << 3), 0);
    const opposite = implied ^ FLIP;
    const against = bounds[q ^ 1] as number;
    if (against < opposite) return true;
    // y_p may be weaker by as much as the opposite bound is stronger than needed.
    const middle = ((bounds[p] as number) & VALUE) - ((against - opposite) >> 1);
    return trail.raise(when ^ FLIP, WHY.switch | (a << 3), middle);
  }

  /** The literals that made arc `a` imply the literal. */
  explain(a: number, implied: Literal, out: LiteralBuffer): void {
    out.push(((this.source[a] as number) << 16) + (implied & VALUE) - (this.lag[a] as number));
    if (this.when[a] !== TRUE) out.push(this.when[a] as number);
  }

  /** The literals that switched arc `a` off at the packed value `middle` of its source. */
  explainSwitch(a: number, middle: number, out: LiteralBuffer): void {
    out.push(((this.source[a] as number) << 16) + middle);
    out.push((((this.target[a] as number) << 16) + middle + (this.lag[a] as number)) ^ FLIP);
  }
}

/** Where each key below `keys` starts once the list of keys is sorted. */
function indexFrom(keys: number, list: Int32Array): Int32Array {
  const first = new Int32Array(keys + 1);
  for (const key of list) first[key + 1] = (first[key + 1] as number) + 1;
  for (let key = 0; key < keys; key++) first[key + 1] = (first[key + 1] as number) + (first[key] as number);
  return first;
}
