import type { LotState, Outflow } from "./lotState.ts";

/** The stores in money, in whole minor units at lot cost: opening + bought = used + wasted + left. */
export interface StoresAccount {
  readonly openingMinor: number;
  readonly boughtMinor: number;
  readonly usedMinor: number;
  /** Thrown away, and found missing when counting. */
  readonly wastedMinor: number;
  readonly leftMinor: number;
}

/** Adds up the lots. What was split off a lot counts where it ended, not as bought again. */
export function accountOf(lots: Iterable<LotState>): StoresAccount {
  const all = [...lots];
  const brought = (origin: LotState["origin"]) =>
    sum(all.filter((lot) => lot.origin === origin).map(({ broughtMinor }) => broughtMinor));
  const went = (...kinds: Outflow["kind"][]) =>
    sum(all.flatMap(({ outflows }) => outflows.filter(({ kind }) => kinds.includes(kind))).map((out) => out.costMinor));
  return {
    openingMinor: brought("opening"),
    boughtMinor: brought("bought"),
    usedMinor: went("used"),
    wastedMinor: went("wasted", "missing"),
    leftMinor: sum(all.map(({ leftMinor }) => leftMinor)),
  };
}

/** What each use cost in whole minor units, by the name of what it was for; uses for nothing named are left out. */
export function costsByUse(lots: Iterable<LotState>): Map<string, number> {
  const costs = new Map<string, number>();
  for (const { kind, for: use, costMinor } of [...lots].flatMap(({ outflows }) => outflows)) {
    if (kind === "used" && use !== undefined) costs.set(use, (costs.get(use) ?? 0) + costMinor);
  }
  return costs;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
