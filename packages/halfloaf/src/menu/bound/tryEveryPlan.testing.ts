import { checkPlan } from "../check/index.ts";
import type { MenuPlan, PlannedBatch, Purchase, Use } from "../plan.ts";
import type { MenuFood, MenuProblem } from "../problem.ts";

/** Most packs of a kind that are tried. */
const MOST_PACKS = 3;

/**
 * Money of the cheapest plan of a tiny problem, by trying every dish at every sitting, every way to join them to batches
 * and every number of packs on the first trip; grams are taken from what is open first. Undefined where none is
 * without fault.
 */
export function tryEveryPlan(problem: MenuProblem): number | undefined {
  let best: number | undefined;
  for (const batches of listBatches(problem)) {
    for (const purchases of listPurchases(problem)) {
      const trips = purchases.length > 0 ? [0] : [];
      const plan: MenuPlan = { batches, trips, purchases, uses: takeMakings(problem, batches, purchases) };
      const { faults, money } = checkPlan(problem, plan);
      if (faults.length === 0 && (best === undefined || money.totalMinor < best)) best = money.totalMinor;
    }
  }
  return best;
}

function listBatches(problem: MenuProblem): PlannedBatch[][] {
  let partial: PlannedBatch[][] = [[]];
  problem.sittings.forEach(({ dishes }, sitting) => {
    partial = partial.flatMap((batches) =>
      dishes.flatMap((dish) => [
        [...batches, { dish, sittings: [sitting] }],
        ...batches.flatMap((batch, at) =>
          batch.dish === dish ? [batches.with(at, { dish, sittings: [...batch.sittings, sitting] })] : [],
        ),
      ]),
    );
  });
  return partial;
}

function listPurchases(problem: MenuProblem): Purchase[][] {
  let partial: Purchase[][] = [[]];
  problem.packs.forEach((_, pack) => {
    const counts = Array.from({ length: MOST_PACKS + 1 }, (_, count) => count);
    partial = partial.flatMap((list) =>
      counts.map((count) => (count === 0 ? list : [...list, { trip: 0, pack, count }])),
    );
  });
  return partial;
}

interface Holder {
  readonly lot: Use["lot"];
  readonly food: number;
  leftG: number;
  lastDay: number;
  opened: boolean;
}

function takeMakings(problem: MenuProblem, batches: readonly PlannedBatch[], purchases: readonly Purchase[]): Use[] {
  const holders: Holder[] = [
    ...problem.lots.map((lot, stock) => ({
      lot: { stock },
      food: lot.food,
      leftG: lot.massG,
      lastDay: lot.lastDay,
      opened: lot.opened,
    })),
    ...purchases.flatMap(({ pack, count }, purchase) =>
      Array.from({ length: count }, (_, copy): Holder => {
        const { food, massG } = problem.packs[pack] as MenuProblem["packs"][number];
        return {
          lot: { purchase, copy },
          food,
          leftG: massG,
          lastDay: problem.foods[food]?.unopenedDays as number,
          opened: false,
        };
      }),
    ),
  ];
  return batches.flatMap(({ dish, sittings }, batch) => {
    const day = problem.sittings[sittings[0] as number]?.day as number;
    const portions = sittings.reduce((sum, sitting) => sum + (problem.sittings[sitting]?.portions as number), 0);
    return (problem.dishes[dish]?.makings ?? []).flatMap(({ food, massG }) =>
      takeFrom(
        holders.filter((holder) => holder.food === food),
        problem.foods[food] as MenuFood,
        day,
        massG * portions,
      ).map((use) => ({ ...use, batch })),
    );
  });
}

function takeFrom(
  holders: readonly Holder[],
  { openedDays }: MenuFood,
  day: number,
  neededG: number,
): Omit<Use, "batch">[] {
  const uses: Omit<Use, "batch">[] = [];
  let missing = neededG;
  for (const holder of [...holders].sort((a, b) => Number(b.opened) - Number(a.opened))) {
    const massG = Math.min(missing, holder.leftG);
    if (massG <= 1e-9 || holder.lastDay < day) continue;
    if (!holder.opened) holder.lastDay = Math.min(holder.lastDay, day + openedDays);
    holder.opened = true;
    holder.leftG -= massG;
    missing -= massG;
    uses.push({ lot: holder.lot, massG });
  }
  return uses;
}
