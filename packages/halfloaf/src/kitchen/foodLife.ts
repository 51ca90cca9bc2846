import type { Food, Place } from "../food/index.ts";
import type { Kitchen } from "./kitchen.ts";

/** Where a kitchen keeps a food it buys, and for how many days. */
export interface FoodLife {
  readonly place: Place;
  readonly unopenedDays: number;
  /** Days from opening; never more than unopened. */
  readonly openedDays: number;
}

/** A food without a time for a place is not kept there; longer than any plan. */
const MOST_DAYS = 3650;

/** The cold places that a kitchen has. */
export interface ColdPlaces {
  readonly fridge: boolean;
  readonly freezer: boolean;
}

/** A place without room is none. */
export function placesOf({
  fridgeLitres,
  freezerLitres,
}: Pick<Kitchen["kit"], "fridgeLitres" | "freezerLitres">): ColdPlaces {
  return { fridge: fridgeLitres > 0, freezer: freezerLitres > 0 };
}

/**
 * The place where a bought pack keeps longest, out of dry store and fridge; the freezer only for what is sold frozen.
 * What would have to be kept in a place that the kitchen lacks, and a food with no time at all, is used the day it is
 * bought; so is the rest of a pack that once opened belongs in such a place.
 */
export function foodLife(food: Pick<Food, "keeping">, places: ColdPlaces): FoodLife {
  const { unopened, opened } = food.keeping;
  const has = (place: Place): boolean => place === "dry-store" || places[place];
  const cool = (["dry-store", "fridge"] as const).filter((place) => has(place) && unopened[place] !== undefined);
  const longest = cool.sort((a, b) => (unopened[b] as number) - (unopened[a] as number))[0];
  const isSoldFrozen = unopened["dry-store"] === undefined && unopened.fridge === undefined;
  const place: Place | undefined = longest ?? (isSoldFrozen && has("freezer") ? "freezer" : undefined);
  if (place === undefined || unopened[place] === undefined) {
    return { place: place ?? (has("fridge") ? "fridge" : "dry-store"), unopenedDays: 0, openedDays: 0 };
  }
  const unopenedDays = Math.min(MOST_DAYS, unopened[place]);
  const open: readonly Place[] = place === "freezer" ? ["freezer", "fridge"] : [place, "fridge", "dry-store"];
  const openedDays = open.filter(has).flatMap((where) => opened[where] ?? [])[0] ?? 0;
  return { place, unopenedDays, openedDays: Math.min(unopenedDays, openedDays) };
}

/** Litres that a gram takes in a cold place: its mass over its density, with a quarter more for the pack. */
export function litresPerG(food: Pick<Food, "densityGPerMl">): number {
  const density = Math.min(1.1, Math.max(0.3, food.densityGPerMl ?? 0.8));
  return 1.25 / density / 1000;
}
