import type { TooLong, WorkSheet } from "halfloaf/kitchen";
import * as v from "valibot";
import { WorkData } from "./WorkData.ts";

/** An order of work as it is published. */
export function toWorkData(sheet: WorkSheet, kitchen: string, tooLong: TooLong | undefined): WorkData {
  const { rows: _, ...rest } = sheet;
  const data = { format: "halfloaf-work", version: 1, kitchen, ...rest, ...(tooLong && { tooLong }) };
  return v.parse(WorkData, data);
}
