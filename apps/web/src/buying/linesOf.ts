import type { WeekPlan } from "halfloaf/kitchen";
import { keyOfPlanned, lotsOfLine, type RecordState } from "halfloaf/kitchen/record";

type Trip = WeekPlan["trips"][number];

/** A line of a buying list, with what was paid for it; `paidMinor` is absent while it is not bought. */
export interface TickedLine {
  readonly line: Trip["lines"][number];
  /** Names that the week has for its packs, one a pack. */
  readonly planned: readonly string[];
  readonly paidMinor?: number;
  /** Lots that it became. */
  readonly lots: readonly string[];
}

/** The lines of a trip, each with what has been bought of it. */
export function linesOf({ planned: bought, lots }: RecordState, week: WeekPlan, { lines, date }: Trip): TickedLine[] {
  return lines.map((line) => {
    const planned = lotsOfLine(week, date, line);
    const found = planned.flatMap((name) => bought.get(keyOfPlanned(week.from, name)) ?? []);
    if (found.length === 0) return { line, planned, lots: [] };
    const paidMinor = found.reduce((sum, lot) => sum + (lots.get(lot)?.broughtMinor ?? 0), 0);
    return { line, planned, lots: found, paidMinor };
  });
}
