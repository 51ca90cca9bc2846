import { SITTING_KINDS } from "halfloaf/dish";
import type { SittingTimes } from "halfloaf/sheet";
import { useOnDevice } from "../kitchen/useOnDevice.ts";

const USUAL: SittingTimes = {};
const DAY_MINUTES = 24 * 60;

/** When people sit down, in minutes after midnight by kind of sitting, as this device remembers it; absent = as usual. */
export function useSittingTimes(): readonly [times: SittingTimes, set: (times: SittingTimes) => void] {
  return useOnDevice("halfloaf-sitting-times", isSittingTimes, USUAL);
}

function isSittingTimes(value: unknown): value is SittingTimes {
  return (
    typeof value === "object" &&
    value !== null &&
    Object.entries(value).every(
      ([kind, minutes]) =>
        SITTING_KINDS.some((each) => each === kind) &&
        Number.isInteger(minutes) &&
        minutes >= 0 &&
        minutes < DAY_MINUTES,
    )
  );
}
