import type { Use } from "../plan.ts";
import type { MenuFood, MenuPack, MenuProblem, MenuTrip } from "../problem.ts";
import { DUST_G } from "./Needs.ts";

/** What one batch still needs of a food (g). */
export interface Demand {
  readonly batch: number;
  readonly period: number;
  readonly day: number;
  left: number;
}

/** One bought pack and the first period it is wanted in. */
export interface Package {
  readonly purchase: number;
  readonly copy: number;
  readonly trip: number;
  readonly pack: number;
  readonly period: number;
}

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

/**
 * Feeds the demands of one food, ascending by period: stock first, then the packs of one opening after the other.
 * A pack is opened only when those open are used up, so it keeps at least as long as the search reckoned.
 */
export function giveOut(
  problem: MenuProblem,
  food: number,
  openings: readonly (readonly Package[])[],
  demands: readonly Demand[],
): Use[] {
  const uses: Use[] = [];
  const take = (container: Container, demand: Demand): void => {
    const massG = takeFrom(container, demand);
    if (massG > 0) uses.push({ lot: container.lot, batch: demand.batch, massG });
  };
  for (const container of stockContainers(problem, food)) for (const demand of demands) take(container, demand);
  const groups = openings.map((packages) => ({
    period: Math.min(...packages.map(({ period }) => period)),
    containers: packages.map((one) => toContainer(problem, food, one)).sort((a, b) => a.lastDay - b.lastDay),
  }));
  let current = 0;
  for (const demand of demands) {
    for (; current < groups.length; current++) {
      const { containers } = groups[current] as (typeof groups)[number];
      for (const container of containers) if (container.opened) take(container, demand);
      for (const container of containers) if (!container.opened) take(container, demand);
      const next = groups[current + 1];
      if (demand.left <= DUST_G || next === undefined || next.period > demand.period) break;
    }
  }
  return uses;
}

/** Takes what it can for a demand, opening the lot if need be, and gives how much (g); 0 = nothing. */
function takeFrom(container: Container, demand: Demand): number {
  if (demand.left <= DUST_G || container.left <= DUST_G) return 0;
  if (container.fromPeriod > demand.period || container.lastDay < demand.day) return 0;
  if (!container.opened) {
    container.opened = true;
    container.lastDay = Math.min(container.lastDay, demand.day + container.openedDays);
  }
  const massG = Math.min(container.left, demand.left);
  container.left -= massG;
  demand.left -= massG;
  return massG;
}

function stockContainers(problem: MenuProblem, food: number): Container[] {
  const { openedDays } = problem.foods[food] as MenuFood;
  return problem.lots
    .map((lot, stock) => ({ lot, stock }))
    .filter(({ lot }) => lot.food === food)
    .sort((a, b) => a.lot.lastDay - b.lot.lastDay || Number(b.lot.opened) - Number(a.lot.opened))
    .map(({ lot, stock }) => ({
      lot: { stock },
      left: lot.massG,
      fromPeriod: lot.fromPeriod ?? 0,
      lastDay: lot.lastDay,
      opened: lot.opened,
      openedDays: lot.openedDays ?? openedDays,
    }));
}

function toContainer(problem: MenuProblem, food: number, { purchase, copy, trip, pack }: Package): Container {
  const life = problem.foods[food] as MenuFood;
  const facts = problem.packs[pack] as MenuPack;
  const made = problem.trips[trip] as MenuTrip;
  return {
    lot: { purchase, copy },
    left: facts.massG,
    fromPeriod: made.period,
    lastDay: made.day + (facts.unopenedDays ?? life.unopenedDays),
    opened: false,
    openedDays: facts.openedDays ?? life.openedDays,
  };
}
