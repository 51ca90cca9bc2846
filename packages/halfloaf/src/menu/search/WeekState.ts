import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { CookedAtOnce, type TimeTogether } from "./CookedAtOnce.ts";
import { copyInto } from "./copyInto.ts";
import type { FoodCosting } from "./FoodCosting.ts";
import { FoodTotals } from "./FoodTotals.ts";
import { MinuteBounds } from "./MinuteBounds.ts";
import { charge, FIRST_PENALTIES, ONLY, type Penalties } from "./Penalties.ts";
import { ServedTotals } from "./ServedTotals.ts";
import { ServingLists } from "./ServingLists.ts";
import { TripTotals } from "./TripTotals.ts";
import { FRESH, LEFTOVER, tabulateMay } from "./tabulateMay.ts";

const NO_TRIPS: readonly number[] = [];

/** One change: the sitting and the dish it gets, -1 for none. */
export interface Change {
  sitting: number;
  dish: number;
}

/**
 * The menu as "one dish a sitting" with everything that follows from it kept up to date: batches, needs by
 * food and period, cheapest purchases, minutes, energy, components. `change` and `toggleTrips` apply moves, `undo`
 * takes the last one back to the bit.
 */
export class WeekState {
  readonly tripMade: Uint8Array;
  violation = 0;

  readonly problem: MenuProblem;
  private penalties: Penalties;
  private readonly elastic: Penalties | undefined;
  private readonly K: number;
  private readonly T: number;
  private readonly may: Uint8Array;
  private readonly makingStart: Int32Array;
  private readonly makingFood: Int32Array;
  private readonly makingG: Float64Array;

  private readonly servings: ServingLists;
  private readonly trips: TripTotals;
  private readonly needG: Float64Array;
  private readonly foods: FoodTotals;
  private readonly served: ServedTotals;
  private readonly minuteBounds: MinuteBounds;
  /** Absent where everything is cooked by itself. */
  private readonly atOnce: CookedAtOnce | undefined;
  private readonly handsOn: Float64Array;
  private minutes = 0;
  private badBatch = 0;
  private overElapsed = 0;

  /** Needs before the move, to restore them to the bit. */
  private readonly journalAt: Int32Array;
  private readonly journalG: Float64Array;
  private journaled = 0;
  private readonly changedDishes: Int32Array;
  private changed = 0;
  private readonly undoSitting: number[] = [];
  private readonly undoDish: number[] = [];
  private readonly newDish: number[] = [];
  private undoLength = 0;
  /** Whether the servings of the move are in their lists and cookings, and the least that minutes change by with them. */
  private isPlaced = false;
  private leastMinutes = 0;
  private undoTrips: readonly number[] = [];
  private readonly saved = new Float64Array(3);
  private readonly savedHandsOn: Float64Array;

  /** `elastic` limits may be gone beyond at a price, which then counts as money and not as a violation. */
  constructor(problem: MenuProblem, penalties: Penalties = FIRST_PENALTIES, elastic?: Penalties) {
    this.problem = problem;
    this.penalties = penalties;
    this.elastic = elastic;
    const { sittings, dishes, foods, periodDay, days } = problem;
    this.K = sittings.length;
    this.T = periodDay.length;
    this.tripMade = new Uint8Array(problem.trips.length);
    this.may = tabulateMay(problem);
    const flat = dishes.flatMap((dish) => dish.makings);
    this.makingFood = Int32Array.from(flat, (m) => m.food);
    this.makingG = Float64Array.from(flat, (m) => m.massG);
    this.makingStart = new Int32Array(dishes.length + 1);
    dishes.forEach((dish, r) => {
      this.makingStart[r + 1] = (this.makingStart[r] as number) + dish.makings.length;
    });
    // A move takes away and adds at most every batch of the week, each with all its makings.
    const mostMakings = 4 * this.K * Math.max(1, ...dishes.map((dish) => dish.makings.length));
    this.journalAt = new Int32Array(mostMakings);
    this.journalG = new Float64Array(mostMakings);
    this.servings = new ServingLists(problem);
    this.trips = new TripTotals(problem);
    this.needG = new Float64Array(foods.length * this.T);
    this.handsOn = new Float64Array(days);
    this.savedHandsOn = new Float64Array(days);
    this.changedDishes = new Int32Array(dishes.length);
    this.foods = new FoodTotals(problem, this.needG);
    this.served = new ServedTotals(problem);
    this.minuteBounds = new MinuteBounds(problem);
    this.atOnce = sittings.some(({ together }) => together !== undefined) ? new CookedAtOnce(problem) : undefined;
  }

