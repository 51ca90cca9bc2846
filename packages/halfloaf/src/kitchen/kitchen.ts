import * as v from "valibot";
import { Dish, SITTING_KINDS, STEP_KINDS } from "../dish/index.ts";
import { DIETS, EU_ALLERGENS, FoodOverride, Id, OwnFood, US_ALLERGENS } from "../food/index.ts";
import { ACTIVITIES, SEXES, STAGES } from "../intake/index.ts";
import { Pack, Shop } from "../price/index.ts";
import { CivilDate, Currency } from "../quantity/index.ts";
import { Lot } from "../stores/index.ts";
import { PutBy, PuttingBy } from "./putBy.ts";
import { VarietyRule, Wish } from "./wish.ts";

const text = v.pipe(v.string(), v.nonEmpty());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const minor = v.pipe(v.number(), v.integer(), v.minValue(0));
const minutes = v.pipe(v.number(), v.minValue(0));
const positive = v.pipe(v.number(), v.gtValue(0));
const weekday = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(7));

/** A person who eats here. Body measures serve the energy need alone; none is ever a target. */
export const Eater = v.strictObject({
  id: Id,
  name: text,
  sex: v.picklist(SEXES),
  ageYears: v.pipe(v.number(), v.minValue(0), v.maxValue(120)),
  heightCm: v.pipe(v.number(), v.minValue(50), v.maxValue(250)),
  massKg: v.pipe(v.number(), v.minValue(2), v.maxValue(400)),
  activity: v.picklist(ACTIVITIES),
  /** Pregnancy or lactation: needs then come from care, not from here. */
  stage: v.optional(v.picklist(STAGES)),
  /** Eats all that is no stricter than this. */
  diet: v.optional(v.picklist(DIETS), "meat"),
  /** Never on this eater's plate, also not as an optional making. */
  avoids: v.optional(
    v.strictObject({
      allergens: v.optional(v.array(v.picklist([...EU_ALLERGENS, ...US_ALLERGENS])), []),
      foods: v.optional(v.array(Id), []),
    }),
    {},
  ),
});
export type Eater = v.InferOutput<typeof Eater>;

export const Kit = v.strictObject({
  rings: count,
  pans: count,
  pots: count,
  /** Standard portions that the largest pot takes. */
  potPortions: v.pipe(v.number(), v.integer(), v.minValue(1)),
  oven: v.boolean(),
  microwave: v.boolean(),
  kettle: v.boolean(),
  blender: v.boolean(),
  boards: count,
  fridgeLitres: v.pipe(v.number(), v.minValue(0)),
  freezerLitres: v.pipe(v.number(), v.minValue(0)),
});
export type Kit = v.InferOutput<typeof Kit>;

/** A sitting that comes back every week. */
export const WeeklySitting = v.strictObject({
  kind: v.picklist(SITTING_KINDS),
  /** ISO 8601 weekdays, Monday = 1. */
  on: v.pipe(v.array(weekday), v.minLength(1)),
  eaters: v.pipe(v.array(Id), v.minLength(1)),
  /** Minutes at hand, from the first step to the plate. */
  minutes,
  /** False where nothing can be heated. */
  heat: v.optional(v.boolean(), true),
  /** True where the plate is taken along. */
  packed: v.optional(v.boolean(), false),
});
export type WeeklySitting = v.InferOutput<typeof WeeklySitting>;

export const Limits = v.strictObject({
  /** Most money at the tills in a week, trips included. */
  budgetMinor: v.optional(minor),
  /** The budget must also hold where every estimated price comes out so many percent higher. */
  standRisePct: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(100)), 0),
  /** Most hands-on minutes of a day; seven numbers give each weekday its own, Monday first. */
  handsOnMinutes: v.union([minutes, v.pipe(v.array(minutes), v.length(7))]),
  energyTolerancePct: v.optional(v.pipe(v.number(), v.minValue(2), v.maxValue(50)), 10),
  distinctEvenings: v.optional(count, 5),
  mainMax: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1)), 3),
  usesPerDish: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1)), 3),
  tripsPerWeek: v.pipe(v.number(), v.integer(), v.minValue(1)),
  variety: v.optional(v.array(VarietyRule), []),
});

