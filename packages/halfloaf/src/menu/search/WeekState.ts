import type { MenuDish, MenuProblem, MenuSitting } from "../problem.ts";
import { FoodCosting, MOST_LOADS } from "./FoodCosting.ts";

/** How hard each kind of broken limit weighs in the search, in minor units; raised when no plan is found. */
export interface Penalties {
  readonly minute: number;
  readonly energy: number;
  readonly use: number;
  readonly main: number;
  readonly distinct: number;
  readonly budget: number;
  readonly batch: number;
  readonly bound: number;
  readonly trip: number;
  /** For each kilogram that a trip carries too much. */
  readonly carry: number;
  /** For each time that a making cannot be had. */
  readonly missing: number;
  /** For stock that had to be used up and was not. */
  readonly unused: number;
}

export const FIRST_PENALTIES: Penalties = {
  minute: 60,
  energy: 3000,
  use: 600,
  main: 600,
  distinct: 600,
  budget: 2,
  batch: 4000,
  bound: 3000,
  trip: 800,
  carry: 150,
  missing: 700,
  unused: 1000,
};

const NO_TRIPS: readonly number[] = [];
const FRESH = 1;
const LEFTOVER = 2;
const MOST_SERVINGS = 64;
/** A broken limit costs at least this, so that a hair's breadth is never worth it. */
const STEP_MINOR = 30;

/** One change: the sitting and the dish it gets. */
export interface Change {
  sitting: number;
  dish: number;
}

/**
 * The menu as "one dish a sitting" with everything that follows from it kept up to date: batches, needs by
 * food and period, cheapest purchases, minutes, energy, components. `change` applies moves, `undo` takes the
 * last one back exactly.
 */
export class WeekState {
  readonly dishOf: Int16Array;
  readonly tripMade: Uint8Array;
  readonly costing: FoodCosting;
  violation = 0;

  private readonly K: number;
  private readonly T: number;
  private readonly D: number;
  private readonly J: number;
  /** What a dish may be at a sitting: bits FRESH and LEFTOVER; `[dish * K + sitting]`. */
  private readonly may: Uint8Array;
  private readonly sittingDay: Int32Array;
  private readonly sittingPeriod: Int32Array;
  private readonly portions: Float64Array;
  private readonly makingStart: Int32Array;
  private readonly makingFood: Int32Array;
  private readonly makingG: Float64Array;
  private readonly profilesAt: readonly (readonly number[])[];

  private readonly serving: Int16Array;
  private readonly servings: Int32Array;
  private readonly needG: Float64Array;
  private readonly foodCost: Float64Array;
  private readonly foodTill: Float64Array;
  private readonly foodMissing: Float64Array;
  private readonly foodUnused: Float64Array;
  /** Purchases of each food by trip (`MOST_LOADS` a food), and the sum over all foods, where trips have a limit. */
  private readonly foodLoads: Uint8Array;
  private readonly foodLoadTrip: Int16Array;
  private readonly foodLoadG: Float64Array;
  private readonly tripLoadG: Float64Array;
  private readonly savedTripLoadG: Float64Array;
  private readonly savedLoads: { count: Uint8Array; trip: Int16Array; massG: Float64Array };
  private readonly handsOn: Float64Array;
  private readonly energy: Float64Array;
  private readonly components: Float64Array;
  private readonly mainCount: Int32Array;
  private readonly eveningCount: Int32Array;
  private sumFoodCost = 0;
  private sumTill = 0;
  private sumMissing = 0;
  private sumUnused = 0;
  private dislike = 0;
  private minutes = 0;
  private overUse = 0;
  private overMain = 0;
  private badBatch = 0;
  private overElapsed = 0;
  private distinct = 0;
  private tripCost = 0;
  private trips = 0;

  private readonly touchedFoods: Int32Array;
  private touched = 0;
  private readonly foodStamp: Int32Array;
  private stamp = 0;
  /** Needs before the move, to restore them to the bit. */
  private readonly journalAt: Int32Array;
  private readonly journalG: Float64Array;
  private journaled = 0;
  private readonly changedDishes: number[] = [];
  private readonly undoSitting: Int32Array;
  private readonly undoDish: Int32Array;
  private undoLength = 0;
  private readonly saved = new Float64Array(8);
  private readonly savedHandsOn: Float64Array;
  private readonly savedFoods: { cost: Float64Array; till: Float64Array; missing: Float64Array; unused: Float64Array };
  private undoTrips: readonly number[] = [];

