import { SITTING_KINDS } from "halfloaf/dish";
import { Id } from "halfloaf/food";
import { WeekPlan } from "halfloaf/kitchen";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** Why a sitting is not as it was. */
const Reason = v.strictObject({
  /**
   * refused: the dish was refused; wanted: another one was; not-for-eaters: somebody who sits there does not take it; not-there: what was cooked of it is not there; not-to-be-had: its makings can't be there in time; breaks: with
   * it the plan would break the limits; dearer: it could stay and the week would cost more; skipped: these eaters
   * do not eat here; guests: these eat here too.
   */
  kind: v.picklist([
    "refused",
    "wanted",
    "not-for-eaters",
    "not-there",
    "not-to-be-had",
    "breaks",
    "dearer",
    "skipped",
    "guests",
  ]),
  /** Codes of the limits that would be broken. */
  limits: v.optional(v.array(v.string())),
  /** What the old dish would cost more, everything weighed. */
  byMinor: v.optional(minor),
});

const MendedSitting = v.strictObject({
  date: CivilDate,
  kind: v.picklist(SITTING_KINDS),
  eaters: v.array(Id),
  /** Dish before and after of these eaters; absent = they do not eat here. */
  before: v.optional(Id),
  after: v.optional(Id),
  why: Reason,
});

/** A cooking that stays where it was and takes other makings than before. */
const OtherWay = v.strictObject({
  date: CivilDate,
  kind: v.picklist(SITTING_KINDS),
  dish: Id,
  /** Makings taken otherwise than the dish first states; empty = none. */
  taken: v.array(v.strictObject({ food: Id, insteadOf: Id })),
});

/** Sums of a week: money at the tills and for fares, waste and carry-over at cost, hands-on minutes. */
const Sums = v.strictObject({
  paidMinor: minor,
  wasteMinor: minor,
  carryOverMinor: minor,
  handsOnMinutes: v.pipe(v.number(), v.minValue(0)),
});

/** What a change made of a week. Money in minor units. */
export const MendReport = v.strictObject({
  format: v.literal("halfloaf-mend"),
  version: v.literal(1),
  currency: v.string(),
  /** First day that is not over. */
  today: CivilDate,
  /** True where the plan stands as it was. */
  kept: v.boolean(),
  sittings: v.array(MendedSitting),
  /** Cookings with other makings than before; absent = none. */
  otherWays: v.optional(v.array(OtherWay)),
  /** Lines of the buying list that changed, by trip and pack. */
  buying: v.array(
    v.strictObject({ shop: Id, date: CivilDate, pack: Id, label: v.string(), before: count, after: count }),
  ),
  before: Sums,
  after: Sums,
  /** What a plan that owes nothing to the old one would save, everything weighed; as far as so many moves can tell. */
  keeping: v.strictObject({ priceMinor: minor, moves: count }),
  week: WeekPlan,
});
export type MendReport = v.InferOutput<typeof MendReport>;
