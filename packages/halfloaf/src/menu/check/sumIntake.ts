import type { MenuBound, MenuDish, MenuProfile } from "../problem.ts";
import type { ReadPlan } from "./readPlan.ts";

/** Energy that a profile gets on a day from the sittings it attends, per standard portion (kJ). */
export function sumEnergyKj(plan: ReadPlan, profile: MenuProfile, day: number): number {
  const eaten = listEaten(plan, profile).filter((serving) => serving.day === day);
  return eaten.reduce((sum, { dish }) => sum + dish.energyKj, 0);
}

/** Amount of a component that a profile gets over the plan, per standard portion. */
export function sumComponent(plan: ReadPlan, profile: MenuProfile, component: number): number {
  return listEaten(plan, profile).reduce((sum, { dish }) => sum + (dish.components[component] as number), 0);
}

/** How far an amount misses a bound as a share of it; 0 where the bound holds, infinite above a bound of at most 0. */
export function missShare(bound: MenuBound, amount: number): number {
  const missing = bound.kind === "at-least" ? bound.amount - amount : amount - bound.amount;
  return missing <= 0 ? 0 : missing / bound.amount;
}

function listEaten(plan: ReadPlan, profile: MenuProfile): { readonly dish: MenuDish; readonly day: number }[] {
  return plan.batches.flatMap(({ dish, fresh, leftovers }) =>
    [fresh, ...leftovers].flatMap(({ index, sitting }) =>
      profile.sittings.includes(index) ? [{ dish, day: sitting.day }] : [],
    ),
  );
}
