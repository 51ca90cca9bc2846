import { type MenuPack, type MenuProblem, MenuSearch } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { WorkPlan, WorkProblem } from "halfloaf/work";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { PlanOutcome, PlanProgress } from "./PlanJob.ts";
import type { Planner } from "./Planner.ts";
import type { PlannerWorker } from "./PlannerWorker.ts";
import { countWorkers, ENDLESS, PROBLEM } from "./planner.testing.ts";
import { startNodePlanner, startNodeWorker } from "./startNodePlanner.ts";

/** Dishes of one step each, which take so many minutes of the only cook. */
function mealOf(minutes: readonly number[]): WorkProblem {
  const steps = minutes.map((each, at) => ({ id: `step-${at}`, dish: at, minutes: each, hands: 2 as const }));
  return {
    cooks: 1,
    steps,
    dishes: steps.map((_, at) => ({ id: `dish-${at}`, last: at, holdMinutes: 3, holdWeight: 1 })),
    waits: [],
    kit: [],
    uses: [],
  };
}

describe("a planner in a worker", () => {
  let planner: Planner;
  beforeAll(() => {
    planner = startNodePlanner();
  });
  afterAll(() => planner.dispose());

  test("finds what the library finds for the same seed and moves", async () => {
    const outcome = await planner.plan({ problem: PROBLEM, seed: 3, moves: 4000 }).outcome;
    const search = new MenuSearch(PROBLEM, 3, { expectedMoves: 4000 });
    let report = search.advance();
    while (report.moves < 4000) report = search.advance();
    expect(outcome).toMatchObject({
      status: "planned",
      plan: search.best(),
      costMinor: report.costMinor,
      complete: true,
    });
  });

  test("finds packs that stand a rise of prices where the cheapest as expected would not, and tells what they cost", async () => {
    const [sure] = PROBLEM.packs as [MenuPack];
    const problem: MenuProblem = {
      ...PROBLEM,
      sittings: PROBLEM.sittings.map((sitting) => ({ ...sitting, dishes: [0] })),
      packs: [sure, { ...sure, priceMinor: 80, highMinor: 130 }],
      limits: { ...PROBLEM.limits, budgetMinor: 190 },
    };
    const outcome = await planner.plan({ problem, seed: 1, moves: 2000 }).outcome;
    const plan = outcome.status === "planned" ? outcome.plan : undefined;
    expect(plan?.purchases).toEqual([{ trip: 0, pack: 0, count: 2 }]);
    expect(outcome).toMatchObject({ costMinor: plan && checkPlan(problem, plan).money.totalMinor });
  });

  test("reports progress that never gets worse, and stops at once with the best", async () => {
    const seen: PlanProgress[] = [];
    const running = planner.plan({ problem: PROBLEM, seed: 1, moves: ENDLESS }, (progress) => {
      seen.push(progress);
      running.stop();
    });
    const outcome = await running.outcome;
    expect(outcome).toMatchObject({ status: "planned", complete: false });
    expect(seen[0]?.plan).toBeDefined();
    const costs = seen.flatMap(({ costMinor }) => costMinor ?? []);
    expect(costs.length).toBeGreaterThan(0);
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
  });

  test("queues searches, and cancels one that waits without touching the others", async () => {
    const first = planner.plan({ problem: PROBLEM, seed: 1, moves: ENDLESS });
    const second = planner.plan({ problem: PROBLEM, seed: 2, moves: ENDLESS });
    const third = planner.plan({ problem: PROBLEM, seed: 3, moves: 2000 });
    second.cancel();
    first.stop();
    expect(await second.outcome).toEqual({ status: "cancelled" });
    expect((await first.outcome).status).toBe("planned");
    expect((await third.outcome).status).toBe("planned");
  });

  test("orders the work of a cooking while it answers to nothing else, and is stopped through shared memory", async () => {
    const plans: WorkPlan[] = [];
    const whole = await planner.order(mealOf([4, 9, 3, 7, 5]), 20_000, (plan) => plans.push(plan)).outcome;
    expect(whole).toMatchObject({ kind: "optimal", plan: { serveMinutes: 4 + 9 + 3 + 7 + 5 } });
    const running = planner.order(mealOf([4, 9, 3, 7, 5, 8, 6, 2]), 60_000);
    running.stop();
    expect(["optimal", "feasible", "stopped"]).toContain((await running.outcome).kind);
  });

  test("says which sittings have no dish where no plan is possible", async () => {
    const sittings = PROBLEM.sittings.map((sitting, k) => (k === 1 ? { ...sitting, dishes: [] } : sitting));
    const outcome = await planner.plan({ problem: { ...PROBLEM, sittings }, seed: 1, moves: 2000 }).outcome;
    expect(outcome).toMatchObject({ status: "none", gaps: [1] });
  });
});

