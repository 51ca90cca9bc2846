import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Composition, NUTRIENT_NAMES } from "../food/index.ts";
import { makeDish, makeFood, makeMaking, makeTable } from "./dish.testing.ts";
import { nutrientsOfDish, type Retain } from "./nutrients.ts";

const figure = fc.option(fc.double({ min: 0, max: 900, noNaN: true }), { nil: undefined });
const drawn = fc.array(
  fc.record({ massG: fc.integer({ min: 1, max: 900 }), iron: figure, green: fc.boolean(), retention: fc.boolean() }),
  { minLength: 1, maxLength: 8 },
);

function build(parts: readonly { massG: number; iron: number | undefined; green: boolean; retention: boolean }[]) {
  const foods = parts.map(({ iron, green }, at) =>
    makeFood(`food-${at}`, { vegetableOrFruit: green, composition: iron === undefined ? {} : { ironMg: iron } }),
  );
  const makings = parts.map(({ massG, retention }, at) =>
    makeMaking(`food-${at}`, massG, retention ? { retention: "0001" } : {}),
  );
  return { foods: makeTable(...foods), dish: makeDish({ portions: 4, makings }) };
}

const halve: Retain = (raw) =>
  Object.fromEntries(Object.entries(raw).map(([name, amount]) => [name, amount / 2])) as Composition;

describe("laws", () => {
  test("the amount is the sum of the known parts, cooked ones retained, and the share is theirs by mass", () => {
    fc.assert(
      fc.property(drawn, (parts) => {
        const { foods, dish } = build(parts);
        const { perPortion, edibleG, vegetablesFruitG } = nutrientsOfDish(dish, foods, halve);
        let [ironMg, knownG, greenG, allG] = [0, 0, 0, 0];
        for (const { massG, iron, green, retention } of parts) {
          allG += massG / 4;
          if (green) greenG += massG / 4;
          if (iron === undefined) continue;
          knownG += massG / 4;
          ironMg += ((massG / 4) * iron * (retention ? 0.5 : 1)) / 100;
        }
        expect(edibleG).toBeCloseTo(allG, 6);
        expect(vegetablesFruitG).toBeCloseTo(greenG, 6);
        expect(perPortion.ironMg.knownShare).toBeCloseTo(knownG / allG, 9);
        if (knownG === 0) expect(perPortion.ironMg.amount).toBeUndefined();
        else expect(perPortion.ironMg.amount).toBeCloseTo(ironMg, 6);
      }),
    );
  });

  test("all figures known is a share of exactly one, none known is no amount at all", () => {
    fc.assert(
      fc.property(drawn, (parts) => {
        const known = parts.map((part) => ({ ...part, iron: part.iron ?? 0 }));
        const { foods, dish } = build(known);
        const { perPortion } = nutrientsOfDish(dish, foods, undefined);
        expect(perPortion.ironMg.knownShare).toBe(1);
        for (const name of NUTRIENT_NAMES.filter((each) => each !== "ironMg")) {
          expect(perPortion[name]).toEqual({ amount: undefined, knownShare: 0 });
        }
      }),
    );
  });

  test("more portions from as much more makings are the same on each plate", () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 2, max: 5 }), (parts, times) => {
        const { foods, dish } = build(parts);
        const large = build(parts.map((part) => ({ ...part, massG: part.massG * times }))).dish;
        const [small, big] = [dish, { ...large, portions: 4 * times }].map(
          (each) => nutrientsOfDish(each, foods, halve).perPortion.ironMg,
        );
        expect(big?.knownShare).toBeCloseTo(small?.knownShare as number, 9);
        if (small?.amount !== undefined) expect(big?.amount).toBeCloseTo(small.amount, 6);
      }),
    );
  });
});

describe("cases", () => {
  const foods = makeTable(
    makeFood("kale", { vegetableOrFruit: true, composition: { vitaminCMg: 90, energyKj: 150 } }),
    makeFood("bread", { composition: { energyKj: 1000 } }),
    makeFood("salt", { composition: { sodiumMg: 38758 } }),
  );
  const makings = [
    makeMaking("kale", 200, { retention: "3003" }),
    makeMaking("bread", 100),
    makeMaking("salt", "to-taste"),
  ];
  const dish = makeDish({ portions: 2, makings });

  test("without a table of retention the figures are raw and say so", () => {
    const told = nutrientsOfDish(dish, foods, undefined);
    expect(told.retained).toBe(false);
    expect(told.perPortion.vitaminCMg).toEqual({ amount: 90, knownShare: 100 / 150 });
    expect(nutrientsOfDish(dish, foods, halve).perPortion.vitaminCMg.amount).toBe(45);
    expect(nutrientsOfDish(dish, foods, halve).retained).toBe(true);
  });

  test("what the retention leaves out becomes unknown", () => {
    const told = nutrientsOfDish(dish, foods, ({ vitaminCMg: _lost, ...rest }) => rest);
    expect(told.perPortion.vitaminCMg).toEqual({ amount: undefined, knownShare: 0 });
    expect(told.perPortion.energyKj).toEqual({ amount: 650, knownShare: 1 });
  });

  test("salt to taste is listed and not counted as no salt", () => {
    const told = nutrientsOfDish(dish, foods, undefined);
    expect(told.unknown).toMatchObject([{ food: "salt", reason: "to-taste" }]);
    expect(told.perPortion.sodiumMg).toEqual({ amount: undefined, knownShare: 0 });
  });

  test("a dish of nothing known has no amounts and a share of zero", () => {
    const told = nutrientsOfDish(makeDish({ makings: [makeMaking("salt", "to-taste")] }), foods, undefined);
    expect(told.edibleG).toBe(0);
    expect(told.perPortion.sodiumMg).toEqual({ amount: undefined, knownShare: 0 });
  });

  test("what is left out brings nothing", () => {
    const told = nutrientsOfDish(dish, foods, undefined, (making) => (making.food === "kale" ? undefined : making));
    expect(told.vegetablesFruitG).toBe(0);
    expect(told.perPortion.energyKj).toEqual({ amount: 500, knownShare: 1 });
  });
});
