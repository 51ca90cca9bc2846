import { Agenda } from "./Agenda.ts";
import type { Cumulative, Interval } from "./ConstraintModel.ts";
import type { LiteralBuffer } from "./LiteralBuffer.ts";
import { type Literal, TRUE, VALUE, ZERO } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

/**
 * Resources of which several jobs take a share at once, by time-tables.
 *
 * A job certainly runs from its latest start to its earliest end. The sum of demands over these certain parts is the
 * **profile**; where it exceeds the capacity there is a conflict, and where it leaves too little for a job, the job's
 * start moves past that time (and its end before it). Every step is explained at a single point of time t:
 *
 *     start_j <= t < end_j  for enough other jobs j,  and  end_i > t   imply   start_i > t.
 *
 * **Source**: Schutt, Feydy, Stuckey, Wallace 2011, "Explaining the cumulative propagator", Constraints 16.
 */
export class CumulativeResources {
  readonly agenda: Agenda;
  private readonly trail: Trail;
  private readonly count: number;
  private readonly capacity: Int32Array;
  private readonly first: Int32Array;
  private readonly resource: Int32Array;
  /** Lower bound of the start and of the end; the upper one is the next. */
  private readonly start: Int32Array;
  private readonly end: Int32Array;
  /** start + startOffset and end + endOffset, less the zero of packed values. */
  private readonly startOffset: Int32Array;
  private readonly endOffset: Int32Array;
  private readonly demand: Int32Array;
  private readonly when: Int32Array;
  private readonly greatest: Int32Array;
  private readonly change: Int32Array;
  /** The stretches of the profile that leave too little for some job, ascending. */
  private readonly from: Int32Array;
  private readonly until: Int32Array;
  private readonly height: Int32Array;
  private stretches = 0;
  private peak = 0;
  private readonly cover: Int32Array;

  constructor(trail: Trail, cumulatives: readonly Cumulative[]) {
    this.trail = trail;
    this.count = cumulatives.length;
    const flat = cumulatives.flatMap(({ intervals }) => intervals);
    this.capacity = Int32Array.from(cumulatives, ({ capacity }) => capacity);
    this.first = new Int32Array(cumulatives.length + 1);
    for (const [r, { intervals }] of cumulatives.entries())
      this.first[r + 1] = (this.first[r] as number) + intervals.length;
    this.resource = new Int32Array(flat.length);
    for (let r = 0; r < cumulatives.length; r++) this.resource.fill(r, this.first[r], this.first[r + 1]);
    this.start = Int32Array.from(flat, ({ start }) => 2 * start);
    this.end = Int32Array.from(flat, ({ end }) => 2 * end);
    this.startOffset = Int32Array.from(flat, ({ startOffset }) => startOffset);
    this.endOffset = Int32Array.from(flat, ({ endOffset }) => endOffset);
    this.demand = Int32Array.from(flat, ({ demand }) => demand);
    this.when = Int32Array.from(flat, ({ when }) => when);
    this.greatest = Int32Array.from(cumulatives, ({ intervals }) =>
      Math.max(0, ...intervals.map(({ demand }) => demand)),
    );
    this.agenda = new Agenda(trail.bounds.length, cumulatives.length, watchesOf(flat, this.resource));
    const latest = Math.max(0, ...flat.map(({ end, endOffset }) => trail.high(end) + endOffset));
    this.change = new Int32Array(latest + 2);
    const most = Math.max(0, ...cumulatives.map(({ intervals }) => intervals.length));
    this.from = new Int32Array(2 * most + 2);
    this.until = new Int32Array(2 * most + 2);
    this.height = new Int32Array(2 * most + 2);
    this.cover = new Int32Array(most);
  }

  /** Propagates what was touched; stops early once a bound moved. False = conflict. */
  propagate(): boolean {
    const { size } = this.trail;
    const { isDue } = this.agenda;
    for (let r = 0; r < this.count && this.trail.size === size; r++) {
      if (isDue[r] === 0) continue;
      isDue[r] = 0;
      if (!this.sweep(r) || !this.tighten(r)) return false;
    }
    return true;
  }

