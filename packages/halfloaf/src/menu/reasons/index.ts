export {
  type ExplainWish,
  explainImpossible,
  type Relaxation,
  type WhyImpossible,
} from "./explainImpossible.ts";
export { explainRest } from "./explainRest.ts";
export { findGaps, type Gap } from "./findGaps.ts";
export { type LimitCost, type LimitCosts, limitCosts } from "./limitCosts.ts";
export { type LimitReading, type MenuLimit, readLimits } from "./readLimits.ts";
export type { LimitKind } from "./relaxLimit.ts";
export { restLimitCosts } from "./restLimitCosts.ts";
export type { FoundPlan } from "./searchAgain.ts";
export { listLots, type ReasonWish, type SharedLot, type WhyDish, type WithoutDish, whyDish } from "./whyDish.ts";
export { type WhyNot, whyNot } from "./whyNot.ts";
export { type PackHindrance, type PackOption, type WhyPack, whyPack } from "./whyPack.ts";
