export { type AllergensByLaw, allergensOf, type DishAllergens } from "./allergensOf.ts";
export {
  asWritten,
  type Choose,
  type ChosenFood,
  isKnown,
  isUnknown,
  type KnownAmount,
  type MakingAmount,
  type Mass,
  makingsOf,
  type UnknownAmount,
  withoutOptional,
} from "./amounts.ts";
export { checkDish } from "./checkDish.ts";
export { type CostingCard, type CostingLine, type CostingOptions, costingCard } from "./costing.ts";
export { type Diet, type DishDiet, dietOf, suitsDiet } from "./dietOf.ts";
export { Dish, KIT_PARTS, type KitPart, MANNERS, Making, SITTING_KINDS, STEP_KINDS, Step } from "./dish.ts";
export { DishTexts, layDishTexts } from "./dishTexts.ts";
export {
  isTravelling,
  type KitNeeded,
  kitNeeded,
  needsHeat,
  VESSELS,
  type Vessel,
  vesselsOf,
} from "./kitNeeded.ts";
export { type DishMinutes, type KitchenHands, type LinearMinutes, linearMinutes, minutesOf } from "./minutes.ts";
export { type DishNutrients, type NutrientAmount, nutrientsOfDish, type Retain } from "./nutrients.ts";
export { applyRetention, parseRetentionTable, type RetentionRow, type RetentionTable } from "./retention.ts";
export { scaleAmount } from "./scaleAmount.ts";
export { scaleVolumes } from "./scaleVolumes.ts";
export { markAhead, orderSteps, type StepOrder } from "./stepOrder.ts";
