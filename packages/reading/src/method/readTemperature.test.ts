import fc from "fast-check";
import { toCelsius } from "halfloaf/quantity";
import { expect, test } from "vitest";
import { readTemperature } from "./readTemperature.ts";

const TEMPERATURES: [string, number, string | undefined][] = [
  ["Preheat the oven to 180C/160C fan/gas 4", 180, undefined],
  ["oven at 200 °C", 200, undefined],
  ["heat to 350°F (180°C)", 180, undefined],
  ["350 degrees F", 175, undefined],
  ["160C fan", 180, "fan-only"],
  ["fan 160C", 180, "fan-only"],
  ["gas mark 4", 175, "oven-mark"],
  ["gas 1/2", 120, "oven-mark"],
  ["mark ¼", 105, "oven-mark"],
  ["Preheat the oven to 350 degrees", 175, "degrees-unnamed"],
  ["bake at 180°", 180, "degrees-unnamed"],
  ["in a moderate oven", 180, "oven-word"],
  ["180-200 C", 200, undefined],
  ["190 degrees Celsius", 190, undefined],
];

test.each(TEMPERATURES)("%s", (text, tempC, reason) => {
  const found = readTemperature(text);
  expect([found?.tempC, found?.reason]).toEqual([tempC, reason]);
});

test.each([
  "roast until 75 C in the middle",
  "cook for 180 minutes",
  "200 g flour",
  "cut into 5 cubes",
  "mark 0",
  "gas 40",
])("%s tells no heat of oven or fat", (text) => {
  expect(readTemperature(text)).toBeUndefined();
});

test("each mark of a gas oven stands 25 degrees Fahrenheit above the one before, to the five degrees of a dial", () => {
  for (let mark = 1; mark <= 9; mark++) {
    const tempC = readTemperature(`gas mark ${mark}`)?.tempC ?? Number.NaN;
    expect(Math.abs(tempC - toCelsius(250 + 25 * mark))).toBeLessThanOrEqual(2.5);
  }
});

test("degrees Fahrenheit are turned into the nearest five degrees Celsius", () => {
  fc.assert(
    fc.property(fc.integer({ min: 200, max: 550 }), (temperatureF) => {
      const tempC = readTemperature(`${temperatureF} F`)?.tempC ?? Number.NaN;
      expect(Math.abs(tempC - toCelsius(temperatureF))).toBeLessThanOrEqual(2.5);
    }),
  );
});