  readonly problem: MenuProblem;
  private penalties: Penalties;

  constructor(problem: MenuProblem, penalties: Penalties = FIRST_PENALTIES) {
    this.problem = problem;
    this.penalties = penalties;
    const { sittings, dishes, foods, profiles, periodDay, days } = problem;
    this.K = sittings.length;
    this.T = periodDay.length;
    this.D = days;
    this.J = problem.components.length;
    this.costing = new FoodCosting(problem);
    this.dishOf = new Int16Array(this.K).fill(-1);
    this.tripMade = new Uint8Array(problem.trips.length);
    this.sittingDay = Int32Array.from(sittings, (s) => s.day);
    this.sittingPeriod = Int32Array.from(sittings, (s) => s.period);
    this.portions = Float64Array.from(sittings, (s) => s.portions);
    this.may = tabulateMay(problem);
    const flat = dishes.flatMap((dish) => dish.makings);
    this.makingFood = Int32Array.from(flat, (m) => m.food);
    this.makingG = Float64Array.from(flat, (m) => m.massG);
    this.undoSitting = new Int32Array(2 * this.K);
    this.undoDish = new Int32Array(2 * this.K);
    // A move takes away and adds at most every batch of the week, each with all its makings.
    const mostMakings = 4 * this.K * Math.max(1, ...dishes.map((dish) => dish.makings.length));
    this.journalAt = new Int32Array(mostMakings);
    this.journalG = new Float64Array(mostMakings);
    this.makingStart = new Int32Array(dishes.length + 1);
    dishes.forEach((dish, r) => {
      this.makingStart[r + 1] = (this.makingStart[r] as number) + dish.makings.length;
    });
    this.profilesAt = sittings.map((_, k) =>
      profiles.flatMap((profile, p) => (profile.sittings.includes(k) ? [p] : [])),
    );
    this.serving = new Int16Array(dishes.length * MOST_SERVINGS);
    this.servings = new Int32Array(dishes.length);
    this.needG = new Float64Array(foods.length * this.T);
    this.foodCost = new Float64Array(foods.length);
    this.foodTill = new Float64Array(foods.length);
    this.foodMissing = new Float64Array(foods.length);
    this.foodUnused = new Float64Array(foods.length);
    this.touchedFoods = new Int32Array(foods.length);
    this.foodStamp = new Int32Array(foods.length);
    this.savedFoods = {
      cost: new Float64Array(foods.length),
      till: new Float64Array(foods.length),
      missing: new Float64Array(foods.length),
      unused: new Float64Array(foods.length),
    };
    const loaded = this.costing.hasCarryLimit ? foods.length : 0;
    this.foodLoads = new Uint8Array(loaded);
    this.foodLoadTrip = new Int16Array(loaded * MOST_LOADS);
    this.foodLoadG = new Float64Array(loaded * MOST_LOADS);
    this.tripLoadG = new Float64Array(problem.trips.length);
    this.savedTripLoadG = new Float64Array(problem.trips.length);
    this.savedLoads = {
      count: new Uint8Array(loaded),
      trip: new Int16Array(loaded * MOST_LOADS),
      massG: new Float64Array(loaded * MOST_LOADS),
    };
    this.handsOn = new Float64Array(days);
    this.savedHandsOn = new Float64Array(days);
    this.energy = new Float64Array(profiles.length * days);
    this.components = new Float64Array(profiles.length * this.J);
    this.mainCount = new Int32Array(1 + Math.max(0, ...dishes.map((dish) => dish.main)));
    this.eveningCount = new Int32Array(dishes.length);
    this.reckonTrips();
    this.reckonAllFoods();
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
    return (this.may[dish * this.K + sitting] as number) !== 0;
  }

  /** The sittings of a dish, ascending, as a fresh array. */
  sittingsOf(dish: number): number[] {
    const from = dish * MOST_SERVINGS;
    return Array.from(this.serving.subarray(from, from + (this.servings[dish] as number)));
  }

  /** The needs of a food by period (g as purchased); a view that changes with the state. */
  needsOf(food: number): Float64Array {
    return this.needG.subarray(food * this.T, (food + 1) * this.T);
  }

  /** Gives the sittings their dishes and brings everything up to date; undone by `undo`. */
  change(changes: readonly Change[]): void {
    this.beginMove();
    for (const { sitting, dish } of changes) {
      const old = this.dishOf[sitting] as number;
      if (old >= 0) this.noteDish(old);
      if (dish >= 0) this.noteDish(dish);
    }
    this.rollDishes(changes);
    this.reckonTouched();
  }

