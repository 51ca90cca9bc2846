import * as v from "valibot";
import { type FoodFacts, Id, massOfAmount, purchasedFromEdible, type UnknownMass } from "../food/index.ts";
import { CivilDate } from "../quantity/index.ts";
import { Gtin } from "./gtin.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const positive = v.pipe(v.number(), v.gtValue(0));
const count = v.pipe(v.number(), v.safeInteger(), v.minValue(1));
const priceMinor = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/** What a pack holds as purchased: grams, pieces of one size of the food (its first size where none is named), or mL. */
const Content = v.union([
  v.strictObject({ massG: positive }),
  v.strictObject({ pieces: count, size: v.optional(text) }),
  v.strictObject({ volumeMl: positive }),
]);

/** When and where a price was seen. */
export const Seen = v.strictObject({ on: CivilDate, at: text });
export type Seen = v.InferOutput<typeof Seen>;

/** `count` packs on one bill cost `priceMinor` together, as often as wanted. */
export const Offer = v.strictObject({
  kind: v.literal("several"),
  count: v.pipe(v.number(), v.safeInteger(), v.minValue(2)),
  priceMinor,
});
export type Offer = v.InferOutput<typeof Offer>;

/**
 * What a shop sells under one price. Money in whole minor units of the kitchen's currency; a negative price is refused.
 * A price was either seen somewhere on a day or is an estimate, never both and never neither.
 */
export const Pack = v.pipe(
  v.strictObject({
    id: Id,
    shop: Id,
    food: Id,
    brand: v.optional(text),
    /** What stands on the pack or on the shelf. */
    label: text,
    /** Texts on receipts and in lists of its shop that were said to mean it; the one said last stands last. */
    knownAs: v.optional(v.array(text)),
    content: Content,
    priceMinor,
    seen: v.optional(Seen),
    estimate: v.optional(v.literal(true)),
    gtin: v.optional(Gtin),
    /** Where in the shop it stands. */
    section: text,
    /** True for separate pieces: taking some leaves the others whole, so the pack is never opened as a whole. */
    loose: v.optional(v.literal(true)),
    offer: v.optional(Offer),
    /** Reduced to clear: sold and good until this day at the latest, and only so many are there. */
    reduced: v.optional(v.strictObject({ until: CivilDate, limit: count })),
    /** Most packs that one bill may hold; absent = no limit. */
    limit: v.optional(count),
  }),
  v.forward(
    v.partialCheck(
      [["seen"], ["estimate"]],
      ({ seen, estimate }) => (seen === undefined) !== (estimate === undefined),
      "either where and when the price was seen, or that it is an estimate",
    ),
    ["seen"],
  ),
  v.forward(
    v.partialCheck(
      [["priceMinor"], ["offer"]],
      ({ priceMinor: single, offer }) => offer === undefined || offer.priceMinor <= offer.count * single,
      "no more than the packs cost one by one",
    ),
    ["offer"],
  ),
);
export type Pack = v.InferOutput<typeof Pack>;

/** Most packs of a kind that can be bought at once; undefined = no limit is known. */
export function limitOfPack(pack: Pick<Pack, "limit" | "reduced">): number | undefined {
  const limits = [pack.limit, pack.reduced?.limit].filter((limit) => limit !== undefined);
  return limits.length === 0 ? undefined : Math.min(...limits);
}

/** A mass in g as purchased, or why it is not known. */
export type MassOfPack =
  | { readonly ok: true; readonly massG: number }
  | { readonly ok: false; readonly reason: Exclude<UnknownMass, "to-taste"> };

/**
 * The mass in g of a pack as purchased, refuse included. Pieces weigh what the food's piece of that size weighs, with the
 * refuse put back on; a volume goes by the density. Unknown, with the reason, where the food lacks the measure.
 */
export function massOfPack(
  pack: Pick<Pack, "content">,
  food: Pick<FoodFacts, "densityGPerMl" | "pieces" | "refusePct">,
): MassOfPack {
  const { content } = pack;
  if ("massG" in content) return { ok: true, massG: content.massG };
  if ("volumeMl" in content) {
    return food.densityGPerMl === undefined
      ? { ok: false, reason: "density-unknown" }
      : { ok: true, massG: content.volumeMl * food.densityGPerMl };
  }
  if (food.pieces.length === 0) return { ok: false, reason: "pieces-unknown" };
  const named = content.size === undefined ? {} : { size: content.size };
  const edible = massOfAmount(food, { value: content.pieces, unit: "piece", ...named });
  if (!edible.ok) return { ok: false, reason: "size-unknown" };
  return { ok: true, massG: purchasedFromEdible(food, edible.edibleG.high) };
}
