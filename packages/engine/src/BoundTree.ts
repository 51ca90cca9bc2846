import type { WeeklyModel } from "halfloaf/menu/bound";
import type { Highs } from "highs";
import { guessWorths } from "./guessWorths.ts";
import { type Hold, ImpliedHolds } from "./ImpliedHolds.ts";
import { type LpReport, LpSession } from "./LpSession.ts";
import { type OpenPart, OpenParts } from "./OpenParts.ts";
import { Pseudocosts } from "./Pseudocosts.ts";
import { RowPool } from "./RowPool.ts";

/** A whole-number column with the fraction that a point gives it. */
interface Fractional {
  readonly column: number;
  readonly value: number;
}

const FRACTION = 1e-5;
const ROOT_ROUNDS = 40;
/** Rounds at the root go on while the last `ROOT_LOOK` closed such a share of what is open between bound and incumbent. */
const ROOT_LOOK = 3;
const ROOT_SHARE = 0.02;
/** What is taken to be open, as a share of the bound, while there is no incumbent. */
const GUESSED_GAP = 0.1;
/** Where a round at the root brings no more rows than this, cuts are looked for that take longer to find. */
const FEW_CUTS = 40;
/** Times that is done: the first of them bring most of what they can. */
const MOST_DEEP = 4;
/** Where a point breaks fewer known rows than this, new ones are looked for at once. */
const FEW_ROWS = 40;
/** Columns looked at closely before one is chosen, and the simplex iterations spent on each side. */
const LOOKED_AT = 4;
const LOOK_ITERATIONS = 60;
/**
 * A part is solved until its bound lies so much higher than the least of all parts, as a share of what is open between that one
 * and the incumbent. Many parts that get there are never taken up again.
 */
const ENOUGH_SHARE = 0.08;
const LEAST_STEP_MINOR = 1;
/** A solve that stops short of its optimum with less gain than this has failed; its part is left where it is. */
const LEAST_GAIN_MINOR = 1e-3;
/** Every so many parts the finder of cuts is asked; more rarely each time it finds none. */
const CUT_EVERY = 3;
const CUT_RARELY = 48;

/**
 * Branch and bound on a weekly model, for its bound alone: the part with the least bound is split first, so that the
 * bound over all parts never falls. A solve is left once its bound is high enough for now, and is gone on with where the part
 * becomes the least. Rows and cuts enter when a point breaks them. Column to split on by pseudocosts, tried out while they
 * are little known.
 *
 * **Source**: Achterberg, Koch and Martin, Branching rules revisited, Operations Research Letters 33 (2005).
 */
export class BoundTree {
  parts = 0;
  private readonly weekly: WeeklyModel;
  private readonly session: LpSession;
  private readonly pool: RowPool;
  private readonly costs: Pseudocosts;
  private readonly splittable: readonly number[];
  private readonly wide: Float64Array[];
  private readonly open = new OpenParts();
  private readonly implied: ImpliedHolds;
  private held: readonly Hold[] = [];
  private rootRounds = 0;
  private readonly rootBounds: number[] = [];
  private deepRounds = 0;
  /** The bound that the last solve at the root proved by itself. */
  private rootLast = Number.NEGATIVE_INFINITY;
  private nextCuts = 0;
  private cutEvery = CUT_EVERY;
  private rootReport: LpReport | undefined;
  /** Least bound of parts given up because the incumbent is better or because nothing is left to split. */
  private settled = Number.POSITIVE_INFINITY;

  constructor(highs: Highs, weekly: WeeklyModel) {
    this.weekly = weekly;
    this.session = new LpSession(highs, weekly.model);
    this.pool = new RowPool(this.session);
    this.pool.add(weekly.lazyRows);
    this.implied = new ImpliedHolds(weekly.model, weekly.lazyRows);
    this.splittable = weekly.model.columns.flatMap(({ integer }, column) => (integer ? [column] : []));
    this.wide = [this.session.lower.slice(), this.session.upper.slice()];
    this.costs = new Pseudocosts(guessWorths(weekly.model.columns));
  }

  /** The least bound of all parts; -Infinity before the first step. */
  get bound(): number {
    if (this.rootReport === undefined) return Number.NEGATIVE_INFINITY;
    if (this.rootRounds > 0) return this.rootReport.bound;
    return Math.min(this.open.bound, this.settled);
  }

  get isDone(): boolean {
    return this.rootReport !== undefined && this.rootRounds === 0 && this.open.count === 0;
  }

