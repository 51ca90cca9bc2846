import type {
  BoundOutcome,
  BoundProgress,
  OrderOutcome,
  PlanJob,
  PlanOutcome,
  PlanProgress,
  ProofJob,
} from "@halfloaf/engine";
import { startWebPlanner } from "@halfloaf/engine/web";
import type { WorkPlan, WorkProblem } from "halfloaf/work";

/** What came of a piece of work, and what was told meanwhile. */
export interface Done<Outcome, Told> {
  readonly outcome: Outcome;
  readonly told: readonly Told[];
}

/** What the test asks of the page; it stands in the page's `planning`. */
export interface Planning {
  readonly isIsolated: boolean;
  /** Plans; may stop once a plan, or a gap, is told. */
  plan(
    job: PlanJob,
    stopAt?: "plan" | "gap",
  ): Promise<Done<PlanOutcome, PlanProgress> & { readonly proof?: BoundOutcome }>;
  /** Plans without end, counts so many turns of the page's own loop, and cancels. */
  cancelAfter(job: PlanJob, turns: number): Promise<PlanOutcome>;
  /** Proves until the first bound is told. */
  prove(job: ProofJob): Promise<Done<BoundOutcome, BoundProgress>>;
  /** Orders; may stop at the first order told. */
  order(problem: WorkProblem, limitMs: number, stopAt?: "plan"): Promise<Done<OrderOutcome, WorkPlan>>;
}

const planner = startWebPlanner();

/** Listens to a piece of work until it has its outcome, and stops it once something told calls for that. */
async function observe<Outcome, Told>(
  start: (listen: (told: Told) => void) => { readonly outcome: Promise<Outcome>; stop(): void },
  callsForStop: (told: Told) => boolean,
): Promise<Done<Outcome, Told>> {
  const told: Told[] = [];
  const running = start((each) => {
    told.push(each);
    if (callsForStop(each)) running.stop();
  });
  return { outcome: await running.outcome, told };
}

const planning: Planning = {
  isIsolated: crossOriginIsolated,
  async plan(job, stopAt) {
    let proof: Promise<BoundOutcome> | undefined;
    const done = await observe<PlanOutcome, PlanProgress>(
      (listen) => {
        const running = planner.plan(job, listen);
        proof = running.proof;
        return running;
      },
      ({ plan, gapMinor }) => (stopAt === "plan" ? plan : stopAt && gapMinor) !== undefined,
    );
    return { ...done, ...(proof && { proof: await proof }) };
  },
  async cancelAfter(job, turns) {
    const running = planner.plan(job);
    for (let turn = 0; turn < turns; turn++) await new Promise((resolve) => setTimeout(resolve, 0));
    running.cancel();
    return running.outcome;
  },
  prove: (job) =>
    observe<BoundOutcome, BoundProgress>(
      (listen) => planner.prove(job, listen),
      () => true,
    ),
  order: (problem, limitMs, stopAt) =>
    observe<OrderOutcome, WorkPlan>(
      (listen) => planner.order(problem, limitMs, listen),
      () => stopAt !== undefined,
    ),
};

Object.assign(globalThis, { planning });
