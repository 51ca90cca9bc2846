import { LIMIT_KINDS, type Penalties } from "./Penalties.ts";

/** A limit found broken weighs so much more from then on, one found kept so much less, between the least and the most. */
const UP = 1.2;
const DOWN = 0.8;
const MOST = 30;
/**
 * Least weights, as shares of the first; all others never weigh less than at first. These limits can be broken by a few minutes,
 * one serving or a few kilograms carried, and the search comes to better plans where it may pass through such menus: from one
 * set of trips to another mostly over one that carries too much (decision 0004).
 */
const LEAST: Partial<Penalties> = {
  minute: 0.1,
  elapsed: 0.1,
  energy: 0.1,
  use: 0.1,
  main: 0.1,
  distinct: 0.1,
  carry: 0.03,
  trip: 0.3,
};

/**
 * Penalties that follow the search: each kind of limit weighs more the longer it stays broken, so that no two of them
 * hold the search between them, and eases once it is kept.
 */
export class LimitWeights {
  penalties: Penalties;
  private readonly first: Penalties;
  private readonly factors = new Map(LIMIT_KINDS.map((kind) => [kind, 1]));

  constructor(first: Penalties) {
    this.first = first;
    this.penalties = first;
  }

  /** Weighs anew by what is broken now; with `eases`, below the first weights where that may be. False where nothing changes. */
  adapt(isBroken: (kind: keyof Penalties) => boolean, eases: boolean): boolean {
    let changed = false;
    for (const kind of LIMIT_KINDS) {
      const before = this.factors.get(kind) as number;
      const least = eases ? (LEAST[kind] ?? 1) : 1;
      const factor = isBroken(kind) ? Math.min(MOST, before * UP) : Math.max(least, before * DOWN);
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
