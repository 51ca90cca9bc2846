import type { MenuProblem } from "halfloaf/menu";

/**
 * A benchmark problem in the shape that the trial sketch reads (money in whole units, energy as its nutrient 0),
 * so that both plan the same week. Only problems of `generateProblem` fit: one shop, one profile, four sittings a day.
 */
export function toSketchInstance(problem: MenuProblem, seed: number): object {
  const { worth, limits } = problem;
  const profile = problem.profiles[0];
  if (!profile) throw new Error("a benchmark problem has one profile");
  const vector = (energyKj: number, components: readonly number[]): Float64Array =>
    Float64Array.from({ length: 24 }, (_, j) => (j === 0 ? energyKj : (components[j - 1] ?? 0)));
  const foods = problem.foods.map((food, f) => {
    const packs = problem.packs
      .filter((pack) => pack.food === f)
      .map((pack) => ({ g: pack.massG, price: pack.priceMinor / 100 }));
    return {
      f,
      cat: food.id,
      packs,
      unopened: food.unopenedDays,
      opened: food.openedDays,
      unit: food.creditMinorPerG / 90,
    };
  });
  const dishes = problem.dishes.map((dish, r) => {
    const slots = [0, 1, 2, 3].filter((s) => problem.sittings[s]?.dishes.includes(r));
    return {
      r,
      slots,
      ing: dish.makings.map((m) => [m.food, m.massG]),
      main: dish.main,
      mins: dish.elapsed.fixed,
      keep: dish.keepsDays,
      like: 10 - dish.dislikeMinor / 8,
      maxUse: dish.maxUses,
      nut: vector(dish.energyKj, dish.components),
      unitCost: dish.makings.reduce((sum, m) => sum + m.massG * (foods[m.food]?.unit as number), 0),
    };
  });
  const portions = problem.sittings[0]?.portions ?? 1;
  return {
    size: "bench",
    seed,
    R: dishes.length,
    F: foods.length,
    D: 7,
    S: 4,
    E: portions,
    foods,
    dishes,
    por: Array.from({ length: 7 }, () => [0, 1, 2, 3].map(() => portions)),
    kcalTarget: profile.energyKj[0],
    energyTol: limits.energyTolerance,
    bounds: profile.bounds.map((bound) => ({
      k: bound.component + 1,
      upper: bound.kind === "at-most",
      val: bound.amount,
    })),
    stock: problem.lots.map((lot) => ({ f: lot.food, g: lot.massG, useBy: lot.lastDay })),
    dayCap: [...limits.handsOnMinutes],
    slotCap: [0, 1, 2, 3].map((s) => problem.sittings[s]?.minutes),
    shop: problem.trips.map((trip) => trip.day),
    budget: (limits.budgetMinor ?? 1e9) / 100,
    minDinners: limits.distinct,
    mainMax: limits.mainMax,
    plateCap: null,
    w: {
      time: worth.minuteMinor / 100,
      like: 0.08,
      waste: 0.3,
      salvStable: 0.9,
      salvOpen: 0,
      reheatMin: worth.leftoverMinutes,
      extraFrac: 0.1,
      sh1: worth.shortfallFirstMinor / 100,
      sh2: worth.shortfallRestMinor / 100,
      knee: worth.shortfallKnee,
    },
  };
}
