import type { LotState } from "./lotState.ts";

/**
 * The lots with anything left, in the order in which they should be used: the earliest last day first; among equal ones
 * what is open, then what was bought first, then by id. Lots whose last day is not known come at the end.
 */
export function firstExpiredFirstOut(lots: Iterable<LotState>): LotState[] {
  return [...lots].filter(({ leftG }) => leftG > 0).sort((a, b) => compareKeys(keysOf(a), keysOf(b)));
}

/** Keys that sort as texts; no day of the calendar sorts behind a tilde. */
function keysOf({ id, keeps, openedOn, boughtOn }: LotState): string[] {
  return [keeps?.ok ? keeps.on : "~", openedOn ?? "~", boughtOn, id];
}

function compareKeys(a: readonly string[], b: readonly string[]): number {
  const at = a.findIndex((key, place) => key !== b[place]);
  if (at < 0) return 0;
  return (a[at] as string) < (b[at] as string) ? -1 : 1;
}
