import type { AccountLine } from "halfloaf/kitchen/record";

/** The bars of a stretch in the order shown. */
export const BARS = ["planned", "spent", "eaten", "wasted"] as const;
export type Bar = (typeof BARS)[number];

/** What a bar stands for, in minor units; undefined where nothing was planned. */
export function barOf(line: AccountLine, bar: Bar): number | undefined {
  if (bar === "planned") return line.planned?.tillMinor;
  return { spent: line.tillMinor, eaten: line.platesMinor, wasted: line.wasteMinor }[bar];
}
