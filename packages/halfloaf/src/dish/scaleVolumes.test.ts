import fc from "fast-check";
import { expect, test } from "vitest";
import { scaleVolumes } from "./scaleVolumes.ts";

test("water in a step goes with the portions and is read off a jug", () => {
  expect(scaleVolumes("Add 350 mL of water and boil.", 3)).toBe("Add 1.05 L of water and boil.");
  expect(scaleVolumes("Add 350 mL of water and boil.", 1.17)).toBe("Add 410 mL of water and boil.");
  expect(scaleVolumes("Pour 50 mL over 2 dates.", 0.5)).toBe("Pour 25 mL over 2 dates.");
  expect(scaleVolumes("Bring 1.5 L of water to the boil.", 0.5)).toBe("Bring 750 mL of water to the boil.");
  expect(scaleVolumes("2,2 l Wasser, 200 ml Brühe", 2, (value) => String(value).replace(".", ","))).toBe(
    "4,4 l Wasser, 400 ml Brühe",
  );
});

test("all that is no volume stays", () => {
  const text = "Fry 5 minutes at 180 °C, 2 large lemons, 30 g lard, 12 lentils.";
  expect(scaleVolumes(text, 4)).toBe(text);
});

test("for the portions as written the text stays as it is", () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(scaleVolumes(text, 1)).toBe(text);
    }),
  );
});

test("a volume is never further off than a jug can be read, and never nothing", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 5000 }),
      fc.double({ min: 0.1, max: 50, noNaN: true }),
      (volumeMl, times) => {
        const [, amount, milli] = /^(\S+) (m?)L$/.exec(scaleVolumes(`${volumeMl} mL`, times)) ?? [];
        const scaledMl = Number(amount) * (milli === "m" ? 1 : 1000);
        const exactMl = Math.abs(times - 1) < 1e-9 ? volumeMl : volumeMl * times;
        expect(scaledMl).toBeGreaterThan(0);
        expect(Math.abs(scaledMl - exactMl)).toBeLessThanOrEqual((exactMl < 1000 ? 5 : 25) + 1e-6);
      },
    ),
  );
});

test("a dish cooked no times is refused", () => {
  for (const times of [0, -1, Number.NaN]) expect(() => scaleVolumes("1 L", times)).toThrow(RangeError);
});
