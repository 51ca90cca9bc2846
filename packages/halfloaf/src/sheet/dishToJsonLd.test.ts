import fc from "fast-check";
import { expect, test } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep, makeTable } from "../dish/dish.testing.ts";
import { nutrientsOfDish } from "../dish/index.ts";
import { UNIT_CODES } from "../quantity/index.ts";
import { UNITS_IN_TRADE, unitWordOfCommonCode } from "./commonCodes.ts";
import { dishToJsonLd, toJsonLdText } from "./dishToJsonLd.ts";
import { toDuration } from "./duration.ts";
import type { JsonLd } from "./ownProperty.ts";

const FOODS = makeTable(
  makeFood("barley", {
    names: { british: ["pearl barley"], american: ["barley, pearled"], german: ["Perlgraupen"] },
    composition: { energyKcal: 350, fatG: 1.16, sodiumMg: 9 },
  }),
  makeFood("leek", { composition: { energyKcal: 61 } }),
  makeFood("bacon", { diet: "meat" }),
);
const DISH = makeDish({
  portions: 4,
  makings: [
    makeMaking("barley", 200),
    makeMaking("leek", { from: 1, to: 2, unit: "piece", size: "large" }, { cut: "sliced", optional: true }),
  ],
  method: [makeStep("boil", 10, { minutes: { fixed: 10, perPortion: 0.5 } })],
});
const write = (over: Partial<Parameters<typeof dishToJsonLd>[1]> = {}, dish = DISH) =>
  dishToJsonLd(dish, { foods: FOODS, english: "british", ...over });

test("makings stand as lines and as supplies with amounts and units", () => {
  const { recipeIngredient, supply } = write();
  expect(recipeIngredient).toEqual(["200 g pearl barley", "1-2 large leek, sliced, optional"]);
  expect((supply as JsonLd[]).map(({ requiredQuantity }) => requiredQuantity)).toEqual([
    { "@type": "QuantitativeValue", value: 200, unitCode: "GRM", unitText: "g" },
    {
      "@type": "QuantitativeValue",
      minValue: 1,
      maxValue: 2,
      unitCode: "C62",
      unitText: "piece",
      additionalProperty: [{ "@type": "PropertyValue", propertyID: "halfloaf:size", value: "large" }],
    },
  ]);
  expect(write({ english: "american" }).recipeIngredient).toContain("200 g barley, pearled");
});

test("in German foods, units and what is said beside them are German, as the language that is told", () => {
  const dish = makeDish({
    makings: [
      makeMaking("barley", { value: 1.5, unit: "[tbs_m]" }, { optional: true }),
      makeMaking("barley", "to-taste"),
      makeMaking("leek", 50, { alternatives: [{ food: "barley", amount: { value: 20, unit: "g" } }] }),
    ],
  });
  const { inLanguage, recipeIngredient } = write({ language: "de" }, dish);
  expect([write().inLanguage, inLanguage]).toEqual(["en-GB", "de"]);
  expect(recipeIngredient).toEqual([
    "1,5 EL Perlgraupen, nach Wunsch",
    "Perlgraupen, nach Geschmack",
    "50 g leek oder 20 g Perlgraupen",
  ]);
});

test("a step has its text and its minutes for the dish's own portions", () => {
  expect((write().recipeInstructions as JsonLd[])[0]).toMatchObject({
    "@type": "HowToStep",
    position: 1,
    text: "boil",
    timeRequired: "PT12M",
  });
});

test("times are those that are given, and none without", () => {
  expect(write({ minutes: { total: 90, prep: 7.5 } })).toMatchObject({ totalTime: "PT1H30M", prepTime: "PT7M30S" });
  const bare = Object.keys(write());
  for (const key of ["totalTime", "prepTime", "cookTime", "nutrition"]) expect(bare).not.toContain(key);
});

test("a figure that is known of a part only is left out of the nutrition", () => {
  const dish = { ...DISH, makings: [makeMaking("barley", 200), makeMaking("leek", 100)] };
  const nutrients = nutrientsOfDish(dish, FOODS, undefined);
  expect(write({ nutrients }, dish).nutrition).toEqual({
    "@type": "NutritionInformation",
    servingSize: "300 g",
    calories: `${Math.round((2 * 350 + 61) / 4)} kcal`,
  });
  const alone = { ...DISH, makings: [makeMaking("barley", 200)] };
  const whole = write({ nutrients: nutrientsOfDish(alone, FOODS, undefined) }, alone).nutrition as JsonLd;
  expect([whole.fatContent, whole.sodiumContent]).toEqual(["0.6 g", "5 mg"]);
});

test("sodium is not told where something is to taste", () => {
  const dish = { ...DISH, makings: [makeMaking("barley", 200), makeMaking("leek", "to-taste")] };
  const nutrition = write({ nutrients: nutrientsOfDish(dish, FOODS, undefined) }, dish).nutrition as JsonLd;
  expect(Object.keys(nutrition)).not.toContain("sodiumContent");
  expect(nutrition.fatContent).toBe("0.6 g");
});

test("a diet is told only where it follows from every food", () => {
  expect(write().suitableForDiet).toEqual(["https://schema.org/VeganDiet", "https://schema.org/VegetarianDiet"]);
  expect(write({}, { ...DISH, makings: [...DISH.makings, makeMaking("bacon", 5)] }).suitableForDiet).toBeUndefined();
  expect(write({}, { ...DISH, makings: [...DISH.makings, makeMaking("unknown", 5)] }).suitableForDiet).toBeUndefined();
});

test("the text ends no script, opens no comment, and means the same", () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string({ unit: "binary" }), fc.constantFrom("</script>", "<!--", "]]>", "\u2028")),
      (title) => {
        const jsonLd = write({}, makeDish({ title, note: `a${title}` }));
        const text = toJsonLdText(jsonLd);
        expect(text).not.toMatch(/[<>&\u2028\u2029]/);
        expect(JSON.parse(text)).toEqual(jsonLd);
      },
    ),
  );
});

test("durations are ISO 8601 and hold the minutes to the second", () => {
  expect([0, 0.5, 5, 60, 61.25].map(toDuration)).toEqual(["PT0S", "PT30S", "PT5M", "PT1H", "PT1H1M15S"]);
});

test("every unit has a code of trade, and its word is found by it", () => {
  for (const unit of UNIT_CODES)
    expect(unitWordOfCommonCode(UNITS_IN_TRADE[unit].code.toLowerCase())).toBe(UNITS_IN_TRADE[unit].word);
  expect(unitWordOfCommonCode("XYZ")).toBeUndefined();
});
