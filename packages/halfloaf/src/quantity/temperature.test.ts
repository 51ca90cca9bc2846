import fc from "fast-check";
import { expect, test } from "vitest";
import { toCelsius, toFahrenheit } from "./temperature.ts";

test.each([
  [32, 0],
  [212, 100],
  [-40, -40],
  [41, 5],
  [140, 60],
])("%d F is exactly %d C, both ways", (temperatureF, temperatureC) => {
  expect(toCelsius(temperatureF)).toBe(temperatureC);
  expect(toFahrenheit(temperatureC)).toBe(temperatureF);
});

test("165 F is 73.889 C", () => {
  expect(toCelsius(165)).toBeCloseTo(73.889, 3);
});

test("there and back changes nothing that a thermometer shows", () => {
  fc.assert(
    fc.property(fc.double({ min: -273.15, max: 1000, noNaN: true }), (temperatureC) => {
      expect(toCelsius(toFahrenheit(temperatureC))).toBeCloseTo(temperatureC, 9);
    }),
  );
});