  private rollDishes(changes: readonly Change[]): void {
    for (const r of this.changedDishes) this.addBatches(r, -1);
    for (let i = 0; i < changes.length; i++) {
      const { sitting, dish } = changes[i] as Change;
      const old = this.dishOf[sitting] as number;
      this.undoSitting[this.undoLength] = sitting;
      this.undoDish[this.undoLength++] = old;
      if (old >= 0) this.removeServing(old, sitting);
      this.dishOf[sitting] = dish;
      if (dish >= 0) this.addServing(dish, sitting);
    }
    for (const r of this.changedDishes) this.addBatches(r, 1);
  }

  /** Makes trips or leaves them out; undone by `undo`. */
  toggleTrips(...trips: readonly number[]): void {
    this.beginMove();
    this.undoTrips = trips;
    this.flip(trips);
    for (let food = 0; food < this.foodCost.length; food++) if (this.isNeeded(food)) this.touchFood(food);
    this.reckonTouched();
  }

  private flip(trips: readonly number[]): void {
    for (const trip of trips) this.tripMade[trip] = this.tripMade[trip] ? 0 : 1;
    this.reckonTrips();
  }

  private isNeeded(food: number): boolean {
    const end = (food + 1) * this.T;
    for (let at = food * this.T; at < end; at++) if ((this.needG[at] as number) > 0) return true;
    return false;
  }

  /** Takes back the last `change` or `toggleTrips`. */
  undo(): void {
    if (this.undoTrips.length > 0) this.flip(this.undoTrips);
    for (let i = this.undoLength - 1; i >= 0; i--) {
      const sitting = this.undoSitting[i] as number;
      const dish = this.undoDish[i] as number;
      const now = this.dishOf[sitting] as number;
      if (now >= 0) this.removeServing(now, sitting);
      this.dishOf[sitting] = dish;
      if (dish >= 0) this.addServing(dish, sitting);
    }
    for (let i = this.journaled - 1; i >= 0; i--) this.needG[this.journalAt[i] as number] = this.journalG[i] as number;
    for (let i = 0; i < this.touched; i++) {
      const food = this.touchedFoods[i] as number;
      this.foodCost[food] = this.savedFoods.cost[i] as number;
      this.foodTill[food] = this.savedFoods.till[i] as number;
      this.foodMissing[food] = this.savedFoods.missing[i] as number;
      this.foodUnused[food] = this.savedFoods.unused[i] as number;
    }
    if (this.costing.hasCarryLimit) this.undoLoads();
    const { saved } = this;
    this.sumFoodCost = saved[0] as number;
    this.sumTill = saved[1] as number;
    this.sumMissing = saved[2] as number;
    this.sumUnused = saved[6] as number;
    this.minutes = saved[3] as number;
    this.badBatch = saved[4] as number;
    this.overElapsed = saved[5] as number;
    this.handsOn.set(this.savedHandsOn);
  }

  private undoLoads(): void {
    const { count, trip, massG } = this.savedLoads;
    for (let i = 0; i < this.touched; i++) {
      const food = this.touchedFoods[i] as number;
      const loads = count[i] as number;
      this.foodLoads[food] = loads;
      for (let j = 0; j < loads; j++) {
        this.foodLoadTrip[food * MOST_LOADS + j] = trip[i * MOST_LOADS + j] as number;
        this.foodLoadG[food * MOST_LOADS + j] = massG[i * MOST_LOADS + j] as number;
      }
    }
    this.tripLoadG.set(this.savedTripLoadG);
  }

  private saveLoads(food: number, i: number): void {
    const loads = this.foodLoads[food] as number;
    this.savedLoads.count[i] = loads;
    for (let j = 0; j < loads; j++) {
      this.savedLoads.trip[i * MOST_LOADS + j] = this.foodLoadTrip[food * MOST_LOADS + j] as number;
      this.savedLoads.massG[i * MOST_LOADS + j] = this.foodLoadG[food * MOST_LOADS + j] as number;
    }
  }

