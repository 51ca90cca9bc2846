import { SITTING_KINDS } from "halfloaf/dish";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const amount = v.pipe(v.number(), v.minValue(0));

/** One thing to do on a day, for the sitting that it names. */
export const DayJob = v.strictObject({
  kind: v.picklist(["cook", "re-heat", "take-out", "thaw", "soak", "ahead"]),
  /** The sitting it is done for. */
  date: CivilDate,
  sitting: v.picklist(SITTING_KINDS),
  dish: v.string(),
  /** Minutes before the sitting at which it begins at the latest. */
  beforeMinutes: count,
  /** Position in `batches` of the week. */
  batch: count,
  portions: v.optional(amount),
  /** Makings of what is cooked that are taken otherwise than the dish first states. */
  taken: v.optional(v.array(v.strictObject({ food: v.string(), insteadOf: v.string() }))),
  /** Where cooked portions from before the week lie. */
  putBy: v.optional(v.picklist(["fridge", "freezer"])),
  /** Day it was cooked; only of what is left over or was put by. */
  cookedOn: v.optional(CivilDate),
  cautions: v.optional(v.array(v.strictObject({ code: v.string(), text: v.string(), authority: v.string() }))),
  /** Step of the dish's method; absent for what only has to thaw. */
  step: v.optional(v.string()),
  text: v.optional(v.string()),
  /** Ids of foods. */
  foods: v.optional(v.array(v.string())),
});

const Cooking = v.strictObject({
  sitting: v.picklist(SITTING_KINDS),
  /** True where the plates are taken along. */
  packed: v.boolean(),
  dishes: v.array(v.strictObject({ dish: v.string(), portions: amount })),
  batches: v.array(count),
  /** From the first step to the plate, all dishes cooked at once; absent where no order of work was found. */
  serveMinutes: v.optional(count),
  isProven: v.boolean(),
  /** The longest of the same dishes as the week reckons them, each by itself. */
  reckonedMinutes: amount,
  atHandMinutes: v.optional(amount),
});

/** The jobs of one day of a week as data, and the cookings of that day, each timed as a whole. */
export const DayData = v.strictObject({
  format: v.literal("halfloaf-day"),
  version: v.literal(1),
  kitchen: v.string(),
  date: CivilDate,
  /** By time. */
  jobs: v.array(DayJob),
  cookings: v.array(Cooking),
});
export type DayData = v.InferOutput<typeof DayData>;
