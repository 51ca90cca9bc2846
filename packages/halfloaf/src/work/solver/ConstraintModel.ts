import { atLeast, FALSE, type Literal, MOST_VALUE, MOST_VARIABLES, TRUE } from "./literal.ts";

/** to >= from + lag, where `when` holds. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly lag: number;
  readonly when: Literal;
}

/** Takes `demand` from `start + startOffset` until `end + endOffset` where `when` holds; start and end are variables. */
export interface Interval {
  readonly start: number;
  readonly startOffset: number;
  readonly end: number;
  readonly endOffset: number;
  readonly demand: number;
  readonly when: Literal;
}

/** At no time do the intervals that run demand more than the capacity. */
export interface Cumulative {
  readonly capacity: number;
  readonly intervals: readonly Interval[];
}

/** Takes `demand` for at least `minutes` from its start on, where `when` holds. */
export interface Work {
  readonly start: number;
  readonly minutes: number;
  readonly demand: number;
  readonly when: Literal;
}

/** A resource whose windows of time are looked at as wholes; implied by a cumulative, and pays where time is short. */
export interface EnergyLimit {
  readonly capacity: number;
  readonly work: readonly Work[];
}

/** sum of weight x variable <= bound. */
export interface LinearLimit {
  readonly terms: readonly { readonly variable: number; readonly weight: number }[];
  readonly bound: number;
}

/** A scheduling problem in whole numbers, as data for the solver; it knows no search. */
export class ConstraintModel {
  /** Least and greatest value of each variable; variable 0 is the constant 0. */
  readonly lows: number[] = [0];
  readonly highs: number[] = [0];
  readonly edges: Edge[] = [];
  readonly clauses: (readonly Literal[])[] = [];
  readonly cumulatives: Cumulative[] = [];
  readonly energyLimits: EnergyLimit[] = [];
  readonly limits: LinearLimit[] = [];

  /** A new variable within [low, high]; an empty range makes the model infeasible, values beyond 16000 are a defect. */
  addVariable(low: number, high: number): number {
    if (Math.abs(low) > MOST_VALUE || Math.abs(high) > MOST_VALUE) throw new RangeError(`Bounds ${low}..${high}`);
    if (this.lows.length >= MOST_VARIABLES) throw new RangeError(`More than ${MOST_VARIABLES} variables`);
    this.lows.push(low);
    this.highs.push(high);
    return this.lows.length - 1;
  }

  /** A literal of a new variable 0..1. */
  addSwitch(): Literal {
    return atLeast(this.addVariable(0, 1), 1);
  }

  addEdge(from: number, to: number, lag: number, when: Literal = TRUE): void {
    if (Math.abs(lag) > MOST_VALUE) throw new RangeError(`Lag ${lag}`);
    if (when !== FALSE) this.edges.push({ from, to, lag, when });
  }

  /** At least one of the literals holds. */
  addClause(literals: readonly Literal[]): void {
    this.clauses.push(literals);
  }

  addCumulative(capacity: number, intervals: readonly Interval[]): void {
    this.cumulatives.push({ capacity, intervals });
  }

  addEnergyLimit(capacity: number, work: readonly Work[]): void {
    this.energyLimits.push({ capacity, work });
  }

  addLimit(terms: LinearLimit["terms"], bound: number): void {
    this.limits.push({ terms, bound });
  }
}
