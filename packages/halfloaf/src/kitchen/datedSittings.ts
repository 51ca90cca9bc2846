import { SITTING_KINDS } from "../dish/index.ts";
import { addDays, type CivilDate, weekday } from "../quantity/index.ts";
import type { Kitchen } from "./kitchen.ts";

export type SittingKind = (typeof SITTING_KINDS)[number];

/** One sitting of the days to plan. */
export interface DatedSitting {
  readonly day: number;
  readonly date: CivilDate;
  readonly kind: SittingKind;
  readonly eaters: readonly string[];
  readonly minutes: number;
  readonly heat: boolean;
  readonly packed: boolean;
  /** True where nobody sits down and a box is put by for later weeks. */
  readonly putBy?: true;
}

/** Position of a kind of sitting in the day, from 0. */
export function orderInDay(kind: SittingKind): number {
  return SITTING_KINDS.indexOf(kind);
}

/** The sittings of `days` days from a date on, in order of time and, at the same time, of the kitchen's list. */
export function datedSittings(kitchen: Pick<Kitchen, "sittings">, from: CivilDate, days: number): DatedSitting[] {
  return Array.from({ length: days }, (_, day) => {
    const date = addDays(from, day);
    return kitchen.sittings
      .filter((sitting) => sitting.on.includes(weekday(date)))
      .sort((a, b) => orderInDay(a.kind) - orderInDay(b.kind))
      .map(({ kind, eaters, minutes, heat, packed }) => ({ day, date, kind, eaters, minutes, heat, packed }));
  }).flat();
}
