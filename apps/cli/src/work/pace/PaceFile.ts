import { STEP_KINDS } from "halfloaf/dish";
import * as v from "valibot";

const minutes = v.pipe(v.number(), v.minValue(0));

/** What is kept of finished cookings, for the pace of a kitchen's cook; the factors are learned from it anew each time. */
export const PaceFile = v.strictObject({
  format: v.literal("halfloaf-pace"),
  version: v.literal(1),
  kitchen: v.string(),
  /** The oldest first. */
  observed: v.array(
    v.strictObject({
      kind: v.picklist(STEP_KINDS),
      /** What the dish states for so many portions. */
      statedMinutes: minutes,
      /** From the begin to the end as they were marked. */
      observedMinutes: minutes,
    }),
  ),
});
export type PaceFile = v.InferOutput<typeof PaceFile>;
