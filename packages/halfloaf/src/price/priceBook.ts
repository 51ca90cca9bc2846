import * as v from "valibot";
import { type FoodTable, Id } from "../food/index.ts";
import { type CivilDate, daysBetween } from "../quantity/index.ts";
import { unitPrice } from "./offer.ts";
import { type MassOfPack, Offer, type Pack, Seen } from "./pack.ts";

/**
 * One look at a price: what one pack cost, where and when. It tells the whole price, so that an offer it does not name
 * has ended. Observations are only ever added, in the order in which they were made known.
 */
export const Observation = v.strictObject({
  pack: Id,
  priceMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  offer: v.optional(Offer),
  seen: Seen,
});
export type Observation = v.InferOutput<typeof Observation>;

/** A pack at the price last known of it. */
export interface PricedPack {
  /** The pack with price, offer and `seen` of the latest observation. */
  readonly pack: Pack;
  /** True while the price was never seen. */
  readonly estimate: boolean;
  /** Whole days since the price was seen; absent for an estimate, whose age is not known. */
  readonly ageDays?: number;
}

/**
 * The latest price of each pack as known on a day, by pack id in the order of the packs. What the pack itself says counts
 * as an observation; among those of one day the one told last wins. An observation from after `on`, or of a pack that
 * is not there, is passed over. A pack first seen after `on` is left out.
 */
export function latestPrices(
  packs: readonly Pack[],
  observations: readonly Observation[],
  on: CivilDate,
): Map<string, PricedPack> {
  const latest = new Map<string, Observation>();
  for (const each of observations) {
    const before = latest.get(each.pack);
    if (each.seen.on <= on && (before === undefined || before.seen.on <= each.seen.on)) latest.set(each.pack, each);
  }
  const priced = new Map<string, PricedPack>();
  for (const pack of packs) {
    const now = newer(pack, latest.get(pack.id), on);
    if (now.seen === undefined) priced.set(pack.id, { pack: now, estimate: true });
    else if (now.seen.on <= on) {
      priced.set(pack.id, { pack: now, estimate: false, ageDays: daysBetween(now.seen.on, on) });
    }
  }
  return priced;
}

/** The pack as it was last seen up to a day: by its own sight or by the observation, the latter where both are equal. */
function newer(pack: Pack, observation: Observation | undefined, on: CivilDate): Pack {
  if (observation === undefined) return pack;
  const { priceMinor, offer, seen } = observation;
  if (pack.seen !== undefined && pack.seen.on <= on && pack.seen.on > seen.on) return pack;
  const { estimate: _estimate, offer: _offer, ...rest } = pack;
  return offer === undefined ? { ...rest, priceMinor, seen } : { ...rest, priceMinor, offer, seen };
}

/** What a gram of a food costs as purchased, in minor units that need not be whole. */
export interface UnitPrice {
  readonly minorPerG: number;
  /** True where the price was never seen. */
  readonly estimate: boolean;
  /** Id of the pack it comes from; absent where it comes from no pack, such as a lot at hand. */
  readonly pack?: string;
}

/** The cheapest price by food, and the packs whose mass is not known, so that they have no unit price. */
export interface CheapestPrices {
  readonly prices: ReadonlyMap<string, UnitPrice>;
  readonly unknown: readonly {
    readonly pack: string;
    readonly reason: "food-unknown" | Extract<MassOfPack, { ok: false }>["reason"];
  }[];
}

/**
 * The cheapest unit price of each food on a day, a single pack at a time: an offer for several is left aside, since it
 * holds only for who buys several. A pack reduced until an earlier day is no longer sold. At an equal price what was seen
 * goes before an estimate, then the earlier pack.
 */
export function cheapestByFood(priced: Iterable<PricedPack>, foods: FoodTable, on: CivilDate): CheapestPrices {
  const prices = new Map<string, UnitPrice>();
  const unknown: CheapestPrices["unknown"][number][] = [];
  for (const { pack, estimate } of priced) {
    if (pack.reduced !== undefined && pack.reduced.until < on) continue;
    const food = foods.get(pack.food);
    const price = food === undefined ? undefined : unitPrice(pack, food);
    if (price === undefined) unknown.push({ pack: pack.id, reason: "food-unknown" });
    else if (!price.ok) unknown.push({ pack: pack.id, reason: price.reason });
    else {
      const unit = { minorPerG: price.perGMinor, estimate, pack: pack.id };
      const best = prices.get(pack.food);
      if (best === undefined || isBetter(unit, best)) prices.set(pack.food, unit);
    }
  }
  return { prices, unknown };
}

function isBetter(a: UnitPrice, b: UnitPrice): boolean {
  return a.minorPerG < b.minorPerG || (a.minorPerG === b.minorPerG && !a.estimate && b.estimate);
}
