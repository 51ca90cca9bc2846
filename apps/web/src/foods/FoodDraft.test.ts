import { OwnFood } from "halfloaf/food";
import { parseWith } from "halfloaf/quantity";
import { describe, expect, test } from "vitest";
import { type FoodDraft, findProblems, NEW_FOOD, toDraft, toOwnFood } from "./FoodDraft.ts";

const BRITISH = { english: "british", language: "en" } as const;

const KELP: FoodDraft = {
  ...NEW_FOOD,
  name: "kelp crackers",
  source: "the label",
  group: "bread",
  diet: "vegan",
  hygiene: "ready-to-eat",
  allergens: ["gluten", "sesame"],
  wheat: true,
  unopened: { "dry-store": 90 },
  opened: { "dry-store": 14 },
  saltG: 1.5,
  figures: { energyKcal: 410, proteinG: 9, fatG: 12, carbohydrateAvailableG: 60, fibreG: 4 },
};

describe("an own food is written down", () => {
  test("as a food that keeps its schema: allergens of both laws, salt as sodium, what follows from figures with how", () => {
    const food = toOwnFood(KELP, "kelp-crackers", BRITISH);
    expect(parseWith(OwnFood, food)).toEqual({ ok: true, value: food });
    expect(food.allergens).toEqual({ eu: ["gluten", "sesame"], us: ["wheat", "sesame"] });
    expect(food.composition).toMatchObject({ sodiumMg: 600, carbohydrateByDifferenceG: 64 });
    expect(food.composition.energyKj).toBeCloseTo(410 * 4.184);
    expect(food.figureSources.energyKj).toBe("the label: reckoned, kilocalories x 4.184");
    expect(food.composition.calciumMg).toBe(undefined);
  });

  test("and comes back to its form as it was said; what is changed there changes what follows from it", () => {
    const food = toOwnFood(KELP, "kelp-crackers", BRITISH);
    const draft = toDraft(food, BRITISH);
    expect(draft).toEqual(KELP);
    const changed = toOwnFood({ ...draft, figures: { ...draft.figures, energyKcal: 400 } }, food.id, BRITISH, food);
    expect(changed.composition.energyKj).toBeCloseTo(400 * 4.184);
  });

  test("a food that a file brought keeps what its form does not show", () => {
    const filed: OwnFood = {
      ...toOwnFood(KELP, "kelp-crackers", BRITISH),
      names: { british: ["kelp crackers", "seaweed biscuits"], american: ["kelp chips"] },
      note: "of the harbour bakery",
      pieces: [
        { size: "medium", massG: 8, source: "weighed" },
        { size: "large", massG: 14, source: "weighed" },
      ],
      energyFactors: { proteinKcalPerG: 4, fatKcalPerG: 9, carbohydrateKcalPerG: 4 },
      allergens: { eu: [], us: ["wheat", "milk"] },
    };
    const draft = toDraft(filed, BRITISH);
    expect(draft.allergens).toEqual(["gluten", "milk"]);
    const again = toOwnFood({ ...draft, name: "kelp toasts", pieceG: 9 }, filed.id, BRITISH, filed);
    expect(again.names).toEqual({ british: ["kelp toasts", "seaweed biscuits"], american: ["kelp chips"] });
    expect(again.note).toBe("of the harbour bakery");
    expect(again.pieces.map(({ massG }) => massG)).toEqual([9, 14]);
    expect(again.energyFactors).toEqual(filed.energyFactors);
    expect(again.allergens).toEqual({ eu: ["gluten", "milk"], us: ["milk", "wheat"] });
    expect(parseWith(OwnFood, again).ok).toBe(true);
  });

  test("its form shows and changes the name of the language in use, where the food has one in it", () => {
    const german = { english: "british", language: "de" } as const;
    const own = toOwnFood(KELP, "kelp-crackers", german);
    expect(own.names).toEqual({ british: ["kelp crackers"], american: ["kelp crackers"] });
    expect(toDraft(own, german).name).toBe("kelp crackers");
    const filed: OwnFood = { ...own, names: { ...own.names, german: ["Tangkekse", "Algenkekse"] } };
    expect(toDraft(filed, german).name).toBe("Tangkekse");
    expect(toOwnFood({ ...KELP, name: "Tangcracker" }, own.id, german, filed).names).toEqual({
      british: ["kelp crackers"],
      american: ["kelp crackers"],
      german: ["Tangcracker", "Algenkekse"],
    });
  });

  test("not before all is said that can hurt; everything that is missing is told at once", () => {
    const told = findProblems({ ...NEW_FOOD, source: "" }).map(({ field, problem }) => [field, problem]);
    expect(told).toEqual([
      ["name", "missing"],
      ["source", "missing"],
      ["group", "choose"],
      ["diet", "choose"],
      ["hygiene", "choose"],
      ["allergens", "allergens"],
      ["unopened", "keeping"],
      ["figures", "figures"],
    ]);
    expect(findProblems(KELP)).toEqual([]);
    expect(findProblems({ ...KELP, allergens: [], wheat: false, noAllergens: true })).toEqual([]);
  });

  test("no number is taken that is none", () => {
    const faulty = {
      ...KELP,
      refusePct: 100,
      densityGPerMl: 0,
      opened: { fridge: 1.5 },
      saltG: Number.NaN,
      figures: { proteinG: -1 },
    };
    expect(findProblems(faulty)).toEqual([
      { field: "refusePct", problem: "most" },
      { field: "densityGPerMl", problem: "above" },
      { field: "opened", problem: "whole", place: "fridge" },
      { field: "proteinG", problem: "number" },
      { field: "saltG", problem: "number" },
    ]);
  });
});
