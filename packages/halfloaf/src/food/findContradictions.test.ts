import { loadStarterFoods } from "@halfloaf/data";
import { expect, test } from "vitest";
import { findContradictions } from "./findContradictions.ts";
import { parseFoodTable } from "./foodTable.ts";
import type { Composition } from "./nutrient.ts";

const SOUND: Composition = {
  energyKcal: 340,
  energyKj: 1423,
  waterG: 10,
  proteinG: 22,
  fatG: 1,
  carbohydrateByDifferenceG: 63,
  carbohydrateAvailableG: 48,
  sugarsG: 2,
  ashG: 4,
};

test("a sound composition, and one of which nothing is known, contradict nothing", () => {
  expect(findContradictions(SOUND)).toEqual([]);
  expect(findContradictions({})).toEqual([]);
});

test.each<[Composition, string, readonly string[]]>([
  [{ sugarsG: 70 }, "part-above-whole", ["carbohydrateByDifferenceG", "sugarsG"]],
  [{ carbohydrateAvailableG: 64 }, "part-above-whole", ["carbohydrateByDifferenceG", "carbohydrateAvailableG"]],
  [{ saturatesG: 0.6, monounsaturatesG: 0.6 }, "part-above-whole", ["fatG", "saturatesG", "monounsaturatesG"]],
  [{ energyKj: 340 }, "energy-units", ["energyKj", "energyKcal"]],
  [
    { energyKcal: 0, energyKj: 0 },
    "energy-of-components",
    ["energyKcal", "proteinG", "fatG", "carbohydrateByDifferenceG"],
  ],
  [{ waterG: 40 }, "sum-above-100", ["waterG", "proteinG", "fatG", "carbohydrateByDifferenceG", "ashG"]],
  [{ alaG: 101 }, "mass-above-100", ["alaG"]],
])("with %j it does: %s", (over, code, components) => {
  expect(findContradictions({ ...SOUND, ...over }).map((each) => [each.code, each.components])).toEqual([
    [code, components],
  ]);
});

test("energy that an unknown alcohol may explain is none, energy that is missing is one", () => {
  const spirit = { energyKcal: 230, proteinG: 0, fatG: 0, carbohydrateByDifferenceG: 0 };
  expect(findContradictions(spirit)).toEqual([]);
  expect(findContradictions({ ...spirit, waterG: 66 })).toEqual([]);
  expect(findContradictions({ ...spirit, alcoholG: 33.4 })).toEqual([]);
  expect(findContradictions({ ...spirit, waterG: 95 }).map(({ code }) => code)).toEqual(["energy-of-components"]);
  expect(findContradictions({ ...spirit, alcoholG: 0 }).map(({ code }) => code)).toEqual(["energy-of-components"]);
});

test("of the starter table only vinegars do, whose energy is in their acid", () => {
  const parsed = parseFoodTable(loadStarterFoods());
  const found = parsed.ok
    ? [...parsed.table.values()].flatMap(({ id, composition }) =>
        findContradictions(composition).map(({ code }) => `${id}: ${code}`),
      )
    : ["no table"];
  expect(found).toEqual(["white", "cider", "balsamic", "rice"].map((kind) => `vinegar-${kind}: energy-of-components`));
});
