import { fileURLToPath } from "node:url";
import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import type { PlanJob, PlanOutcome } from "@halfloaf/engine";
import { startNodePlanner } from "@halfloaf/engine/node";
import { parseKitchen, parseTables, toMenuProblem } from "halfloaf/kitchen";
import type { MenuProblem } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { WorkProblem } from "halfloaf/work";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { type BundledPage, bundlePage, type ServedPage, servePage } from "../servePage.ts";
import type { Planning } from "./page.ts";

declare const planning: Planning;

/** The first days of a demo kitchen. */
function stateKitchen(name: string, days: number): MenuProblem {
  const tables = parseTables(loadStarterTables());
  const kitchen = parseKitchen(loadDemoKitchens().find((each) => each.name === name)?.content);
  if (!tables.ok || !kitchen.ok) throw new Error("the demo kitchen can't be read");
  return toMenuProblem(kitchen.value, tables.value, kitchen.value.startsOn, days).problem;
}

/** Dishes that are all to be hot at once, with one cook: far too many to be proven soon. */
function crowdedMeal(dishes: number): WorkProblem {
  const steps = Array.from({ length: dishes }, (_, at) => ({
    id: `step-${at}`,
    dish: at,
    minutes: 2 + ((at * 7) % 11),
    hands: 2 as const,
  }));
  return {
    cooks: 1,
    steps,
    dishes: steps.map((_, at) => ({ id: `dish-${at}`, last: at, holdMinutes: 3 + (at % 9), holdWeight: 1 + (at % 4) })),
    waits: [],
    kit: [],
    uses: [],
  };
}

describe.skipIf(!hasBrowser)("the planner in a browser", () => {
  let browser: Browser;
  let files: BundledPage;
  let ofSeed: PlanJob;
  let endless: PlanJob;
  let onNode: PlanOutcome;
  beforeAll(async () => {
    const problem = stateKitchen("one-ring", 4);
    ofSeed = { problem, seed: 3, moves: 20_000, searches: 2 };
    endless = { problem, seed: 1, moves: 1e9 };
    [browser, files] = await Promise.all([openBrowser(), bundlePage(fileURLToPath(new URL("./", import.meta.url)))]);
    const planner = startNodePlanner();
    onNode = await planner.plan(ofSeed).outcome;
    planner.dispose();
  });
  afterAll(() => browser?.close());

  describe.each([
    ["isolated, with shared memory", true],
    ["not isolated", false],
  ])("in a page that is %s", (_, isolated) => {
    let served: ServedPage;
    let page: Page;
    const errors: string[] = [];
    beforeAll(async () => {
      served = await servePage(files, isolated);
      page = await browser.newPage();
      page.on("pageerror", ({ message }) => errors.push(message));
      page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
      await page.goto(served.url);
    });
    afterAll(async () => {
      await page.close();
      await served.close();
    });

    test("it is as isolated as its headers say", async () => {
      expect(await page.evaluate(() => [planning.isIsolated, typeof SharedArrayBuffer !== "undefined"])).toEqual([
        isolated,
        isolated,
      ]);
    });

    test("gives the plan that Node gives for the same seed, moves and searches, without asking for the solver", async () => {
      const { outcome, told } = await page.evaluate((job) => planning.plan(job), ofSeed);
      expect(onNode).toMatchObject({ status: "planned", complete: true });
      expect(outcome).toEqual(onNode);
      expect(told.length).toBeGreaterThan(0);
      expect(served.asked.filter((path) => path.includes("highs"))).toEqual([]);
    });

    test("stops with a plan in which the judge finds no fault", async () => {
      const { outcome, told } = await page.evaluate((job) => planning.plan(job, "plan"), endless);
      expect(outcome).toMatchObject({ status: "planned", complete: false });
      if (outcome.status !== "planned") return;
      const { faults, money } = checkPlan(endless.problem, outcome.plan);
      expect(faults).toEqual([]);
      expect(money.totalMinor).toBeCloseTo(outcome.costMinor, 6);
      expect(outcome.costMinor).toBeLessThanOrEqual(told.at(-1)?.costMinor as number);
    });

    test("leaves the page awake while it plans without end, and is cancelled", async () => {
      expect(await page.evaluate((job) => planning.cancelAfter(job, 20), endless)).toEqual({ status: "cancelled" });
    });

    test("proves a bound with the solver's WASM in a worker, and stops", async () => {
      const { outcome, told } = await page.evaluate(
        (problem) => planning.prove({ problem, seconds: 60 }),
        ofSeed.problem,
      );
      expect(["proven", "stopped"]).toContain(outcome.status);
      expect("boundMinor" in outcome && outcome.boundMinor).toBeGreaterThanOrEqual(told[0]?.boundMinor as number);
      expect(told[0]?.boundMinor).toBeGreaterThan(0);
      expect(served.asked.filter((path) => path.endsWith(".wasm"))).toHaveLength(1);
    });

    test("proves beside the search, and tells the gap in money", async () => {
      const job = { ...endless, proofS: 60 };
      const { outcome, told, proof } = await page.evaluate((asked) => planning.plan(asked, "gap"), job);
      if (outcome.status !== "planned" || proof === undefined || !("boundMinor" in proof))
        throw new Error(`expected a plan with its bound, got ${outcome.status} and ${proof?.status}`);
      expect(proof.boundMinor).toBeLessThanOrEqual(outcome.costMinor);
      const last = told.findLast(({ gapMinor }) => gapMinor !== undefined);
      expect(last?.gapMinor).toBeCloseTo((last?.costMinor as number) - (last?.boundMinor as number), 9);
    });

    test("orders the work of a cooking with proof", async () => {
      const { outcome } = await page.evaluate((meal) => planning.order(meal, 60_000), crowdedMeal(5));
      expect(outcome.kind).toBe("optimal");
    });

    test("stops an order of work with the best told by then", async () => {
      const { outcome } = await page.evaluate((meal) => planning.order(meal, 600_000, "plan"), crowdedMeal(40));
      expect(outcome.kind).toBe(isolated ? "feasible" : "broken-off");
      expect(outcome).toHaveProperty("plan");
    });

    test("plans again after a worker was ended", async () => {
      const { outcome } = await page.evaluate((job) => planning.plan(job), ofSeed);
      expect(outcome).toEqual(onNode);
    });

    test("nothing went wrong unnoticed", () => {
      expect(errors).toEqual([]);
    });
  });
});
