import * as v from "valibot";
import { Id } from "../food/index.ts";

const weekdayNumber = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(7));
const isEachOnce = (numbers: number[]) => new Set(numbers).size === numbers.length;

/** A place where packs are bought, and what one visit to it takes. Money in minor units, times in minutes. */
export const Shop = v.strictObject({
  id: Id,
  name: v.pipe(v.string(), v.nonEmpty()),
  /** Weekdays on which it is open, each once. **Source**: ISO 8601, Monday is 1 and Sunday 7. */
  openDays: v.pipe(v.array(weekdayNumber), v.minLength(1), v.check(isEachOnce, "each weekday once")),
  trip: v.strictObject({
    costMinor: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    minutes: v.pipe(v.number(), v.minValue(0)),
    /** Most mass in kg carried home from one trip; absent = no limit. */
    carryKg: v.optional(v.pipe(v.number(), v.gtValue(0))),
  }),
  /** The kind of sitting that the trip comes home before: what it brings can be cooked for this sitting of the day. */
  beforeSitting: Id,
});
export type Shop = v.InferOutput<typeof Shop>;
