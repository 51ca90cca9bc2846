export { componentsDerivedFrom, type DerivedComposition, deriveComponents } from "./deriveComponents.ts";
export { type Contradiction, findContradictions } from "./findContradictions.ts";
export { findFoodCalled } from "./findFoodCalled.ts";
export {
  DIETS,
  type EnergyFactors,
  EU_ALLERGENS,
  type EuAllergen,
  FOOD_GROUPS,
  type Food,
  FoodFacts,
  HYGIENE_CLASSES,
  Id,
  PLACES,
  type Place,
  US_ALLERGENS,
  type UsAllergen,
} from "./food.ts";
export { type English, foodName, namesOf } from "./foodName.ts";
export { type FoodTable, type FoodTableFile, parseFoodTable } from "./foodTable.ts";
export {
  edibleFromPurchased,
  type MassBounds,
  type MassOfAmount,
  massOfAmount,
  purchasedFromEdible,
  type UnknownMass,
} from "./measure.ts";
export { type Composition, NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "./nutrient.ts";
export {
  checkOwnFoods,
  FoodOverride,
  formatOwnFoods,
  NO_OWN_FOODS,
  OwnFood,
  type OwnFoodParts,
  OwnFoods,
  overrideFigures,
  parseOwnFoods,
  withOwnFoods,
} from "./ownFoods.ts";
export { type CompositionRow, parseComposition } from "./parseComposition.ts";
export { isFound, toSearchText } from "./searchText.ts";
