import type { MenuPlan } from "../plan.ts";
import type { MenuPack, MenuProblem } from "../problem.ts";

/** A trip that is too heavy or a place that is too full, by how much (g or litres). */
export interface Overload {
  readonly what: "carry" | "fridge" | "freezer";
  readonly at: number;
  readonly over: number;
}

/** Which loads of a plan exceed what a trip carries and the cold stores hold. */
export function reckonLoads(problem: MenuProblem, plan: MenuPlan): Overload[] {
  const overloads: Overload[] = [];
  for (const trip of plan.trips) {
    const limit = problem.trips[trip]?.carryG;
    if (limit === undefined) continue;
    const load = plan.purchases.reduce(
      (sum, p) => (p.trip === trip ? sum + p.count * (problem.packs[p.pack] as MenuPack).massG : sum),
      0,
    );
    if (load > limit + 1e-6) overloads.push({ what: "carry", at: trip, over: load - limit });
  }
  return [...overloads, ...fillPlace(problem, plan, "fridge"), ...fillPlace(problem, plan, "freezer")];
}

function fillPlace(problem: MenuProblem, plan: MenuPlan, place: "fridge" | "freezer"): Overload[] {
  const limit = place === "fridge" ? problem.limits.fridgeLitres : problem.limits.freezerLitres;
  if (limit === undefined) return [];
  const change = new Float64Array(problem.days + 1);
  const add = (food: number, day: number, massG: number): void => {
    const cold = problem.foods[food]?.cold;
    if (cold?.place === place && day <= problem.days) change[day] = (change[day] as number) + massG * cold.litresPerG;
  };
  for (const lot of problem.lots) {
    add(lot.food, 0, lot.massG);
    if (lot.lastDay + 1 <= problem.days) add(lot.food, Math.max(0, lot.lastDay + 1), -leftOf(plan, lot));
  }
  for (const p of plan.purchases) {
    const pack = problem.packs[p.pack] as MenuPack;
    add(pack.food, problem.trips[p.trip]?.day ?? 0, p.count * pack.massG);
  }
  for (const use of plan.uses) {
    const cooked = problem.sittings[plan.batches[use.batch]?.sittings[0] as number];
    add(foodOf(problem, plan, use), (cooked?.day ?? 0) + 1, -use.massG);
  }
  if (place === "freezer") freezePortions(problem, plan, change);
  const overloads: Overload[] = [];
  let litres = 0;
  for (let day = 0; day < problem.days; day++) {
    litres += change[day] as number;
    if (litres > limit + 1e-6) overloads.push({ what: place, at: day, over: litres - limit });
  }
  return overloads;

  function leftOf(from: MenuPlan, lot: MenuProblem["lots"][number]): number {
    const stock = problem.lots.indexOf(lot);
    return from.uses.reduce(
      (left, use) => ("stock" in use.lot && use.lot.stock === stock ? left - use.massG : left),
      lot.massG,
    );
  }
}

/** Portions put by are in the freezer from their day on. */
function freezePortions({ sittings, dishes }: MenuProblem, plan: MenuPlan, change: Float64Array): void {
  for (const batch of plan.batches) {
    const litres = dishes[batch.dish]?.putBy?.litres ?? 0;
    for (const k of batch.sittings) {
      const { putBy, day, portions } = sittings[k] as MenuProblem["sittings"][number];
      if (putBy) change[day] = (change[day] as number) + portions * litres;
    }
  }
}

function foodOf(problem: MenuProblem, plan: MenuPlan, use: MenuPlan["uses"][number]): number {
  if ("stock" in use.lot) return problem.lots[use.lot.stock]?.food ?? -1;
  return problem.packs[plan.purchases[use.lot.purchase]?.pack as number]?.food ?? -1;
}
