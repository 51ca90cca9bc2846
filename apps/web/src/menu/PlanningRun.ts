import type { Planner, RunningPlan, RunningProof } from "@halfloaf/engine/web";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { MenuPlan, MenuProblem } from "halfloaf/menu";
import { startThinker } from "../thinking/startThinker.ts";
import type { DaysAsked } from "../thinking/stateAsked.ts";
import type { Planning } from "./Planning.ts";

/** A planning that is asked for: of which days, by which seed and how many moves of the search. */
export interface PlanAsked extends DaysAsked {
  /** Another seed gives another search. */
  readonly seed: number;
  readonly moves: number;
}

/** Where so many moves have found no plan, it is time to ask what stands in the way. */
const HOPELESS_MOVES = 200_000;
const PROOF_S = 20;

/** One planning of some days, from the kitchen to the best week found and how good it is proven to be. */
export class PlanningRun {
  readonly #tell: (planning: Planning) => void;
  #search: RunningPlan | undefined;
  #proof: RunningProof | undefined;
  #isStopped = false;
  #bestMinor: number | undefined;
  #boundMinor: number | undefined;
  #week: WeekPlan | undefined;
  #plan: MenuPlan | undefined;
  #share = 0;
  #isPlanned = false;

  constructor(tell: (planning: Planning) => void) {
    this.#tell = tell;
  }

  /** Runs until the search has ended; a proof may go on and tells what it comes to. */
  async start(kitchen: Kitchen, asked: PlanAsked, start: () => Promise<Planner>): Promise<void> {
    this.#tell({ kind: "stating" });
    try {
      const ended = await this.#run(kitchen, asked, start);
      if (ended !== undefined) this.#tell(ended);
    } catch (error) {
      this.#tell({ kind: "failed", reason: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Ends it with the best there is. */
  stop(): void {
    this.#isStopped = true;
    this.#search?.stop();
    this.#proof?.stop();
  }

  /** Ends it, and nothing of it is wanted any more. */
  cancel(): void {
    this.#isStopped = true;
    this.#search?.cancel();
    this.#proof?.stop();
  }

  async #run(
    kitchen: Kitchen,
    { seed: asked, moves: most, ...days }: PlanAsked,
    start: () => Promise<Planner>,
  ): Promise<Planning | undefined> {
    const thinker = startThinker();
    const [planner, stated] = await Promise.all([start(), thinker.state(kitchen, days)]);
    if (this.#isStopped) return { kind: "idle" };
    const { id, problem } = stated;
    const write = async (plan: MenuPlan, search: WeekPlan["search"]): Promise<WeekPlan | undefined> =>
      thinker.write(id, plan, search);
    const job = { problem, seed: asked, moves: most, searches: planner.mostSearches };
    this.#search = planner.plan(job, ({ plan, seed = asked, costMinor, moves }) => {
      this.#share = moves / most;
      if (costMinor === undefined && moves > HOPELESS_MOVES) this.#search?.stop();
      if (costMinor !== undefined) this.#hear(planner, problem, costMinor);
      if (plan !== undefined && plan !== this.#plan && costMinor !== undefined) {
        this.#plan = plan;
        void write(plan, { seed, moves, moneyMinor: costMinor }).then((week) => this.#show(week));
      }
      this.#report();
    });
    const outcome = await this.#search.outcome;
    if (outcome.status === "failed") return { kind: "failed", reason: outcome.reason };
    if (outcome.status === "cancelled") return undefined;
    if (outcome.status === "none")
      return this.#isStopped ? { kind: "idle" } : { kind: "none", kitchen: { ...kitchen, startsOn: days.from } };
    const { plan, seed, moves, costMinor } = outcome;
    const week = await write(plan, { seed, moves, moneyMinor: costMinor });
    if (week === undefined) return { kind: "failed", reason: "plan refused by the judge" };
    this.#isPlanned = true;
    this.#week = week;
    this.#hear(planner, problem, costMinor);
    this.#report();
    return undefined;
  }

  /** The proof begins once there is a plan, so that it takes nothing from the search for the first one. */
  #hear(planner: Planner, problem: MenuProblem, costMinor: number): void {
    this.#bestMinor = costMinor;
    if (this.#proof !== undefined) this.#proof.hear(costMinor);
    else if (!this.#isStopped)
      this.#proof = planner.prove({ problem, seconds: PROOF_S, incumbentMinor: costMinor }, ({ boundMinor }) => {
        this.#boundMinor = boundMinor;
        this.#report();
      });
  }

  #show(week: WeekPlan | undefined): void {
    if (this.#isPlanned || week === undefined) return;
    this.#week = week;
    this.#report();
  }

  #report(): void {
    const gap =
      this.#bestMinor === undefined || this.#boundMinor === undefined
        ? {}
        : { gapMinor: Math.max(0, this.#bestMinor - this.#boundMinor) };
    if (!this.#isPlanned)
      this.#tell({ kind: "searching", share: this.#share, ...(this.#week && { week: this.#week }), ...gap });
    else if (this.#week !== undefined) this.#tell({ kind: "planned", week: this.#week, ...gap });
  }
}
