import fc from "fast-check";
import { expect, test } from "vitest";
import { PatternMix } from "./PatternMix.ts";
import { type FoodBlock, MASS_STEPS, PatternTable } from "./PatternTable.ts";

const MISSING = 50;
const pattern = fc.record({
  raised: fc.array(fc.nat(2), { minLength: 4, maxLength: 4 }),
  cost: fc.integer({ min: 0, max: 40 }),
});
const target = fc.array(
  fc.nat(12).map((tenths) => tenths / 10),
  { minLength: 4, maxLength: 4 },
);

test("the mix is the cheapest: its prices pay for it and no pattern brought is worth more than it costs", () => {
  fc.assert(
    fc.property(target, fc.array(pattern, { maxLength: 12 }), (wanted, drawn) => {
      const patterns = [{ raised: [0, 0, 0, 0], cost: 0 }, ...drawn];
      const mix = new PatternMix(wanted, MISSING);
      let helps = true;
      for (let round = 0; helps && round < 200; round++) {
        expect(mix.settle()).toBe(true);
        helps = patterns.some(({ raised, cost }) => mix.bring(raised, cost));
      }
      expect(helps).toBe(false);
      const worth = (amounts: ArrayLike<number>): number =>
        mix.prices.reduce((sum, price, row) => sum + price * (amounts[row] as number), mix.base);
      expect(worth(wanted)).toBeCloseTo(mix.value, 6);
      for (const { raised, cost } of patterns) expect(worth(raised)).toBeLessThanOrEqual(cost + 1e-6);
      for (const price of mix.prices) expect(price).toBeGreaterThanOrEqual(-1e-6);
    }),
  );
});

const block = fc
  .record({
    dishes: fc.array(fc.array(fc.nat(110), { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 4 }),
    packs: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 4, maxLength: 4 }),
  })
  .map(({ dishes, packs }): FoodBlock => {
    const columns = dishes.flatMap((masses, d) => masses.map((_, k) => `l ${d} ${k + 1}`));
    const costs = new Float64Array(MASS_STEPS + 1);
    for (let step = 1; step <= MASS_STEPS; step++)
      costs[step] = packs.slice(0, 1 + Math.floor((step - 1) / 80)).reduce((sum, price) => sum + price, 0);
    return {
      columns,
      target: new Float64Array(columns.length),
      dishes: dishes.map((masses, d) =>
        masses.map((massG, k) => ({ massG, marks: [columns.indexOf(`l ${d} ${k + 1}`)] })),
      ),
      costs,
      stepG: 1,
    };
  });

test("the table finds the pattern that trying all of them finds", () => {
  fc.assert(
    fc.property(block, fc.array(fc.nat(40), { minLength: 8, maxLength: 8 }), (of, drawn) => {
      const prices = Float64Array.from(of.columns, (_, j) => drawn[j] as number);
      let all: { massG: number; worth: number }[] = [{ massG: 0, worth: 0 }];
      for (const options of of.dishes)
        all = all.flatMap((one) => [
          one,
          ...options.map(({ massG, marks: [mark] }) => ({
            massG: one.massG + massG,
            worth: one.worth + (prices[mark as number] as number),
          })),
        ]);
      const least = Math.min(
        ...all.map(({ massG, worth }) => (of.costs[Math.min(MASS_STEPS, massG)] as number) - worth),
      );
      const { raised, cost, rest } = new PatternTable(of).findBest(prices);
      expect(rest).toBeCloseTo(least, 9);
      expect(cost - raised.reduce((sum, count, j) => sum + count * (prices[j] as number), 0)).toBeCloseTo(rest, 9);
    }),
  );
});
