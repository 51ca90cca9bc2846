import { type MenuPlan, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { afterEach, describe, expect, test } from "vitest";
import { furtherSeed } from "./furtherSeed.ts";
import type { PlanOutcome, PlanProgress } from "./PlanJob.ts";
import { Planner, type PlannerOptions } from "./Planner.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";
import { countWorkers, drawWeek, ENDLESS, PROBLEM } from "./planner.testing.ts";
import { startNodeWorker } from "./startNodePlanner.ts";

const WEEK = drawWeek(1);
const MOVES = 600;

/** What one search alone comes to. */
function searchAlone(seed: number): { readonly costMinor: number | undefined; readonly plan: MenuPlan | undefined } {
  const search = new MenuSearch(WEEK, seed, { expectedMoves: MOVES });
  let report = search.advance();
  while (report.moves < MOVES) report = search.advance();
  return { costMinor: report.costMinor, plan: search.best() };
}

/** The first seed from which the second of two searches comes to a cheaper plan, so that taking the first would be seen. */
function seedWhereSecondWins(): number {
  for (let seed = 1; ; seed++) {
    const [first, second] = [searchAlone(seed), searchAlone(furtherSeed(seed, 1))];
    if ((second.costMinor ?? Infinity) < (first.costMinor ?? Infinity)) return seed;
  }
}

/** A planner whose workers break down as soon as they are begun, by the order in which they are started. */
function withBroken(...broken: readonly number[]): Planner {
  let started = -1;
  return countWorkers({ threads: 4 }, (): PlannerWorker => {
    started++;
    const worker = startNodeWorker();
    if (!broken.includes(started)) return worker;
    return { ...worker, onFailure: (listener) => queueMicrotask(() => listener("out of memory")) };
  }).planner;
}

// A worker of Node takes a while to start where others keep the machine busy.
describe("several searches of one plan", () => {
  let planner: Planner;
  afterEach(() => planner.dispose());

  test("give the best of what each finds alone, with the seed that finds it again, every time", async () => {
    planner = countWorkers({ threads: 4 }).planner;
    const seed = seedWhereSecondWins();
    const job = { problem: WEEK, seed, moves: MOVES, searches: 2 };
    const outcome = await planner.plan(job).outcome;
    const [first, second] = [searchAlone(seed), searchAlone(furtherSeed(seed, 1))];
    expect(second.costMinor).toBeLessThan(first.costMinor as number);
    expect(outcome).toMatchObject({ status: "planned", ...second, seed: furtherSeed(seed, 1), complete: true });
    expect(await planner.plan(job).outcome).toEqual(outcome);
  });

  test("tell progress that never gets worse, whichever of them found it, and stop at once with the best of all", async () => {
    planner = countWorkers({ threads: 4 }).planner;
    const told: PlanProgress[] = [];
    const heard = new Set<number>();
    const running = planner.plan({ problem: WEEK, seed: 1, moves: ENDLESS, searches: 2 }, (progress) => {
      told.push(progress);
      if (progress.seed !== undefined) heard.add(progress.seed);
      // Every search has begun.
      if (progress.moves > 0 && progress.plan !== undefined) running.stop();
    });
    const outcome = await running.outcome;
    const costs = told.flatMap(({ costMinor }) => costMinor ?? []);
    const plans = [...new Set(told.flatMap(({ plan }) => plan ?? []))];
    const money = plans.map((plan) => checkPlan(WEEK, plan).money.totalMinor);
    for (const all of [costs, money]) expect(all).toEqual([...all].sort((a, b) => b - a));
    if (outcome.status !== "planned") throw new Error(outcome.status);
    expect(outcome.complete).toBe(false);
    expect(outcome.costMinor).toBeLessThanOrEqual(money.at(-1) as number);
    for (const seed of heard) expect([0, 1].map((place) => furtherSeed(1, place))).toContain(seed);
  });

  test.each([
    ["the first", 0],
    ["a further one", 1],
  ])("go on without %s where its worker breaks down", async (_, broken) => {
    planner = withBroken(broken);
    const outcome = await planner.plan({ problem: WEEK, seed: 5, moves: MOVES, searches: 2 }).outcome;
    const seed = furtherSeed(5, 1 - broken);
    expect(outcome).toMatchObject({ status: "planned", ...searchAlone(seed), seed, complete: false });
  });

  test("have failed where all their workers break down", async () => {
    planner = withBroken(0, 1);
    const outcome = await planner.plan({ problem: WEEK, seed: 5, moves: MOVES, searches: 2 }).outcome;
    expect(outcome).toEqual({ status: "failed", reason: "out of memory" });
  });

  test("of several plans keep to their own queue, and one that is cancelled takes none of the others along", async () => {
    planner = countWorkers({ threads: 4 }).planner;
    const endless = { problem: WEEK, seed: 1, moves: ENDLESS, searches: 2 };
    const first = planner.plan(endless, ({ plan }) => plan && first.stop());
    const second = planner.plan({ ...endless, seed: 2 });
    const third = planner.plan({ problem: PROBLEM, seed: 3, moves: MOVES, searches: 2 });
    second.cancel();
    expect(await second.outcome).toEqual({ status: "cancelled" });
    expect(await first.outcome).toMatchObject({ status: "planned", complete: false });
    expect(await third.outcome).toMatchObject({ status: "planned", complete: true });
  });

  test("give further workers up at their end, and keep the first", async () => {
    const counting = countWorkers({ threads: 4 });
    planner = counting.planner;
    const outcomes: PlanOutcome[] = [];
    for (const searches of [1, 2, 2])
      outcomes.push(await planner.plan({ problem: PROBLEM, seed: 1, moves: MOVES, searches }).outcome);
    expect(outcomes.map(({ status }) => status)).toEqual(["planned", "planned", "planned"]);
    expect(counting.counted.started).toBe(1 + 1 + 1);
  });
});

test.each<[PlannerOptions, number]>([
  [{ threads: 1 }, 1],
  [{ threads: 2 }, 1],
  [{ threads: 3 }, 2],
  [{ threads: 4 }, 3],
  [{ threads: 16 }, 4],
  [{ threads: 8, memoryGb: 1 }, 1],
  [{ threads: 8, memoryGb: 2 }, 1],
  [{ threads: 8, memoryGb: 4 }, 2],
  [{ threads: 8, memoryGb: 8 }, 4],
])("a device of %o has room for %i searches", (options, most) => {
  expect(new Planner(startNodeWorker, options).mostSearches).toBe(most);
});

test("seeds of further searches are whole, all different, and begin with that of the job", () => {
  for (const seed of [0, 1, 2 ** 32 - 1]) {
    const seeds = [0, 1, 2, 3, 4, 5, 6, 7].map((place) => furtherSeed(seed, place));
    expect(seeds[0]).toBe(seed);
    expect(new Set(seeds).size).toBe(seeds.length);
    for (const each of seeds) expect(each >= 0 && each < 2 ** 32 && Number.isInteger(each)).toBe(true);
  }
});
