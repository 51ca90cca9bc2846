import type { MenuLimits } from "../menu/index.ts";
import { addDays, type CivilDate, weekday } from "../quantity/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import type { Kitchen } from "./kitchen.ts";

/** The limits of a week for the days that are planned; `portions` are those of each sitting. */
export function toLimits(
  kitchen: Kitchen,
  sittings: readonly DatedSitting[],
  portions: readonly number[],
  from: CivilDate,
  days: number,
): MenuLimits {
  const { limits, kit } = kitchen;
  const weeks = days / 7;
  const handsOn = (day: number): number =>
    Array.isArray(limits.handsOnMinutes)
      ? (limits.handsOnMinutes[weekday(addDays(from, day)) - 1] as number)
      : limits.handsOnMinutes;
  const evenings = sittings.filter((sitting) => sitting.kind === "evening").length;
  return {
    ...(limits.budgetMinor !== undefined && { budgetMinor: Math.round(limits.budgetMinor * weeks) }),
    handsOnMinutes: Array.from({ length: days }, (_, day) => handsOn(day)),
    energyTolerance: limits.energyTolerancePct / 100,
    distinct: Math.min(evenings, Math.floor(limits.distinctEvenings * weeks)),
    mainMax: Math.ceil(limits.mainMax * weeks),
    batchPortions: Math.max(kit.potPortions, ...portions),
    maxTrips: Math.ceil(limits.tripsPerWeek * Math.max(1, weeks)),
    ...(kit.fridgeLitres > 0 && { fridgeLitres: kit.fridgeLitres }),
    ...(kit.freezerLitres > 0 && { freezerLitres: kit.freezerLitres }),
  };
}