  /** Builds the profile and keeps its high stretches; false = it exceeds the capacity. */
  private sweep(r: number): boolean {
    const { trail, change, first, start, end, demand, when } = this;
    const { bounds } = trail;
    let earliest = change.length;
    let latest = -1;
    const stop = first[r + 1] as number;
    for (let i = first[r] as number; i < stop; i++) {
      const from = ZERO - ((bounds[(start[i] as number) + 1] as number) & VALUE) + (this.startOffset[i] as number);
      const until = ((bounds[end[i] as number] as number) & VALUE) - ZERO + (this.endOffset[i] as number);
      if (from >= until) continue;
      const on = when[i] as number;
      if ((bounds[on >>> 16] as number) < on) continue;
      const share = demand[i] as number;
      change[from] = (change[from] as number) + share;
      change[until] = (change[until] as number) - share;
      if (from < earliest) earliest = from;
      if (until > latest) latest = until;
    }
    this.stretches = 0;
    return latest < 0 || this.keepHighStretches(r, earliest, latest);
  }

  private keepHighStretches(r: number, earliest: number, latest: number): boolean {
    const { change, from, until, height } = this;
    const capacity = this.capacity[r] as number;
    const floor = Math.max(0, capacity - (this.greatest[r] as number));
    let n = 0;
    let level = 0;
    let peak = -1;
    let highest = 0;
    for (let t = earliest; t <= latest; t++) {
      const step = change[t] as number;
      if (step === 0) continue;
      change[t] = 0;
      if (level > floor) until[n++] = t;
      level += step;
      if (level <= floor) continue;
      from[n] = t;
      height[n] = level;
      if (level <= highest) continue;
      highest = level;
      peak = n;
    }
    this.stretches = n;
    this.peak = highest;
    if (highest <= capacity) return true;
    const t = ((from[peak] as number) + (until[peak] as number) - 1) >> 1;
    return this.trail.fail(0, WHY.overload | (r << 3), t);
  }

  private tighten(r: number): boolean {
    if (this.stretches === 0) return true;
    const { bounds } = this.trail;
    const stop = this.first[r + 1] as number;
    const spare = (this.capacity[r] as number) - this.peak;
    const from = this.from[0] as number;
    const until = this.until[this.stretches - 1] as number;
    for (let i = this.first[r] as number; i < stop; i++) {
      const demand = this.demand[i] as number;
      if (demand <= spare) continue;
      const on = this.when[i] as number;
      if ((bounds[on >>> 16] as number) < on) continue;
      const s = this.start[i] as number;
      const e = this.end[i] as number;
      const earliest = ((bounds[s] as number) & VALUE) - ZERO + (this.startOffset[i] as number);
      const end = ZERO - ((bounds[e + 1] as number) & VALUE) + (this.endOffset[i] as number);
      if (end <= from || earliest >= until) continue;
      const latest = ZERO - ((bounds[s + 1] as number) & VALUE) + (this.startOffset[i] as number);
      const certain = ((bounds[e] as number) & VALUE) - ZERO + (this.endOffset[i] as number);
      const limit = (this.capacity[r] as number) - demand;
      if (earliest < latest && certain > from && !this.delayStart(i, limit)) return false;
      if (certain < end && latest < until && !this.advanceEnd(i, limit)) return false;
    }
    return true;
  }

  private delayStart(i: number, limit: number): boolean {
    const { trail, from, until, height, stretches } = this;
    const { bounds } = trail;
    const s = this.start[i] as number;
    const e = this.end[i] as number;
    const latest = ZERO - ((bounds[s + 1] as number) & VALUE) + (this.startOffset[i] as number);
    for (;;) {
      const earliest = ((bounds[s] as number) & VALUE) - ZERO + (this.startOffset[i] as number);
      const certain = ((bounds[e] as number) & VALUE) - ZERO + (this.endOffset[i] as number);
      const end = Math.min(certain, latest);
      let n = stretches - 1;
      while (n >= 0 && ((from[n] as number) >= end || (height[n] as number) <= limit)) n--;
      if (n < 0 || (until[n] as number) <= earliest || end <= earliest) return true;
      const t = Math.min(until[n] as number, end) - 1;
      const literal = (s << 16) + t + 1 - (this.startOffset[i] as number) + ZERO;
      if (!trail.raise(literal, WHY.task | (i << 3), t)) return false;
      if (s !== e) return true;
    }
  }

