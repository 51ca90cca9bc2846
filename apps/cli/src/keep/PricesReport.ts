import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer(), v.minValue(0));
const amount = v.pipe(v.number(), v.minValue(0));

/** The prices of packs over time, by food, then shop, then pack. Money in minor units, unit prices need not be whole. */
export const PricesReport = v.strictObject({
  format: v.literal("halfloaf-prices"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  on: CivilDate,
  packs: v.array(
    v.strictObject({
      food: v.string(),
      shop: v.string(),
      pack: v.string(),
      label: v.string(),
      /** seen: of late; aged: so long ago that it counts no more than an estimate; estimate: never seen. */
      sureness: v.picklist(["seen", "aged", "estimate"]),
      /** Whole days since it was seen last; absent for an estimate. */
      ageDays: v.optional(v.pipe(v.number(), v.integer(), v.minValue(0))),
      /** The price as it is reckoned with. */
      priceMinor: minor,
      perKgMinor: v.optional(amount),
      points: v.array(
        v.strictObject({
          on: CivilDate,
          priceMinor: minor,
          massG: v.optional(amount),
          perKgMinor: v.optional(amount),
          /** Change of the unit price against the look before, in percent. */
          changePct: v.optional(v.number()),
        }),
      ),
    }),
  ),
});
export type PricesReport = v.InferOutput<typeof PricesReport>;
