import { WeekPlan } from "halfloaf/kitchen";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const minor = v.pipe(v.number(), v.integer());
const count = v.pipe(v.number(), v.integer(), v.minValue(0));

/** What money can be weighed against. */
export const AGAINST = ["minutes", "variety", "intake"] as const;

const Choice = v.strictObject({
  /** Paid, less what the stock at the end is worth more than that at the start. */
  moneyMinor: minor,
  /** Paid at the tills and for fares. */
  paidMinor: minor,
  /** Hands-on minutes and those of the trips. */
  minutes: v.pipe(v.number(), v.minValue(0)),
  /** Different dishes in the evenings. */
  distinct: count,
  /** What falls short of the references or goes beyond them, at the kitchen's price for it. */
  shortfallMinor: minor,
  week: WeekPlan,
});

/** Plans between which money and one other thing decide, from the cheapest on; money in minor units. */
export const ChoicesReport = v.strictObject({
  format: v.literal("halfloaf-choices"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  from: CivilDate,
  days: v.pipe(v.number(), v.integer(), v.minValue(1)),
  against: v.picklist(AGAINST),
  /** Steps made of all; fewer where the search was stopped. */
  done: count,
  steps: count,
  choices: v.array(Choice),
});
export type ChoicesReport = v.InferOutput<typeof ChoicesReport>;
