import type { MenuLot, MenuProblem, MenuTrip } from "../problem.ts";
import type { FoodCosting } from "./FoodCosting.ts";
import { charge, type Penalties } from "./Penalties.ts";

const PLACES = ["fridge", "freezer"] as const;

/**
 * Litres that the foods of a menu take in fridge and freezer on each day: what is there of the stock and of what was bought
 * up to then, less what was needed before. Never more than the plan will take, so that it steers the search and refuses
 * nothing that fits; kept only where a place has a limit.
 */
export class ColdRoom {
  private readonly days: number;
  private readonly periodDay: readonly number[];
  private readonly trips: readonly MenuTrip[];
  private readonly most: readonly number[];
  /** Place of each food, -1 where it takes none that is limited, and the litres of a gram there. */
  private readonly placeOf: Int8Array;
  private readonly litresPerG: Float64Array;
  /** Stock of each food on each day, and the litres of each food, each at `[food * days + day]`. */
  private readonly stockG: Float64Array;
  private readonly ofFood: Float64Array;
  private readonly saved: Float64Array;
  /** Litres of each place on each day, at `[place * days + day]`. */
  private readonly litres: Float64Array;
  private readonly savedLitres: Float64Array;

  constructor({ days, periodDay, trips, limits, foods, lots }: MenuProblem) {
    this.days = days;
    this.periodDay = periodDay;
    this.trips = trips;
    this.most = [limits.fridgeLitres ?? Infinity, limits.freezerLitres ?? Infinity];
    this.placeOf = Int8Array.from(foods, ({ cold }) => {
      const place = cold === undefined ? -1 : PLACES.indexOf(cold.place);
      return place >= 0 && (this.most[place] as number) < Infinity ? place : -1;
    });
    this.litresPerG = Float64Array.from(foods, ({ cold }) => cold?.litresPerG ?? 0);
    this.stockG = new Float64Array(foods.length * days);
    for (const lot of lots) this.stock(lot);
    this.ofFood = new Float64Array(foods.length * days);
    this.saved = new Float64Array(foods.length * days);
    this.litres = new Float64Array(PLACES.length * days);
    this.savedLitres = new Float64Array(PLACES.length * days);
  }

  private stock({ food, massG, lastDay }: MenuLot): void {
    for (let day = 0; day < this.days && day <= lastDay; day++) {
      const at = food * this.days + day;
      this.stockG[at] = (this.stockG[at] as number) + massG;
    }
  }

  begin(): void {
    this.savedLitres.set(this.litres);
  }

  /** Keeps what a food takes as the `i`-th thing to restore. */
  save(food: number, i: number): void {
    if ((this.placeOf[food] as number) < 0) return;
    for (let day = 0; day < this.days; day++)
      this.saved[i * this.days + day] = this.ofFood[food * this.days + day] as number;
  }

  /** Takes what a food took off its place and puts on what was just evaluated for its needs. */
  move(food: number, costing: FoodCosting, needG: Float64Array, offset: number): void {
    const place = this.placeOf[food] as number;
    if (place < 0) return;
    const { days, periodDay, ofFood, litres } = this;
    let neededG = 0;
    let period = 0;
    for (let day = 0; day < days; day++) {
      for (; period < periodDay.length && (periodDay[period] as number) < day; period++)
        neededG += needG[offset + period] as number;
      let thereG = (this.stockG[food * days + day] as number) - neededG;
      for (let i = 0; i < costing.loads; i++)
        if ((this.trips[costing.loadTrip[i] as number] as MenuTrip).day <= day) thereG += costing.loadG[i] as number;
      const took = ofFood[food * days + day] as number;
      const takes = Math.max(0, thereG) * (this.litresPerG[food] as number);
      ofFood[food * days + day] = takes;
      litres[place * days + day] = (litres[place * days + day] as number) + takes - took;
    }
  }

  undo(foods: Int32Array, count: number): void {
    const { days } = this;
    for (let i = 0; i < count; i++) {
      const food = foods[i] as number;
      if ((this.placeOf[food] as number) < 0) continue;
      for (let day = 0; day < days; day++) this.ofFood[food * days + day] = this.saved[i * days + day] as number;
    }
    this.litres.set(this.savedLitres);
  }

  violation(penalties: Penalties): number {
    let v = 0;
    for (let at = 0; at < this.litres.length; at++) {
      const over = (this.litres[at] as number) - (this.most[at < this.days ? 0 : 1] as number);
      if (over > 1e-3) v += charge(penalties.cold, over);
    }
    return v;
  }
}
