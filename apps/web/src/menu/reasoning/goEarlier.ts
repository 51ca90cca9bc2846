import type { Kitchen } from "halfloaf/kitchen";
import type { ImpossibleTold } from "./Told.ts";

/** The kitchen with a shop whose trips come home before an earlier sitting of the day. */
export function goEarlier<Shops extends Pick<Kitchen, "shops">>(
  kitchen: Shops,
  { shop: wanted, sitting }: NonNullable<Extract<ImpossibleTold, { kind: "gaps" }>["earlier"]>,
): Shops {
  const shops = kitchen.shops.map((shop) => (shop.id === wanted ? { ...shop, beforeSitting: sitting } : shop));
  return { ...kitchen, shops };
}
