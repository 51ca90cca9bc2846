import { createRandomSource } from "halfloaf/quantity";

/** Seeded chance: a call gives a number from 0 up to 1. */
export interface Draw {
  (): number;
  between(low: number, high: number): number;
  whole(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
  /** A factor around 1. */
  around(spread: number): number;
}

/** Chance from a seed; the same on every machine. */
export function createDraw(seed: number): Draw {
  const next = createRandomSource(seed);
  return Object.assign(() => next(), {
    between: (low: number, high: number) => low + (high - low) * next(),
    whole: (low: number, high: number) => Math.floor(low + (high - low + 1) * next()),
    pick: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T,
    around: (spread: number) => Math.exp(spread * 1.7 * (next() + next() + next() + next() - 2)),
  });
}
