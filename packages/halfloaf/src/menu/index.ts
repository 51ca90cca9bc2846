export { cheapestDiet, type DietAllowance, type DietFood } from "./linear/cheapestDiet.ts";
export type { LinearModel } from "./linear/LinearModel.ts";
export type { MenuPlan, PlannedBatch, Purchase, Use } from "./plan.ts";
export type {
  MenuBound,
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
  MenuWorth,
} from "./problem.ts";
export { isLasting } from "./problem.ts";
export { MenuSearch, type SearchOptions, type SearchReport } from "./search/MenuSearch.ts";
export { createRandomSource, type RandomSource } from "./search/RandomSource.ts";
