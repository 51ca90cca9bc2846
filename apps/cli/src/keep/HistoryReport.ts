import { Edit, RecordEvent } from "halfloaf/kitchen/record";
import * as v from "valibot";

const Act = v.strictObject({
  id: v.string(),
  /** The opening of the kitchen on a device that wrote it. */
  writer: v.string(),
  /** When it was written down, in ms since 1970-01-01 UTC; 0 for what came from a kitchen's file. */
  atMs: v.pipe(v.number(), v.integer(), v.minValue(0)),
  by: v.optional(v.string()),
  /** The act that it takes back. */
  undoes: v.optional(v.string()),
  rows: v.array(v.union([RecordEvent, Edit])),
});

/** Who did what when: the acts of a kitchen in the order in which they were written, the latest last. */
export const HistoryReport = v.strictObject({
  format: v.literal("halfloaf-history"),
  version: v.literal(1),
  kitchen: v.string(),
  acts: v.array(Act),
});
export type HistoryReport = v.InferOutput<typeof HistoryReport>;
