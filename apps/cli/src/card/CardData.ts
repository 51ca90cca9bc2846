import { DIETS, EU_ALLERGENS, Id, NUTRIENT_NAMES, US_ALLERGENS } from "halfloaf/food";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer());
const amount = v.pipe(v.number(), v.minValue(0));
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const range = v.strictObject({ low: amount, high: amount, middle: amount });

/** A food with its name in the kitchen's English. */
const namedFood = v.strictObject({ food: Id, name: v.string() });

/** One making of the card, for all its portions. */
const CardMaking = v.strictObject({
  food: Id,
  name: v.string(),
  cut: v.optional(v.string()),
  /** The food it takes the place of, which this kitchen can't have. */
  insteadOf: v.optional(namedFood),
  purchasedG: range,
  /** Bought but not eaten, at the middle of the amount. */
  refuseG: amount,
  edibleG: range,
  /** Its part of the total; absent where no price is known. */
  costMinor: v.optional(minor),
  /** True where the price was never seen; absent where none is known. */
  estimate: v.optional(v.boolean()),
  /** The pack whose price was taken; absent for stock at hand and where no price is known. */
  pack: v.optional(Id),
});

const allergens = <List extends typeof EU_ALLERGENS | typeof US_ALLERGENS>(list: List) =>
  v.strictObject({
    /** In what is costed here. */
    sure: v.array(v.picklist(list)),
    /** Only in optional makings or in alternatives. */
    possible: v.array(v.picklist(list)),
  });

/** The costing card of a dish in a kitchen: money in minor units, masses in g for all portions of the card. */
export const CardData = v.strictObject({
  format: v.literal("halfloaf-card"),
  version: v.literal(1),
  dish: Id,
  title: v.string(),
  kitchen: v.string(),
  currency: v.string(),
  portions: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** Yield: cooked mass of one portion, by the dish's author. */
  portionMassG: amount,
  makings: v.array(CardMaking),
  /** Makings whose amount is not known in g: in no sum. */
  unknown: v.array(v.strictObject({ food: Id, name: v.string(), reason: v.string() })),
  /** What a plan may take in place of a making as costed, as far as the kitchen can have it; absent = nothing. */
  alternatives: v.optional(v.array(v.strictObject({ ...namedFood.entries, insteadOf: namedFood }))),
  /** Optional makings: in no sum. */
  optional: v.array(namedFood),
  totalMinor: minor,
  /** What each portion costs, the dearest first; they add up to the total. */
  platesMinor: v.array(minor),
  /** True where an amount or a price is not known: the total then is the least it costs. */
  atLeast: v.boolean(),
  /** True where any price in the total was never seen. */
  estimate: v.boolean(),
  minutes: v.strictObject({ handsOn: amount, elapsed: amount, ahead: amount }),
  vessels: v.array(v.strictObject({ vessel: v.string(), count: v.pipe(v.number(), v.integer(), v.minValue(1)) })),
  /** What one portion holds, component by component. */
  intake: v.array(
    v.strictObject({
      component: v.picklist([...NUTRIENT_NAMES, "vegetablesFruitG"]),
      /** The known part; absent where no part is known. */
      amount: v.optional(amount),
      /** Share of the edible mass whose figure is known. */
      knownShare: share,
    }),
  ),
  /** Where the figures of each food as costed come from, once for each food. */
  sources: v.array(
    v.strictObject({
      food: Id,
      name: v.string(),
      source: v.string(),
      /** Components whose figure comes from elsewhere than the others. */
      others: v.array(v.strictObject({ source: v.string(), components: v.array(v.picklist(NUTRIENT_NAMES)) })),
    }),
  ),
  /** True where losses of cooking were taken off. */
  retained: v.boolean(),
  allergens: v.strictObject({ eu: allergens(EU_ALLERGENS), us: allergens(US_ALLERGENS) }),
  /** Strictest way of eating that takes it as costed, and with the strictest of its alternatives. */
  diet: v.strictObject({ asCosted: v.picklist(DIETS), reachable: v.picklist(DIETS) }),
  /** Eaters of the kitchen who do not eat it as costed, each with the foods they leave. */
  notFor: v.array(v.strictObject({ eater: Id, name: v.string(), foods: v.array(namedFood) })),
  /** Why this kitchen can't cook it: the kit it lacks; absent where it can. */
  missingKit: v.optional(v.string()),
  keeps: v.strictObject({ fridgeDays: amount, freezerDays: v.optional(amount), authority: v.string() }),
  travels: v.boolean(),
  served: v.array(v.picklist(["hot", "cold"])),
  cautions: v.array(v.strictObject({ code: v.string(), text: v.string(), authority: v.string() })),
});
export type CardData = v.InferOutput<typeof CardData>;
