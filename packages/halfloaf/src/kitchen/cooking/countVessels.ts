import { type Dish, type Vessel, vesselsOf } from "../../dish/index.ts";
import type { Kit } from "../kitchen.ts";

/**
 * Vessels to wash up after some dishes that are cooked at once: those of each dish, and of a vessel that the kitchen has too
 * few of for all of them no more than it has, since it is washed between them, which is hands-on minutes of the cooking. A
 * kitchen is taken to have enough trays and bowls.
 */
export function countVessels(dishes: readonly Pick<Dish, "method">[], kit: Kit): number {
  const at: Readonly<Partial<Record<Vessel, number>>> = {
    pan: kit.pans,
    pot: kit.pots,
    board: kit.boards,
    blender: Number(kit.blender),
  };
  const soiled = new Map<Vessel, number>();
  for (const { vessel, count } of dishes.flatMap(vesselsOf)) soiled.set(vessel, (soiled.get(vessel) ?? 0) + count);
  return [...soiled].reduce((sum, [vessel, count]) => sum + Math.min(count, at[vessel] ?? count), 0);
}
