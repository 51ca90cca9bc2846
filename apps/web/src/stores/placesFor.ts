import { PLACES, type Place } from "halfloaf/food";
import { type Kitchen, placesOf } from "halfloaf/kitchen";

/** The places that a kitchen has room in. */
export function placesFor(kit: Kitchen["kit"]): Place[] {
  const has = placesOf(kit);
  return PLACES.filter((place) => place === "dry-store" || has[place]);
}