  /** One solve more: a round of cuts at the root, or one part split in two. */
  step(incumbent: number): void {
    if (this.rootReport === undefined || this.rootRounds > 0) this.stepRoot(incumbent);
    else this.takeUp(incumbent);
  }

  private stepRoot(incumbent: number): void {
    const before = this.rootReport;
    if (before === undefined) {
      this.solveRoot();
      this.session.keepWarm();
      this.rootRounds = ROOT_ROUNDS;
    } else if (
      before.status === "optimal" &&
      this.rootRounds > 1 &&
      this.isRising(incumbent) &&
      this.strengthenRoot(before)
    ) {
      this.solveRoot();
      this.rootRounds--;
    } else {
      if (before.status === "optimal") {
        this.pool.dropLoose();
        this.solveRoot();
      }
      this.rootRounds = 0;
      const root = this.rootReport as LpReport;
      this.keep(root, [], root.bound, incumbent);
      if (root.status === "optimal") this.tightenRoot(incumbent);
    }
  }

  /** Takes from all parts what no point cheaper than the incumbent has. */
  private tightenRoot(incumbent: number): void {
    if (!Number.isFinite(incumbent)) return;
    const [lower, upper] = this.wide as [Float64Array, Float64Array];
    const tighter = this.session.listTighter(this.splittable, this.rootLast, incumbent);
    for (const one of tighter) {
      lower[one.column] = one.lower;
      upper[one.column] = one.upper;
      this.session.setBounds(one.column, one.lower, one.upper);
    }
  }

  /** Whether the last rounds brought enough for one more. */
  private isRising(incumbent: number): boolean {
    const now = this.rootReport?.bound as number;
    this.rootBounds.push(now);
    const earlier = this.rootBounds.at(-1 - ROOT_LOOK);
    return earlier === undefined || now - earlier > ROOT_SHARE * openBetween(now, incumbent);
  }

  private solveRoot(): void {
    const report = this.session.solve();
    this.rootLast = report.bound;
    this.rootReport = { ...report, bound: Math.max(report.bound, this.rootReport?.bound ?? Number.NEGATIVE_INFINITY) };
  }

  /** Rows and, where asked, cuts that the point breaks; their number. */
  private strengthen(values: Float64Array, most: number, findCuts: boolean): number {
    const entered = this.pool.enter(values, most);
    if (entered >= FEW_ROWS || !findCuts) return entered;
    this.nextCuts = this.parts + this.cutEvery;
    const { columnAt } = this.session;
    const cuts = this.weekly.findCuts((column) => values[columnAt.get(column) as number] as number);
    this.pool.add(cuts.map(({ row }) => row));
    this.cutEvery = cuts.length > 0 ? CUT_EVERY : Math.min(CUT_RARELY, 2 * this.cutEvery);
    return cuts.length === 0 ? entered : entered + this.pool.enter(values, most);
  }

  /** Brings rows and cuts that the point of the root breaks, where few do also those that take longer to find. */
  private strengthenRoot({ values }: LpReport): boolean {
    const entered = this.strengthen(values, 400, true);
    if (entered > FEW_CUTS) return true;
    if (this.deepRounds++ >= MOST_DEEP) return entered > 0;
    const { columnAt } = this.session;
    const cuts = this.weekly.findDeepCuts((column) => values[columnAt.get(column) as number] as number);
    this.pool.add(cuts.map(({ row }) => row));
    return entered + this.pool.enter(values, 400) > 0;
  }

  private keep(report: LpReport, holds: readonly Hold[], atLeast: number, incumbent: number): void {
    const bound = Math.max(report.bound, atLeast);
    if (report.status === "impossible") return;
    const fractional = report.status === "optimal" ? this.listFractional(report.values) : undefined;
    const isStuck = fractional === undefined && bound - atLeast < LEAST_GAIN_MINOR;
    if (bound >= incumbent || fractional?.length === 0 || isStuck) this.settled = Math.min(this.settled, bound);
    else this.open.add({ bound, holds, basis: this.session.readBasis(), ...(fractional && { fractional }) });
  }

  private listFractional(values: Float64Array): Fractional[] {
    return this.splittable.flatMap((column) => {
      const value = values[column] as number;
      return Math.abs(value - Math.round(value)) > FRACTION ? [{ column, value }] : [];
    });
  }

