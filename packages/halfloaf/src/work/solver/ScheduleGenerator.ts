import type { Project } from "./project.ts";

/**
 * Good schedules of a plain project, fast: jobs are put down one after another, each as early as it fits.
 *
 * Serial generation takes the open job of best priority; parallel generation goes through time and starts what fits.
 * Double justification shifts all jobs of a schedule as late as possible, last first, and then as early as possible
 * again, which never lengthens it and often shortens it.
 * **Source**: Kolisch 1996, EJOR 90, 320-333 (the two schemes); Valls, Ballestin, Quintanilla 2005, "Justification
 * and RCPSP", EJOR 165, 375-386.
 */
export class ScheduleGenerator {
  private readonly minutes: Int32Array;
  private readonly successors: readonly number[][];
  private readonly predecessors: readonly number[][];
  private readonly capacity: Int32Array;
  private readonly demand: Int32Array;
  /** What is still free of each resource at each time, resource by resource. */
  private readonly free: Int32Array;
  private readonly horizon: number;
  private readonly waiting: Int32Array;
  private readonly open: Int32Array;
  private used = 0;

  constructor(project: Project) {
    const n = project.minutes.length;
    this.minutes = Int32Array.from(project.minutes);
    const successors: number[][] = Array.from({ length: n }, () => []);
    const predecessors: number[][] = Array.from({ length: n }, () => []);
    for (const { from, to } of project.lags) {
      successors[from]?.push(to);
      predecessors[to]?.push(from);
    }
    this.successors = successors;
    this.predecessors = predecessors;
    this.capacity = Int32Array.from(project.resources, ({ capacity }) => capacity);
    this.demand = Int32Array.from(project.resources.flatMap(({ demands }) => demands));
    this.horizon = project.minutes.reduce((sum, minutes) => sum + minutes, 0) + 1;
    this.free = new Int32Array(this.horizon * this.capacity.length);
    this.waiting = new Int32Array(n);
    this.open = new Int32Array(n);
    this.used = this.horizon;
  }

  /** Serial generation: fills `start`, lowest priority value first, and gives the length. Mirrored runs time backwards. */
  generate(priority: Float64Array, isMirrored: boolean, start: Int32Array): number {
    const { minutes, waiting, open } = this;
    const before = isMirrored ? this.successors : this.predecessors;
    const after = isMirrored ? this.predecessors : this.successors;
    this.clear();
    let opened = 0;
    for (let i = 0; i < minutes.length; i++) {
      waiting[i] = (before[i] as number[]).length;
      if (waiting[i] === 0) open[opened++] = i;
    }
    let length = 0;
    while (opened > 0) {
      let at = 0;
      for (let q = 1; q < opened; q++) {
        if ((priority[open[q] as number] as number) < (priority[open[at] as number] as number)) at = q;
      }
      const job = open[at] as number;
      open[at] = open[--opened] as number;
      const end = this.place(job, before[job] as number[], start);
      if (end > length) length = end;
      const next = after[job] as number[];
      for (let k = 0; k < next.length; k++) {
        const j = next[k] as number;
        waiting[j] = (waiting[j] as number) - 1;
        if (waiting[j] === 0) open[opened++] = j;
      }
    }
    this.used = length;
    return length;
  }

  /** Justifies a schedule right, then left; gives the new length. `priority` and `mirrored` are overwritten. */
  justify(start: Int32Array, priority: Float64Array, mirrored: Int32Array): number {
    const { minutes } = this;
    for (let i = 0; i < minutes.length; i++) priority[i] = -((start[i] as number) + (minutes[i] as number));
    const length = this.generate(priority, true, mirrored);
    for (let i = 0; i < minutes.length; i++) priority[i] = length - (mirrored[i] as number) - (minutes[i] as number);
    return this.generate(priority, false, start);
  }

  /** Parallel generation: like `generate`, but a job starts as soon as one fits, whatever its priority. */
  generateInTime(priority: Float64Array, start: Int32Array): number {
    const { minutes, waiting, open, predecessors, successors } = this;
    this.clear();
    let opened = 0;
    for (let i = 0; i < minutes.length; i++) {
      waiting[i] = (predecessors[i] as number[]).length;
      if (waiting[i] === 0) open[opened++] = i;
    }
    let length = 0;
    let now = 0;
    while (opened > 0) {
      let at = -1;
      let later = Number.POSITIVE_INFINITY;
      for (let q = 0; q < opened; q++) {
        const job = open[q] as number;
        const ready = this.readyAt(predecessors[job] as number[], start);
        const fit = this.firstFit(job, Math.max(ready, now));
        if (fit > now) later = Math.min(later, fit);
        else if (at < 0 || (priority[job] as number) < (priority[open[at] as number] as number)) at = q;
      }
      if (at < 0) {
        now = later;
        continue;
      }
      const job = open[at] as number;
      open[at] = open[--opened] as number;
      start[job] = now;
      this.take(job, now);
      length = Math.max(length, now + (minutes[job] as number));
      for (const j of successors[job] as number[]) {
        waiting[j] = (waiting[j] as number) - 1;
        if (waiting[j] === 0) open[opened++] = j;
      }
    }
    this.used = length;
    return length;
  }

  private clear(): void {
    const { capacity, free, horizon } = this;
    for (let r = 0; r < capacity.length; r++) {
      free.fill(capacity[r] as number, r * horizon, r * horizon + Math.min(horizon, this.used + 1));
    }
  }

  private place(job: number, before: readonly number[], start: Int32Array): number {
    const at = this.firstFit(job, this.readyAt(before, start));
    start[job] = at;
    this.take(job, at);
    return at + (this.minutes[job] as number);
  }

  private readyAt(before: readonly number[], start: Int32Array): number {
    let ready = 0;
    for (let k = 0; k < before.length; k++) {
      const i = before[k] as number;
      const end = (start[i] as number) + (this.minutes[i] as number);
      if (end > ready) ready = end;
    }
    return ready;
  }

  /** The first time from `at` on at which the job fits. */
  private firstFit(job: number, at: number): number {
    const { capacity, demand, free, horizon } = this;
    const minutes = this.minutes[job] as number;
    const n = this.minutes.length;
    let from = at;
    for (let r = 0, settled = 0; minutes > 0 && settled < capacity.length; r = r + 1 === capacity.length ? 0 : r + 1) {
      const share = demand[r * n + job] as number;
      let t = from + minutes - 1;
      if (share > 0) while (t >= from && (free[r * horizon + t] as number) >= share) t--;
      else t = from - 1;
      if (t < from) {
        settled++;
      } else {
        from = t + 1;
        settled = 0;
      }
    }
    return from;
  }

  private take(job: number, at: number): void {
    const { capacity, demand, free, horizon } = this;
    const n = this.minutes.length;
    const end = at + (this.minutes[job] as number);
    for (let r = 0; r < capacity.length; r++) {
      const share = demand[r * n + job] as number;
      if (share === 0) continue;
      for (let t = r * horizon + at; t < r * horizon + end; t++) free[t] = (free[t] as number) - share;
    }
  }
}
