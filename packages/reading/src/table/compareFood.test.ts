import { loadStarterFoods } from "@halfloaf/data";
import fc from "fast-check";
import {
  type Composition,
  type Food,
  NO_OWN_FOODS,
  NUTRIENT_NAMES,
  type Nutrient,
  parseFoodTable,
  withOwnFoods,
} from "halfloaf/food";
import { describe, expect, test } from "vitest";
import { compareFood, replaceFigures } from "./compareFood.ts";
import { findOfficialFoods } from "./findOfficialFoods.ts";
import { makeOfficialFood, type OfficialFood, sourceOfFigure } from "./OfficialTable.ts";

const parsed = parseFoodTable(loadStarterFoods());
const starter = parsed.ok ? parsed.table : new Map<string, Food>();
const chickpeas = starter.get("chickpeas-dried") as Food;

function official(composition: Composition, over: Partial<OfficialFood> = {}): OfficialFood {
  const base = { id: "900001", name: "Chickpeas, dry", source: "a table, 900001, as of 2019-04-01" };
  return makeOfficialFood({ ...base, composition, figureSources: {}, portions: [], ...over });
}

const compositions = fc
  .dictionary(
    fc.constantFrom(...NUTRIENT_NAMES),
    fc.integer({ min: 0, max: 9000 }).map((each) => each / 100),
  )
  .map((composition): Composition => ({ ...composition }));

/** The table with one food's figures replaced. */
function replaced(food: Food, theirs: OfficialFood, choice = {}) {
  const { override } = replaceFigures(compareFood(food, theirs), choice);
  const laid = withOwnFoods(starter, { ...NO_OWN_FOODS, overrides: [override] });
  return { food: laid.get(food.id) as Food, override };
}

describe("the figures of a food beside the official ones", () => {
  test("show each component that one of them knows, with source and difference, and alter nothing", () => {
    const before = structuredClone(chickpeas);
    fc.assert(
      fc.property(compositions, (composition) => {
        const theirs = official(composition);
        const { changes } = compareFood(chickpeas, theirs);
        const known = NUTRIENT_NAMES.filter(
          (name) => chickpeas.composition[name] !== undefined || composition[name] !== undefined,
        );
        expect(changes.map(({ component }) => component)).toEqual(known);
        for (const { component, kind, now, official: other, difference } of changes) {
          expect([now?.figure, other?.figure]).toEqual([chickpeas.composition[component], composition[component]]);
          expect(other?.source).toBe(sourceOfFigure(theirs, component));
          expect(difference !== undefined).toBe(kind === "same" || kind === "changed");
        }
        replaceFigures({ food: chickpeas, official: theirs, changes });
        expect(chickpeas).toEqual(before);
      }),
      { numRuns: 40 },
    );
  });

  test("once taken over stand in the food with their sources; what the official table does not know stays", () => {
    fc.assert(
      fc.property(compositions, (composition) => {
        const { food, override } = replaced(chickpeas, official(composition));
        for (const name of NUTRIENT_NAMES) {
          if (composition[name] !== undefined) {
            expect([food.composition[name], food.figureSources[name]]).toEqual([
              composition[name],
              "a table, 900001, as of 2019-04-01",
            ]);
          } else if (override.figures[name] === undefined) {
            expect(food.composition[name]).toBe(chickpeas.composition[name]);
          } else expect(food.figureSources[name]).toMatch(/^reckoned from the figures taken over/);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("forgets what the official table does not know only when it is asked to", () => {
    const { food, override } = replaced(chickpeas, official({ proteinG: 19 }), { forgetUnknown: true });
    expect(food.composition).toEqual({ proteinG: 19 });
    expect(override.unknown).toContain("ironMg");
    expect(food.figureSources).toEqual({ proteinG: "a table, 900001, as of 2019-04-01" });
  });

  test("are taken over only for the components chosen", () => {
    const choice = { components: ["ironMg"] as Nutrient[], chosenOn: "2026-11-28" };
    const { food, override } = replaced(chickpeas, official({ proteinG: 19, ironMg: 5 }), choice);
    expect([food.composition.proteinG, food.composition.ironMg]).toEqual([chickpeas.composition.proteinG, 5]);
    expect(override).toMatchObject({ food: "chickpeas-dried", figures: { ironMg: 5 }, chosenOn: "2026-11-28" });
  });

  test("bring what follows from them: no old figure stays beside what it was reckoned from", () => {
    const { food } = replaced(chickpeas, official({ carbohydrateByDifferenceG: 60, energyKcal: 350 }));
    expect(food.composition.carbohydrateAvailableG).toBeCloseTo(60 - (chickpeas.composition.fibreG as number), 9);
    expect(food.composition.energyKj).toBeCloseTo(350 * 4.184, 9);
  });

  test("that contradict those kept are told", () => {
    const { contradictions } = replaceFigures(compareFood(chickpeas, official({ sugarsG: 70 })));
    expect(contradictions.map(({ code, components }) => [code, components])).toEqual([
      ["part-above-whole", ["carbohydrateByDifferenceG", "sugarsG"]],
    ]);
  });
});

test("the food whose number stands in the source comes first, then the nearest names; unlike names are not offered", () => {
  const foods = [
    official({}, { id: "1", name: "Chickpeas (garbanzo beans), mature seeds, raw" }),
    official({}, { id: "2", name: "Engine oil" }),
    official({}, { id: "3", name: "Something else entirely", formerNumber: "16056" }),
  ];
  const found = findOfficialFoods(chickpeas, {
    title: "a table",
    foods: new Map(foods.map((food) => [food.id, food])),
  });
  expect(found.map(({ official: food, by }) => [food.id, by])).toEqual([
    ["3", "number"],
    ["1", "name"],
  ]);
});
