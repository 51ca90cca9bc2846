import type { CivilDate } from "../quantity/index.ts";
import { firstExpiredFirstOut } from "./firstExpiredFirstOut.ts";
import { isGoneOff } from "./keepsUntil.ts";
import type { LotState } from "./lotState.ts";
import type { MovementOf } from "./movement.ts";

/** What has gone off before a day, as the movements that throw it away; lots whose last day is not known are left alone. */
export function wasteOn(lots: Iterable<LotState>, on: CivilDate): MovementOf<"wasted">[] {
  return firstExpiredFirstOut(lots).flatMap(({ id, keeps, leftG }) =>
    keeps?.ok && isGoneOff(keeps, on)
      ? [{ kind: "wasted" as const, on, lot: id, massG: leftG, why: keeps.because }]
      : [],
  );
}
