import { Agenda } from "./Agenda.ts";
import type { EnergyLimit } from "./ConstraintModel.ts";
import type { LiteralBuffer } from "./LiteralBuffer.ts";
import { VALUE, ZERO } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

/**
 * Resources on which much must be done in little time: no window [a, b) can take more work than capacity x (b - a).
 *
 * A job of length d runs for at least p minutes of the window where
 *
 *     a + p - d <= start <= b - p,
 *
 * so with p_i as large as the bounds allow, sum of demand x p_i > capacity (b - a) is a conflict. It is explained by
 * those bounds; what the sum has beyond need is given back, first by leaving jobs out, then by asking for less of one.
 * Windows from the earliest start of a job to the latest end of another are looked at. Clauses alone would need a
 * proof of a length that explodes with the number of jobs (it is a pigeonhole argument).
 * **Source**: Erschler, Lopez 1990, "Energy-based approach for task scheduling under time and resource constraints";
 * Schutt, Feydy, Stuckey 2013, "Explaining time-table-edge-finding propagation", CPAIOR 2013.
 */
export class EnergyChecks {
  readonly agenda: Agenda;
  private readonly trail: Trail;
  private readonly count: number;
  private readonly capacity: Int32Array;
  private readonly first: Int32Array;
  private readonly start: Int32Array;
  private readonly length: Int32Array;
  private readonly demand: Int32Array;
  private readonly when: Int32Array;
  /** Jobs of each resource by earliest start, latest first; kept from call to call since little changes. */
  private readonly order: Int32Array;
  private readonly earliest: Int32Array;
  private readonly latest: Int32Array;
  private readonly ends: Int32Array;
  private readonly share: Int32Array;
  private from = 0;

  constructor(trail: Trail, limits: readonly EnergyLimit[]) {
    this.trail = trail;
    const flat = limits.flatMap(({ work }) => work);
    this.count = limits.length;
    this.capacity = Int32Array.from(limits, ({ capacity }) => capacity);
    this.first = new Int32Array(limits.length + 1);
    for (const [r, { work }] of limits.entries()) this.first[r + 1] = (this.first[r] as number) + work.length;
    this.start = Int32Array.from(flat, ({ start }) => 2 * start);
    this.length = Int32Array.from(flat, ({ minutes }) => minutes);
    this.demand = Int32Array.from(flat, ({ demand }) => demand);
    this.when = Int32Array.from(flat, ({ when }) => when);
    this.order = Int32Array.from(flat, (_, i) => i);
    this.earliest = new Int32Array(flat.length);
    this.latest = new Int32Array(flat.length);
    this.ends = new Int32Array(flat.length);
    this.share = new Int32Array(flat.length);
    const watches: number[] = [];
    for (const [r, { work }] of limits.entries()) {
      for (const { start, when } of work) watches.push(2 * start, r, 2 * start + 1, r, when >>> 16, r);
    }
    this.agenda = new Agenda(trail.bounds.length, limits.length, watches);
  }

  /** False = some window is asked for too much. */
  check(): boolean {
    const { isDue } = this.agenda;
    for (let r = 0; r < this.count; r++) {
      if (isDue[r] === 0) continue;
      isDue[r] = 0;
      this.read(r);
      if (!this.checkWindows(r)) return false;
    }
    return true;
  }

  /** Reads the bounds of the jobs that certainly take part, sorts them and collects the latest ends. */
  private read(r: number): void {
    const { trail, start, length, when, order, earliest, latest, ends } = this;
    const { bounds } = trail;
    const from = this.first[r] as number;
    const to = this.first[r + 1] as number;
    for (let i = from; i < to; i++) {
      const on = when[i] as number;
      const isOn = (bounds[on >>> 16] as number) >= on;
      const b = start[i] as number;
      earliest[i] = isOn ? ((bounds[b] as number) & VALUE) - ZERO : -1;
      latest[i] = ZERO - ((bounds[b + 1] as number) & VALUE);
      ends[i] = isOn ? (latest[i] as number) + (length[i] as number) : -1;
    }
    for (let k = from + 1; k < to; k++) {
      const i = order[k] as number;
      const own = earliest[i] as number;
      let at = k - 1;
      while (at >= from && (earliest[order[at] as number] as number) < own) {
        order[at + 1] = order[at] as number;
        at--;
      }
      order[at + 1] = i;
    }
  }

  private checkWindows(r: number): boolean {
    const { demand, length, order, earliest, latest, ends } = this;
    const capacity = this.capacity[r] as number;
    const from = this.first[r] as number;
    const to = this.first[r + 1] as number;
    for (let w = from; w < to; w++) {
      const b = ends[w] as number;
      if (b < 0) continue;
      let energy = 0;
      for (let k = from; k < to; k++) {
        const i = order[k] as number;
        const a = earliest[i] as number;
        if (a < 0) break;
        if (a >= b) continue;
        const rest = b - (latest[i] as number);
        const whole = length[i] as number;
        if (rest > 0) energy += (demand[i] as number) * Math.min(rest, whole);
        if (energy > capacity * (b - a)) {
          this.from = a;
          return this.trail.fail(0, WHY.energy | (r << 3), b);
        }
      }
    }
    return true;
  }

  /** The bounds that ask too much of the window that ends at `b`; to be asked for right after the check. */
  explain(r: number, b: number, out: LiteralBuffer): void {
    const { demand, length, earliest, latest, share, start, when } = this;
    const a = this.from;
    const from = this.first[r] as number;
    const to = this.first[r + 1] as number;
    let surplus = -(this.capacity[r] as number) * (b - a) - 1;
    for (let i = from; i < to; i++) {
      const d = length[i] as number;
      const p = Math.min(d, b - a, (earliest[i] as number) + d - a, b - (latest[i] as number));
      share[i] = (earliest[i] as number) < 0 || p < 0 ? 0 : p;
      surplus += (demand[i] as number) * (share[i] as number);
    }
    for (let i = from; i < to; i++) {
      const energy = (demand[i] as number) * (share[i] as number);
      if (energy > surplus) continue;
      surplus -= energy;
      share[i] = 0;
    }
    for (let i = from; i < to; i++) {
      if (share[i] === 0) continue;
      const less = Math.floor(surplus / (demand[i] as number));
      surplus -= less * (demand[i] as number);
      const p = (share[i] as number) - less;
      out.push(((start[i] as number) << 16) + ZERO + a + p - (length[i] as number));
      out.push((((start[i] as number) + 1) << 16) + ZERO - b + p);
      out.push(when[i] as number);
    }
  }
}
