import type { LinearRow } from "../linear/LinearModel.ts";
import type { FoodMeasure } from "./listMeasures.ts";
import type { DishServings } from "./reckonServings.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/** A cut with how far a point breaks it, scaled so that cuts compare. */
export interface ViolatedCut {
  readonly row: LinearRow;
  readonly violation: number;
}

/** One dish's use of a food: its levels' columns, the grams for 1, 2, ... servings and what those would cost alone. */
interface DishLevels {
  readonly dish: number;
  readonly columns: readonly string[];
  readonly needs: readonly number[];
  readonly alone: readonly number[];
}

/** Levels with their values at a point. */
interface PresentLevels extends DishLevels {
  readonly at: Float64Array;
  readonly charge: number;
}

/** Masses that the choices made so far can come to, ascending, each with the most that is charged for it or less. */
interface Charged {
  readonly massG: Float64Array;
  readonly charge: Float64Array;
}

/** Charges of the dishes lifted so far, and the sums they can bring. */
interface Lifted {
  readonly charges: readonly Float64Array[];
  readonly sums: Charged;
}

const MOST_CHARGED = 160;
/** Dishes that are tried in the first place. */
const MOST_ORDERS = 4;
const LEAST_VIOLATION = 1e-4;

/**
 * Level cuts over several dishes. With phi(m) the least cost of units that hold m grams of a food, and a(r,k) the
 * grams that k servings of dish r need at least, the cut
 *
 *     sum of cost n[f,i] >= sum over r, k of v(r,k) l[r,k]
 *
 * holds where for every choice of one level k(r) a dish   sum of v(r, k(r)) <= phi(sum of a(r, k(r))).
 * Dishes are lifted one after another: v(r,k) is the least of phi(m + a(r,k)) - V over all masses m and charges V that
 * the earlier dishes can bring. The first dish gets its whole cover cost; which comes first decides the cut.
 *
 * **Source**: sequential lifting after Balas, Facets of the knapsack polytope, Mathematical Programming 8 (1975).
 */
export class LevelCuts {
  private readonly facts: WeeklyFacts;
  private readonly measures: readonly { readonly measure: FoodMeasure; readonly levels: readonly DishLevels[] }[];
  private made = 0;

  constructor(facts: WeeklyFacts, measures: readonly FoodMeasure[]) {
    this.facts = facts;
    this.measures = measures.map((measure) => ({
      measure,
      levels: (facts.users[measure.food] ?? []).map(({ dish, massG }): DishLevels => {
        const { fewestPortions } = facts.servings[dish] as DishServings;
        const columns = facts.levels[dish] as readonly string[];
        const needs = columns.map((_, i) => massG * (fewestPortions[i + 1] as number));
        return { dish, columns, needs, alone: needs.map((need) => Math.min(1e9, measure.least(need))) };
      }),
    }));
  }

  /** Cuts that the point breaks; at most one or two a food and measure. */
  separate(point: (column: string) => number): ViolatedCut[] {
    const served = this.facts.levels.map((columns) => readLevels(columns, point));
    return this.measures.flatMap(({ measure, levels }) => this.separateFood(measure, levels, served, point));
  }

  private separateFood(
    measure: FoodMeasure,
    levels: readonly DishLevels[],
    served: readonly (Float64Array | undefined)[],
    point: (column: string) => number,
  ): ViolatedCut[] {
    const { food, paid, least } = measure;
    let paying = 0;
    for (const [column, cost] of paid) paying += cost * point(column);
    const present: PresentLevels[] = [];
    let alone = 0;
    for (const one of levels) {
      const at = served[one.dish];
      if (at === undefined) continue;
      const charge = dot(at, one.alone);
      present.push({ ...one, at, charge });
      alone += charge;
    }
    // Dishes share what they use: together they never cost more than each alone.
    if (alone - paying <= LEAST_VIOLATION) return [];
    present.sort((a, b) => b.charge - a.charge);
    const reachG = this.facts.reachG[food] as number;
    let best: { violation: number; order: PresentLevels[]; lifted: Lifted } | undefined;
    for (let first = 0; first < Math.min(MOST_ORDERS, present.length); first++) {
      const order = [present[first] as PresentLevels, ...present.filter((_, i) => i !== first)];
      const lifted = liftLevels(order, least, reachG);
      let charged = 0;
      for (let d = 0; d < order.length; d++)
        charged += dot((order[d] as PresentLevels).at, lifted.charges[d] as Float64Array);
      const violation = (charged - paying) / scaleOf(lifted.charges);
      if (violation > LEAST_VIOLATION && violation > (best?.violation ?? 0)) best = { violation, order, lifted };
    }
    if (best === undefined) return [];
    const absent = levels.filter(({ dish }) => served[dish] === undefined);
    const { charges } = liftLevels(absent, least, reachG, best.lifted);
    return [{ violation: best.violation, row: this.toRow(measure, [...best.order, ...absent], charges) }];
  }

