import fc from "fast-check";
import { type MenuPlan, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { arbitraryWeek, tryEveryPlan } from "halfloaf/menu/bound/testing";
import { checkPlan } from "halfloaf/menu/check";
import type { Model } from "highs";
import { describe, expect, test, vi } from "vitest";
import { loadSolver } from "./loadSolver.ts";
import { proveBound } from "./proveBound.ts";
import { proveShortList } from "./proveShortList.ts";

function findPlans(problem: MenuProblem, seed: number): { plan: MenuPlan; costMinor: number }[] {
  const search = new MenuSearch(problem, seed, { expectedMoves: 6000 });
  const plans: { plan: MenuPlan; costMinor: number }[] = [];
  for (let round = 0; round < 3 && search.gaps.length === 0; round++) {
    const plan = search.advance().improved ? search.best() : undefined;
    if (plan === undefined) continue;
    const { faults, money } = checkPlan(problem, plan);
    if (faults.length === 0) plans.push({ plan, costMinor: money.totalMinor });
  }
  return plans;
}

/** Two foods that last and one that does not, three dishes, three sittings: small enough to try everything. */
const tinyWeek: fc.Arbitrary<MenuProblem> = fc
  .record({
    grams: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 9, maxLength: 9 }),
    prices: fc.array(fc.integer({ min: 40, max: 260 }), { minLength: 3, maxLength: 3 }),
    masses: fc.array(fc.integer({ min: 2, max: 8 }), { minLength: 3, maxLength: 3 }),
    keeps: fc.array(fc.nat(2), { minLength: 3, maxLength: 3 }),
    fixed: fc.array(fc.nat(12), { minLength: 3, maxLength: 3 }),
    stockG: fc.nat(150),
    openedDays: fc.nat(2),
    offer: fc.boolean(),
    fibre: fc.integer({ min: 1, max: 20 }),
    tripMinor: fc.nat(80),
  })
  .map((drawn): MenuProblem => {
    const { grams, prices, masses, keeps, fixed, stockG, openedDays, offer, fibre, tripMinor } = drawn;
    const foods = [0, 1, 2].map((food) => {
      const dated = food === 2;
      const unit = (prices[food] as number) / (100 * (masses[food] as number));
      const life = dated ? { openedDays, unopenedDays: 3 } : { openedDays: 99, unopenedDays: 99 };
      return {
        id: `food-${food}`,
        ...life,
        creditMinorPerG: 0.5 * unit,
        creditOpenedMinorPerG: 0.1 * unit,
        wasteMinorPerG: 0.2 * unit,
      };
    });
    const dishes = [0, 1, 2].map((dish) => ({
      id: `dish-${dish}`,
      makings: [0, 1, 2].flatMap((food) => {
        const massG = 20 * (grams[3 * dish + food] as number);
        return massG > 0 ? [{ food, massG }] : [];
      }),
      handsOn: { fixed: fixed[dish] as number, perPortion: 1 },
      elapsed: { fixed: 10, perPortion: 1 },
      keepsDays: keeps[dish] as number,
      needsHeat: false,
      servedCold: true,
      travels: true,
      main: dish,
      maxUses: 3,
      dislikeMinor: 5 * dish,
      energyKj: 2000 + 100 * dish,
      components: [4 + 2 * dish],
    }));
    return {
      days: 3,
      periodDay: [0, 1, 2],
      foods,
      dishes,
      shopCount: 1,
      components: ["fibre"],
      sittings: [0, 1, 2].map((day) => ({
        day,
        period: day,
        portions: 1,
        minutes: 60,
        heat: true,
        packed: false,
        dishes: [0, 1, 2],
        variety: true,
      })),
      lots: [{ food: 0, massG: stockG, opened: true, lastDay: 99, mustUse: false }],
      packs: [0, 1, 2].map((food) => ({
        food,
        shop: 0,
        massG: 100 * (masses[food] as number),
        priceMinor: prices[food] as number,
        limit: 3,
        fromDay: 0,
        toDay: 2,
        ...(offer && food === 1 ? { offer: { count: 2, priceMinor: Math.ceil(1.5 * (prices[food] as number)) } } : {}),
      })),
      trips: [{ shop: 0, day: 0, period: 0, costMinor: tripMinor, minutes: 0 }],
      profiles: [
        {
          eaters: 1,
          sittings: [0, 1, 2],
          energyKj: [2100, 2100, 2100],
          bounds: [{ component: 0, kind: "at-least", amount: fibre, hard: false }],
        },
      ],
      limits: {
        handsOnMinutes: [60, 60, 60],
        energyTolerance: 0.2,
        distinct: 1,
        mainMax: 3,
        batchPortions: 3,
        maxTrips: 1,
      },
      worth: {
        minuteMinor: 2,
        leftoverMinutes: 1,
        shortfallFirstMinor: 100,
        shortfallRestMinor: 300,
        shortfallKnee: 0.1,
      },
    };
  });

