import type { Findings } from "@halfloaf/reading";
import type { Fault } from "../words/Fault.ts";
import type { ReadPart } from "./ReadReport.ts";

/** A file as it was read: what is shown, what can be kept, and what must be settled before. */
export interface FileReading {
  readonly part: ReadPart;
  readonly findings: Findings;
  readonly open: readonly Fault[];
}