  private toRow(
    { food, name: measure, paid }: FoodMeasure,
    order: readonly DishLevels[],
    charges: readonly Float64Array[],
  ): LinearRow {
    const scale = scaleOf(charges);
    const entries = charges.flatMap((list, d) =>
      [...list].flatMap((v, i): [string, number][] => (v > 0 ? [[order[d]?.columns[i] as string, -v / scale]] : [])),
    );
    const name = `lift ${measure} ${food} ${this.made++}`;
    return {
      name,
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
      entries: [
        ...paid.filter(([, cost]) => cost > 0).map(([column, cost]) => [column, cost / scale] as const),
        ...entries,
      ],
    };
  }
}

/** Values of the levels of a dish; undefined where it has none. */
function readLevels(columns: readonly string[], point: (column: string) => number): Float64Array | undefined {
  const at = new Float64Array(columns.length);
  let any = false;
  for (let i = 0; i < at.length; i++) {
    const value = point(columns[i] as string);
    if (value > 1e-7) any = true;
    at[i] = Math.max(0, value);
  }
  return any ? at : undefined;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** The dearest charge, or 1. */
function scaleOf(charges: readonly Float64Array[]): number {
  let scale = 1;
  for (const list of charges) for (let i = 0; i < list.length; i++) scale = Math.max(scale, list[i] as number);
  return scale;
}

const NOTHING: Charged = { massG: new Float64Array(1), charge: new Float64Array(1) };

/** Charges of the levels of each dish in turn, after those of the dishes that were lifted before. */
function liftLevels(
  order: readonly { readonly needs: readonly number[] }[],
  least: (needG: number) => number,
  reachG: number,
  after: Lifted = { charges: [], sums: NOTHING },
): Lifted {
  let { sums } = after;
  const charges = [...after.charges];
  for (const { needs } of order) {
    const levels = new Float64Array(needs.length);
    const { massG, charge } = sums;
    for (let k = 0; k < levels.length; k++) {
      const need = needs[k] as number;
      let room = Number.POSITIVE_INFINITY;
      for (let i = 0; i < massG.length && room > 0; i++)
        room = Math.min(room, least((massG[i] as number) + need) - (charge[i] as number));
      levels[k] = Number.isFinite(room) ? Math.max(0, room * (1 - 1e-9) - 1e-7) : 0;
    }
    charges.push(levels);
    sums = join(sums, needs, levels, reachG);
  }
  return { charges, sums };
}

/** All sums of an earlier choice and one level of this dish that no other sum beats; merged where there are too many. */
function join(before: Charged, needs: readonly number[], charges: Float64Array, reachG: number): Charged {
  let all = before;
  for (let k = 0; k < charges.length; k++) {
    const charge = charges[k] as number;
    if (charge > 0) all = merge(all, before, needs[k] as number, charge, reachG);
  }
  while (all.massG.length > MOST_CHARGED) all = mergePairs(all);
  return all;
}

/** The best of two lists, the second with more mass and charge; each keeps only what charges more than all lighter ones. */
function merge(a: Charged, b: Charged, moreG: number, moreCharge: number, reachG: number): Charged {
  const massG = new Float64Array(a.massG.length + b.massG.length);
  const charge = new Float64Array(massG.length);
  let count = 0;
  let [i, j, top] = [0, 0, -1];
  while (i < a.massG.length || j < b.massG.length) {
    const left = i < a.massG.length ? (a.massG[i] as number) : Number.POSITIVE_INFINITY;
    const right = j < b.massG.length ? (b.massG[j] as number) + moreG : Number.POSITIVE_INFINITY;
    const isLeft = left <= right;
    const value = isLeft ? (a.charge[i++] as number) : (b.charge[j++] as number) + moreCharge;
    if (value <= top || (!isLeft && right > reachG + 1)) continue;
    top = value;
    const at = count > 0 && massG[count - 1] === (isLeft ? left : right) ? count - 1 : count++;
    massG[at] = isLeft ? left : right;
    charge[at] = value;
  }
  return { massG: massG.slice(0, count), charge: charge.slice(0, count) };
}

/** A pair becomes the lesser mass with the greater charge, which allows no more than either. */
function mergePairs({ massG, charge }: Charged): Charged {
  const count = 1 + ((massG.length - 1) >> 1) + ((massG.length - 1) & 1);
  const merged = { massG: new Float64Array(count), charge: new Float64Array(count) };
  merged.massG[0] = massG[0] as number;
  merged.charge[0] = charge[0] as number;
  for (let at = 1; at < count; at++) {
    const i = 2 * at - 1;
    merged.massG[at] = massG[i] as number;
    merged.charge[at] = charge[Math.min(i + 1, charge.length - 1)] as number;
  }
  return merged;
}