  /** The dish of each sitting, -1 for none; a view that changes with the state. */
  get dishOf(): Int16Array {
    return this.servings.dishOf;
  }

  get costing(): FoodCosting {
    return this.foods.costing;
  }

  setPenalties(penalties: Penalties): void {
    this.penalties = penalties;
  }

  /** True if the dish may be cooked for this sitting. */
  mayCook(dish: number, sitting: number): boolean {
    return ((this.may[dish * this.K + sitting] as number) & FRESH) !== 0;
  }

  /** True if the dish may be served at this sitting, cooked then or earlier. */
  mayServe(dish: number, sitting: number): boolean {
    return dish >= 0 && (this.may[dish * this.K + sitting] as number) !== 0;
  }

  /** The sittings of a dish, ascending, as a fresh array. */
  sittingsOf(dish: number): number[] {
    return this.servings.of(dish);
  }

  /** At how many sittings a dish stands. */
  countOf(dish: number): number {
    return this.servings.counts[dish] as number;
  }

  /** The `i`-th sitting of a dish, ascending from 0. */
  sittingAt(dish: number, i: number): number {
    return this.servings.lists[dish * this.K + i] as number;
  }

  /** The needs of a food by period (g as purchased); a view that changes with the state. */
  needsOf(food: number): Float64Array {
    return this.needG.subarray(food * this.T, (food + 1) * this.T);
  }

  /** Learns about all that is cooked at once now and is not known yet; true where there was any. Not undone. */
  learn(timeTogether: TimeTogether): boolean {
    return this.atOnce?.learn(timeTogether) ?? false;
  }

  /** Gives the sittings their dishes and brings everything up to date; undone by `undo`. */
  change(changes: readonly Change[]): void {
    this.serve(changes);
    this.place();
    this.foods.reckonTouched();
  }

  /**
   * `change` and then `total`; or Infinity, as soon as that is sure to be above `mostMinor`. The state is then good for
   * nothing but `undo`. Most moves are given up before cookings are looked at.
   */
  changeWithin(changes: readonly Change[], mostMinor: number): number {
    this.serve(changes);
    const { missing } = this.penalties;
    const served = this.served.costMinor() + this.served.violation(this.penalties);
    const minutes = this.minutes + this.leastMinutes + this.trips.minutes;
    const leastMinor = this.trips.costMinor + this.problem.worth.minuteMinor * minutes + served;
    if (leastMinor + this.foods.leastWith(missing) > mostMinor) return Number.POSITIVE_INFINITY;
    this.place();
    return this.totalWithin(mostMinor);
  }

  /** Says which dishes are served, and thereby what is needed of each food in all; cookings follow in `place`. */
  private serve(changes: readonly Change[]): void {
    this.beginMove();
    this.undoLength = changes.length;
    for (let i = 0; i < changes.length; i++) {
      const { sitting, dish } = changes[i] as Change;
      const old = this.servings.dishOf[sitting] as number;
      this.undoSitting[i] = sitting;
      this.undoDish[i] = old;
      this.newDish[i] = dish;
      const { portions } = this.problem.sittings[sitting] as MenuSitting;
      if (old >= 0) this.serveLess(old, portions);
      if (dish >= 0) this.serveMore(dish, portions);
      this.served.exchange(old, dish, sitting);
    }
  }

  private serveLess(dish: number, portions: number): void {
    this.noteDish(dish);
    this.leastMinutes += this.minuteBounds.ofLess(dish, portions);
    this.needMore(dish, -portions);
  }

  private serveMore(dish: number, portions: number): void {
    const isFirst = this.noteDish(dish) && this.servings.counts[dish] === 0;
    this.leastMinutes += this.minuteBounds.ofMore(dish, portions, isFirst);
    this.needMore(dish, portions);
  }

  private needMore(dish: number, portions: number): void {
    const end = this.makingStart[dish + 1] as number;
    for (let m = this.makingStart[dish] as number; m < end; m++)
      this.foods.need(this.makingFood[m] as number, portions * (this.makingG[m] as number));
  }

