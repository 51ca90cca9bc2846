export { FoodIndex, type NamedFood } from "./FoodIndex.ts";
export { type FoodCandidate, type FoodFinding, type FoodQuery, findFood } from "./findFood.ts";
export { findFoodOfChoice } from "./findFoodOfChoice.ts";
export type { Standing } from "./foodSynonyms.ts";
