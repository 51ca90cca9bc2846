import type { MenuProblem } from "../problem.ts";
import { ColdRoom } from "./ColdRoom.ts";
import { FoodCosting } from "./FoodCosting.ts";
import { isColdLimited } from "./isColdLimited.ts";
import { LeastCosts } from "./LeastCosts.ts";
import type { Penalties } from "./Penalties.ts";
import { TripLoads } from "./TripLoads.ts";

/** What is known of each food at its present needs. */
interface Figures {
  readonly cost: Float64Array;
  readonly till: Float64Array;
  readonly missing: Float64Array;
  readonly unused: Float64Array;
}

/** Sums that differ by less are the same. */
const SLACK_MINOR = 1e-6;

function createFigures(foods: number): Figures {
  return {
    cost: new Float64Array(foods),
    till: new Float64Array(foods),
    missing: new Float64Array(foods),
    unused: new Float64Array(foods),
  };
}

/**
 * Purchases of all foods and what they add up to. A move begins, touches the foods whose needs or trips it changes and
 * has them reckoned anew; `undo` goes back to where it began.
 */
export class FoodTotals {
  readonly costing: FoodCosting;
  private readonly least: LeastCosts;
  cost = 0;
  till = 0;
  private missing = 0;
  private unused = 0;
  private readonly figures: Figures;
  private readonly saved: Figures;
  private readonly savedSums = new Float64Array(4);
  private readonly loads: TripLoads | undefined;
  private readonly cold: ColdRoom | undefined;
  private readonly touched: Int32Array;
  private count = 0;
  /** Of the foods touched, so many were reckoned anew. */
  private reckoned = 0;
  /** The least that each food touched can come to, and with all others together. */
  private readonly floors: Float64Array;
  private leastMinor = 0;
  /** By how much each food was above its least when it was last reckoned: most likely it is again. */
  private readonly gaps: Float64Array;
  private readonly stamps: Int32Array;
  private stamp = 0;
  private readonly needG: Float64Array;
  private readonly periods: number;
  /** What is needed of each food in all periods together (g), and what was of those touched. */
  private readonly totalG: Float64Array;
  private readonly savedG: Float64Array;

  /** `needG` holds the needs by food and period; it is read whenever foods are reckoned. */
  constructor(problem: MenuProblem, needG: Float64Array) {
    const foods = problem.foods.length;
    this.costing = new FoodCosting(problem);
    this.least = new LeastCosts(problem, this.costing.foods);
    this.figures = createFigures(foods);
    this.saved = createFigures(foods);
    this.loads = problem.trips.some((trip) => trip.carryG !== undefined) ? new TripLoads(problem) : undefined;
    this.cold = isColdLimited(problem) ? new ColdRoom(problem) : undefined;
    this.touched = new Int32Array(foods);
    this.floors = new Float64Array(foods);
    this.gaps = new Float64Array(foods);
    this.stamps = new Int32Array(foods);
    this.needG = needG;
    this.periods = problem.periodDay.length;
    this.totalG = new Float64Array(foods);
    this.savedG = new Float64Array(foods);
    for (let food = 0; food < foods; food++) this.reckon(food);
  }

  begin(): void {
    this.count = 0;
    this.reckoned = 0;
    this.stamp++;
    const { savedSums } = this;
    savedSums[0] = this.cost;
    savedSums[1] = this.till;
    savedSums[2] = this.missing;
    savedSums[3] = this.unused;
    this.loads?.begin();
    this.cold?.begin();
  }

  touch(food: number): void {
    if (this.stamps[food] === this.stamp) return;
    this.stamps[food] = this.stamp;
    this.savedG[this.count] = this.totalG[food] as number;
    this.touched[this.count++] = food;
  }

  /** Touches a food of which so much more is needed (g); less where it is negative. */
  need(food: number, massG: number): void {
    this.touch(food);
    this.totalG[food] = (this.totalG[food] as number) + massG;
  }

  /** Touches all foods of which anything is needed: what they cost may hang on the trips. */
  touchNeeded(): void {
    for (let food = 0; food < this.stamps.length; food++) if ((this.totalG[food] as number) > 0) this.touch(food);
  }

  reckonTouched(): void {
    while (this.reckoned < this.count) this.reckonNext();
  }

