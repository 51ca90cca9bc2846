import type { RandomSource } from "../../quantity/index.ts";
import type { MenuProblem, MenuSitting } from "../problem.ts";
import { Availability } from "./Availability.ts";
import type { Change, WeekState } from "./WeekState.ts";

/** Draws at most; the last one stands, whether or not its makings can be had. */
const DRAWS = 4;

/** Dishes to draw from at each sitting, by weights that the search learns from the plans it liked. */
export class Candidates {
  /** Dishes that can be cooked for the sitting; where there are none, those that can be served there. */
  readonly at: readonly (readonly number[])[];
  private readonly group: Int32Array;
  private readonly groups: { dishes: readonly number[]; upTo: Float64Array }[] = [];
  private readonly dishesWith: readonly (readonly number[])[];
  private readonly datedMakings: readonly (readonly number[])[];

  private readonly peers: readonly (readonly number[])[];
  private readonly byDay: readonly (readonly number[])[];
  private readonly state: WeekState;
  private readonly availability: Availability;

  /** For each wish that asks for servings, those that would count for it. */
  private readonly wished: readonly (readonly Change[])[];

  constructor(problem: MenuProblem, state: WeekState) {
    this.state = state;
    this.wished = (problem.wishes ?? []).flatMap(({ dishes, sittings, least = 0 }) => {
      const servings = dishes.flatMap((dish) =>
        sittings.flatMap((sitting) => (state.mayServe(dish, sitting) ? [{ sitting, dish }] : [])),
      );
      return least > 0 && servings.length > 0 ? [servings] : [];
    });
    this.availability = new Availability(problem, state.costing);
    this.at = problem.sittings.map((sitting, k) => {
      const fresh = sitting.dishes.filter((r) => state.mayCook(r, k));
      return fresh.length > 0 ? fresh : sitting.dishes.filter((r) => state.mayServe(r, k));
    });
    this.peers = this.at.map((_, k) =>
      this.at.flatMap((dishes, other) =>
        other === k || dishes.some((dish) => state.mayServe(dish, k)) ? [other] : [],
      ),
    );
    this.byDay = Array.from({ length: problem.days }, (_, day) =>
      problem.sittings.flatMap((sitting, k) => (sitting.day === day ? [k] : [])),
    );
    this.group = new Int32Array(this.at.length);
    const known = new Map<string, number>();
    this.at.forEach((dishes, k) => {
      const key = dishes.join(",");
      let at = known.get(key);
      if (at === undefined) {
        at = this.groups.length;
        known.set(key, at);
        this.groups.push({ dishes, upTo: new Float64Array(dishes.length) });
      }
      this.group[k] = at;
    });
    this.setWeights(() => 1);
    const dated = problem.foods.map((_, food) => !state.costing.foods[food]?.lasting);
    this.datedMakings = problem.dishes.map((dish) => dish.makings.map((m) => m.food).filter((food) => dated[food]));
    this.dishesWith = problem.foods.map((_, food) =>
      dated[food] ? problem.dishes.flatMap((dish, r) => (dish.makings.some((m) => m.food === food) ? [r] : [])) : [],
    );
  }

  /** True where some sitting has no dish at all. */
  get hasGap(): boolean {
    return this.at.some((dishes) => dishes.length === 0);
  }

  /** The sittings, this one too, that have a dish in common with this one. */
  peersOf(sitting: number): readonly number[] {
    return this.peers[sitting] as readonly number[];
  }

  /** The sittings of a day. */
  sittingsOf(day: number): readonly number[] {
    return this.byDay[day] as readonly number[];
  }

  /** Sets the weight with which each dish is drawn, by one of the sittings of its group. */
  setWeights(weight: (dish: number, sitting: number) => number): void {
    this.groups.forEach((group, g) => {
      const sitting = this.group.indexOf(g);
      let sum = 0;
      group.dishes.forEach((dish, i) => {
        sum += weight(dish, sitting);
        group.upTo[i] = sum;
      });
    });
  }

  /** A dish for the sitting by its weight, of makings that can be had if that is soon found; -1 where there is none. */
  draw(sitting: number, random: RandomSource): number {
    const { period } = this.state.problem.sittings[sitting] as MenuSitting;
    let dish = this.drawAny(sitting, random);
    for (let draws = 1; draws < DRAWS && dish >= 0 && !this.availability.hasAll(dish, period); draws++) {
      dish = this.drawAny(sitting, random);
    }
    return dish;
  }

  get hasWishes(): boolean {
    return this.wished.length > 0;
  }

  /** A serving that counts for one of the wishes. */
  drawWished(random: RandomSource): Change {
    const servings = this.wished[Math.floor(random() * this.wished.length)] as readonly Change[];
    return servings[Math.floor(random() * servings.length)] as Change;
  }

  private drawAny(sitting: number, random: RandomSource): number {
    const { dishes, upTo } = this.groups[this.group[sitting] as number] as {
      dishes: readonly number[];
      upTo: Float64Array;
    };
    const x = random() * (upTo[upTo.length - 1] as number);
    let low = 0;
    let high = upTo.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((upTo[middle] as number) <= x) low = middle + 1;
      else high = middle;
    }
    return dishes[low] ?? -1;
  }

  /** A dish for the sitting that shares a food that does not last with `dish`, or -1. */
  drawSharing(dish: number, sitting: number, random: RandomSource): number {
    const foods = this.datedMakings[dish] ?? [];
    if (foods.length === 0) return -1;
    const food = foods[Math.floor(random() * foods.length)] as number;
    const dishes = this.dishesWith[food] as readonly number[];
    for (let tries = 0; tries < 4; tries++) {
      const other = dishes[Math.floor(random() * dishes.length)] as number;
      if (other !== dish && this.state.mayCook(other, sitting)) return other;
    }
    return -1;
  }
}
