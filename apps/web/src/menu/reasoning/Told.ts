import type { Hindrance, Kitchen, SittingKind, WeekChange, WeekPlan } from "halfloaf/kitchen";
import type { LimitKind, PackHindrance } from "halfloaf/menu";
import type { CivilDate } from "halfloaf/quantity";

/** A week that is asked about. */
export interface WeekAsked {
  readonly week: WeekPlan;
  /** The kitchens that it may be of; the first that it fits is reasoned in. */
  readonly kitchens: readonly Kitchen[];
  /** What came out otherwise since it was accepted. */
  readonly known: readonly WeekChange[];
}

/** Another week that may be taken instead, and what it costs more in minor units; below 0 where it is cheaper. */
export interface Instead {
  readonly extraMinor: number;
  readonly week: WeekPlan;
  /** Positions of the sittings whose dish is another. */
  readonly changed: readonly number[];
}

/** Why a dish stands at a sitting. */
export interface DishReason {
  readonly sitting: number;
  readonly shares: readonly {
    readonly food: string;
    readonly massG: number;
    readonly isLasting: boolean;
    /** Dishes that are fed from the same lot. */
    readonly withDishes: readonly string[];
    readonly finishes: boolean;
    readonly savedFromWasteG: number;
  }[];
  /** Absent where no plan was found without it. */
  readonly withoutHere?: Instead;
  readonly withoutAnywhere?: Instead;
}

/** A food bought in some packs: what the tills ask for it, and what is left over. */
export interface PackWay {
  readonly packs: readonly { readonly pack: string; readonly count: number }[];
  readonly tillMinor: number;
  readonly leftG: number;
  readonly wasteG: number;
  readonly extraShops: readonly string[];
}

/** Why a food is bought in the packs that it is bought in. */
export interface PackReason {
  readonly food: string;
  readonly chosen: PackWay;
  readonly others: readonly (PackWay & Instead)[];
  readonly impossible: readonly { readonly pack: string; readonly hindrance: PackHindrance }[];
}

/** What loosening one limit by a natural step would save at least, in minor units; with the place it binds at. */
export interface LimitPrice {
  readonly kind: LimitKind;
  /** In the limit's own unit: minor units, minutes, a share of energy, g, litres, or a number of things. */
  readonly step: number;
  readonly savesMinor: number;
  readonly date?: CivilDate;
  readonly sitting?: SittingKind;
  readonly shop?: string;
}

/** What becomes of the week where a dish is eaten at a sitting that had another. */
export type MoveTold =
  | ({ readonly kind: "fits" } & Instead)
  /** It can't be eaten there, whatever else is planned; what hinders it, where that is known. */
  | { readonly kind: "unfit"; readonly hindrance?: Hindrance }
  /** No plan was found that keeps every limit. */
  | { readonly kind: "breaks" };

/** Why a dish is not on the menu. */
export type AbsenceTold =
  | { readonly kind: "served"; readonly at: readonly Seat[] }
  /** No sitting of these days is one that it is meant for. */
  | { readonly kind: "nowhere" }
  | { readonly kind: "absent"; readonly tries: readonly TryTold[] };

/** A sitting by its day and kind. */
export interface Seat {
  readonly date: CivilDate;
  readonly kind: SittingKind;
}

/** What a dish would come to at a sitting that it is meant for. */
export type TryTold = { readonly seat: Seat } & (
  | { readonly kind: "hindered"; readonly hindrance?: Hindrance }
  | ({ readonly kind: "fits" } & Instead)
  /** No plan was found with it there; kinds of limit of which each stands in the way, where that was found out. */
  | { readonly kind: "breaks"; readonly limits: readonly LimitKind[] }
);

/** A figure of the kitchen that a limit hangs on, as it is and as it would be enough, in the kitchen's own unit. */
export interface Knob {
  readonly limit: LimitKind;
  readonly now: number;
  readonly enough: number;
  /** The weekday of hands-on minutes or of a sitting, Monday = 1. */
  readonly weekday?: number;
  /** Position among the kitchen's weekly sittings. */
  readonly sitting?: number;
  readonly shop?: string;
}

/** Limits that would be enough to loosen together; those that hang on no single figure are named alone. */
export interface WayOut {
  readonly knobs: readonly Knob[];
  readonly otherwise: readonly LimitKind[];
  /** A week that shows that it is enough; absent where none was looked for. */
  readonly week?: WeekPlan;
}

/** Why no plan was found, and what would be enough. */
export type ImpossibleTold =
  | {
      readonly kind: "gaps";
      readonly gaps: readonly {
        readonly date: CivilDate;
        readonly sitting: WeekPlan["sittings"][number]["kind"];
        readonly moreMinutes?: number;
        /** True where what is bought comes home only after it. */
        readonly isBeforeTrips?: true;
      }[];
      /** A shop whose trip, home before this sitting of its days, would be early enough for all of them; absent where none is. */
      readonly earlier?: { readonly shop: string; readonly sitting: WeekPlan["sittings"][number]["kind"] };
      /** Minutes with which there would be a dish for each; absent where minutes are not all that is lacking. */
      readonly way?: WayOut;
    }
  | { readonly kind: "possible"; readonly week: WeekPlan }
  | {
      readonly kind: "collision";
      readonly collisions: readonly (readonly LimitKind[])[];
      readonly onlyWholePacks: boolean;
      readonly ways: readonly WayOut[];
    };

/** What money is weighed against. */
export const AGAINST = ["minutes", "variety", "intake"] as const;
export type Against = (typeof AGAINST)[number];

/** A week among those that no other beats in both; money in minor units. */
export interface ChoiceTold {
  readonly moneyMinor: number;
  readonly minutes: number;
  readonly distinct: number;
  readonly shortfallMinor: number;
  readonly week: WeekPlan;
}
