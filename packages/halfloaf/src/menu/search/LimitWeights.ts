import { LIMIT_KINDS, type Penalties } from "./Penalties.ts";

/** A limit found broken weighs so much more from then on, one found kept so much less; never below its first weight. */
const UP = 1.2;
const DOWN = 0.95;
const MOST = 30;

/**
 * Penalties that follow the search: each kind of limit weighs more the longer it stays broken, so that no two of them
 * hold the search between them, and eases again once it is kept.
 */
export class LimitWeights {
  penalties: Penalties;
  private readonly first: Penalties;
  private readonly factors = new Map(LIMIT_KINDS.map((kind) => [kind, 1]));

  constructor(first: Penalties) {
    this.first = first;
    this.penalties = first;
  }

  /** Weighs anew by what is broken now; false where nothing changes. */
  adapt(isBroken: (kind: keyof Penalties) => boolean): boolean {
    let changed = false;
    for (const kind of LIMIT_KINDS) {
      const before = this.factors.get(kind) as number;
      const factor = isBroken(kind) ? Math.min(MOST, before * UP) : Math.max(1, before * DOWN);
      this.factors.set(kind, factor);
      if (factor !== before) changed = true;
    }
    if (changed) {
      const entries = LIMIT_KINDS.map((kind) => [kind, this.first[kind] * (this.factors.get(kind) as number)]);
      this.penalties = Object.fromEntries(entries) as Penalties;
    }
    return changed;
  }
}