  private advanceEnd(i: number, limit: number): boolean {
    const { trail, from, until, height, stretches } = this;
    const { bounds } = trail;
    const s = this.start[i] as number;
    const e = this.end[i] as number;
    const certain = ((bounds[e] as number) & VALUE) - ZERO + (this.endOffset[i] as number);
    for (;;) {
      const end = ZERO - ((bounds[e + 1] as number) & VALUE) + (this.endOffset[i] as number);
      const latest = ZERO - ((bounds[s + 1] as number) & VALUE) + (this.startOffset[i] as number);
      const begin = Math.max(latest, certain);
      let n = 0;
      while (n < stretches && ((until[n] as number) <= begin || (height[n] as number) <= limit)) n++;
      if (n === stretches || (from[n] as number) >= end || begin >= end) return true;
      const t = Math.max(from[n] as number, begin);
      const literal = ((e + 1) << 16) + (this.endOffset[i] as number) - t + ZERO;
      if (!trail.raise(literal, WHY.task | (i << 3), t)) return false;
      if (s !== e) return true;
    }
  }

  /** The literals that let job `i` not run at time t, on the side of the literal that was implied. */
  explainTask(i: number, t: number, implied: Literal, at: number, out: LiteralBuffer): void {
    const isDelay = ((implied >>> 16) & 1) === 0;
    out.push(isDelay ? this.endsAfter(i, t) : this.startsBy(i, t));
    if (this.when[i] !== TRUE) out.push(this.when[i] as number);
    const r = this.resource[i] as number;
    this.explainProfile(r, i, t, (this.capacity[r] as number) - (this.demand[i] as number), at, out);
  }

  explainOverload(r: number, t: number, at: number, out: LiteralBuffer): void {
    this.explainProfile(r, -1, t, this.capacity[r] as number, at, out);
  }

  /** Enough jobs other than `except` that certainly run at time t to demand more than `limit`. */
  private explainProfile(r: number, except: number, t: number, limit: number, at: number, out: LiteralBuffer): void {
    const { trail, demand, cover } = this;
    let n = 0;
    let surplus = -limit - 1;
    const stop = this.first[r + 1] as number;
    for (let i = this.first[r] as number; i < stop; i++) {
      if (i === except) continue;
      const by = this.startsBy(i, t);
      if (trail.boundAt(by >>> 16, at) < by) continue;
      const after = this.endsAfter(i, t);
      if (trail.boundAt(after >>> 16, at) < after) continue;
      const on = this.when[i] as number;
      if (on !== TRUE && trail.boundAt(on >>> 16, at) < on) continue;
      surplus += demand[i] as number;
      // Smallest demand first: the more jobs are left out, the shorter the reason.
      let k = n++;
      while (k > 0 && (demand[cover[k - 1] as number] as number) > (demand[i] as number)) {
        cover[k] = cover[k - 1] as number;
        k--;
      }
      cover[k] = i;
    }
    for (let k = 0; k < n; k++) {
      const i = cover[k] as number;
      if ((demand[i] as number) <= surplus) {
        surplus -= demand[i] as number;
        continue;
      }
      out.push(this.startsBy(i, t));
      out.push(this.endsAfter(i, t));
      if (this.when[i] !== TRUE) out.push(this.when[i] as number);
    }
  }

  /** [start + startOffset <= t] */
  private startsBy(i: number, t: number): Literal {
    return (((this.start[i] as number) + 1) << 16) + ZERO + (this.startOffset[i] as number) - t;
  }

  /** [end + endOffset > t] */
  private endsAfter(i: number, t: number): Literal {
    return ((this.end[i] as number) << 16) + ZERO + t + 1 - (this.endOffset[i] as number);
  }
}

/** A resource is looked at again when the start, the end or the switch of one of its jobs moves. */
function watchesOf(jobs: readonly Interval[], resource: Int32Array): number[] {
  const watches: number[] = [];
  for (let i = 0; i < jobs.length; i++) {
    const { start, end, when } = jobs[i] as Interval;
    const r = resource[i] as number;
    watches.push(2 * start, r, 2 * start + 1, r);
    if (end !== start) watches.push(2 * end, r, 2 * end + 1, r);
    if (when !== TRUE) watches.push(when >>> 16, r);
  }
  return watches;
}
