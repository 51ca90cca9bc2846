/** Part of a limit by which plans may exceed it and still count as keeping it. */
const SHARE_SLACK = 2e-6;

/** A limit widened by what plans are forgiven for the rounding of sums; what holds for plans must hold below it. */
export function widen(limit: number): number {
  return limit + SHARE_SLACK * Math.max(1, Math.abs(limit));
}

/** True where a value keeps to a limit, in doubt yes. */
export function isWithin(value: number, limit: number): boolean {
  return value <= widen(limit);
}