/** What things that are not money are worth to this kitchen, in minor units. */
export const Worth = v.strictObject({
  minuteMinor: v.pipe(v.number(), v.minValue(0)),
  /** Minutes it takes to wash up one vessel; common practice, no source. */
  vesselMinutes: v.optional(v.pipe(v.number(), v.minValue(0)), 2),
  /** Dislike of one point below ten, for each serving. */
  dislikePointMinor: v.optional(v.pipe(v.number(), v.minValue(0)), 8),
  shortfallFirstMinor: v.optional(v.pipe(v.number(), v.minValue(0)), 400),
  shortfallRestMinor: v.optional(v.pipe(v.number(), v.minValue(0)), 1200),
});

/**
 * Everything one household keeps, as one file. Money in minor units of `currency`, masses in g, dates as
 * YYYY-MM-DD. What is absent is unknown or the stated default.
 */
export const Kitchen = v.strictObject({
  /** Where an editor finds the schema; not read here. */
  $schema: v.optional(v.string()),
  format: v.literal("halfloaf-kitchen"),
  version: v.literal(1),
  name: text,
  note: v.optional(text),
  currency: Currency,
  /** First day that is planned when none is asked for. */
  startsOn: CivilDate,
  authorities: v.strictObject({
    intake: v.picklist(["efsa", "nasem"]),
    /** `strictest` takes the stricter of two authorities. */
    safety: v.optional(v.picklist(["strictest", "uk", "us"]), "strictest"),
  }),
  english: v.optional(v.picklist(["british", "american"]), "british"),
  eaters: v.pipe(v.array(Eater), v.minLength(1)),
  kit: Kit,
  /** The cook's pace by kind of step, as a factor of the minutes that dishes state; a kind without one counts as 1. */
  pace: v.optional(v.record(v.picklist(STEP_KINDS), v.pipe(v.number(), v.gtValue(0), v.maxValue(10)))),
  /** By kind of step: what cookings showed that were written down until then is forgotten (ms since 1970). */
  paceForgotten: v.optional(v.record(v.picklist(STEP_KINDS), v.pipe(v.number(), v.safeInteger(), v.minValue(0)))),
  shops: v.pipe(v.array(Shop), v.minLength(1)),
  packs: v.array(Pack),
  stores: v.array(Lot),
  /** Cooked portions from earlier weeks. */
  putBy: v.optional(v.array(PutBy), []),
  /** Portions that are cooked for later weeks; absent = none. */
  puttingBy: v.optional(PuttingBy),
  /** Share of a day's energy that each kind of sitting brings, in percent. */
  energySharePct: v.record(v.picklist(SITTING_KINDS), positive),
  sittings: v.pipe(v.array(WeeklySitting), v.minLength(1)),
  limits: Limits,
  worth: Worth,
  /** What a kWh costs in minor units, and whether that is an estimate; absent = not known. */
  energyPrice: v.optional(
    v.strictObject({ kwhMinor: v.pipe(v.number(), v.minValue(0)), estimate: v.optional(v.boolean(), false) }),
  ),
  /** Ratings from 0 to 10; a dish without one counts as 6. */
  ratings: v.optional(
    v.array(v.strictObject({ dish: Id, points: v.pipe(v.number(), v.minValue(0), v.maxValue(10)) })),
    [],
  ),
  /** Lots of the stores, or of what is put by, that must be used up within the days planned. */
  useUp: v.optional(v.array(Id), []),
  refusedDishes: v.optional(v.array(Id), []),
  wishes: v.optional(v.array(Wish), []),
  /** Foods of this kitchen's own, beside the starter foods. */
  foods: v.optional(v.array(OwnFood), []),
  /** Figures of foods that this kitchen takes from elsewhere; each with its source. */
  overrides: v.optional(v.array(FoodOverride), []),
  /** Dishes of this kitchen's own, beside the starter dishes. */
  dishes: v.optional(v.array(Dish), []),
});
export type Kitchen = v.InferOutput<typeof Kitchen>;