describe("a proof beside a search", () => {
  test("the gap told is the best plan's money less the bound, and the bound never exceeds the plan", async () => {
    const { planner, counted } = countWorkers({ threads: 2 });
    const seen: PlanProgress[] = [];
    const running = planner.plan({ problem: PROBLEM, seed: 1, moves: ENDLESS, proofS: 60 }, (progress) => {
      seen.push(progress);
      if (progress.gapMinor !== undefined) running.stop();
    });
    const [outcome, proof] = await Promise.all([running.outcome, running.proof]);
    planner.dispose();
    const last = seen.findLast(({ gapMinor }) => gapMinor !== undefined);
    expect(last?.gapMinor).toBeCloseTo((last?.costMinor as number) - (last?.boundMinor as number), 9);
    expect(last?.plan).toBeDefined();
    if (outcome.status !== "planned" || !proof || !("boundMinor" in proof)) throw new Error("no plan or no bound");
    expect(proof.boundMinor).toBeLessThanOrEqual(outcome.costMinor);
    expect(counted.started).toBe(2);
  });

  test("with one thread the proof waits for the search", async () => {
    const { planner, counted } = countWorkers({ threads: 1 });
    const order: string[] = [];
    const running = planner.plan({ problem: PROBLEM, seed: 1, moves: 4000, proofS: 5 }, ({ boundMinor }) => {
      if (boundMinor !== undefined) order.push("bound");
    });
    await running.outcome.then(() => order.push(`planned by ${counted.started}`));
    await running.proof;
    planner.dispose();
    expect(order.slice(0, 2)).toEqual(["planned by 1", "bound"]);
  });

  test("a plan that is cancelled takes its proof along", async () => {
    const { planner } = countWorkers({ threads: 2 });
    const running = planner.plan({ problem: PROBLEM, seed: 1, moves: ENDLESS, proofS: 600 });
    running.cancel();
    expect(await running.outcome).toEqual({ status: "cancelled" });
    expect((await running.proof)?.status).toBe("stopped");
    planner.dispose();
  });

  test("a short list is bounded by itself, never below the bound on all dishes", async () => {
    const { planner } = countWorkers({ threads: 2 });
    const all = await planner.prove({ problem: PROBLEM, seconds: 5 }).outcome;
    const few = await planner.prove({ problem: PROBLEM, seconds: 5, dishes: [1] }).outcome;
    planner.dispose();
    if (!("boundMinor" in all) || !("boundMinor" in few)) throw new Error("expected two bounds");
    expect(few.boundMinor as number).toBeGreaterThanOrEqual((all.boundMinor as number) - 0.05);
  });
});

describe("the workers of a planner", () => {
  const prove = async (planner: Planner, times: number): Promise<void> => {
    for (let at = 0; at < times; at++)
      expect((await planner.prove({ problem: PROBLEM, seconds: 5 }).outcome).status).toBe("proven");
  };

  test("are started when they are first needed, and kept", async () => {
    const { planner, counted } = countWorkers({ threads: 2 });
    expect(counted.started).toBe(0);
    await prove(planner, 3);
    expect(counted.started).toBe(1);
    planner.dispose();
  });

  test("are given up once their solver has taken too much memory", async () => {
    const { planner, counted } = countWorkers({ threads: 2, mostSolverBytes: 1 });
    await prove(planner, 2);
    expect(counted.started).toBe(2);
    planner.dispose();
  });

  test("that break down fail what they were at, and the next piece of work has a new one", async () => {
    const broken = (): PlannerWorker => ({
      ...startNodeWorker(),
      onFailure: (listener) => queueMicrotask(() => listener("out of memory")),
    });
    let isFirst = true;
    const { planner, counted } = countWorkers({ threads: 2 }, () => {
      const start = isFirst ? broken : startNodeWorker;
      isFirst = false;
      return start();
    });
    const outcomes = await Promise.all(
      [1, 2].map((seed) => planner.plan({ problem: PROBLEM, seed, moves: 2000 }).outcome),
    );
    planner.dispose();
    expect(outcomes.map(({ status }) => status)).toEqual(["failed", "planned"]);
    expect(counted.started).toBe(2);
  });

  test("when disposed of, answer what was under way with what it has", async () => {
    const { planner } = countWorkers({ threads: 2 });
    const outcomes = await new Promise<PlanOutcome[]>((resolve) => {
      const first = planner.plan({ problem: PROBLEM, seed: 1, moves: ENDLESS }, ({ plan }) => {
        if (plan) planner.dispose();
      });
      const second = planner.plan({ problem: PROBLEM, seed: 2, moves: ENDLESS });
      resolve(Promise.all([first.outcome, second.outcome]));
    });
    expect(outcomes).toMatchObject([{ status: "planned", complete: false }, { status: "none" }]);
  });
});
