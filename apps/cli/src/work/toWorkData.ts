import * as v from "valibot";
import { WorkData } from "./WorkData.ts";
import type { WorkPage } from "./WorkPage.ts";

/** An order of work as it is published. */
export function toWorkData({
  sheet,
  makings,
  kitchen,
  tooLong,
  stated,
  pace,
  retimed,
}: Omit<WorkPage, "width" | "paint">): WorkData {
  const { rows: _, dishes, ...rest } = sheet;
  const data = {
    format: "halfloaf-work",
    version: 1,
    kitchen,
    ...rest,
    dishes: dishes.map((dish, at) => ({
      ...dish,
      makings: makings[at] ?? [],
      ...(stated[at] && { stated: stated[at] }),
    })),
    pace: pace.map(({ kind, factor }) => ({ kind, factor })),
    ...(tooLong && { tooLong }),
    ...(retimed && { retimed }),
  };
  return v.parse(WorkData, data);
}
