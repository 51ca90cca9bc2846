import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";
import { DayJob } from "../work/day/DayData.ts";

const amount = v.pipe(v.number(), v.minValue(0));
const minor = v.pipe(v.number(), v.integer());

const Line = v.strictObject({
  lot: v.string(),
  food: v.optional(v.string()),
  dish: v.optional(v.string()),
  massG: amount,
  /** Whole days left; 0 = today is the last. Absent where nobody knows. */
  daysLeft: v.optional(v.pipe(v.number(), v.integer())),
  costMinor: minor,
});

/** What to be told on a day. Money in minor units. */
export const TodayReport = v.strictObject({
  format: v.literal("halfloaf-today"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  on: CivilDate,
  /** Jobs of the accepted weeks by time, without those that were done. */
  jobs: v.array(
    v.strictObject({
      ...DayJob.entries,
      /** Portions of what is left over or put by that the stores do not have, or not good; absent where all are there. */
      shortPortions: v.optional(amount),
      /** True where all are short, as the cooking itself is still among these jobs. */
      isToCook: v.optional(v.literal(true)),
    }),
  ),
  /** Plates to come of the accepted week that are not for one of those who are to eat them, by the kitchen as it is now, and the foods that are in the way. */
  against: v.array(
    v.strictObject({
      date: CivilDate,
      kind: DayJob.entries.sitting,
      dish: v.string(),
      eater: v.string(),
      foods: v.array(v.string()),
    }),
  ),
  /** What to buy today: packs of planned trips that are not at home yet. */
  toBuy: v.array(
    v.strictObject({
      shop: v.string(),
      date: CivilDate,
      pack: v.string(),
      count: amount,
      /** True where it was told that the shop did not have it on that trip. */
      notThere: v.optional(v.literal(true)),
    }),
  ),
  lastDay: v.array(Line),
  goneOff: v.array(Line),
  /** What ends within three days besides. */
  useUp: v.array(Line),
  toCount: v.array(v.strictObject({ lot: v.string(), shortG: amount, since: CivilDate })),
  /** How many things came out otherwise than the accepted week takes account of; more than 0 = it is worth planning again. */
  news: amount,
  budget: v.strictObject({
    from: CivilDate,
    to: CivilDate,
    spentMinor: minor,
    ateOutMinor: minor,
    budgetMinor: v.optional(minor),
    leftMinor: v.optional(minor),
  }),
});
export type TodayReport = v.InferOutput<typeof TodayReport>;
