import type { MenuProblem } from "../problem.ts";

/** True where some food is kept in a place whose room is limited. */
export function isColdLimited({ limits, foods }: MenuProblem): boolean {
  const litresOf = { fridge: limits.fridgeLitres, freezer: limits.freezerLitres };
  return foods.some(({ cold }) => cold !== undefined && litresOf[cold.place] !== undefined);
}
