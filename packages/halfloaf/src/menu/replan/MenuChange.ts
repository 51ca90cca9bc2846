import type { MenuPlan } from "../plan.ts";
import type { MenuProblem } from "../problem.ts";

/** What names a lot of a plan: stock of the start, or the `copy`-th pack (from 0) of a purchase. */
export type LotName = { readonly stock: number } | { readonly purchase: number; readonly copy: number };

/** Some who do not come to the sittings of a `skip`; the others eat there as before. */
export interface Absent {
  /** Standard portions that they take of a dish, all together. */
  readonly portions: number;
  /** Their profile, of which so many eaters stay away; absent = nothing is reckoned for them. */
  readonly profile?: { readonly index: number; readonly eaters: number };
}

/** One thing that is no longer as the plan took it to be; indices point into the problem and the plan before any change. */
export type MenuChange =
  /** The dish is not wanted any more, at any sitting to come. */
  | { readonly kind: "refuse"; readonly dish: number }
  /** This dish and no other is wanted at the sitting. */
  | { readonly kind: "wish"; readonly sitting: number; readonly dish: number }
  /** A pack costs this from today on. */
  | { readonly kind: "price"; readonly pack: number; readonly priceMinor: number }
  /** A pack is not to be had from a day on; absent = from today on. */
  | { readonly kind: "gone"; readonly pack: number; readonly fromDay?: number }
  /** Nobody eats at the sittings, or some do not; what they would have got there they get elsewhere. */
  | { readonly kind: "skip"; readonly sittings: readonly number[]; readonly absent?: Absent }
  /** So many standard portions more are eaten at the sitting; those who eat them are none of the profiles. */
  | { readonly kind: "guest"; readonly sitting: number; readonly portions: number }
  /** What today's trip was to buy is bought already: it stays, whatever the plan becomes. */
  | { readonly kind: "bought"; readonly purchase: number }
  /** A lot at hand can no longer be eaten: all that is left of it, so many grams, or what is left of it after a day. */
  | ({ readonly kind: "off" } & Loss);

/** Grams of a lot that are gone, or will be, although the problem knows nothing of it. */
export interface Loss {
  readonly lot: LotName;
  /** Absent = all that is left. */
  readonly massG?: number;
  /** Last day on which it may be used, where that is earlier than the problem says; absent = it is gone at once. */
  readonly lastDay?: number;
}

/** A pack of which no more is bought until a day is over. */
export interface HeldPack {
  readonly pack: number;
  readonly untilDay: number;
}

/** A week after changes, with the old plan in its indices; the plan need not keep the limits any more. */
export interface ChangedWeek {
  readonly problem: MenuProblem;
  readonly plan: MenuPlan;
  /** Days before this one are over: what was cooked and bought on them stands. */
  readonly today: number;
  readonly losses: readonly Loss[];
  /** Positions in the plan of purchases on or after today that are made already; absent = none is. */
  readonly bought?: readonly number[];
  /** Packs of which no more is bought for some days; absent = none. */
  readonly held?: readonly HeldPack[];
  /** True where something is cheaper than before, so that a plan that still stands may be bettered. */
  readonly isCheaper: boolean;
  /** True where there is stock that the old plan knew nothing of, so that less may have to be bought; absent = there is none. */
  readonly hasMore?: boolean;
  /** Share of the week's portions (0 to 1) that nobody eats any more: what they would have cost may be saved. */
  readonly skippedShare: number;
  /** What guests eat besides, as a share of the week's portions before; absent = none come. */
  readonly guestShare?: number;
  /** The sitting before the changes of each sitting. */
  readonly sittingBefore: readonly number[];
  /** The pack before the changes of each pack. */
  readonly packBefore: readonly number[];
}
