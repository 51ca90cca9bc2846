import { type BuiltModel, boundlessExcess, buildWorkModel, type WorkQuestion } from "./model/buildWorkModel.ts";
import { findConflict, type WorkConflict } from "./model/findConflict.ts";
import { handsBound, horizonOf } from "./model/horizonOf.ts";
import { shiftToStart } from "./model/shiftToStart.ts";
import type { HoldExcess, WorkMeasures, WorkPlan } from "./plan.ts";
import type { WorkProblem } from "./problem.ts";
import { atLeast, MOST_VALUE } from "./solver/literal.ts";
import { minimiseFromBelow } from "./solver/minimiseFromBelow.ts";
import { type SearchEnd, Solver } from "./solver/Solver.ts";

export interface WorkOptions {
  /** Asked every few dozen conflicts; true ends the search, and what was found by then is given. */
  readonly shouldStop: () => boolean;
  /** Told of every better order of work as it is found. */
  readonly onPlan?: (plan: WorkPlan) => void;
  /**
   * The last stage that is asked about; absent = all of them. The next is then given as the open one, with 0 as its
   * bound. Where the holds can be kept, "excess" and "serve" are proven together.
   */
  readonly until?: WorkStage;
  /** Told of every stage once its value is proven. */
  readonly onStage?: (stage: WorkStage) => void;
}

/** The questions, answered one after another; each keeps what those before it have won. */
export type WorkStage = "excess" | "serve" | "keeping" | "turns";

/**
 * How it ended: an order of work that is best in every respect; one that is best up to a stage, with its value there
 * and what no order of work goes below; the rules that contradict each other; or nothing before it was stopped.
 *
 * `excesses` names every hold that could not be kept, by dish. `turns` is 0 with two cooks, where it is not counted.
 */
export type WorkOutcome =
  | {
      readonly kind: "optimal";
      readonly plan: WorkPlan;
      readonly excesses: readonly HoldExcess[];
      readonly measures: WorkMeasures;
    }
  | {
      readonly kind: "feasible";
      readonly plan: WorkPlan;
      readonly excesses: readonly HoldExcess[];
      readonly open: { readonly stage: WorkStage; readonly value: number; readonly bound: number };
    }
  | { readonly kind: "impossible"; readonly conflict: WorkConflict }
  | { readonly kind: "stopped" };

/**
 * The best order of work, stage by stage; deterministic up to the moment it is stopped.
 *
 * The problem is taken as it is: indices in range, whole minutes, and weights that keep the cost of keeping below
 * 16,000, as the least minutes beyond holds are; anything else is a defect of the caller and throws.
 */
export function solveWork(problem: WorkProblem, options: WorkOptions): WorkOutcome {
  return new WorkSearch(problem, options).run();
}

const STAGES: readonly WorkStage[] = ["excess", "serve", "keeping", "turns"];

/** Values by variable, and the model they belong to. */
interface Found {
  readonly values: Int32Array;
  readonly built: BuiltModel;
}

/** The first horizon tried, as a multiple of what cannot be beaten. */
const FIRST_STRETCH = 1.25;
const FIRST_ROOM_MINUTES = 5;
const MOST_KEEPING = 16_000;
/** Conflicts of one question about the serving of relaxed holds before it is left open for a larger value. */
const SERVE_PATIENCE = 1600;

class WorkSearch {
  private readonly problem: WorkProblem;
  private readonly options: WorkOptions;
  private readonly horizon: number;
  /** With no latest starts every order of work may be shifted, so serving can be fixed while holds are looked at. */
  private readonly canShift: boolean;
  private found: Found | undefined;
  private hint: Int32Array | undefined;
  /** What the stages so far have won, and what the present one cannot go below. */
  private excess = 0;
  private keeping = 0;
  private turns = 0;
  private bound = 0;

  constructor(problem: WorkProblem, options: WorkOptions) {
    this.problem = problem;
    this.options = options;
    this.horizon = horizonOf(problem);
    this.canShift = problem.steps.every(({ latestMinutes }) => latestMinutes === undefined);
  }

