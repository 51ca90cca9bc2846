import type { Dish } from "../../dish/index.ts";
import { retellCautions } from "./retellCautions.ts";
import type { WorkSheet } from "./WorkSheet.ts";

/**
 * A sheet with titles, steps and authors' cautions as these dishes tell them, by the ids of dishes and steps: an order of work
 * that was found with the dishes in another language. What is of no dish here stays as it is.
 */
export function retellSheet(sheet: WorkSheet, dishes: readonly Dish[]): WorkSheet {
  const told = sheet.dishes.map(({ dish: id }) => dishes.find((each) => each.id === id));
  const retell = <Line extends { readonly dish: number; readonly step: string; readonly text: string }>(
    line: Line,
  ): Line => ({ ...line, text: told[line.dish]?.method.find(({ id }) => id === line.step)?.text ?? line.text });
  return {
    ...sheet,
    dishes: sheet.dishes.map((dish, at) => ({ ...dish, title: told[at]?.title ?? dish.title })),
    lines: sheet.lines.map((line) => (line.kind === "step" ? retell(line) : line)),
    ahead: sheet.ahead.map(retell),
    brokenHolds: sheet.brokenHolds.map(retell),
    before: retellCautions(sheet.before, (at: number) => told[at]?.cautions),
  };
}