  /**
   * The least that all foods come to for what is needed of them in all, whenever that is and whichever trips are made, with
   * `missingMinor` for each making that cannot be had. No food is reckoned.
   */
  leastWith(missingMinor: number): number {
    const { figures, touched, floors, totalG, count } = this;
    let leastMinor = this.cost + missingMinor * this.missing - SLACK_MINOR;
    for (let i = 0; i < count; i++) {
      const food = touched[i] as number;
      const floor = this.least.of(food, totalG[food] as number, missingMinor);
      floors[i] = floor;
      leastMinor += floor - (figures.cost[food] as number) - missingMinor * (figures.missing[food] as number);
    }
    this.leastMinor = leastMinor;
    return leastMinor;
  }

  /**
   * After `leastWith`: reckons the foods touched, for as long as all foods may still come to `mostMinor` or less; false where
   * they cannot. Foods that were far above their least come first, so that this is soon known.
   */
  reckonWithin(mostMinor: number, missingMinor: number): boolean {
    const { figures, touched, floors, gaps, count } = this;
    let leastMinor = this.leastMinor - mostMinor;
    for (let i = 0; i < count && leastMinor <= 0; i++) {
      this.bringWidest(i);
      const food = touched[i] as number;
      this.reckonNext();
      const gap =
        (figures.cost[food] as number) + missingMinor * (figures.missing[food] as number) - (floors[i] as number);
      gaps[food] = gap;
      leastMinor += gap;
    }
    return leastMinor <= 0;
  }

  /** Brings the food of the widest gap, of those touched from place `at` on, to that place. */
  private bringWidest(at: number): void {
    const { touched, gaps, floors, savedG, count } = this;
    const food = touched[at] as number;
    let widest = at;
    let most = gaps[food] as number;
    for (let i = at + 1; i < count; i++) {
      const gap = gaps[touched[i] as number] as number;
      if (gap > most) {
        most = gap;
        widest = i;
      }
    }
    if (widest === at) return;
    const floor = floors[at] as number;
    const massG = savedG[at] as number;
    touched[at] = touched[widest] as number;
    floors[at] = floors[widest] as number;
    savedG[at] = savedG[widest] as number;
    touched[widest] = food;
    floors[widest] = floor;
    savedG[widest] = massG;
  }

  private reckonNext(): void {
    const { figures, saved } = this;
    const i = this.reckoned++;
    const food = this.touched[i] as number;
    saved.cost[i] = figures.cost[food] as number;
    saved.till[i] = figures.till[food] as number;
    saved.missing[i] = figures.missing[food] as number;
    saved.unused[i] = figures.unused[food] as number;
    this.loads?.save(food, i);
    this.cold?.save(food, i);
    this.reckon(food);
  }

  private reckon(food: number): void {
    const { costing, figures } = this;
    costing.evaluate(food, this.needG, food * this.periods);
    this.cost += costing.cost - (figures.cost[food] as number);
    this.till += costing.till - (figures.till[food] as number);
    this.missing += costing.missing - (figures.missing[food] as number);
    this.unused += costing.unused - (figures.unused[food] as number);
    figures.cost[food] = costing.cost;
    figures.till[food] = costing.till;
    figures.missing[food] = costing.missing;
    figures.unused[food] = costing.unused;
    this.loads?.move(food, costing);
    this.cold?.move(food, costing, this.needG, food * this.periods);
  }

  undo(): void {
    const { figures, saved, savedSums } = this;
    for (let i = 0; i < this.count; i++) this.totalG[this.touched[i] as number] = this.savedG[i] as number;
    for (let i = 0; i < this.reckoned; i++) {
      const food = this.touched[i] as number;
      figures.cost[food] = saved.cost[i] as number;
      figures.till[food] = saved.till[i] as number;
      figures.missing[food] = saved.missing[i] as number;
      figures.unused[food] = saved.unused[i] as number;
    }
    this.loads?.undo(this.touched, this.reckoned);
    this.cold?.undo(this.touched, this.reckoned);
    this.cost = savedSums[0] as number;
    this.till = savedSums[1] as number;
    this.missing = savedSums[2] as number;
    this.unused = savedSums[3] as number;
  }

  /** Makings that cannot be had, stock left that had to be used up, loads too heavy, fridge or freezer too full. */
  violation(penalties: Penalties): number {
    const unused = this.unused < 1e-9 ? 0 : penalties.unused * this.unused;
    const heavy = this.loads ? this.loads.violation(penalties) : 0;
    const full = this.cold ? this.cold.violation(penalties) : 0;
    return penalties.missing * this.missing + unused + heavy + full;
  }
}
