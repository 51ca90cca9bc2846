import { loadStarterFoods } from "@halfloaf/data";
import { type Food, type Nutrient, parseFoodTable } from "halfloaf/food";
import { describe, expect, test } from "vitest";

const parsed = parseFoodTable(loadStarterFoods());
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
const foods = [...parsed.table.values()];

/** Figures are printed as whole ug, the sum as well as its parts. */
const ROUNDING_UG = 1;

/** Foods whose printed sum is off the formula, and how many know all its parts. */
function hold(whole: Nutrient, weights: Partial<Record<Nutrient, number>>): { judged: number; off: string[] } {
  const judged = foods.flatMap((food) => {
    const expected = weigh(food, weights);
    const printed = food.composition[whole];
    return expected === undefined || printed === undefined ? [] : [{ id: food.id, expected, printed }];
  });
  const off = judged.filter(({ expected, printed }) => Math.abs(expected - printed) > ROUNDING_UG);
  return { judged: judged.length, off: off.map(({ id, expected, printed }) => `${id}: ${printed}, not ${expected}`) };
}

function weigh({ composition }: Food, weights: Partial<Record<Nutrient, number>>): number | undefined {
  let sum = 0;
  for (const [name, weight] of Object.entries(weights)) {
    const amount = composition[name as Nutrient];
    if (amount === undefined) return undefined;
    sum += amount * weight;
  }
  return sum;
}

describe("over the starter foods", () => {
  /** **Source**: IOM 2001, DRIs for vitamin A to zinc: retinol activity equivalents. */
  test("vitamin A RAE = retinol + beta-carotene / 12 + alpha-carotene / 24 + beta-cryptoxanthin / 24", () => {
    const { judged, off } = hold("vitaminARaeUg", {
      retinolUg: 1,
      betaCaroteneUg: 1 / 12,
      alphaCaroteneUg: 1 / 24,
      betaCryptoxanthinUg: 1 / 24,
    });
    expect(judged).toBeGreaterThan(250);
    expect(off).toEqual([]);
  });

  /** **Source**: IOM 1998, DRIs for thiamin to choline: dietary folate equivalents. */
  test("folate DFE = food folate + 1.7 x folic acid", () => {
    const { judged, off } = hold("folateDfeUg", { folateFoodUg: 1, folicAcidUg: 1.7 });
    expect(judged).toBeGreaterThan(250);
    expect(off).toEqual([]);
  });
});

/** **Source**: USDA SR28, NDB 11124, carrots, raw: beta 8285, alpha 3477, cryptoxanthin 0, retinol 0; RAE 835 ug. */
test("raw carrots: 8285 / 12 + 3477 / 24 = 835 ug", () => {
  const carrot = parsed.ok ? parsed.table.get("carrot")?.composition : undefined;
  expect(carrot).toMatchObject({ betaCaroteneUg: 8285, alphaCaroteneUg: 3477, retinolUg: 0, vitaminARaeUg: 835 });
  expect(8285 / 12 + 3477 / 24).toBeCloseTo(835, 0);
});
