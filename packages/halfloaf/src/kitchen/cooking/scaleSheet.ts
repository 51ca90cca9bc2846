import { type Dish, scaleVolumes } from "../../dish/index.ts";
import type { WorkSheet } from "./WorkSheet.ts";

/**
 * A sheet whose steps name the water for the portions that are cooked, not for those that the dishes are written for. `dishes`
 * are those of the sheet, by place; steps of a dish that is not there stay as they are.
 */
export function scaleSheet(
  sheet: WorkSheet,
  dishes: readonly (Pick<Dish, "portions"> | undefined)[],
  tellNumber?: (value: number) => string,
): WorkSheet {
  const scale = <Line extends { readonly dish: number; readonly text: string }>(line: Line): Line => {
    const written = dishes[line.dish]?.portions;
    const cooked = sheet.dishes[line.dish]?.portions;
    if (written === undefined || cooked === undefined) return line;
    return { ...line, text: scaleVolumes(line.text, cooked / written, tellNumber) };
  };
  return {
    ...sheet,
    lines: sheet.lines.map((line) => (line.kind === "step" ? scale(line) : line)),
    ahead: sheet.ahead.map(scale),
    brokenHolds: sheet.brokenHolds.map(scale),
  };
}
