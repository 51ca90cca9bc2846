import { familyOf, type MenuProblem, type MenuSitting } from "../problem.ts";
import type { Remainder } from "./Remainder.ts";
import { dishesOf } from "./SittingChange.ts";

/** The problem in which every sitting that can still have its old dish asks a price for another one (minor units). */
export function withKeepCosts(
  { problem, plan }: Pick<Remainder, "problem" | "plan">,
  changeMinor: number,
): MenuProblem {
  const before = dishesOf(problem, plan);
  const sittings = problem.sittings.map((sitting, k): MenuSitting => {
    const dish = before[k] as number;
    const family = familyOf(problem, dish);
    const isOffered = sitting.dishes.some((other) => familyOf(problem, other) === family);
    return isOffered ? { ...sitting, keep: { dish, changeMinor } } : sitting;
  });
  return { ...problem, sittings };
}
