import fc from "fast-check";
import type { FoodFacts } from "../food/index.ts";
import type { Offer, Pack } from "./pack.ts";

/** A sound pack of 500 g of oats at 1.20, seen on 2 March 2026, with what is given put in its place. */
export function makePack(over: Partial<Pack> = {}): Pack {
  return {
    id: "oats-500",
    shop: "corner",
    food: "oats-rolled",
    label: "Rolled oats 500 g",
    content: { massG: 500 },
    priceMinor: 120,
    seen: { on: "2026-03-02", at: "shelf" },
    section: "dry goods",
    ...over,
  };
}

/** The measures of a food with a density, two sizes and a quarter of refuse. */
export const measures = {
  densityGPerMl: 0.5,
  pieces: [
    { size: "medium", massG: 90, source: "a table" },
    { size: "large", massG: 120, source: "a table" },
  ],
  refusePct: 25,
} satisfies Partial<FoodFacts>;

/** A price of one pack together with an offer that is no dearer. */
export const offers: fc.Arbitrary<{ priceMinor: number; offer: Offer }> = fc
  .record({ priceMinor: fc.nat(5000), count: fc.integer({ min: 2, max: 6 }), share: fc.nat(100) })
  .map(({ priceMinor, count, share }) => ({
    priceMinor,
    offer: { kind: "several", count, priceMinor: Math.floor((count * priceMinor * share) / 100) },
  }));