  /** Puts the servings of the move into their lists and joins them to cookings. */
  private place(): void {
    this.isPlaced = true;
    copyInto(this.savedHandsOn, this.handsOn);
    for (let i = 0; i < this.changed; i++) this.addBatches(this.changedDishes[i] as number, -1);
    for (let i = 0; i < this.undoLength; i++)
      this.servings.place(this.undoSitting[i] as number, this.newDish[i] as number);
    for (let i = 0; i < this.changed; i++) this.addBatches(this.changedDishes[i] as number, 1);
    this.atOnce?.reckon();
  }

  /** True where the move has not touched the dish before. */
  private noteDish(dish: number): boolean {
    for (let i = 0; i < this.changed; i++) if (this.changedDishes[i] === dish) return false;
    this.changedDishes[this.changed++] = dish;
    return true;
  }

  /** Makes trips or leaves them out; undone by `undo`. */
  toggleTrips(...trips: readonly number[]): void {
    this.turn(trips);
    this.foods.reckonTouched();
  }

  /** `toggleTrips` and then `total`; or Infinity, as `changeWithin` says. */
  toggleTripsWithin(trips: readonly number[], mostMinor: number): number {
    this.turn(trips);
    this.foods.leastWith(this.penalties.missing);
    return this.totalWithin(mostMinor);
  }

  private turn(trips: readonly number[]): void {
    this.beginMove();
    this.undoTrips = trips;
    this.flip(trips);
    this.foods.touchNeeded();
  }

  private flip(trips: readonly number[]): void {
    for (const trip of trips) this.tripMade[trip] = this.tripMade[trip] ? 0 : 1;
    this.costing.setTrips(this.tripMade);
    this.trips.reckon(this.tripMade);
  }

  private beginMove(): void {
    this.journaled = 0;
    this.changed = 0;
    this.undoLength = 0;
    this.isPlaced = false;
    this.leastMinutes = 0;
    this.undoTrips = NO_TRIPS;
    const { saved } = this;
    saved[0] = this.minutes;
    saved[1] = this.badBatch;
    saved[2] = this.overElapsed;
    this.foods.begin();
    this.served.begin();
    this.atOnce?.begin();
  }

  /** Takes back the last `change` or `toggleTrips`. */
  undo(): void {
    if (this.undoTrips.length > 0) this.flip(this.undoTrips);
    for (let i = this.undoLength - 1; i >= 0; i--) {
      const sitting = this.undoSitting[i] as number;
      const old = this.undoDish[i] as number;
      this.served.takeBack(old, this.newDish[i] as number, sitting);
      if (this.isPlaced) this.servings.place(sitting, old);
    }
    for (let i = this.journaled - 1; i >= 0; i--) this.needG[this.journalAt[i] as number] = this.journalG[i] as number;
    this.foods.undo();
    this.served.undo();
    this.atOnce?.undo();
    const { saved } = this;
    this.minutes = saved[0] as number;
    this.badBatch = saved[1] as number;
    this.overElapsed = saved[2] as number;
    if (this.isPlaced) copyInto(this.handsOn, this.savedHandsOn);
  }

  /** Adds (or takes away) all batches of a dish: its servings joined while one cooking can feed them. */
  private addBatches(dish: number, sign: number): void {
    const facts = this.problem.dishes[dish] as MenuDish;
    const from = dish * this.K;
    const { lists } = this.servings;
    const n = this.servings.counts[dish] as number;
    const { batchPortions } = this.problem.limits;
    const { leftoverMinutes } = this.problem.worth;
    let cookedAt = -1;
    let cookedDay = -1;
    let size = 0;
    for (let i = 0; i < n; i++) {
      const k = lists[from + i] as number;
      const { day, portions } = this.problem.sittings[k] as MenuSitting;
      const may = this.may[from + k] as number;
      const joins =
        cookedAt >= 0 &&
        day - cookedDay <= facts.keepsDays &&
        size + portions <= batchPortions + 1e-9 &&
        (may & LEFTOVER) !== 0;
      if (joins) {
        size += portions;
        this.addMinutes(day, sign * leftoverMinutes);
        continue;
      }
      if (cookedAt >= 0) {
        this.addCooking(dish, facts, cookedAt, size, sign);
        if (cookedDay === day) this.badBatch += sign;
      }
      if ((may & FRESH) === 0) this.badBatch += sign;
      cookedAt = k;
      cookedDay = day;
      size = portions;
    }
    if (cookedAt >= 0) this.addCooking(dish, facts, cookedAt, size, sign);
  }

