import type { Purchase } from "../plan.ts";
import type { MenuPack, MenuProblem, MenuTrip } from "../problem.ts";
import type { CoverTable } from "./CoverTable.ts";
import type { Package } from "./giveOut.ts";
import { DUST_G } from "./Needs.ts";
import type { FoodSources } from "./Sources.ts";
import type { WeekState } from "./WeekState.ts";

/** Packs of one kind for one opening, or for a food that lasts. */
interface Bought {
  trip: number;
  readonly pack: number;
  readonly count: number;
  /** Openings of a food that goes off, in their order; 0 for a food that lasts. */
  readonly opening: number;
  /** Last period by which the pack is wanted. */
  readonly by: number;
  /** A purchase of a lasting food may move to any earlier trip; the others stay where they are. */
  readonly movable: boolean;
}

/** The purchases of a state, and the bought packs of each food by opening. */
export function buyFoods(
  state: WeekState,
  needed: readonly boolean[],
): { readonly purchases: Purchase[]; readonly openings: readonly Package[][][] } {
  const { problem } = state;
  const bought = problem.foods.flatMap((_, food) => (needed[food] ? buyFood(state, food) : []));
  lightenTrips(problem, state, bought);
  const purchases = mergePurchases(bought);
  return { purchases, openings: sortIntoOpenings(problem, purchases, bought) };
}

function buyFood(state: WeekState, food: number): Bought[] {
  const sources = state.costing.foods[food] as FoodSources;
  const needs = state.needsOf(food);
  if (sources.lasting) return buyLasting(state, food, sources, needs);
  state.costing.evaluate(food, needs, 0);
  return state.costing
    .openings()
    .flatMap(({ table, row, trip, period }, opening) =>
      packsOf(table, row).map((packs) => ({ ...packs, trip, opening, by: period, movable: false })),
    );
}

function packsOf(table: CoverTable, row: number): { pack: number; count: number }[] {
  const { items, counts } = table;
  return items.flatMap((item, i) => {
    const count = (counts[row * items.length + i] as number) * item.count;
    return count > 0 ? [{ pack: item.pack, count }] : [];
  });
}

function buyLasting(state: WeekState, food: number, sources: FoodSources, needs: Float64Array): Bought[] {
  const { problem, costing } = state;
  const stock = problem.lots.reduce((sum, lot) => sum + (lot.food === food ? lot.massG : 0), 0);
  let total = 0;
  let first = -1;
  needs.forEach((need, period) => {
    total += need;
    if (first < 0 && total > stock + DUST_G) first = period;
  });
  const cover = first < 0 ? undefined : costing.cheapestLasting(sources, first, total - stock);
  if (!cover) return [];
  const { table, row, special } = cover;
  const regular = table ? packsOf(table, row) : [];
  const reduced = special ? packsOf(special.source.table, special.row) : [];
  return [
    ...regular.map(({ pack, count }) => {
      const trip = costing.trips.latest(problem.packs[pack]?.shop as number, first);
      return { pack, count, trip, opening: 0, by: first, movable: true };
    }),
    ...reduced.map((packs) => ({ ...packs, trip: special?.trip as number, opening: 0, by: first, movable: false })),
  ];
}

/** Moves lasting packs off trips that are too heavy to others that are made in time. */
function lightenTrips(problem: MenuProblem, state: WeekState, bought: readonly Bought[]): void {
  const massOf = ({ pack, count }: Bought): number => count * (problem.packs[pack] as MenuPack).massG;
  const load = problem.trips.map(() => 0);
  for (const one of bought) load[one.trip] = (load[one.trip] as number) + massOf(one);
  for (const one of bought) {
    const from = problem.trips[one.trip] as MenuTrip;
    if (!one.movable || (load[one.trip] as number) <= (from.carryG ?? Infinity)) continue;
    const to = problem.trips.findIndex(
      (trip, t) =>
        state.tripMade[t] &&
        t !== one.trip &&
        trip.shop === from.shop &&
        trip.period <= one.by &&
        (load[t] as number) + massOf(one) <= (trip.carryG ?? Infinity),
    );
    // An offer holds for what is on one bill, so packs of a kind stay together.
    if (to < 0 || bought.some((other) => other !== one && other.pack === one.pack)) continue;
    load[one.trip] = (load[one.trip] as number) - massOf(one);
    load[to] = (load[to] as number) + massOf(one);
    one.trip = to;
  }
}

function mergePurchases(bought: readonly Bought[]): Purchase[] {
  const merged = new Map<string, Purchase>();
  for (const { trip, pack, count } of bought) {
    const key = `${trip} ${pack}`;
    merged.set(key, { trip, pack, count: count + (merged.get(key)?.count ?? 0) });
  }
  return [...merged.values()].sort((a, b) => a.trip - b.trip || a.pack - b.pack);
}

/** Which copy of which purchase belongs to which opening, by food and opening. */
function sortIntoOpenings(
  problem: MenuProblem,
  purchases: readonly Purchase[],
  bought: readonly Bought[],
): Package[][][] {
  const used = purchases.map(() => 0);
  const openings: Package[][][] = problem.foods.map(() => []);
  for (const { trip, pack, count, opening, by } of bought) {
    const purchase = purchases.findIndex((one) => one.trip === trip && one.pack === pack);
    const ofFood = openings[problem.packs[pack]?.food as number] as Package[][];
    ofFood[opening] ??= [];
    for (let i = 0; i < count; i++) {
      const copy = used[purchase] as number;
      used[purchase] = copy + 1;
      ofFood[opening]?.push({ purchase, copy, trip, pack, period: by });
    }
  }
  return openings;
}