  run(): WorkOutcome {
    const strict = this.serveWithinHolds();
    if (strict === "stopped") return this.report("serve");
    if (strict === "infeasible") {
      const relaxed = this.leastExcess();
      if (relaxed === "stopped") return this.report("excess");
      if (relaxed === "infeasible") return this.explainConflict();
      this.options.onStage?.("excess");
      const least = handsBound(this.problem);
      if (this.endsBefore("serve") || this.earliestServe(least, this.serveNow()) === "stopped")
        return this.report("serve");
    }
    this.options.onStage?.("serve");
    if (this.endsBefore("keeping") || this.leastKeeping() === "stopped") return this.report("keeping");
    this.options.onStage?.("keeping");
    if (this.endsBefore("turns") || this.leastTurns() === "stopped") return this.report("turns");
    this.options.onStage?.("turns");
    const { plan, excesses } = this.current();
    const { excess: excessMinutes, keeping, turns } = this;
    return {
      kind: "optimal",
      plan,
      excesses,
      measures: { excessMinutes, serveMinutes: plan.serveMinutes, keeping, turns },
    };
  }

  /** True where nobody asks about a stage; then nothing is known of its bound. */
  private endsBefore(stage: WorkStage): boolean {
    const { until } = this.options;
    const isAsked = until === undefined || STAGES.indexOf(stage) <= STAGES.indexOf(until);
    if (!isAsked) this.bound = 0;
    return !isAsked;
  }

  /** Earliest serve with every hold kept: first within a short horizon, then within one known to be long enough. */
  private serveWithinHolds(): SearchEnd {
    const from = handsBound(this.problem);
    const whole = this.build({ horizon: this.horizon, serveFrom: from, serveUntil: this.horizon, mostExcess: 0 });
    const solver = this.solverOf(whole, false);
    if (!solver.isConsistent) return "infeasible";
    const low = solver.trail.low(whole.model.serve);
    const short = Math.min(this.horizon, Math.ceil(low * FIRST_STRETCH) + FIRST_ROOM_MINUTES);
    const end = this.earliestServe(low, short);
    if (end !== "infeasible" || short === this.horizon) return end;
    const any = this.anyWithin(0);
    return any === "solved" ? this.earliestServe(short + 1, this.serveNow()) : any;
  }

  /** Least total excess: any order of work bounds it from above, the search from below. */
  private leastExcess(): SearchEnd {
    const any = this.anyWithin(boundlessExcess(this.problem, this.horizon));
    if (any !== "solved") return any;
    const built = this.buildRelaxed(Math.min(this.excessNow(), MOST_VALUE));
    this.bound = 1;
    const end = this.minimiseFromBelow(built, built.excess as number, this.excessNow(), Number.POSITIVE_INFINITY);
    if (end !== "solved") return end;
    this.excess = this.excessNow();
    if (this.excess > MOST_VALUE) throw new RangeError(`Minutes beyond holds above ${MOST_VALUE}: out of range`);
    this.hint = this.found?.values;
    return end;
  }

  /** Any order of work with so much excess. */
  private anyWithin(mostExcess: number): SearchEnd {
    const built = this.buildRelaxed(mostExcess);
    const solver = this.solverOf(built, this.canShift);
    const end = solver.search();
    if (end === "solved") {
      this.note(this.canShift ? shiftToStart(solver.solution, built) : solver.solution, built);
      this.hint = solver.solution;
    }
    return end;
  }

  /** Held at the horizon where it can be, as shifting an order of work is no real choice. */
  private buildRelaxed(mostExcess: number): BuiltModel {
    const { horizon, canShift } = this;
    return this.build({ horizon, serveFrom: canShift ? horizon : 0, serveUntil: horizon, mostExcess });
  }

  private earliestServe(from: number, until: number): SearchEnd {
    const question = { horizon: until, serveFrom: Math.min(from, until), serveUntil: until, mostExcess: this.excess };
    const built = this.build(question);
    if (this.excess === 0) return this.minimise(built, built.model.serve);
    this.bound = from;
    return this.minimiseFromBelow(built, built.model.serve, until, SERVE_PATIENCE);
  }

