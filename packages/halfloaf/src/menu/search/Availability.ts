import type { MenuLot, MenuProblem, MenuTrip } from "../problem.ts";
import type { FoodCosting } from "./FoodCosting.ts";
import type { FoodSources } from "./Sources.ts";

/**
 * Whether there can be any of a food in a period with the trips that are made: a lot of the start or a pack, either
 * still good. It is only to say which dishes are worth a try; how much there is of it is not asked.
 */
export class Availability {
  private readonly problem: MenuProblem;
  private readonly costing: FoodCosting;
  /** Foods of each dish. */
  private readonly foodsOf: readonly Int16Array[];
  private readonly lots: readonly (readonly MenuLot[])[];
  private readonly periods: number;
  private readonly isThere: Uint8Array;
  /** For which set of trips each food was looked up last. */
  private readonly knownFor: Int32Array;

  constructor(problem: MenuProblem, costing: FoodCosting) {
    this.problem = problem;
    this.costing = costing;
    this.foodsOf = problem.dishes.map(({ makings }) => Int16Array.from(makings, ({ food }) => food));
    this.lots = problem.foods.map((_, food) => problem.lots.filter((lot) => lot.food === food));
    this.periods = problem.periodDay.length;
    this.isThere = new Uint8Array(problem.foods.length * this.periods);
    this.knownFor = new Int32Array(problem.foods.length).fill(-1);
  }

  hasAll(dish: number, period: number): boolean {
    const foods = this.foodsOf[dish] as Int16Array;
    for (let i = 0; i < foods.length; i++) if (!this.has(foods[i] as number, period)) return false;
    return true;
  }

  private has(food: number, period: number): boolean {
    const { version } = this.costing.trips;
    if (this.knownFor[food] !== version) {
      this.knownFor[food] = version;
      for (let at = 0; at < this.periods; at++) this.isThere[food * this.periods + at] = this.lookUp(food, at) ? 1 : 0;
    }
    return this.isThere[food * this.periods + period] === 1;
  }

  private lookUp(food: number, period: number): boolean {
    const day = this.problem.periodDay[period] as number;
    const { trips } = this.costing;
    const { sources } = this.costing.foods[food] as FoodSources;
    const isSold = sources.some((source) => {
      const trip = trips.tripFor(source, period);
      return trip >= 0 && day <= (this.problem.trips[trip] as MenuTrip).day + source.unopenedDays;
    });
    return isSold || (this.lots[food] as readonly MenuLot[]).some((lot) => lot.lastDay >= day);
  }
}
