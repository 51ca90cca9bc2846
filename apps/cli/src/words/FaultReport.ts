import * as v from "valibot";
import { Fault } from "./Fault.ts";

/** What a command gives as data instead of its result: all that is wrong, or nothing where a check found nothing. */
export const FaultReport = v.strictObject({
  format: v.literal("halfloaf-faults"),
  version: v.literal(1),
  /** What was looked at, as it was named. */
  about: v.string(),
  /** sound: nothing is wrong; faulty: what was given can't be used; no-plan: no plan within the limits was found. */
  outcome: v.picklist(["sound", "faulty", "no-plan"]),
  faults: v.array(Fault),
});
export type FaultReport = v.InferOutput<typeof FaultReport>;

/** A report about something, by its name. */
export function toFaultReport(
  about: string,
  faults: readonly Fault[],
  outcome: FaultReport["outcome"] = faults.length === 0 ? "sound" : "faulty",
): FaultReport {
  return { format: "halfloaf-faults", version: 1, about, outcome, faults: [...faults] };
}
