import * as v from "valibot";

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/** Keys of a stamp, which every event carries. */
export const STAMP_ENTRIES = {
  /** Milliseconds since 1970-01-01 UTC by the clock of the device, or by a clock that it heard of and that was ahead. */
  atMs: whole,
  /** Number among the events of one millisecond, from 0. */
  tick: whole,
};

/** When an event was written down, by a clock that never runs backwards and never behind an event it knows. */
export interface Stamp {
  readonly atMs: number;
  readonly tick: number;
}

/**
 * The stamp of the next event: later than the latest one known, and by the device's clock where that is later still. A
 * device whose clock is slow, or was set back, thus never writes before what it has read.
 * **Source**: hybrid logical clocks, Kulkarni, Demirbas et al. 2014, figure 5 (from memory); one counter, as only writing
 * makes events here.
 */
export function nextStamp(latest: Stamp | undefined, nowMs: number): Stamp {
  const now = Math.max(0, Math.floor(nowMs));
  if (latest === undefined || now > latest.atMs) return { atMs: now, tick: 0 };
  return { atMs: latest.atMs, tick: latest.tick + 1 };
}

/** Below 0 where the first stamp is earlier, above 0 where it is later, 0 where two devices wrote at the same moment. */
export function compareStamps(a: Stamp, b: Stamp): number {
  return a.atMs - b.atMs || a.tick - b.tick;
}
