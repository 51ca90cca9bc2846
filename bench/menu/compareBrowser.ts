import { fileURLToPath } from "node:url";
import { openBrowser } from "@halfloaf/e2e/openBrowser";
import { bundlePage, servePage } from "@halfloaf/e2e/servePage";
import type { PlanJob, PlanOutcome } from "@halfloaf/engine";
import { startNodePlanner } from "@halfloaf/engine/node";
import { generateProblem, type Size } from "./generateProblem.ts";
import { medianOf } from "./statistics.ts";

/** The page of e2e/planner. */
declare const planning: { plan(job: PlanJob): Promise<{ readonly outcome: PlanOutcome }> };

/** Moves before anything is measured. */
const WARM_MOVES = 30_000;

/** Milliseconds that the same search took in the two workers, one right after the other. */
interface Turn {
  readonly nodeMs: number;
  readonly browserMs: number;
  readonly same: boolean;
}

/** Runs one search by turns in a worker thread of Node and in a web worker of a real Chromium. */
async function takeTurns(job: PlanJob, turns: number): Promise<Turn[]> {
  const folder = fileURLToPath(new URL("../../e2e/planner/", import.meta.url));
  const [browser, served] = await Promise.all([
    openBrowser(),
    bundlePage(folder).then((files) => servePage(files, true)),
  ]);
  const planner = startNodePlanner();
  try {
    const page = await browser.newPage();
    await page.goto(served.url);
    const onNode = async (each: PlanJob) => {
      const from = performance.now();
      const outcome = await planner.plan(each).outcome;
      return { outcome, ms: performance.now() - from };
    };
    const inBrowser = (each: PlanJob) =>
      page.evaluate(async (given) => {
        const from = performance.now();
        const { outcome } = await planning.plan(given);
        return { outcome, ms: performance.now() - from };
      }, each);
    await onNode({ ...job, moves: WARM_MOVES });
    await inBrowser({ ...job, moves: WARM_MOVES });
    const rows: Turn[] = [];
    for (let turn = 0; turn < turns; turn++) {
      const [node, web] = [await onNode(job), await inBrowser(job)];
      const same = JSON.stringify(node.outcome) === JSON.stringify(web.outcome);
      rows.push({ nodeMs: node.ms, browserMs: web.ms, same });
    }
    return rows;
  } finally {
    planner.dispose();
    await browser.close();
    await served.close();
  }
}

/** One search in Chromium's worker and in Node's, by medians and by the least times. */
export interface BrowserRatio {
  readonly nodeMs: number | null;
  readonly browserMs: number | null;
  /** Least time against least time: what others do on the machine only ever adds. */
  readonly ratioOfLeast: number;
  readonly ratio: number | null;
  readonly samePlan: boolean;
}

/** How much longer a real Chromium takes than Node for the same search of a seeded kitchen of that size. */
export async function compareBrowser(size: Size, moves: number, turnsWanted: number): Promise<BrowserRatio> {
  const turns = await takeTurns({ problem: generateProblem(size, 1), seed: 1, moves }, turnsWanted);
  const [node, web] = [turns.map(({ nodeMs }) => nodeMs), turns.map(({ browserMs }) => browserMs)];
  return {
    nodeMs: medianOf(node),
    browserMs: medianOf(web),
    ratioOfLeast: Math.min(...web) / Math.min(...node),
    ratio: medianOf(turns.map(({ nodeMs, browserMs }) => browserMs / nodeMs)),
    samePlan: turns.every(({ same }) => same),
  };
}
