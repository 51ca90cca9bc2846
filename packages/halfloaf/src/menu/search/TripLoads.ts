import type { MenuProblem } from "../problem.ts";
import { type FoodCosting, MOST_LOADS } from "./FoodCosting.ts";
import { charge, type Penalties } from "./Penalties.ts";

interface Loads {
  readonly count: Uint8Array;
  readonly trip: Int16Array;
  readonly massG: Float64Array;
}

function createLoads(foods: number): Loads {
  return {
    count: new Uint8Array(foods),
    trip: new Int16Array(foods * MOST_LOADS),
    massG: new Float64Array(foods * MOST_LOADS),
  };
}

function copyLoads(from: Loads, at: number, to: Loads, into: number): void {
  const count = from.count[at] as number;
  to.count[into] = count;
  for (let j = 0; j < count; j++) {
    to.trip[into * MOST_LOADS + j] = from.trip[at * MOST_LOADS + j] as number;
    to.massG[into * MOST_LOADS + j] = from.massG[at * MOST_LOADS + j] as number;
  }
}

/** What each trip carries home, food by food; kept only where some trip has a limit. */
export class TripLoads {
  private readonly problem: MenuProblem;
  private readonly ofFood: Loads;
  private readonly saved: Loads;
  private readonly sumG: Float64Array;
  private readonly savedSumG: Float64Array;

  constructor(problem: MenuProblem) {
    this.problem = problem;
    this.ofFood = createLoads(problem.foods.length);
    this.saved = createLoads(problem.foods.length);
    this.sumG = new Float64Array(problem.trips.length);
    this.savedSumG = new Float64Array(problem.trips.length);
  }

  begin(): void {
    this.savedSumG.set(this.sumG);
  }

  /** Keeps what is bought of a food as the `i`-th thing to restore. */
  save(food: number, i: number): void {
    copyLoads(this.ofFood, food, this.saved, i);
  }

  /** Takes the old purchases of a food off the trips and puts on those just evaluated. */
  move(food: number, costing: FoodCosting): void {
    const { ofFood, sumG } = this;
    const at = food * MOST_LOADS;
    for (let j = 0; j < (ofFood.count[food] as number); j++) {
      const trip = ofFood.trip[at + j] as number;
      sumG[trip] = (sumG[trip] as number) - (ofFood.massG[at + j] as number);
    }
    ofFood.count[food] = costing.loads;
    for (let j = 0; j < costing.loads; j++) {
      const trip = costing.loadTrip[j] as number;
      const massG = costing.loadG[j] as number;
      ofFood.trip[at + j] = trip;
      ofFood.massG[at + j] = massG;
      sumG[trip] = (sumG[trip] as number) + massG;
    }
  }

  undo(foods: Int32Array, count: number): void {
    for (let i = 0; i < count; i++) copyLoads(this.saved, i, this.ofFood, foods[i] as number);
    this.sumG.set(this.savedSumG);
  }

  violation(penalties: Penalties): number {
    let v = 0;
    for (let trip = 0; trip < this.sumG.length; trip++) {
      const over = (this.sumG[trip] as number) - (this.problem.trips[trip]?.carryG ?? Infinity);
      if (over > 1e-3) v += charge(penalties.carry, over / 1000);
    }
    return v;
  }
}
