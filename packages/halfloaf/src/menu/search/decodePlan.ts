import type { MenuPlan, PlannedBatch } from "../plan.ts";
import type { MenuDish, MenuProblem } from "../problem.ts";
import { buyFoods } from "./buyFoods.ts";
import { type Demand, giveOut } from "./giveOut.ts";
import type { WeekState } from "./WeekState.ts";

/**
 * The plan that a state of the search stands for: its batches, the cheapest purchases on its trips, and which
 * lot feeds which batch (first expired, first out). Sittings without a dish are left out.
 */
export function decodePlan(state: WeekState): MenuPlan {
  const { problem } = state;
  const batches = joinBatches(state);
  const demands = gatherDemands(problem, batches);
  const needed = problem.foods.map((_, food) => (demands[food] as Demand[]).length > 0);
  const { purchases, openings } = buyFoods(state, needed);
  const uses = problem.foods.flatMap((_, food) =>
    giveOut(problem, food, openings[food] ?? [], demands[food] as Demand[]),
  );
  const trips = problem.trips.flatMap((_, trip) => (state.tripMade[trip] ? [trip] : []));
  return { batches, trips, purchases, uses };
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
