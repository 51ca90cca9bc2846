import type { MenuPlan, PlannedBatch, Purchase, Use } from "../plan.ts";
import type { MenuDish, MenuLot, MenuPack, MenuProblem, MenuTrip } from "../problem.ts";
import type { CoverTable } from "./CoverTable.ts";
import type { WeekState } from "./WeekState.ts";

const DUST_G = 1e-6;

/** A lot of the start or a bought pack, while its grams are given to batches. */
interface Container {
  readonly lot: Use["lot"];
  left: number;
  /** First period it can be used in, and the last day. */
  readonly fromPeriod: number;
  lastDay: number;
  opened: boolean;
  readonly openedDays: number;
}

interface Demand {
  readonly batch: number;
  readonly period: number;
  readonly day: number;
  left: number;
}

/** A purchase of a lasting food may move to any earlier trip; the others stay where they are. */
interface Bought extends Purchase {
  /** Last period by which the pack is wanted. */
  readonly by: number;
  readonly movable: boolean;
}

/**
 * The plan that a state of the search stands for: its batches, the cheapest purchases on its trips, and which
 * lot feeds which batch (first expired, first out).
 */
export function decodePlan(state: WeekState): MenuPlan {
  const { problem } = state;
  const batches = joinBatches(state);
  const bought: Bought[] = [];
  const demands = gatherDemands(problem, batches);
  problem.foods.forEach((_, food) => {
    if (demands[food]?.length || problem.lots.some((lot) => lot.food === food)) buyFood(state, food, bought);
  });
  const purchases = spreadLoads(problem, state, bought);
  const uses = problem.foods.flatMap((_, food) => giveOut(problem, food, purchases, demands[food] ?? []));
  const trips = problem.trips.flatMap((_, trip) => (state.tripMade[trip] ? [trip] : []));
  return { batches, trips, purchases: purchases.map(({ trip, pack, count }) => ({ trip, pack, count })), uses };
}

/** Joins the sittings of each dish into batches as the search does: each as long as it keeps and fits the pot. */
function joinBatches(state: WeekState): PlannedBatch[] {
  const { problem } = state;
  const batches: { dish: number; sittings: number[] }[] = [];
  problem.dishes.forEach((dish, r) => {
    let open: { dish: number; sittings: number[] } | undefined;
    let portions = 0;
    let cookedDay = 0;
    for (const k of state.sittingsOf(r)) {
      const sitting = problem.sittings[k] as MenuProblem["sittings"][number];
      const leftover = dish.servedCold || (sitting.heat && !sitting.packed);
      const joins =
        open &&
        leftover &&
        sitting.day - cookedDay <= dish.keepsDays &&
        portions + sitting.portions <= problem.limits.batchPortions + 1e-9;
      if (open && joins) {
        open.sittings.push(k);
        portions += sitting.portions;
      } else {
        open = { dish: r, sittings: [k] };
        batches.push(open);
        portions = sitting.portions;
        cookedDay = sitting.day;
      }
    }
  });
  return batches.sort((a, b) => (a.sittings[0] as number) - (b.sittings[0] as number));
}

function gatherDemands(problem: MenuProblem, batches: readonly PlannedBatch[]): Demand[][] {
  const demands: Demand[][] = problem.foods.map(() => []);
  batches.forEach((batch, index) => {
    const cooked = problem.sittings[batch.sittings[0] as number] as MenuProblem["sittings"][number];
    const portions = batch.sittings.reduce((sum, k) => sum + (problem.sittings[k]?.portions as number), 0);
    for (const { food, massG } of (problem.dishes[batch.dish] as MenuDish).makings) {
      demands[food]?.push({ batch: index, period: cooked.period, day: cooked.day, left: massG * portions });
    }
  });
  for (const list of demands) list.sort((a, b) => a.period - b.period || a.batch - b.batch);
  return demands;
}

function addRow(
  problem: MenuProblem,
  table: CoverTable,
  row: number,
  tripOf: (pack: MenuPack) => number,
  by: number,
  movable: boolean,
  into: Bought[],
): void {
  table.items.forEach((item, i) => {
    const count = (table.counts[row * table.items.length + i] as number) * item.count;
    if (count > 0)
      into.push({ trip: tripOf(problem.packs[item.pack] as MenuPack), pack: item.pack, count, by, movable });
  });
}

function buyFood(state: WeekState, food: number, bought: Bought[]): void {
  const { problem, costing } = state;
  const sources = costing.foods[food];
  const needs = state.needsOf(food);
  if (!sources) return;
  if (!sources.lasting) {
    costing.evaluate(food, needs, 0);
    for (const { source, row, trip, period } of costing.openings())
      addRow(problem, source.table, row, () => trip, period, false, bought);
    return;
  }
  const stock = problem.lots.reduce((sum, lot) => sum + (lot.food === food ? lot.massG : 0), 0);
  let total = 0;
  let first = -1;
  needs.forEach((need, period) => {
    total += need;
    if (first < 0 && total > stock + DUST_G) first = period;
  });
  if (first < 0) return;
  const cover = costing.cheapestLasting(sources, first, total - stock);
  if (!cover) return;
  const regular = sources.sources.filter((source) => source.regular);
  const tripOf = (pack: MenuPack): number => {
    const source = regular.find((candidate) => candidate.shop === pack.shop);
    return source ? costing.tripFor(source, first) : -1;
  };
  if (cover.table && cover.row >= 0) addRow(problem, cover.table, cover.row, tripOf, first, true, bought);
  const { special } = cover;
  if (special) addRow(problem, special.source.table, special.row, () => special.trip, first, false, bought);
}

