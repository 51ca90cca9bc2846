import { Id } from "halfloaf/food";
import { Edit, RecordEvent } from "halfloaf/kitchen/record";
import { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";

const amount = v.pipe(v.number(), v.minValue(0));
const minor = v.pipe(v.number(), v.integer(), v.minValue(0));

/** What one act wrote down. Money in minor units, masses in g. */
export const ActReport = v.strictObject({
  format: v.literal("halfloaf-act"),
  version: v.literal(1),
  kitchen: v.string(),
  currency: v.string(),
  /** The day it is about. */
  on: CivilDate,
  /** The eater who acted; absent = not said. */
  by: v.optional(Id),
  /** The rows of the record in the order in which they were written; none where there was nothing to write. */
  rows: v.array(v.union([RecordEvent, Edit])),
  /** What of these rows cannot have happened as told. */
  doubts: v.array(v.strictObject({ event: v.string(), code: v.string(), expected: v.string(), received: v.string() })),
  /** Lots that a count found otherwise than the record had them. */
  differences: v.optional(
    v.array(v.strictObject({ lot: v.string(), recordedG: amount, countedG: amount, costMinor: minor })),
  ),
  /** What was to be eaten and is not in the stores: portions of a dish, or g of a food. */
  short: v.optional(
    v.array(v.strictObject({ dish: v.optional(v.string()), food: v.optional(v.string()), amount: amount })),
  ),
});
export type ActReport = v.InferOutput<typeof ActReport>;
