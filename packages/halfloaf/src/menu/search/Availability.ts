import type { MenuLot, MenuProblem, MenuTrip } from "../problem.ts";
import type { FoodCosting } from "./FoodCosting.ts";
import { MOST_SETS } from "./MadeTrips.ts";
import type { FoodSources } from "./Sources.ts";

/** What is known of a dish in a period. */
const YES = 1;
const NO = 2;

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
  /** YES or NO by dish and period for each set of trips; 0 = not asked yet. */
  private readonly tables = new Map<number, Uint8Array>();
  private table: Uint8Array = new Uint8Array(0);
  /** The set of trips that `table` is for. */
  private version = -1;

  constructor(problem: MenuProblem, costing: FoodCosting) {
    this.problem = problem;
    this.costing = costing;
    this.foodsOf = problem.dishes.map(({ makings }) => Int16Array.from(makings, ({ food }) => food));
    this.lots = problem.foods.map((_, food) => problem.lots.filter((lot) => lot.food === food));
    this.periods = problem.periodDay.length;
  }

  hasAll(dish: number, period: number): boolean {
    if (this.version !== this.costing.trips.version) this.turnTo(this.costing.trips.version);
    const at = dish * this.periods + period;
    if (this.table[at] === 0) this.table[at] = this.lookUpAll(dish, period) ? YES : NO;
    return this.table[at] === YES;
  }

  private turnTo(version: number): void {
    let table = this.tables.get(version);
    if (table === undefined) {
      if (this.tables.size >= MOST_SETS) this.tables.clear();
      table = new Uint8Array(this.foodsOf.length * this.periods);
      this.tables.set(version, table);
    }
    this.table = table;
    this.version = version;
  }

  private lookUpAll(dish: number, period: number): boolean {
    return (this.foodsOf[dish] as Int16Array).every((food) => this.lookUp(food, period));
  }

  private lookUp(food: number, period: number): boolean {
    const day = this.problem.periodDay[period] as number;
    const { trips } = this.costing;
    const { sources } = this.costing.foods[food] as FoodSources;
    const isSold = sources.some((source) => {
      const trip = trips.tripFor(source, period);
      return trip >= 0 && day <= (this.problem.trips[trip] as MenuTrip).day + source.unopenedDays;
    });
    const lots = this.lots[food] as readonly MenuLot[];
    return isSold || lots.some(({ fromPeriod = 0, lastDay }) => fromPeriod <= period && lastDay >= day);
  }
}
