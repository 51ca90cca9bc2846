/** A figure over several seeds; null where it is missing for any of them, so that a failure is never averaged away. */
export interface Spread {
  readonly median: number | null;
  readonly worst: number | null;
}

type Values = readonly (number | undefined)[];

/** The middle value, the higher one of two; null where one is missing or there is none. */
export function medianOf(values: Values): number | null {
  const sorted = known(values)?.sort((a, b) => a - b);
  return sorted?.[sorted.length >> 1] ?? null;
}

/** Median and largest value. */
export function spreadOf(values: Values): Spread {
  const all = known(values);
  return { median: medianOf(values), worst: all === undefined || all.length === 0 ? null : Math.max(...all) };
}

/** One value over another, where both are there. */
export function ratioOf(ours: number | undefined, theirs: number | undefined): number | undefined {
  return ours === undefined || theirs === undefined ? undefined : ours / theirs;
}

function known(values: Values): number[] | undefined {
  const there = values.filter((value) => value !== undefined);
  return there.length < values.length ? undefined : there;
}
