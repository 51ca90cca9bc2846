import { expect, test } from "vitest";
import { tellEnergy, tellMass, tellMinutes, tellNumber, tellPercent } from "./amountWords.ts";
import { tellDay, tellDayShort } from "./calendarWords.ts";
import { tellAmountOf, tellComponent } from "./componentWords.ts";

test("numbers keep what a reader can use", () => {
  expect([0, 0.0421, 0.42, 8.34, 83.4, 1240.2].map(tellNumber)).toEqual(["0", "0.042", "0.42", "8.3", "83", "1240"]);
});

test("a mass goes over to kg at 1000 g, also where it is rounded up to it", () => {
  expect([85, 999.4, 999.6, 1250, 12340].map(tellMass)).toEqual(["85 g", "999 g", "1 kg", "1.25 kg", "12.3 kg"]);
});

test("long times are told in hours", () => {
  expect([0.4, 11.6, 119, 120, 365].map(tellMinutes)).toEqual(["0 min", "12 min", "119 min", "2 h", "6 h 5 min"]);
});

test("energy is told in both units", () => {
  expect(tellEnergy(8983)).toBe("8980 kJ (2150 kcal)");
});

test("a share is never told as whole or none where it is not", () => {
  expect([0, 0.001, 0.994, 0.999, 1].map(tellPercent)).toEqual(["0 %", "1 %", "99 %", "99 %", "100 %"]);
});

test("days are told by weekday and date", () => {
  expect([tellDay("2026-11-30"), tellDayShort("2026-12-06")]).toEqual(["Monday 30 November", "Sun 6 Dec"]);
});

test("components have a name and the unit that their key ends with", () => {
  expect(tellComponent("vitaminB12Ug")).toBe("vitamin B12");
  expect(tellAmountOf("vitaminB12Ug", 4.21)).toBe("4.2 µg");
  expect(tellAmountOf("vegetablesFruitG", 412.2)).toBe("412 g");
});
