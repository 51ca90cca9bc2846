import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../check/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import type { LinearRow } from "../linear/LinearModel.ts";
import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";
import { MenuSearch } from "../search/MenuSearch.ts";
import { projectPlan } from "./projectPlan.testing.ts";
import { buildWeeklyModel } from "./weeklyModel.ts";

/** All plans a short search meets that keep every limit. */
function findPlans(problem: MenuProblem, seed: number): MenuPlan[] {
  const plans: MenuPlan[] = [];
  const search = new MenuSearch(problem, seed, { expectedMoves: 8000 });
  if (search.gaps.length > 0) return plans;
  for (let round = 0; round < 4; round++) {
    const plan = search.advance().improved ? search.best() : undefined;
    if (plan && checkPlan(problem, plan).faults.length === 0) plans.push(plan);
  }
  return plans;
}

function breaks({ lower, upper, entries }: LinearRow, point: ReadonlyMap<string, number>): boolean {
  let activity = 0;
  let size = 1;
  for (const [column, coefficient] of entries) {
    const term = coefficient * (point.get(column) ?? 0);
    activity += term;
    size += Math.abs(term);
  }
  return activity < lower - 1e-9 * size || activity > upper + 1e-9 * size;
}

/** What of the weekly model a plan's point breaks, and what the point costs. */
function judge(problem: MenuProblem, plan: MenuPlan): { broken: string[]; costMinor: number } {
  const { model, lazyRows, findCuts, findDeepCuts, offsetMinor } = buildWeeklyModel(problem);
  const point = projectPlan(problem, plan);
  const broken = [...model.rows, ...lazyRows].filter((row) => breaks(row, point)).map(({ name }) => name);
  for (const { name, lower, upper } of model.columns) {
    const value = point.get(name) ?? 0;
    if (value < lower - 1e-6 || value > upper + 1e-6) broken.push(`bounds of ${name}`);
  }
  const at = (column: string): number => point.get(column) ?? 0;
  for (const { row } of [...findCuts(at), ...findDeepCuts(at)]) broken.push(row.name);
  const costMinor = model.columns.reduce((sum, { name, cost }) => sum + cost * (point.get(name) ?? 0), offsetMinor);
  return { broken, costMinor };
}

describe("the weekly model relaxes the menu problem", () => {
  test("every checked plan is a point of it that costs no more than the plan", () => {
    let plans = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat(99), (problem, seed) => {
        for (const plan of findPlans(problem, seed)) {
          plans++;
          const { broken, costMinor } = judge(problem, plan);
          expect(broken).toEqual([]);
          const { totalMinor } = checkPlan(problem, plan).money;
          expect(costMinor).toBeLessThanOrEqual(totalMinor + 1e-6 * Math.max(1, Math.abs(totalMinor)) + 0.05);
        }
      }),
      { numRuns: 100, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(25);
  }, 240_000);

  test("a pack of an offer may stay unopened and be worth its credit", () => {
    const LASTS = 30;
    const problem: MenuProblem = {
      days: 2,
      periodDay: [0, 1],
      foods: [
        {
          id: "cream",
          openedDays: 0,
          unopenedDays: LASTS,
          creditMinorPerG: 0.6,
          creditOpenedMinorPerG: 0,
          wasteMinorPerG: 0,
        },
      ],
      dishes: [
        {
          id: "soup",
          makings: [{ food: 0, massG: 100 }],
          handsOn: { fixed: 0, perPortion: 0 },
          elapsed: { fixed: 0, perPortion: 0 },
          keepsDays: 0,
          needsHeat: false,
          servedCold: true,
          travels: true,
          main: 0,
          maxUses: 2,
          dislikeMinor: 0,
          energyKj: 2000,
          components: [],
        },
      ],
      sittings: [0, 1].map((day) => ({
        day,
        period: day,
        portions: 1,
        minutes: 30,
        heat: true,
        packed: false,
        dishes: [0],
        variety: false,
      })),
      lots: [],
      packs: [
        {
          food: 0,
          shop: 0,
          massG: 100,
          priceMinor: 100,
          limit: 9,
          fromDay: 0,
          toDay: 1,
          offer: { count: 3, priceMinor: 200 },
        },
      ],
      shopCount: 1,
      trips: [{ shop: 0, day: 0, period: 0, costMinor: 0, minutes: 0 }],
      components: [],
      profiles: [{ eaters: 1, sittings: [0, 1], energyKj: [2000, 2000], bounds: [] }],
      limits: {
        handsOnMinutes: [60, 60],
        energyTolerance: 0.1,
        distinct: 0,
        mainMax: 2,
        batchPortions: 2,
        maxTrips: 1,
      },
      worth: { minuteMinor: 1, leftoverMinutes: 0, shortfallFirstMinor: 0, shortfallRestMinor: 0, shortfallKnee: 0.1 },
    };
    const plan: MenuPlan = {
      batches: [
        { dish: 0, sittings: [0] },
        { dish: 0, sittings: [1] },
      ],
      trips: [0],
      purchases: [{ trip: 0, pack: 0, count: 3 }],
      uses: [0, 1].map((batch) => ({ lot: { purchase: 0, copy: batch }, batch, massG: 100 })),
    };
    const { faults, money } = checkPlan(problem, plan);
    expect(faults).toEqual([]);
    expect(money.totalMinor).toBeCloseTo(200 - 60, 9);
    const { broken, costMinor } = judge(problem, plan);
    expect(broken).toEqual([]);
    expect(costMinor).toBeLessThanOrEqual(money.totalMinor);
  });
});
