import type { AccountLine, Stretch } from "halfloaf/kitchen/record";
import type { Formats } from "../words/Formats.ts";

/** A stretch in few letters: the day it begins on, or its month. */
export function nameOfLine({ from }: AccountLine, stretch: Stretch, formats: Formats): string {
  return stretch === "month" ? formats.month(from) : formats.shortDay(from);
}
