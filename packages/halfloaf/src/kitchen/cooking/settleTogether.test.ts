import { beforeAll, describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../../menu/index.ts";
import { readDemoKitchens, readStarterTables } from "../kitchen.testing.ts";
import type { Kitchen } from "../kitchen.ts";
import { type KitchenProblem, toMenuProblem } from "../toMenuProblem.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import { timeWork } from "./cooking.testing.ts";
import { countVessels } from "./countVessels.ts";
import { type SettledWeek, settleTogether } from "./settleTogether.ts";
import { sittingKitchen } from "./sittingKitchen.ts";
import { listTogether, stateTogether } from "./stateTogether.ts";

const tables = readStarterTables();
const MOVES = 8000;
/** Enough where all there is to find are two sittings. */
const WIDE_MOVES = 20_000;
const AT_HAND = 40;
/** Seeds of which at least one makes such a plan. */
const SEEDS = 12;

/** Two who eat apart on two evenings, with little time and one ring. */
const kitchen: Kitchen = (() => {
  const demo = readDemoKitchens().find(({ name }) => name === "port-ansel")?.kitchen as Kitchen;
  const evening = { kind: "evening" as const, on: [1, 2], minutes: AT_HAND, heat: true, packed: false };
  const others = tables.dishes.filter(({ fits }, at) => !fits.includes("evening") || at % 4 !== 0);
  return {
    ...demo,
    kit: { ...demo.kit, rings: 1 },
    useUp: [],
    refusedDishes: others.map(({ id }) => id),
    sittings: ["joren", "maris"].map((id) => ({ ...evening, eaters: [id] })),
    limits: {
      ...demo.limits,
      budgetMinor: 9000,
      handsOnMinutes: 300,
      energyTolerancePct: 40,
      usesPerDish: 2,
      mainMax: 9,
    },
  };
})();

let stated: KitchenProblem;
let hopeful: MenuPlan;
let settled: SettledWeek;

beforeAll(() => {
  stated = toMenuProblem(kitchen, tables, kitchen.startsOn, 2);
  hopeful = planHopefully();
  const week = { problem: stated.problem, plan: hopeful, today: 0, losses: [], isCheaper: false, skippedShare: 0 };
  settled = settleTogether({ stated, kitchen, tables }, week, { judge: checkPlan, wideMoves: WIDE_MOVES });
}, 240_000);

/** The plan of the first seed that cooks at once what takes too long; of the last one tried where none does. */
function planHopefully(): MenuPlan {
  for (let seed = 1; ; seed++) {
    const search = new MenuSearch(stated.problem, seed, { expectedMoves: MOVES });
    while (search.advance().moves < MOVES);
    const plan = search.best() as MenuPlan;
    if (seed === SEEDS || Math.max(...timeAll(stated, plan)) > AT_HAND) return plan;
  }
}

/** Minutes of all that a plan cooks at once, by orders of work solved to the end. */
function timeAll(of: KitchenProblem, plan: MenuPlan): number[] {
  return listTogether(of, plan).map(({ dishes }) => {
    const wish = dishes.map(({ dish, portions }) => ({ ...of.dishes[dish], portions }));
    return timeWork({ ...sittingKitchen(kitchen, tables), dishes: wish as never }).plan.serveMinutes;
  });
}

describe("what is cooked at once", () => {
  test("is one cooking of both who eat apart in one evening", () => {
    expect(stated.problem.sittings.map(({ day, together }) => [day, together])).toEqual(
      [0, 0, 1, 1].map((day) => [day, 2 * day]),
    );
    expect(listTogether(stated, hopeful).length).toBeGreaterThan(0);
  });

  test("takes too long where nothing is known of it, and is planned again until it is done in time", () => {
    expect(Math.max(...timeAll(stated, hopeful))).toBeGreaterThan(AT_HAND);
    expect(settled.outcome.kind).toBe("planned");
    if (settled.outcome.kind !== "planned") return;
    const { plan, moneyMinor } = settled.outcome;
    expect(Math.max(0, ...timeAll(settled.stated, plan))).toBeLessThanOrEqual(AT_HAND);
    const { faults, money } = checkPlan(settled.stated.problem, plan);
    expect([faults, money.totalMinor]).toEqual([[], moneyMinor]);
    expect(checkPlan(settled.stated.problem, hopeful).faults.map(({ code }) => code)).toContain("elapsed");
  });

  test("is known to the minute in the end, and nothing is left to be learned", () => {
    if (settled.outcome.kind !== "planned") return;
    const { plan } = settled.outcome;
    expect(stateTogether(settled.stated, plan, kitchen, tables)).toBe(settled.stated);
    const known = listTogether(settled.stated, plan).map(({ cooking }) => cooking?.elapsedMinutes);
    expect(known).toEqual(timeAll(settled.stated, plan));
  });

  test("stands in the week's file with the minutes of all of it", () => {
    if (settled.outcome.kind !== "planned") return;
    const { plan } = settled.outcome;
    const week = toWeekPlan(kitchen, tables, settled.stated, plan, { seed: 1, moves: 0, moneyMinor: 0 });
    for (const { batches, cooking } of listTogether(settled.stated, plan)) {
      for (const at of batches) {
        const batch = week.batches[at];
        expect(batch?.together).toEqual(batches.filter((other) => other !== at));
        expect(batch?.elapsedMinutes).toBe(cooking?.elapsedMinutes);
        expect(batch?.elapsedMinutes).toBeLessThanOrEqual(AT_HAND);
      }
    }
  });

  test("stands there with them also where the search knew nothing of it, and with what is washed up after all of it", () => {
    const week = toWeekPlan(kitchen, tables, stated, hopeful, { seed: 1, moves: 0, moneyMinor: 0 });
    const timed = timeAll(stated, hopeful);
    for (const [at, { batches }] of listTogether(stated, hopeful).entries()) {
      const cooked = batches.map((batch) => week.batches[batch] as (typeof week.batches)[number]);
      expect(cooked.map(({ elapsedMinutes }) => elapsedMinutes)).toEqual(batches.map(() => timed[at]));
      const dishes = cooked.flatMap(({ dish }) => tables.dishes.find(({ id }) => id === dish) ?? []);
      const vessels = cooked.reduce((sum, batch) => sum + (batch.vessels as number), 0);
      expect(vessels).toBe(countVessels(dishes, kitchen.kit));
    }
  });
});
