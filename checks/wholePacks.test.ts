import { proveBound, solveLinear } from "@halfloaf/engine";
import { cheapestDiet, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { describe, expect, test } from "vitest";
import { ALLOWANCES, BY_UNIT_SOLD } from "./stigler1945.ts";
import { DAYS, stateWholePacks } from "./wholePacks.ts";

/** Cents a man and day that no diet of any amounts goes below. */
const LEAST_CENTS = 10.8662278;
/** The foods of the cheapest diet of any amounts. */
const FIVE = new Set(["wheat flour, enriched", "beef liver", "cabbage", "spinach", "navy beans, dried"]);
const FIVE_FOODS = BY_UNIT_SOLD.filter(({ name }) => FIVE.has(name));
/** By this share, and this many cents, a bound may be taken back for the rounding of sums. */
const ROUNDING = 1e-4;
const MOVES = 60_000;
/** So many where two searches are held against each other, so that neither stops far from its end. */
const MANY_MOVES = 240_000;
/** Numbers of men, each a multiple of the one before. */
const MEN = [1, 4, 12];

type Foods = typeof BY_UNIT_SOLD;

/** The cheapest whole units that hold all allowances, eaten up as they are, by a solver alone: cents a man and day. */
async function cheapestUnits(men: number, foods: Foods): Promise<number> {
  const allowances = ALLOWANCES.map(({ nutrient, least }) => ({ nutrient, least: least * men * DAYS }));
  const diet = cheapestDiet(foods, allowances);
  const columns = diet.columns.map((column) => ({ ...column, upper: 9999, integer: true }));
  const outcome = await solveLinear({ ...diet, columns }, { relativeGap: ROUNDING });
  if (outcome.status !== "optimal") throw new Error(`whole units are ${outcome.status}`);
  return (100 * outcome.objective) / men / DAYS;
}

/** What the planner buys, judged, and what it proves: cents a man and day. */
async function planUnits(men: number, foods: Foods, moves = MOVES): Promise<{ plan: number; bound: number }> {
  const problem = stateWholePacks(men, foods);
  const search = new MenuSearch(problem, 1, { expectedMoves: moves });
  while (search.advance().moves < moves);
  const plan = search.best();
  if (plan === undefined) throw new Error("no plan of whole units holds all allowances");
  const { faults, money } = checkPlan(problem, plan);
  expect(faults).toEqual([]);
  const proof = await proveBound(problem, { seconds: 1, incumbentMinor: money.totalMinor });
  if (!("boundMinor" in proof) || proof.boundMinor === undefined) throw new Error(`no bound: ${proof.status}`);
  return { plan: money.totalMinor / men / DAYS, bound: proof.boundMinor / men / DAYS };
}

/**
 * **Source**: foods, prices, allowances and the optimum of any amounts as in `cheapestDiet.test.ts`; the units are those
 * the foods were priced by.
 */
describe.each<[string, Foods]>([
  ["the five foods of the cheapest diet", FIVE_FOODS],
  ["all 77 foods", BY_UNIT_SOLD],
])("the cheapest diet of 1939 in whole units, of %s", (_, foods) => {
  test.each(MEN)("for 28 days and %i men is never cheaper than in any amounts", async (men) => {
    const units = await cheapestUnits(men, foods);
    const { plan, bound } = await planUnits(men, foods);
    expect(units).toBeGreaterThanOrEqual(LEAST_CENTS * (1 - ROUNDING));
    expect(bound).toBeGreaterThanOrEqual(LEAST_CENTS * (1 - ROUNDING));
    expect(bound).toBeLessThanOrEqual(plan);
    expect(plan).toBeGreaterThanOrEqual(units * (1 - ROUNDING));
  });

  test("comes nearer to it the more is bought at once", async () => {
    const oneOfEach = FIVE_FOODS.reduce((sum, { pricePerUnit }) => sum + 100 * pricePerUnit, 0);
    let before = Number.POSITIVE_INFINITY;
    for (const men of MEN) {
      const units = await cheapestUnits(men, foods);
      // Rounding each of the five foods up takes less than one unit more of each.
      expect(units).toBeLessThan(LEAST_CENTS + oneOfEach / men / DAYS);
      // Some men buying together may buy what each group of them would buy.
      expect(units).toBeLessThanOrEqual(before * (1 + ROUNDING));
      before = units;
    }
    const [few, many] = [await planUnits(1, foods, MANY_MOVES), await planUnits(12, foods, MANY_MOVES)];
    expect(many.plan - LEAST_CENTS).toBeLessThan((few.plan - LEAST_CENTS) / 2);
  });
});
