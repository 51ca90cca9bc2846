import type { FoodFacts } from "../food/index.ts";
import { type MassOfPack, massOfPack, type Pack } from "./pack.ts";

/**
 * What the till says for `count` packs on one bill, in whole minor units: as many full offers as fit, the rest one by one.
 * A limit is not looked at. Throws where `count` is no whole number or negative.
 */
export function priceOfCount(pack: Pick<Pack, "priceMinor" | "offer">, count: number): number {
  if (!Number.isSafeInteger(count) || count < 0) throw new RangeError(`${count} is no count of packs`);
  if (pack.offer === undefined) return count * pack.priceMinor;
  const full = Math.floor(count / pack.offer.count);
  return full * pack.offer.priceMinor + (count - full * pack.offer.count) * pack.priceMinor;
}

/** A price by mass as purchased, in minor units that need not be whole; or why the mass is not known. */
export type UnitPriceOfPack =
  | { readonly ok: true; readonly perKgMinor: number; readonly per100gMinor: number; readonly perGMinor: number }
  | Extract<MassOfPack, { ok: false }>;

/** The unit price of a pack where `count` of them (one by default) stand on one bill, offer included. */
export function unitPrice(
  pack: Pick<Pack, "content" | "priceMinor" | "offer">,
  food: Pick<FoodFacts, "densityGPerMl" | "pieces" | "refusePct">,
  count = 1,
): UnitPriceOfPack {
  if (count === 0) throw new RangeError("no packs have no unit price");
  const mass = massOfPack(pack, food);
  if (!mass.ok) return mass;
  const perGMinor = priceOfCount(pack, count) / (count * mass.massG);
  return { ok: true, perKgMinor: perGMinor * 1000, per100gMinor: perGMinor * 100, perGMinor };
}
