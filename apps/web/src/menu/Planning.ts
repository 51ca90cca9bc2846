import type { Kitchen, WeekPlan } from "halfloaf/kitchen";

/** How far planning has come; money in minor units. */
export type Planning =
  | { readonly kind: "idle" }
  | { readonly kind: "stating" }
  | {
      readonly kind: "searching";
      /** From 0 to 1. */
      readonly share: number;
      readonly week?: WeekPlan;
      /** No plan is cheaper than the week by more than this. */
      readonly gapMinor?: number;
    }
  | { readonly kind: "planned"; readonly week: WeekPlan; readonly gapMinor?: number }
  /** No plan keeps every limit of this kitchen, whose first day is that of the plan. */
  | { readonly kind: "none"; readonly kitchen: Kitchen }
  | { readonly kind: "failed"; readonly reason: string };