  /** Goes on with the least part: where it was left, or with both sides of a column. */
  private takeUp(incumbent: number): void {
    const part = this.open.takeLeast();
    if (part === undefined) return;
    if (part.bound >= incumbent) {
      this.settled = Math.min(this.settled, part.bound);
      return;
    }
    const { bound, holds, fractional } = part;
    const enough = bound + Math.max(LEAST_STEP_MINOR, ENOUGH_SHARE * openBetween(bound, incumbent));
    if (fractional === undefined) {
      this.apply(holds);
      this.solvePart(part, holds, enough, incumbent);
    } else this.split(part, this.choose(part, fractional, incumbent), enough, incumbent);
  }

  private split(part: OpenPart, { column, value }: Fractional, enough: number, incumbent: number): void {
    for (const up of [true, false]) {
      const holds = this.takeSide(part, column, value, up);
      this.parts++;
      const reached = holds ? this.solvePart(part, holds, enough, incumbent) : Number.POSITIVE_INFINITY;
      this.learn(part, column, value, up, Math.min(reached, incumbent));
    }
  }

  /** Solves within the present bounds from the basis of a part, and tells the bound of the first solve. */
  private solvePart(from: OpenPart, holds: readonly Hold[], enough: number, incumbent: number): number {
    this.session.useBasis(from.basis);
    let report = this.session.solve({ enough });
    const first = report.bound;
    if (
      report.status === "optimal" &&
      first < Math.min(incumbent, enough) &&
      this.strengthen(report.values, 50, this.parts >= this.nextCuts) > 0
    ) {
      report = this.session.solve({ enough });
      report = { ...report, bound: Math.max(first, report.bound) };
    }
    this.keep(report, holds, from.bound, incumbent);
    return first;
  }

  private learn(part: OpenPart, column: number, value: number, up: boolean, reached: number): void {
    this.costs.learn(column, up, reached - part.bound, up ? Math.ceil(value) - value : value - Math.floor(value));
  }

  /** Holds of one side of a split, put in place; undefined where no point keeps them. */
  private takeSide(part: OpenPart, column: number, value: number, up: boolean): readonly Hold[] | undefined {
    this.apply(part.holds);
    const { lower, upper } = this.session;
    const [least, most] = [lower[column] as number, upper[column] as number];
    const side = up
      ? { column, lower: Math.ceil(value), upper: most }
      : { column, lower: least, upper: Math.floor(value) };
    const more = this.implied.follow(side, lower, upper);
    if (more === undefined) return undefined;
    const holds = [...part.holds, ...more];
    this.apply(holds);
    return holds;
  }

  /** Puts the bounds of the columns as a part holds them. */
  private apply(holds: readonly Hold[]): void {
    const [lower, upper] = this.wide as [Float64Array, Float64Array];
    for (const { column } of this.held)
      this.session.setBounds(column, lower[column] as number, upper[column] as number);
    for (const hold of holds) this.session.setBounds(hold.column, hold.lower, hold.upper);
    this.held = holds;
  }

  /** The column to split on; the most promising ones are tried out first where little is known of them. */
  private choose(part: OpenPart, fractional: readonly Fractional[], incumbent: number): Fractional {
    const ranked = [...fractional].sort(
      (a, b) => this.costs.score(b.column, b.value) - this.costs.score(a.column, a.value),
    );
    const looked = ranked.slice(0, LOOKED_AT);
    for (const { column, value } of looked)
      if (this.costs.known(column) < 1) this.tryOut(part, column, value, incumbent);
    return looked.reduce((best, one) =>
      this.costs.score(one.column, one.value) > this.costs.score(best.column, best.value) ? one : best,
    );
  }

  private tryOut(part: OpenPart, column: number, value: number, incumbent: number): void {
    for (const up of [true, false]) {
      const holds = this.takeSide(part, column, value, up);
      if (holds) this.session.useBasis(part.basis);
      const reached = holds ? this.session.solve({ mostIterations: LOOK_ITERATIONS }).bound : Number.POSITIVE_INFINITY;
      this.learn(part, column, value, up, Math.min(reached, incumbent));
    }
  }

  dispose(): void {
    this.open.clear();
    this.session.dispose();
  }
}

/** What is open between a bound and the incumbent; guessed while there is none. */
function openBetween(bound: number, incumbent: number): number {
  return Number.isFinite(incumbent) ? incumbent - bound : GUESSED_GAP * Math.abs(bound);
}
