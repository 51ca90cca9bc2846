import type { WeekPlan } from "../kitchen/index.ts";
import { addDays, type CivilDate, daysBetween } from "../quantity/index.ts";
import type { WeekSource } from "./WeekSource.ts";

type Lot = WeekPlan["lots"][number];
type Trip = WeekPlan["trips"][number];

/** The trip that brings a lot, and its line on the bill, which the lot's name has in it; undefined for the stores at hand. */
export function purchaseOf(
  { trips, from }: Pick<WeekPlan, "trips" | "from">,
  { id, from: origin }: Pick<Lot, "id" | "from">,
): { readonly trip: Trip; readonly line: Trip["lines"][number] } | undefined {
  if (origin !== "bought") return undefined;
  for (const trip of trips) {
    const line = trip.lines.find(({ pack }) => id.startsWith(`${pack}-day-${daysBetween(from, trip.date) + 1}-`));
    if (line !== undefined) return { trip, line };
  }
  return undefined;
}

/** What stands on the pack of a lot; of stores at hand the name of the food, or of the dish put by. */
export function labelOfLot(
  { week, names }: Pick<WeekSource, "week" | "names">,
  lot: Pick<Lot, "id" | "from" | "food">,
): string {
  return purchaseOf(week, lot)?.line.label ?? names.food(lot.food);
}

/** The day on which the rest of a lot is thrown away: the one after its last, or the last day planned. */
export function wastedOn(
  { from, days }: Pick<WeekPlan, "from" | "days">,
  { keepsUntil }: Pick<Lot, "keepsUntil">,
): CivilDate {
  const last = addDays(from, days - 1);
  const next = keepsUntil === undefined ? last : addDays(keepsUntil, 1);
  if (next < from) return from;
  return [next, last].sort()[0] as CivilDate;
}