  private leastKeeping(): SearchEnd {
    const { values, built: known } = this.found as Found;
    this.keeping = known.keepingOf(values);
    if (this.keeping === 0) return this.proveNone();
    const built = this.build({ ...this.servedAsNow(), mostKeeping: MOST_KEEPING });
    const end = this.minimise(built, built.keeping as number);
    if (end === "infeasible") throw new RangeError(`Keeping above ${MOST_KEEPING}: the weights are too great`);
    this.keeping = this.bound;
    return end;
  }

  private leastTurns(): SearchEnd {
    const { values, built: known } = this.found as Found;
    if (known.turnsOf(values) === 0) return this.proveNone();
    const built = this.build({ ...this.servedAsNow(), mostKeeping: this.keeping, countTurns: true });
    if (built.turns === undefined) return "solved";
    const end = this.minimise(built, built.turns);
    if (end === "infeasible") throw new Error("The order of work found before does not fit its own measures");
    this.turns = this.bound;
    return end;
  }

  /** None of it in the order of work that there is: no other has less. */
  private proveNone(): SearchEnd {
    this.bound = 0;
    return "solved";
  }

  private servedAsNow() {
    const serve = this.serveNow();
    return { horizon: serve, serveFrom: serve, serveUntil: serve, mostExcess: this.excess };
  }

  private minimise(built: BuiltModel, objective: number): SearchEnd {
    const solver = this.solverOf(built, false);
    const end = solver.minimise(objective, (values) => {
      this.note(values, built);
      this.hint = values;
      this.bound = values[objective] as number;
    });
    if (end === "stopped") this.bound = solver.trail.low(objective);
    return end;
  }

  /** As `minimise`, where an order of work is known whose value is `known`. */
  private minimiseFromBelow(built: BuiltModel, objective: number, known: number, patience: number): SearchEnd {
    const isExcess = objective === built.excess;
    const solver = this.solverOf(built, isExcess && this.canShift);
    solver.require(atLeast(objective, this.bound));
    const onSolution = (values: Int32Array) => {
      this.note(isExcess && this.canShift ? shiftToStart(values, built) : values, built);
      this.hint = values;
    };
    const end = minimiseFromBelow(solver, objective, { known, patience, onSolution });
    if (end === "stopped") this.bound = solver.trail.low(objective);
    return end;
  }

  private build(question: WorkQuestion): BuiltModel {
    return buildWorkModel(this.problem, question);
  }

  private solverOf(built: BuiltModel, isBackward: boolean): Solver {
    const { constraints, start, serve } = built.model;
    const { hint } = this;
    return new Solver(constraints, {
      schedule: [...start, serve],
      afterwards: built.afterwards,
      isBackward,
      shouldStop: this.options.shouldStop,
      ...(hint ? { hint: fitted(hint, constraints.lows.length) } : {}),
    });
  }

  private note(values: Int32Array, built: BuiltModel): void {
    this.found = { values, built };
    this.options.onPlan?.(built.toPlan(values));
  }

  private serveNow(): number {
    const { values, built } = this.found as Found;
    return values[built.model.serve] as number;
  }

  private excessNow(): number {
    return this.current().excesses.reduce((sum, { minutes }) => sum + minutes, 0);
  }

  private current() {
    const { values, built } = this.found as Found;
    return { plan: built.toPlan(values), excesses: built.excessesOf(values) };
  }

  private report(stage: WorkStage): WorkOutcome {
    if (!this.found) return { kind: "stopped" };
    const { values, built } = this.found;
    const value = {
      excess: () => this.excessNow(),
      serve: () => this.serveNow(),
      keeping: () => built.keepingOf(values),
      turns: () => built.turnsOf(values),
    }[stage]();
    return { kind: "feasible", ...this.current(), open: { stage, value, bound: Math.min(value, this.bound) } };
  }

  private explainConflict(): WorkOutcome {
    return { kind: "impossible", conflict: findConflict(this.problem, this.horizon, this.options.shouldStop) };
  }
}

/** Values of another model: what the two share comes first in both, the rest counts as 0. */
function fitted(values: Int32Array, length: number): Int32Array {
  const hint = new Int32Array(length);
  hint.set(values.subarray(0, length));
  return hint;
}
