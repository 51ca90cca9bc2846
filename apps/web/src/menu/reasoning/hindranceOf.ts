import { type Hindrance, hindranceAt } from "halfloaf/kitchen";
import type { Stage } from "./Stage.ts";

/** What keeps a dish from a sitting of the problem, whatever else is planned; nothing where that is not known. */
export function hindranceOf(
  { kitchen, tables, before: { stated } }: Stage,
  k: number | undefined,
  dish: string,
): { readonly hindrance?: Hindrance } {
  const found = tables.dishes.find(({ id }) => id === dish);
  const hindrance = k === undefined || found === undefined ? undefined : hindranceAt(kitchen, tables, stated, k, found);
  return hindrance === undefined ? {} : { hindrance };
}
