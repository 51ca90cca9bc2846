import type { Dish } from "../../../dish/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import type { RecordState } from "../recordState.ts";
import { cookingEnergy } from "./cookingEnergy.ts";
import { cookingsBy } from "./platesBy.ts";

/** What the cookings of some days drew. */
export interface EnergyDrawn {
  readonly kwh: number;
  readonly cookings: number;
  /** Cookings of dishes that are not there any more, which are in no figure. */
  readonly unknown: number;
  /** In whole minor units, rounded once; absent where no price was given. */
  readonly costMinor?: number;
}

/**
 * Energy of the cookings of some days, both ends included, and what it costs at a price in minor units per kWh. An estimate, apart
 * from the sums at lot cost, as `cookingEnergy` has it.
 */
export function energyBetween(
  state: RecordState,
  dishes: readonly Dish[],
  from: CivilDate,
  to: CivilDate,
  kwhMinor?: number,
): EnergyDrawn {
  const byId = new Map(dishes.map((dish) => [dish.id, dish]));
  const cookings = cookingsBy(state, from, to).map(({ cooking: { dish, portions } }) => ({
    dish: byId.get(dish),
    portions,
  }));
  const kwh = cookings.reduce((sum, { dish, portions }) => sum + (dish ? cookingEnergy(dish, portions).kwh : 0), 0);
  return {
    kwh,
    cookings: cookings.length,
    unknown: cookings.filter(({ dish }) => dish === undefined).length,
    ...(kwhMinor !== undefined && { costMinor: Math.round(kwh * kwhMinor) }),
  };
}
