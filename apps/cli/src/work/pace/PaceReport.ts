import { STEP_KINDS } from "halfloaf/dish";
import * as v from "valibot";

const factor = v.pipe(v.number(), v.minValue(0));

/** The pace of a kitchen's cook as data, by kind of step; a kind that is not there is done in the time dishes state. */
export const PaceReport = v.strictObject({
  format: v.literal("halfloaf-pace-report"),
  version: v.literal(1),
  kitchen: v.string(),
  learned: v.array(
    v.strictObject({
      kind: v.picklist(STEP_KINDS),
      /** Steps that were seen. */
      count: v.pipe(v.number(), v.integer(), v.minValue(1)),
      /** Median of minutes taken by minutes stated. */
      median: factor,
      /** The median drawn towards 1, by which stated minutes are multiplied. */
      factor,
    }),
  ),
});
export type PaceReport = v.InferOutput<typeof PaceReport>;