describe("a bound never lies", () => {
  test("no checked plan of a random week is below it, and it never falls", async () => {
    let plansSeen = 0;
    await fc.assert(
      fc.asyncProperty(arbitraryWeek(), fc.nat(99), async (problem, seed) => {
        const plans = findPlans(problem, seed);
        const seen: number[] = [];
        const outcome = await proveBound(problem, {
          seconds: 0.4,
          onProgress: ({ boundMinor }) => seen.push(boundMinor),
        });
        expect(outcome.status).not.toBe("failed");
        expect(seen).toEqual([...seen].sort((a, b) => a - b));
        plansSeen += plans.length;
        if (plans.length > 0) expect(outcome).toMatchObject({ boundMinor: seen.at(-1) });
        for (const { costMinor } of plans)
          for (const boundMinor of seen) expect(boundMinor).toBeLessThanOrEqual(costMinor);
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(plansSeen).toBeGreaterThan(10);
  });

  test("the cheapest of all plans of a tiny problem is not below it, and close where all is tried", async () => {
    const gaps: number[] = [];
    // How close the bounds are is told of the same weeks each time, since few drawn ones say little of it.
    const same = fc.sample(tinyWeek, { numRuns: 7, seed: 7 });
    await fc.assert(
      fc.asyncProperty(tinyWeek, async (problem) => {
        const cheapest = tryEveryPlan(problem);
        const outcome = await proveBound(problem, { seconds: 5 });
        if (cheapest === undefined) return;
        expect(outcome.status).toBe("proven");
        if (outcome.status !== "proven") return;
        expect(outcome.boundMinor).toBeLessThanOrEqual(cheapest);
        // Beside a plan that is hardly dearer much is ruled out by what it would cost, yet not the cheapest.
        const beside = await proveBound(problem, { seconds: 5, incumbentMinor: cheapest + 5 });
        expect(beside).toMatchObject({ status: "proven" });
        if (beside.status !== "proven") return;
        expect(beside.boundMinor).toBeLessThanOrEqual(cheapest);
        expect(beside.boundMinor as number).toBeGreaterThanOrEqual((outcome.boundMinor as number) - 0.05);
        if (same.includes(problem)) gaps.push((cheapest - (outcome.boundMinor as number)) / cheapest);
      }),
      { numRuns: 15, endOnFailure: true, examples: same.map((problem) => [problem]) },
    );
    expect(gaps.length).toBeGreaterThan(3);
    const median = gaps.sort((a, b) => a - b)[gaps.length >> 1];
    expect(median).toBeLessThan(0.05);
  });
});

/** Ways to limit a tiny week more than it is. */
const TIGHTER: readonly ((problem: MenuProblem) => MenuProblem)[] = [
  (problem) => ({ ...problem, limits: { ...problem.limits, budgetMinor: 400 } }),
  (problem) => ({ ...problem, limits: { ...problem.limits, handsOnMinutes: [8, 8, 60] } }),
  (problem) => ({ ...problem, limits: { ...problem.limits, distinct: 2 } }),
  (problem) => ({ ...problem, limits: { ...problem.limits, mainMax: 2 } }),
  (problem) => ({ ...problem, dishes: problem.dishes.map((dish) => ({ ...dish, maxUses: 2 })) }),
  (problem) => ({ ...problem, wishes: [{ dishes: [2], sittings: [0, 1, 2], least: 1 }] }),
  (problem) => ({ ...problem, trips: problem.trips.map((trip) => ({ ...trip, carryG: 900 })) }),
];

describe("adding a limit", () => {
  test("never makes a plan cheaper than what is proven without it, nor its own proof lower", async () => {
    let plans = 0;
    await fc.assert(
      fc.asyncProperty(tinyWeek, fc.constantFrom(...TIGHTER), fc.nat(99), async (problem, tighten, seed) => {
        const limited = tighten(problem);
        const [wide, narrow] = [await proveBound(problem, { seconds: 5 }), await proveBound(limited, { seconds: 5 })];
        if (wide.status !== "proven") return;
        const least = wide.boundMinor as number;
        if (narrow.status === "proven") expect(narrow.boundMinor as number).toBeGreaterThanOrEqual(least - 0.05);
        for (const { costMinor } of findPlans(limited, seed)) {
          plans++;
          expect(costMinor).toBeGreaterThanOrEqual(least);
        }
      }),
      { numRuns: 25, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(5);
  });
});

describe("the work ends as asked", () => {
  const problem = (): MenuProblem => fc.sample(tinyWeek, { numRuns: 1, seed: 7 })[0] as MenuProblem;

  test("a cheaper incumbent caps the bound", async () => {
    const free = await proveBound(problem(), { seconds: 5 });
    if (free.status !== "proven") throw new Error(`expected a proof, got ${free.status}`);
    const incumbentMinor = (free.boundMinor as number) - 20;
    const capped = await proveBound(problem(), { seconds: 5, incumbentMinor });
    expect(capped).toMatchObject({ status: "proven" });
    expect(capped.status === "proven" && (capped.boundMinor as number)).toBeLessThanOrEqual(incumbentMinor);
  });

  test("a signal given beforehand stops it before the first bound", async () => {
    const outcome = await proveBound(problem(), { seconds: 5, signal: AbortSignal.abort() });
    expect(outcome).toMatchObject({ status: "stopped" });
    expect(outcome).not.toHaveProperty("boundMinor");
  });

  test("the solver's model is disposed of, however the work ends", async () => {
    const created = vi.spyOn(await loadSolver(), "createModel");
    await proveBound(problem(), { seconds: 60 });
    await proveBound(problem(), { seconds: 0 });
    const broken = (): never => {
      throw new Error("whoever listens breaks down");
    };
    expect((await proveBound(problem(), { seconds: 60, onProgress: broken })).status).toBe("failed");
    const models = created.mock.results.map(({ value }) => value as Model);
    expect(models.map(({ disposed }) => disposed)).toEqual([true, true, true]);
    created.mockRestore();
  });

  test("a week without any dish that fits is impossible", async () => {
    const base = problem();
    const sittings = base.sittings.map((sitting) => ({ ...sitting, dishes: [] }));
    expect((await proveBound({ ...base, sittings }, { seconds: 5 })).status).toBe("impossible");
  });

  test("a short list is bounded by itself, never below the bound on all dishes", async () => {
    const all = await proveBound(problem(), { seconds: 5 });
    const few = await proveShortList(problem(), [0, 2], { seconds: 5 });
    if (all.status !== "proven" || few.status !== "proven")
      throw new Error(`expected proofs, got ${all.status}, ${few.status}`);
    expect(few.boundMinor as number).toBeGreaterThanOrEqual((all.boundMinor as number) - 0.05);
  });
});
