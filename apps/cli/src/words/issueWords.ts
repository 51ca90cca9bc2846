import { FAULT_WORDS_EN } from "@halfloaf/words/en/faults";
import { type KnownNames, tellIssue as tellInWords } from "@halfloaf/words/faults";
import type { Issue } from "halfloaf/quantity";
import type { Fault } from "./Fault.ts";

/** A fault of the kitchen `raw`, as it was read, in words; `known` are names that could have been meant. */
export function tellIssue(issue: Issue, raw: unknown, known: KnownNames = {}): Fault {
  return tellInWords(issue, raw, FAULT_WORDS_EN, known);
}
