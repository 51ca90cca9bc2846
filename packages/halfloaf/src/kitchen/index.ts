export { accountLots, type LotThrough } from "./accountLots.ts";
export { type ChangedKitchenWeek, changeRestored, changeWeek } from "./changeWeek/changeWeek.ts";
export { kitchenChanges, type LaterPart } from "./changeWeek/kitchenChanges.ts";
export { type ReplannedWeek, replanWeek } from "./changeWeek/replanWeek.ts";
export { onDay, type RestoredWeek, restoreWeek } from "./changeWeek/restoreWeek.ts";
export type { KitchenNow, SittingName, WeekChange } from "./changeWeek/WeekChange.ts";
export { writeWeek } from "./changeWeek/writeWeek.ts";
export { checkKitchen, parseKitchen } from "./checkKitchen.ts";
export type {
  AheadStep,
  Cooking,
  CookingStep,
  CookingWish,
  DishToCook,
  SittingKitchen,
  StatedCooking,
} from "./cooking/Cooking.ts";
export { compareStated, type StatedTime } from "./cooking/compareStated.ts";
export { type EarlierStep, findTooLong, type TooLong } from "./cooking/findTooLong.ts";
export type { BoardWashed, Happening, KitWashed, StepHappened } from "./cooking/Happening.ts";
export { happenedAsPlanned } from "./cooking/happenedAsPlanned.ts";
export { type DayJob, jobsOfDay } from "./cooking/jobsOfDay.ts";
export { chooseUsed, listCookings, type SittingCooking } from "./cooking/listCookings.ts";
export { observeSteps } from "./cooking/observeSteps.ts";
export {
  learnPace,
  type ObservedStep,
  type Pace,
  type PaceOfKind,
  paceFactor,
  stepMinutes,
  toPace,
} from "./cooking/pace.ts";
export { retellCautions } from "./cooking/retellCautions.ts";
export { retellSheet } from "./cooking/retellSheet.ts";
export { type Retimed, retime } from "./cooking/retime.ts";
export { scaleSheet } from "./cooking/scaleSheet.ts";
export { type SettledWeek, settleTogether } from "./cooking/settleTogether.ts";
export { sittingKitchen } from "./cooking/sittingKitchen.ts";
export { type SittingMinutes, sittingMinutes } from "./cooking/sittingMinutes.ts";
export { type CookingOutcome, solveCooking, stopAfter, type TimedCooking } from "./cooking/solveCooking.ts";
export { stateTogether } from "./cooking/stateTogether.ts";
export { USUAL_MINUTES } from "./cooking/timeToBegin.ts";
export { toWorkProblem } from "./cooking/toWorkProblem.ts";
export { toWorkSheet } from "./cooking/toWorkSheet.ts";
export {
  type AheadLine,
  type BrokenHold,
  clockMinutes,
  type DishCaution,
  type OvenLine,
  type PlacedCaution,
  type SheetDish,
  type SheetLine,
  type StepLine,
  type TimelineBar,
  type TimelineRow,
  type WashLine,
  type WorkSheet,
} from "./cooking/WorkSheet.ts";
export { allergensCosted, type CostedDish, cautionsCosted, costDish, foodPrices } from "./costDish.ts";
export { type CountedWish, missOfWish } from "./countWishes.ts";
export { type DatedSitting, datedSittings, type SittingKind } from "./datedSittings.ts";
export { type EaterShare, eaterShares, STANDARD_DAY_KJ } from "./eaterShares.ts";
export { findKitchenFaults } from "./findKitchenFaults.ts";
export { type FittedDish, fitDish, takesFood, type Unfit } from "./fitDish.ts";
export { type FoodLife, foodLife, placesOf } from "./foodLife.ts";
export { type Hindrance, hindranceAt } from "./hindranceAt.ts";
export { Eater, Kit, Kitchen, Limits, WeeklySitting, Worth } from "./kitchen.ts";
export { leaveOutLate } from "./leaveOutLate.ts";
export { type ClockTime, leaveOutOver, listOver } from "./leaveOutOver.ts";
export { type PlateAgainst, platesAgainst } from "./platesAgainst.ts";
export { PutBy, PuttingBy } from "./putBy.ts";
export { readWeekPlan } from "./readWeekPlan.ts";
export { type PortionOfEater, sharePortions } from "./sharePortions.ts";
export { withStandRise } from "./standRise.ts";
export { stockBesides } from "./stockBesides.ts";
export { parseTables, type TableFiles, type Tables, withOwnFoodsAndDishes } from "./tables.ts";
export { PLANNED_COMPONENTS } from "./toMenuDish.ts";
export { type KitchenProblem, stateKept, toMenuProblem } from "./toMenuProblem.ts";
export { toWeekPlan } from "./toWeekPlan.ts";
export type { StatedWish } from "./toWishes.ts";
export { WeekPlan } from "./weekPlan.ts";
export { Meant, VarietyRule, Wish } from "./wish.ts";
