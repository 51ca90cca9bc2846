import type { WorkProblem } from "../problem.ts";
import { ConstraintModel, type Interval } from "../solver/ConstraintModel.ts";
import { FALSE, type Literal, negate, TRUE } from "../solver/literal.ts";
import { closePaths, NO_PATH } from "../solver/project.ts";

/** What a model leaves out, to find which rules contradict each other. */
export type RuleId =
  | `wait ${number}`
  | `dish ${number}`
  | `latest ${number}`
  | `kit ${number}`
  | "oven"
  | "board"
  | "hands";

/** A start variable of each step, one for serving, and what all parts of the model share. */
export class WorkModel {
  readonly problem: WorkProblem;
  readonly constraints = new ConstraintModel();
  readonly horizon: number;
  /** Variable of the start of each step. */
  readonly start: readonly number[];
  readonly serve: number;
  /** Longest path of lags between steps (and serving, last), row by row, for pairs whose order is known. */
  private readonly path: Int32Array;
  private readonly size: number;
  private readonly order = new Map<number, Literal>();

  constructor(problem: WorkProblem, horizon: number, ignored: ReadonlySet<RuleId>) {
    this.problem = problem;
    this.horizon = horizon;
    this.start = problem.steps.map(({ minutes, earliestMinutes, latestMinutes }, i) => {
      const latest = latestMinutes === undefined || ignored.has(`latest ${i}`) ? horizon : latestMinutes;
      return this.constraints.addVariable(earliestMinutes ?? 0, Math.min(latest, horizon - minutes));
    });
    this.serve = this.constraints.addVariable(0, horizon);
    this.size = problem.steps.length + 1;
    this.path = new Int32Array(this.size * this.size).fill(NO_PATH);
    for (const [i, { minutes }] of problem.steps.entries()) {
      this.path[i * this.size + i] = 0;
      this.addLag(i, this.size - 1, minutes);
    }
  }

  minutesOf(step: number): number {
    return (this.problem.steps[step] as { minutes: number }).minutes;
  }

  startOf(step: number): number {
    return step === this.size - 1 ? this.serve : (this.start[step] as number);
  }

  /** start of `to` >= start of `from` + lag; the step after the last is serving. */
  addLag(from: number, to: number, lag: number): void {
    this.constraints.addEdge(this.startOf(from), this.startOf(to), lag);
    const at = from * this.size + to;
    this.path[at] = Math.max(this.path[at] as number, lag);
  }

  /** Serving, as a step in `addLag`. */
  get serving(): number {
    return this.size - 1;
  }

  /** Works out the longest paths once all lags are in. */
  closePaths(): void {
    closePaths(this.path, this.size);
  }

  /** Least minutes from the start of one step to the end of another. */
  leastSpan(from: number, to: number): number {
    return Math.max(0, this.path[from * this.size + to] as number) + this.minutesOf(to);
  }

  /** True where the lags alone say that step i ends before step j starts. */
  isKnownBefore(i: number, j: number): boolean {
    return (this.path[i * this.size + j] as number) >= this.minutesOf(i);
  }

  /** A literal that says step i ends before step j starts, and its negation that j ends before i starts. */
  isBefore(i: number, j: number): Literal {
    if (this.isKnownBefore(i, j)) return TRUE;
    if (this.isKnownBefore(j, i)) return FALSE;
    if (i > j) return negate(this.isBefore(j, i));
    const key = i * this.size + j;
    const known = this.order.get(key);
    if (known !== undefined) return known;
    const literal = this.constraints.addSwitch();
    this.order.set(key, literal);
    this.constraints.addEdge(this.startOf(i), this.startOf(j), this.minutesOf(i), literal);
    this.constraints.addEdge(this.startOf(j), this.startOf(i), this.minutesOf(j), negate(literal));
    return literal;
  }

  /** A variable that is 1 where the literal holds and 0 where it does not. */
  addCopy(literal: Literal): number {
    const copy = this.constraints.addSwitch();
    this.constraints.addClause([negate(literal), copy]);
    this.constraints.addClause([literal, negate(copy)]);
    return copy >>> 17;
  }

  /** The time of a step, as a share of a resource. */
  intervalOf(step: number, demand: number): Interval {
    const start = this.startOf(step);
    return { start, startOffset: 0, end: start, endOffset: this.minutesOf(step), demand, when: TRUE };
  }
}