  private addCooking(dish: number, facts: MenuDish, sitting: number, size: number, sign: number): void {
    const { day, period, minutes } = this.problem.sittings[sitting] as MenuSitting;
    this.addMinutes(day, sign * (facts.handsOn.fixed + facts.handsOn.perPortion * size));
    this.minutes += sign * (facts.vessels ?? 0) * (this.problem.worth.vesselMinutes ?? 0);
    if (this.atOnce?.has(sitting)) this.atOnce.count(sitting, dish, size, sign);
    else {
      const over = facts.elapsed.fixed + facts.elapsed.perPortion * size - minutes;
      if (over > 1e-9) this.overElapsed += sign * over;
    }
    const end = this.makingStart[dish + 1] as number;
    for (let m = this.makingStart[dish] as number; m < end; m++) {
      const food = this.makingFood[m] as number;
      const massG = sign * (this.makingG[m] as number) * size;
      const at = food * this.T + period;
      const before = this.needG[at] as number;
      this.journalAt[this.journaled] = at;
      this.journalG[this.journaled++] = before;
      const after = before + massG;
      this.needG[at] = after < 1e-9 ? 0 : after;
    }
  }

  private addMinutes(day: number, minutes: number): void {
    this.handsOn[day] = (this.handsOn[day] as number) + minutes;
    this.minutes += minutes;
  }

  /** Money of the plan in minor units plus penalties; `violation` is the part that is penalties. */
  total(): number {
    return this.addFoods(this.totalApart());
  }

  private totalWithin(mostMinor: number): number {
    const apart = this.totalApart();
    if (!this.foods.reckonWithin(mostMinor - apart, this.penalties.missing)) return Number.POSITIVE_INFINITY;
    return this.addFoods(apart);
  }

  /** The total but for what hangs on purchases. */
  private totalApart(): number {
    const washed = this.atOnce?.washMinutes.reduce((sum, each) => sum + each, 0) ?? 0;
    const minutes = this.problem.worth.minuteMinor * (this.minutes + washed + this.trips.minutes);
    this.violation = this.violationApart(this.penalties);
    return this.trips.costMinor + minutes + this.served.costMinor() + this.violation;
  }

  private addFoods(apart: number): number {
    const broken = this.violationOfFoods(this.penalties);
    this.violation += broken;
    const bent = this.elastic === undefined ? 0 : this.violationBy(this.elastic);
    return apart + this.foods.cost + broken + bent;
  }

  /** True where a limit of this kind is broken. */
  isBroken(kind: keyof Penalties): boolean {
    return this.violationBy(ONLY[kind]) > 0;
  }

  /** What the broken limits weigh by these penalties; 0 = none is broken that has one. */
  violationBy(penalties: Penalties): number {
    return this.violationApart(penalties) + this.violationOfFoods(penalties);
  }

  private violationApart(penalties: Penalties): number {
    const { limits } = this.problem;
    let v = this.served.violation(penalties);
    for (let d = 0; d < this.handsOn.length; d++) {
      const washed = this.atOnce?.washMinutes[d] ?? 0;
      const over = (this.handsOn[d] as number) + washed - (limits.handsOnMinutes[d] as number);
      if (over > 1e-6) v += charge(penalties.minute, over);
    }
    const overElapsed = this.overElapsed + (this.atOnce?.overElapsed ?? 0);
    if (overElapsed > 1e-6) v += charge(penalties.elapsed, overElapsed);
    v += penalties.batch * this.badBatch;
    if (this.trips.count > limits.maxTrips) v += penalties.trip * (this.trips.count - limits.maxTrips);
    return v;
  }

  private violationOfFoods(penalties: Penalties): number {
    const { budgetMinor = Infinity } = this.problem.limits;
    const over = this.foods.till + this.trips.costMinor - budgetMinor;
    return this.foods.violation(penalties) + (over > 1e-6 ? charge(penalties.budget, over) : 0);
  }
}
