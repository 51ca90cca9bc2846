import { KIT_PARTS, STEP_KINDS } from "halfloaf/dish";
import * as v from "valibot";

const whole = v.pipe(v.number(), v.integer());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const place = count;
const amount = v.pipe(v.number(), v.minValue(0));

const CautionFields = {
  code: v.string(),
  text: v.string(),
  authority: v.string(),
  /** Ids of the foods it is about; empty = the dish as a whole. */
  foods: v.array(v.string()),
  /** Held so many minutes at another temperature in the middle, it is as safe. */
  otherTimes: v.optional(v.array(v.strictObject({ tempC: v.number(), minutes: amount }))),
  /** Latest minute for what it asks. */
  byMinutes: v.optional(count),
};
const Caution = v.strictObject(CautionFields);
const DishCaution = v.strictObject({ ...CautionFields, dishes: v.array(place) });

const times = { startMinutes: count, endMinutes: count };
const cooks = v.array(v.pipe(v.number(), v.integer(), v.minValue(1)));

const Line = v.variant("kind", [
  v.strictObject({
    kind: v.literal("step"),
    ...times,
    /** Position in `dishes`. */
    dish: place,
    /** Id of the step in the method of the dish. */
    step: v.string(),
    stepKind: v.picklist(STEP_KINDS),
    text: v.string(),
    hands: v.picklist(["full", "eye", "none"]),
    /** Who does it, from 1 on; empty where it does itself. */
    cooks,
    kit: v.array(v.strictObject({ part: v.picklist(KIT_PARTS), number: v.optional(count) })),
    tempC: v.optional(v.number()),
    cautions: v.array(Caution),
  }),
  v.strictObject({ kind: v.picklist(["board-wash", "kit-wash"]), ...times, part: v.picklist(KIT_PARTS), cooks }),
  v.strictObject({ kind: v.literal("oven"), ...times, tempC: v.number() }),
]);

/** The order of work of one cooking as data: minutes from the moment the cook begins; below 0 lies what is done ahead. */
export const WorkData = v.strictObject({
  format: v.literal("halfloaf-work"),
  version: v.literal(1),
  kitchen: v.string(),
  cooks: v.picklist([1, 2]),
  serveMinutes: count,
  /** Minutes after midnight of the day on which it is served; absent where no time was asked for. */
  serveAtMinutes: v.optional(count),
  /** False where a better order of work may exist. */
  isProven: v.boolean(),
  dishes: v.array(
    v.strictObject({
      dish: v.string(),
      title: v.string(),
      portions: amount,
      readyMinutes: count,
      waitMinutes: count,
      isHot: v.boolean(),
      /** What the largest pot takes, where more is cooked. */
      potPortions: v.optional(count),
      /** What goes in for its portions: the food by id, and the line that tells how much of it. */
      makings: v.array(v.strictObject({ food: v.string(), text: v.string() })),
      /** Makings taken otherwise than the dish first states, where any is; foods by id. */
      taken: v.optional(v.array(v.strictObject({ food: v.string(), insteadOf: v.string() }))),
      /** The time it is stated with against that of its steps, cooked by itself; absent where none is stated. */
      stated: v.optional(
        v.strictObject({
          portions: amount,
          statedMinutes: amount,
          computedMinutes: count,
          /** Computed less stated. */
          offMinutes: v.number(),
          isProven: v.boolean(),
        }),
      ),
    }),
  ),
  lines: v.array(Line),
  ahead: v.array(
    v.strictObject({
      dish: place,
      step: v.string(),
      text: v.string(),
      kind: v.picklist(["thaw", "soak", "other"]),
      minutes: count,
      latestStartMinutes: whole,
      cautions: v.array(Caution),
    }),
  ),
  /** Waits that are longer than the dish says, because the holds collide. */
  brokenHolds: v.array(
    v.strictObject({ dish: place, step: v.string(), text: v.string(), waitMinutes: count, holdMinutes: amount }),
  ),
  /** What stated minutes are multiplied by, for the pace of this kitchen's cook; a kind that is not there counts 1. */
  pace: v.array(v.strictObject({ kind: v.picklist(STEP_KINDS), factor: amount })),
  /** Only where something has happened already: lines hold what was done and the rest as it is timed now. */
  retimed: v.optional(
    v.strictObject({
      kind: v.picklist(["same", "timed", "shifted"]),
      nowMinutes: count,
      /** When it was to be served before. */
      wasServeMinutes: count,
    }),
  ),
  /** Only where minutes at hand were given and do not suffice. */
  tooLong: v.optional(
    v.strictObject({
      byMinutes: count,
      earlier: v.array(
        v.strictObject({ dish: place, step: v.string(), along: v.array(v.string()), savedMinutes: count }),
      ),
    }),
  ),
  before: v.array(DishCaution),
  after: v.array(DishCaution),
});
export type WorkData = v.InferOutput<typeof WorkData>;
