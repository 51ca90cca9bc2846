import { loadDishTextsDe } from "@halfloaf/data";
import * as v from "valibot";
import { expect, test } from "vitest";
import { DishTexts, layDishTexts } from "../../dish/index.ts";
import { makeKit, readStarterTables, timeWork } from "./cooking.testing.ts";
import { retellCautions } from "./retellCautions.ts";
import { retellSheet } from "./retellSheet.ts";
import { toWorkSheet } from "./toWorkSheet.ts";
import type { WorkSheet } from "./WorkSheet.ts";

const tables = readStarterTables();
const german = layDishTexts(tables.dishes, v.parse(DishTexts, loadDishTextsDe()));
const EVERY = 9;

/** Of cautions before the first step the order means nothing. */
function inOrder(sheet: WorkSheet): WorkSheet {
  return {
    ...sheet,
    before: sheet.before.toSorted((a, b) => (`${a.code} ${a.text}` < `${b.code} ${b.text}` ? -1 : 1)),
  };
}

test("an order of work told again in another language is the one that is found in it, and back", () => {
  const sheetOf = (dishes: typeof german) =>
    toWorkSheet(
      timeWork({
        dishes: dishes.map((dish) => ({ dish, portions: 2 })),
        kit: makeKit(),
        cooks: 1,
        tables,
        authority: "strictest",
      }),
    );
  let ahead = 0;
  let cautions = 0;
  for (let at = 0; at + 1 < german.length; at += EVERY) {
    const [said, told] = [sheetOf(tables.dishes.slice(at, at + 2)), sheetOf(german.slice(at, at + 2))];
    expect(said).not.toEqual(told);
    expect(inOrder(retellSheet(said, german))).toEqual(inOrder(told));
    expect(inOrder(retellSheet(told, tables.dishes))).toEqual(inOrder(said));
    expect(retellSheet(said, [])).toEqual(said);
    ahead += said.ahead.length;
    cautions += said.before.filter(({ code }) => code === "dish").length;
  }
  expect(Math.min(ahead, cautions)).toBeGreaterThan(2);
});

test("a caution that two dishes share is told once, that of an unknown dish as it was kept, the others as they are", () => {
  const kept = [
    { code: "dish", text: "a", dishes: [1, 2] },
    { code: "room-time", text: "a", dishes: [1] },
    { code: "dish", text: "b", dishes: [1] },
    { code: "dish", text: "c", dishes: [3] },
  ];
  const told = new Map([
    [1, ["A", "B"]],
    [2, ["A"]],
  ]);
  expect(retellCautions(kept, (dish: number) => told.get(dish))).toEqual([
    { code: "dish", text: "A", dishes: [1, 2] },
    { code: "dish", text: "B", dishes: [1] },
    { code: "room-time", text: "a", dishes: [1] },
    { code: "dish", text: "c", dishes: [3] },
  ]);
});
