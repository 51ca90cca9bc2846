import { PLACES } from "halfloaf/food";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const amount = v.pipe(v.number(), v.minValue(0));
const minor = v.pipe(v.number(), v.integer(), v.minValue(0));

/** One lot of the stores: of a food, or of cooked portions of a dish. */
export const StoresLine = v.strictObject({
  lot: v.string(),
  food: v.optional(v.string()),
  dish: v.optional(v.string()),
  place: v.picklist(PLACES),
  since: CivilDate,
  openedOn: v.optional(CivilDate),
  massG: amount,
  /** Of cooked portions. */
  portions: v.optional(amount),
  costMinor: minor,
  /** Last day, and whole days to it, negative where it has gone off; absent where nobody knows. */
  until: v.optional(CivilDate),
  daysLeft: v.optional(v.pipe(v.number(), v.integer())),
  /** g more that were told to have left it than were there; absent = the record is not in doubt. */
  toCountG: v.optional(amount),
});
export type StoresLine = v.InferOutput<typeof StoresLine>;

/** What is in the stores on a day, in the order in which to use it. Money in minor units. */
export const StoresReport = v.strictObject({
  format: v.literal("halfloaf-stores"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  on: CivilDate,
  lots: v.array(StoresLine),
  /** Lots that end within so many days, or of which nobody knows how long they keep. */
  withinDays: v.pipe(v.number(), v.integer(), v.minValue(0)),
  useUp: v.array(v.string()),
});
export type StoresReport = v.InferOutput<typeof StoresReport>;