  /** Takes the old purchases of a food off the trips and puts on those just evaluated. */
  private moveLoads(food: number): void {
    const { costing, tripLoadG } = this;
    const at = food * MOST_LOADS;
    for (let j = 0; j < (this.foodLoads[food] as number); j++) {
      const trip = this.foodLoadTrip[at + j] as number;
      tripLoadG[trip] = (tripLoadG[trip] as number) - (this.foodLoadG[at + j] as number);
    }
    this.foodLoads[food] = costing.loads;
    for (let j = 0; j < costing.loads; j++) {
      const trip = costing.loadTrip[j] as number;
      const massG = costing.loadG[j] as number;
      this.foodLoadTrip[at + j] = trip;
      this.foodLoadG[at + j] = massG;
      tripLoadG[trip] = (tripLoadG[trip] as number) + massG;
    }
  }

  private beginMove(): void {
    this.touched = 0;
    this.stamp++;
    this.journaled = 0;
    this.changedDishes.length = 0;
    this.undoLength = 0;
    this.undoTrips = NO_TRIPS;
    const { saved } = this;
    saved[0] = this.sumFoodCost;
    saved[1] = this.sumTill;
    saved[2] = this.sumMissing;
    saved[6] = this.sumUnused;
    saved[3] = this.minutes;
    saved[4] = this.badBatch;
    saved[5] = this.overElapsed;
    this.savedHandsOn.set(this.handsOn);
    if (this.costing.hasCarryLimit) this.savedTripLoadG.set(this.tripLoadG);
  }

  private noteDish(dish: number): void {
    if (!this.changedDishes.includes(dish)) this.changedDishes.push(dish);
  }

  private touchFood(food: number): void {
    if (this.foodStamp[food] === this.stamp) return;
    this.foodStamp[food] = this.stamp;
    this.touchedFoods[this.touched++] = food;
  }

  private removeServing(dish: number, sitting: number): void {
    const from = dish * MOST_SERVINGS;
    const n = this.servings[dish] as number;
    let i = from;
    while (this.serving[i] !== sitting) i++;
    this.serving.copyWithin(i, i + 1, from + n);
    this.servings[dish] = n - 1;
    this.countServing(dish, sitting, n - 1, -1);
  }

  private addServing(dish: number, sitting: number): void {
    const from = dish * MOST_SERVINGS;
    const n = this.servings[dish] as number;
    let i = from + n;
    while (i > from && (this.serving[i - 1] as number) > sitting) {
      this.serving[i] = this.serving[i - 1] as number;
      i--;
    }
    this.serving[i] = sitting;
    this.servings[dish] = n + 1;
    this.countServing(dish, sitting, n, 1);
  }

  /** What a serving brings apart from its batch; `others` is how often the dish is served besides. */
  private countServing(dish: number, sitting: number, others: number, sign: number): void {
    const facts = this.problem.dishes[dish] as MenuDish;
    this.dislike += sign * facts.dislikeMinor;
    if (others >= facts.maxUses) this.overUse += sign;
    const day = this.sittingDay[sitting] as number;
    const { components } = facts;
    for (const p of this.profilesAt[sitting] as readonly number[]) {
      const e = p * this.D + day;
      this.energy[e] = (this.energy[e] as number) + sign * facts.energyKj;
      const base = p * this.J;
      for (let j = 0; j < this.J; j++) {
        this.components[base + j] = (this.components[base + j] as number) + sign * (components[j] as number);
      }
    }
    if (this.problem.sittings[sitting]?.variety) this.countVariety(dish, facts.main, sign);
  }

  private countVariety(dish: number, main: number, sign: number): void {
    const { mainMax } = this.problem.limits;
    const before = this.mainCount[main] as number;
    this.mainCount[main] = before + sign;
    this.overMain += Math.max(0, before + sign - mainMax) - Math.max(0, before - mainMax);
    const count = (this.eveningCount[dish] as number) + sign;
    this.eveningCount[dish] = count;
    if (sign > 0 && count === 1) this.distinct++;
    if (sign < 0 && count === 0) this.distinct--;
  }

