import { loadDishTextsDe } from "@halfloaf/data";
import * as v from "valibot";
import { describe, expect, test } from "vitest";
import { DishTexts, layDishTexts } from "../../dish/index.ts";
import { addDays } from "../../quantity/index.ts";
import { findWeek } from "../sheet.testing.ts";
import { toWeekSheet } from "../week/toWeekSheet.ts";
import { toDaySheet } from "./toDaySheet.ts";

const add = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
const costs = (list: readonly { readonly costMinor: number }[]) => add(list.map(({ costMinor }) => costMinor));

describe.each(["port-ansel", "one-ring", "six-flat"])("the sheets of %s", (demo) => {
  const source = findWeek(demo);
  const { week } = source;
  const sheet = toWeekSheet(source);

  test("every sum is the sum of its lines, day by day", () => {
    for (const day of sheet.days) {
      expect(costs(day.sittings)).toBe(day.platesMinor);
      for (const sitting of day.sittings) expect(costs(sitting.plates)).toBe(sitting.costMinor);
      expect(costs(day.eaters)).toBe(day.platesMinor);
      expect(costs(day.sources)).toBe(day.platesMinor);
      expect(add(day.sittings.map(({ handsOnMinutes }) => handsOnMinutes))).toBe(day.handsOnMinutes);
      for (const trip of day.trips) expect(add(trip.lines.map(({ priceMinor }) => priceMinor))).toBe(trip.tillMinor);
      expect(costs([...day.left.soon, ...day.left.waiting, day.left.others])).toBe(day.left.totalMinor);
      expect(costs(day.wasted)).toBe(day.flow.wasteMinor);
    }
  });

  test("opening + till = plates + waste + left on each day, and each day opens with what the one before left", () => {
    sheet.days.forEach(({ flow, left }, at) => {
      expect(flow.openingMinor + flow.tillMinor).toBe(flow.platesMinor + flow.wasteMinor + flow.leftMinor);
      expect(flow.leftMinor).toBe(left.totalMinor);
      expect(flow.openingMinor).toBe(sheet.days[at - 1]?.flow.leftMinor ?? week.accounts.openingMinor);
    });
  });

  test("the intake of the week is the average of its days, amounts and references alike", () => {
    for (const { eater, energyKj, lines } of sheet.intake) {
      const own = sheet.days.flatMap(({ intake }) => intake.filter((each) => each.eater.id === eater.id));
      expect(add(own.map((each) => each.energyKj)) / week.days).toBeCloseTo(energyKj, 6);
      for (const { component, kind, reference, amount } of lines) {
        const same = own.flatMap((each) =>
          each.lines.filter((line) => line.component === component && line.kind === kind),
        );
        const mean = (values: readonly number[]) => add(values) / week.days;
        const alike = lines.filter((line) => line.component === component && line.kind === kind);
        expect(mean(same.map((line) => line.reference))).toBeCloseTo(add(alike.map((line) => line.reference)), 6);
        expect(mean(same.map((line) => line.amount ?? 0))).toBeCloseTo((amount ?? 0) * alike.length, 6);
        expect(reference).toBeGreaterThan(0);
      }
    }
  });

  test("the days together are the week as it was planned", () => {
    const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = week.accounts;
    expect(sheet.flow).toEqual({ openingMinor, tillMinor, platesMinor, wasteMinor, leftMinor: carryOverMinor });
    expect(sheet.platesMinor).toBe(platesMinor);
    expect(costs(sheet.sources)).toBe(platesMinor);
  });

  test("what the days bring an eater in energy is on average what the week says", () => {
    for (const { eater, energyKj } of week.intake) {
      const days = sheet.days.flatMap(({ intake }) => intake.filter((one) => one.eater.id === eater));
      expect(add(days.map((one) => one.energyKj)) / week.days).toBeCloseTo(energyKj, 6);
    }
  });

  test("no minute is rounded down, and nothing is worth less than nothing", () => {
    for (const day of sheet.days) {
      day.sittings.forEach((line, at) => {
        const planned = week.sittings.filter(({ date }) => date === day.date)[at];
        expect(line.elapsedMinutes).toBeGreaterThanOrEqual((planned?.elapsedMinutes ?? 0) - 1e-6);
      });
      for (const { massG, costMinor } of day.left.soon) {
        expect(massG).toBeGreaterThan(0);
        expect(costMinor).toBeGreaterThanOrEqual(0);
      }
    }
  });
});

test("a day outside the week has no sittings and costs nothing", () => {
  const source = findWeek("one-ring", { days: 2, moves: 2000 });
  const day = toDaySheet(source, addDays(source.week.from, 5));
  expect([day.sittings, day.platesMinor, day.trips]).toEqual([[], 0, []]);
});

test("what the authors of dishes caution is told in the language of the dishes, whatever the week was kept in", () => {
  const source = findWeek("six-flat", { days: 2, moves: 1500 });
  const dishes = layDishTexts(source.tables.dishes, v.parse(DishTexts, loadDishTextsDe()));
  const authored = new Set(dishes.flatMap(({ cautions }) => cautions));
  const told = toWeekSheet({ ...source, tables: { ...source.tables, dishes } }).days.flatMap(
    ({ cautions }) => cautions,
  );
  const said = toWeekSheet(source).days.flatMap(({ cautions }) => cautions);
  const own = told.filter(({ code }) => code === "dish");
  expect(own.filter(({ text }) => !authored.has(text))).toEqual([]);
  expect(own.length).toBeGreaterThan(0);
  expect(told.map(({ code }) => code)).toEqual(said.map(({ code }) => code));
});
