export type { Choice, ChoiceJudge } from "./frontier/Choice.ts";
export { type FrontierOptions, type FrontierReport, frontier } from "./frontier/frontier.ts";
export type { Against } from "./frontier/steps.ts";
export { cheapestDiet, type DietAllowance, type DietFood } from "./linear/cheapestDiet.ts";
export type { LinearModel } from "./linear/LinearModel.ts";
export type { MenuPlan, PlannedBatch, Purchase, Use } from "./plan.ts";
export type {
  MenuBound,
  MenuCooking,
  MenuDish,
  MenuFood,
  MenuLimits,
  MenuLot,
  MenuMinutes,
  MenuPack,
  MenuProblem,
  MenuProfile,
  MenuSitting,
  MenuTrip,
  MenuWish,
  MenuWorth,
} from "./problem.ts";
export { familyOf, isLasting } from "./problem.ts";
export * from "./reasons/index.ts";
export { type EnergyWeight, stayAway, weighByDishes } from "./replan/changeAttendance.ts";
export { type ChangeOptions, type ChangeOutcome, changeProblem } from "./replan/changeProblem.ts";
export { cookedBefore, sittingsOf } from "./replan/cookedBefore.ts";
export type { UnfitChange, UnfitReason } from "./replan/findUnfitChanges.ts";
export type { Judge, JudgedFault, Verdict } from "./replan/Judge.ts";
export type { Absent, ChangedWeek, HeldPack, Loss, LotName, MenuChange } from "./replan/MenuChange.ts";
export { paidOf } from "./replan/paidOf.ts";
export { type KeepingPrice, priceKeeping } from "./replan/priceKeeping.ts";
export { type Remainder, toRemainder } from "./replan/Remainder.ts";
export { type ReplanOptions, type ReplanOutcome, replan, type UnplannedWeek } from "./replan/replan.ts";
export type { ChangeReason, SittingChange } from "./replan/SittingChange.ts";
export { atHighPrices } from "./search/atHighPrices.ts";
export { EFFORTS, type Effort } from "./search/efforts.ts";
export { LocalSearch } from "./search/LocalSearch.ts";
export { MenuSearch, type SearchOptions, type SearchReport } from "./search/MenuSearch.ts";
