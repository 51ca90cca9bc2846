import type { LinearRow } from "../linear/LinearModel.ts";
import type { FoodMeasure } from "./listMeasures.ts";
import type { DishServings } from "./reckonServings.ts";
import type { WeeklyFacts } from "./WeeklyFacts.ts";

/** A cut with how far a point breaks it, scaled so that cuts compare. */
export interface ViolatedCut {
  readonly row: LinearRow;
  readonly violation: number;
}

/** Masses and what earlier dishes of a cut already charge for them. */
interface Charged {
  readonly massG: number;
  readonly charge: number;
}

/** One dish's use of a food: its levels' columns, the grams for 1, 2, ... servings and what those would cost alone. */
interface DishLevels {
  readonly columns: readonly string[];
  readonly needs: readonly number[];
  readonly alone: readonly number[];
}

/** Levels with their values at a point. */
interface PresentLevels extends DishLevels {
  readonly at: readonly number[];
  readonly charge: number;
}

/** Charges of the dishes lifted so far, and the sums they can bring. */
interface Lifted {
  readonly charges: number[][];
  readonly sums: readonly Charged[];
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
        return { columns, needs, alone: needs.map((need) => Math.min(1e9, measure.least(need))) };
      }),
    }));
  }

  /** Cuts that the point breaks; at most one or two a food and measure. */
  separate(point: (column: string) => number): ViolatedCut[] {
    return this.measures.flatMap(({ measure, levels }) => this.separateFood(measure, levels, point));
  }

  private separateFood(
    measure: FoodMeasure,
    levels: readonly DishLevels[],
    point: (column: string) => number,
  ): ViolatedCut[] {
    const { food, paid, least } = measure;
    const paying = paid.reduce((sum, [column, cost]) => sum + cost * point(column), 0);
    const present: PresentLevels[] = [];
    const absent: DishLevels[] = [];
    for (const one of levels) {
      const at = one.columns.map((column) => Math.max(0, point(column)));
      if (at.some((value) => value > 1e-7)) present.push({ ...one, at, charge: dot(at, one.alone) });
      else absent.push(one);
    }
    // Dishes share what they use: together they never cost more than each alone.
    if (present.reduce((sum, { charge }) => sum + charge, 0) - paying <= LEAST_VIOLATION) return [];
    present.sort((a, b) => b.charge - a.charge);
    const reachG = this.facts.reachG[food] as number;
    let best: { violation: number; order: PresentLevels[]; lifted: Lifted } | undefined;
    for (let first = 0; first < Math.min(MOST_ORDERS, present.length); first++) {
      const order = [present[first] as PresentLevels, ...present.filter((_, i) => i !== first)];
      const lifted = liftLevels(order, least, reachG);
      const charged = order.reduce((sum, { at }, d) => sum + dot(at, lifted.charges[d] as number[]), 0);
      const violation = (charged - paying) / Math.max(1, ...lifted.charges.flat());
      if (violation > LEAST_VIOLATION && violation > (best?.violation ?? 0)) best = { violation, order, lifted };
    }
    if (best === undefined) return [];
    const { charges } = liftLevels(absent, least, reachG, best.lifted);
    return [{ violation: best.violation, row: this.toRow(measure, [...best.order, ...absent], charges) }];
  }

  private toRow(
    { food, name: measure, paid }: FoodMeasure,
    order: readonly DishLevels[],
    charges: readonly (readonly number[])[],
  ): LinearRow {
    const scale = Math.max(1, ...charges.flat());
    const entries = charges.flatMap((list, d) =>
      list.flatMap((v, i): [string, number][] => (v > 0 ? [[order[d]?.columns[i] as string, -v / scale]] : [])),
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

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}

/** Charges of the levels of each dish in turn, after those of the dishes that were lifted before. */
function liftLevels(
  order: readonly { readonly needs: readonly number[] }[],
  least: (needG: number) => number,
  reachG: number,
  after: Lifted = { charges: [], sums: [{ massG: 0, charge: 0 }] },
): Lifted {
  let { sums } = after;
  const charges = order.map(({ needs }) => {
    const levels = needs.map((need) => {
      let room = Number.POSITIVE_INFINITY;
      for (const { massG, charge } of sums) room = Math.min(room, least(massG + need) - charge);
      return Number.isFinite(room) ? Math.max(0, room * (1 - 1e-9) - 1e-7) : 0;
    });
    if (levels.some((charge) => charge > 0)) sums = join(sums, needs, levels, reachG);
    return levels;
  });
  return { charges: [...after.charges, ...charges], sums };
}

/** All sums of an earlier choice and one level of this dish that no other sum beats; merged where there are too many. */
function join(
  before: readonly Charged[],
  needs: readonly number[],
  charges: readonly number[],
  reachG: number,
): Charged[] {
  const all = [...before];
  for (const { massG, charge } of before) {
    needs.forEach((need, i) => {
      if ((charges[i] as number) > 0 && massG + need <= reachG + 1)
        all.push({ massG: massG + need, charge: charge + (charges[i] as number) });
    });
  }
  all.sort((a, b) => a.massG - b.massG || b.charge - a.charge);
  const kept: Charged[] = [];
  let top = -1;
  for (const one of all) {
    if (one.charge <= top) continue;
    top = one.charge;
    kept.push(one);
  }
  return kept.length <= MOST_CHARGED ? kept : mergePairs(kept);
}

/** A pair becomes the lesser mass with the greater charge, which allows no more than either. */
function mergePairs(sorted: readonly Charged[]): Charged[] {
  const merged: Charged[] = [sorted[0] as Charged];
  for (let i = 1; i < sorted.length; i += 2) {
    const massG = (sorted[i] as Charged).massG;
    merged.push({ massG, charge: (sorted[i + 1] ?? (sorted[i] as Charged)).charge });
  }
  return merged.length <= MOST_CHARGED ? merged : mergePairs(merged);
}
