import { Agenda } from "./Agenda.ts";
import type { LinearLimit } from "./ConstraintModel.ts";
import type { LiteralBuffer } from "./LiteralBuffer.ts";
import { FLIP, type Literal, VALUE, ZERO } from "./literal.ts";
import { type Trail, WHY } from "./Trail.ts";

/**
 * Linear inequalities, written over bounds so that all weights are positive:
 *
 *     sum over k of w_k y_k <= c,   y_k = x or -x,   w_k > 0
 *
 * With s = c - sum of w_k low(y_k), s < 0 is a conflict and else y_k <= low(y_k) + floor(s / w_k). What follows from
 * bounds that are stronger than needed is explained by weaker ones: the surplus is first spent on leaving terms out
 * (their root bound does), then on weakening those that are left.
 */
export class LinearLimits {
  readonly agenda: Agenda;
  private readonly trail: Trail;
  private readonly first: Int32Array;
  private readonly bound: Int32Array;
  private readonly weight: Int32Array;
  private readonly most: Int32Array;
  private readonly count: number;
  private readonly gap: Int32Array;

  constructor(trail: Trail, limits: readonly LinearLimit[]) {
    this.trail = trail;
    this.count = limits.length;
    const terms = limits.map((limit) => limit.terms.filter(({ weight }) => weight !== 0));
    const flat = terms.flat();
    this.first = new Int32Array(limits.length + 1);
    for (const [k, own] of terms.entries()) this.first[k + 1] = (this.first[k] as number) + own.length;
    this.bound = Int32Array.from(flat, ({ variable, weight }) => 2 * variable + (weight > 0 ? 0 : 1));
    this.weight = Int32Array.from(flat, ({ weight }) => Math.abs(weight));
    this.most = Int32Array.from(limits, ({ bound }) => bound);
    this.gap = new Int32Array(flat.length);
    const watches = terms.flatMap((own, k) =>
      own.flatMap(({ variable, weight }) => [2 * variable + (weight > 0 ? 0 : 1), k]),
    );
    this.agenda = new Agenda(trail.bounds.length, limits.length, watches);
  }

  /** Propagates what was touched; stops early once a bound moved. False = conflict. */
  propagate(): boolean {
    const { size } = this.trail;
    const { isDue } = this.agenda;
    for (let k = 0; k < this.count && this.trail.size === size; k++) {
      if (isDue[k] === 0) continue;
      isDue[k] = 0;
      if (!this.tighten(k)) return false;
    }
    return true;
  }

  private tighten(k: number): boolean {
    const { trail, first, bound, weight } = this;
    const { bounds } = trail;
    const from = first[k] as number;
    const end = first[k + 1] as number;
    let slack = this.most[k] as number;
    for (let i = from; i < end; i++) {
      slack -= (weight[i] as number) * (((bounds[bound[i] as number] as number) & VALUE) - ZERO);
    }
    if (slack < 0) return trail.fail(0, WHY.limit | (k << 3), -1);
    for (let i = from; i < end; i++) {
      const b = bound[i] as number;
      const now = bounds[b] as number;
      const step = Math.floor(slack / (weight[i] as number));
      const beyond = ((bounds[b ^ 1] as number) ^ FLIP) - now;
      if (step + 1 >= beyond) continue;
      // not [y >= low + step + 1]
      if (!trail.raise((now + step + 1) ^ FLIP, WHY.limit | (k << 3), i)) return false;
    }
    return true;
  }

  /** The bounds, as they were at `at`, that made limit `k` imply the literal on term `term` (-1 = the conflict itself). */
  explain(k: number, term: number, implied: Literal, at: number, out: LiteralBuffer): void {
    const { trail, first, bound, weight, gap } = this;
    const from = first[k] as number;
    const end = first[k + 1] as number;
    let surplus = -(this.most[k] as number) - 1;
    for (let i = from; i < end; i++) {
      const held = i === term ? implied ^ FLIP : trail.boundAt(bound[i] as number, at);
      surplus += (weight[i] as number) * ((held & VALUE) - ZERO);
      gap[i] = i === term ? 0 : held;
    }
    for (let i = from; i < end; i++) {
      if (i === term) continue;
      const root = trail.root[bound[i] as number] as number;
      const cost = (weight[i] as number) * ((gap[i] as number) - root);
      if (cost > surplus) continue;
      surplus -= cost;
      gap[i] = root;
    }
    for (let i = from; i < end; i++) {
      if (i === term || gap[i] === trail.root[bound[i] as number]) continue;
      const step = Math.floor(surplus / (weight[i] as number));
      surplus -= step * (weight[i] as number);
      out.push((gap[i] as number) - step);
    }
  }
}