  /** Adds (or takes away) all batches of a dish: its servings joined while one cooking can feed them. */
  private addBatches(dish: number, sign: number): void {
    const facts = this.problem.dishes[dish] as MenuDish;
    const from = dish * MOST_SERVINGS;
    const n = this.servings[dish] as number;
    const { batchPortions } = this.problem.limits;
    const { leftoverMinutes } = this.problem.worth;
    let cookedAt = -1;
    let cookedDay = -1;
    let size = 0;
    for (let i = 0; i < n; i++) {
      const k = this.serving[from + i] as number;
      const day = this.sittingDay[k] as number;
      const may = this.may[dish * this.K + k] as number;
      const eaten = this.portions[k] as number;
      const joins =
        cookedAt >= 0 &&
        day - cookedDay <= facts.keepsDays &&
        size + eaten <= batchPortions + 1e-9 &&
        (may & LEFTOVER) !== 0;
      if (joins) {
        size += eaten;
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
      size = eaten;
    }
    if (cookedAt >= 0) this.addCooking(dish, facts, cookedAt, size, sign);
  }

  private addCooking(dish: number, facts: MenuDish, sitting: number, size: number, sign: number): void {
    this.addMinutes(this.sittingDay[sitting] as number, sign * (facts.handsOn.fixed + facts.handsOn.perPortion * size));
    const over =
      facts.elapsed.fixed + facts.elapsed.perPortion * size - (this.problem.sittings[sitting] as MenuSitting).minutes;
    if (over > 1e-9) this.overElapsed += sign * over;
    const period = this.sittingPeriod[sitting] as number;
    const end = this.makingStart[dish + 1] as number;
    for (let m = this.makingStart[dish] as number; m < end; m++) {
      const food = this.makingFood[m] as number;
      this.touchFood(food);
      const at = food * this.T + period;
      const before = this.needG[at] as number;
      this.journalAt[this.journaled] = at;
      this.journalG[this.journaled++] = before;
      const after = before + sign * (this.makingG[m] as number) * size;
      this.needG[at] = after < 1e-9 ? 0 : after;
    }
  }

  private addMinutes(day: number, minutes: number): void {
    this.handsOn[day] = (this.handsOn[day] as number) + minutes;
    this.minutes += minutes;
  }

  private reckonTrips(): void {
    this.costing.setTrips(this.tripMade);
    this.tripCost = 0;
    this.trips = 0;
    this.tripMinutes = 0;
    this.problem.trips.forEach((trip, i) => {
      if (!this.tripMade[i]) return;
      this.trips++;
      this.tripCost += trip.costMinor;
      this.tripMinutes += trip.minutes;
    });
  }

  private tripMinutes = 0;

  private reckonTouched(): void {
    for (let i = 0; i < this.touched; i++) {
      const food = this.touchedFoods[i] as number;
      this.savedFoods.cost[i] = this.foodCost[food] as number;
      this.savedFoods.till[i] = this.foodTill[food] as number;
      this.savedFoods.missing[i] = this.foodMissing[food] as number;
      this.savedFoods.unused[i] = this.foodUnused[food] as number;
      if (this.costing.hasCarryLimit) this.saveLoads(food, i);
      this.reckonFood(food);
    }
  }

  private reckonFood(food: number): void {
    const { costing } = this;
    costing.evaluate(food, this.needG, food * this.T);
    this.sumFoodCost += costing.cost - (this.foodCost[food] as number);
    this.sumTill += costing.till - (this.foodTill[food] as number);
    this.sumMissing += costing.missing - (this.foodMissing[food] as number);
    this.sumUnused += costing.unused - (this.foodUnused[food] as number);
    this.foodCost[food] = costing.cost;
    this.foodTill[food] = costing.till;
    this.foodMissing[food] = costing.missing;
    this.foodUnused[food] = costing.unused;
    if (costing.hasCarryLimit) this.moveLoads(food);
  }

  private reckonAllFoods(): void {
    for (let food = 0; food < this.foodCost.length; food++) this.reckonFood(food);
  }

  /** Money of the plan in minor units plus penalties; `violation` is the part that is penalties. */
  total(): number {
    const { worth } = this.problem;
    this.violation = this.reckonViolation();
    let shortfall = 0;
    this.problem.profiles.forEach((profile, p) => {
      for (let i = 0; i < profile.bounds.length; i++) {
        const bound = profile.bounds[i] as (typeof profile.bounds)[number];
        const ratio = (this.components[p * this.J + bound.component] as number) / bound.amount;
        const missing = bound.kind === "at-least" ? 1 - ratio : ratio - 1;
        if (missing <= 1e-9) continue;
        if (bound.hard) this.violation += STEP_MINOR + this.penalties.bound * missing;
        else shortfall += profile.eaters * priceShortfall(missing, worth);
      }
    });
    const minutes = worth.minuteMinor * (this.minutes + this.tripMinutes);
    return this.sumFoodCost + this.tripCost + minutes + this.dislike + shortfall + this.violation;
  }

  private reckonViolation(): number {
    const { limits, profiles } = this.problem;
    const { penalties } = this;
    let v = penalties.missing * this.sumMissing + (this.sumUnused < 1e-9 ? 0 : penalties.unused * this.sumUnused);
    for (let d = 0; d < this.D; d++) {
      const over = (this.handsOn[d] as number) - (limits.handsOnMinutes[d] as number);
      if (over > 1e-6) v += STEP_MINOR + penalties.minute * over;
    }
    for (let p = 0; p < profiles.length; p++) {
      const wanted = (profiles[p] as (typeof profiles)[number]).energyKj;
      for (let d = 0; d < this.D; d++) {
        const want = wanted[d] as number;
        if (want <= 0) continue;
        const off = Math.abs((this.energy[p * this.D + d] as number) / want - 1) - limits.energyTolerance;
        if (off > 1e-9) v += STEP_MINOR + penalties.energy * off;
      }
    }
    if (this.overElapsed > 1e-6) v += STEP_MINOR + penalties.minute * this.overElapsed;
    v += penalties.use * this.overUse + penalties.batch * this.badBatch + penalties.main * this.overMain;
    if (this.distinct < limits.distinct) v += penalties.distinct * (limits.distinct - this.distinct);
    const paid = this.sumTill + this.tripCost;
    if (limits.budgetMinor !== undefined && paid > limits.budgetMinor + 1e-6) {
      v += STEP_MINOR + penalties.budget * (paid - limits.budgetMinor);
    }
    if (this.costing.hasCarryLimit) {
      for (let trip = 0; trip < this.tripLoadG.length; trip++) {
        const over = (this.tripLoadG[trip] as number) - (this.problem.trips[trip]?.carryG ?? Infinity);
        if (over > 1e-3) v += STEP_MINOR + (penalties.carry * over) / 1000;
      }
    }
    if (this.trips > limits.maxTrips) v += penalties.trip * (this.trips - limits.maxTrips);
    return v;
  }
}

/** Price of missing a soft bound by the share `missing` (0..): cheap up to the knee, dear beyond it. */
export function priceShortfall(missing: number, worth: MenuProblem["worth"]): number {
  const { shortfallFirstMinor, shortfallRestMinor, shortfallKnee } = worth;
  if (missing <= shortfallKnee) return shortfallFirstMinor * missing;
  return shortfallFirstMinor * shortfallKnee + shortfallRestMinor * (missing - shortfallKnee);
}

function tabulateMay(problem: MenuProblem): Uint8Array {
  const K = problem.sittings.length;
  const may = new Uint8Array(problem.dishes.length * K);
  const isHad = tabulateSupply(problem);
  problem.sittings.forEach((sitting, k) => {
    for (const r of sitting.dishes) {
      const dish = problem.dishes[r] as MenuDish;
      if (sitting.packed && !(dish.travels && dish.servedCold)) continue;
      const quick = dish.elapsed.fixed + dish.elapsed.perPortion * sitting.portions <= sitting.minutes + 1e-9;
      const fresh =
        quick &&
        (sitting.heat || !dish.needsHeat) &&
        dish.makings.every((m) => isHad(m.food, m.massG * sitting.portions, sitting));
      const leftover = dish.servedCold || (sitting.heat && !sitting.packed);
      may[r * K + k] = (fresh ? FRESH : 0) | (leftover ? LEFTOVER : 0);
    }
  });
  return may;
}

/** Whether so many grams of a food can be there for a sitting at all: from the stores, or from any trip before it. */
function tabulateSupply(problem: MenuProblem): (food: number, massG: number, sitting: MenuSitting) => boolean {
  const firstTrip = problem.foods.map(() => Infinity);
  for (const { food, shop, fromDay, toDay } of problem.packs) {
    for (const trip of problem.trips) {
      const sold = trip.shop === shop && trip.day >= fromDay && trip.day <= toDay;
      if (sold && trip.period < (firstTrip[food] as number)) firstTrip[food] = trip.period;
    }
  }
  const lotsOf = problem.foods.map((_, food) => problem.lots.filter((lot) => lot.food === food));
  return (food, massG, { period, day }) => {
    if ((firstTrip[food] as number) <= period) return true;
    const stockG = (lotsOf[food] ?? []).reduce((sum, lot) => (lot.lastDay >= day ? sum + lot.massG : sum), 0);
    return stockG >= massG - 1e-6;
  };
}
