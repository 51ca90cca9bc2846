import type { PricedPack } from "./priceBook.ts";

/**
 * How far a price can be relied on: seen of late, seen so long ago that it counts no more than an estimate, or never
 * seen. `ageDays` are whole days since it was seen.
 */
export type PriceSureness =
  | { readonly kind: "seen"; readonly ageDays: number }
  | { readonly kind: "aged"; readonly ageDays: number }
  | { readonly kind: "estimate" };

/** Days after which a price counts as aged where a kitchen says nothing: eight weeks. Our own choice, no source. */
export const AGED_AFTER_DAYS = 56;

/**
 * How sure a price is. One seen more than `agedAfterDays` days ago is aged; on that day itself it still counts as seen.
 * Throws where `agedAfterDays` is negative or no number.
 */
export function judgePriceAge(
  { estimate, ageDays }: Pick<PricedPack, "estimate" | "ageDays">,
  agedAfterDays: number = AGED_AFTER_DAYS,
): PriceSureness {
  if (!(agedAfterDays >= 0)) throw new RangeError(`${agedAfterDays} is no number of days`);
  if (estimate || ageDays === undefined) return { kind: "estimate" };
  return { kind: ageDays > agedAfterDays ? "aged" : "seen", ageDays };
}