/** Merges purchases of one pack on one trip, then moves lasting packs off trips that are too heavy. */
function spreadLoads(problem: MenuProblem, state: WeekState, bought: readonly Bought[]): Bought[] {
  const merged = new Map<string, Bought>();
  for (const item of bought) {
    const key = `${item.trip} ${item.pack}`;
    const known = merged.get(key);
    merged.set(key, known ? { ...known, count: known.count + item.count, by: Math.min(known.by, item.by) } : item);
  }
  const list = [...merged.values()].sort((a, b) => a.trip - b.trip || a.pack - b.pack);
  const massOf = (item: Bought): number => item.count * (problem.packs[item.pack] as MenuPack).massG;
  const load = problem.trips.map((_, trip) =>
    list.reduce((sum, item) => sum + (item.trip === trip ? massOf(item) : 0), 0),
  );
  list.forEach((item, i) => {
    const from = problem.trips[item.trip] as MenuTrip;
    if (!item.movable || from.carryG === undefined || (load[item.trip] as number) <= from.carryG) return;
    const to = problem.trips.findIndex(
      (trip, t) =>
        state.tripMade[t] &&
        t !== item.trip &&
        trip.shop === from.shop &&
        trip.period <= item.by &&
        (load[t] as number) + massOf(item) <= (trip.carryG ?? Infinity),
    );
    if (to < 0 || list.some((other) => other.trip === to && other.pack === item.pack)) return;
    load[item.trip] = (load[item.trip] as number) - massOf(item);
    load[to] = (load[to] as number) + massOf(item);
    list[i] = { ...item, trip: to };
  });
  return list.sort((a, b) => a.trip - b.trip || a.pack - b.pack);
}

function stockContainers(problem: MenuProblem, food: number): Container[] {
  const { openedDays } = problem.foods[food] as MenuProblem["foods"][number];
  return problem.lots
    .map((lot, stock) => ({ lot, stock }))
    .filter(({ lot }) => lot.food === food)
    .sort((a, b) => a.lot.lastDay - b.lot.lastDay || Number(b.lot.opened) - Number(a.lot.opened))
    .map(({ lot, stock }: { lot: MenuLot; stock: number }) => ({
      lot: { stock },
      left: lot.massG,
      fromPeriod: 0,
      lastDay: lot.lastDay,
      opened: lot.opened,
      openedDays,
    }));
}

function packContainers(problem: MenuProblem, food: number, purchases: readonly Bought[]): Container[] {
  const life = problem.foods[food] as MenuProblem["foods"][number];
  const containers: Container[] = [];
  purchases.forEach(({ trip, pack, count }, purchase) => {
    const facts = problem.packs[pack] as MenuPack;
    if (facts.food !== food) return;
    const made = problem.trips[trip] as MenuTrip;
    const lastDay = made.day + (facts.unopenedDays ?? life.unopenedDays);
    const openedDays = facts.openedDays ?? life.openedDays;
    for (let copy = 0; copy < count; copy++) {
      containers.push({
        lot: { purchase, copy },
        left: facts.massG,
        fromPeriod: made.period,
        lastDay,
        opened: false,
        openedDays,
      });
    }
  });
  return containers.sort((a, b) => a.lastDay - b.lastDay || a.fromPeriod - b.fromPeriod || a.left - b.left);
}

/** Feeds the demands of one food: stock first, then packs, opening a new one only when nothing open is left. */
function giveOut(problem: MenuProblem, food: number, purchases: readonly Bought[], demands: readonly Demand[]): Use[] {
  const uses: Use[] = [];
  const take = (container: Container, demand: Demand): void => {
    if (demand.left <= DUST_G || container.left <= DUST_G) return;
    if (container.fromPeriod > demand.period || container.lastDay < demand.day) return;
    if (!container.opened) {
      container.opened = true;
      container.lastDay = Math.min(container.lastDay, demand.day + container.openedDays);
    }
    let massG = Math.min(container.left, demand.left);
    if (demand.left - massG <= DUST_G && container.left >= demand.left) massG = demand.left;
    container.left -= massG;
    demand.left -= massG;
    uses.push({ lot: container.lot, batch: demand.batch, massG });
  };
  for (const container of stockContainers(problem, food)) for (const demand of demands) take(container, demand);
  const packs = packContainers(problem, food, purchases);
  for (const demand of demands) {
    const open = packs.filter((container) => container.opened).sort((a, b) => a.lastDay - b.lastDay);
    for (const container of open) take(container, demand);
    for (const container of packs) if (!container.opened) take(container, demand);
  }
  return uses;
}
