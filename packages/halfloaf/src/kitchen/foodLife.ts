import type { Food, Place } from "../food/index.ts";

/** Where a kitchen keeps a food it buys, and for how many days. */
export interface FoodLife {
  readonly place: Place;
  readonly unopenedDays: number;
  /** Days from opening; never more than unopened. */
  readonly openedDays: number;
}

/** A food without a time for a place is not kept there; longer than any plan. */
const MOST_DAYS = 3650;

/**
 * The place where a bought pack keeps longest, out of dry store and fridge; the freezer only for what is sold frozen.
 * A frozen food without a freezer, and a food with no time at all, is used the day it is bought.
 */
export function foodLife(food: Food, hasFreezer: boolean): FoodLife {
  const { unopened, opened } = food.keeping;
  const cool = (["dry-store", "fridge"] as const).filter((place) => unopened[place] !== undefined);
  const place: Place | undefined =
    cool.sort((a, b) => (unopened[b] as number) - (unopened[a] as number))[0] ?? (hasFreezer ? "freezer" : undefined);
  if (place === undefined || unopened[place] === undefined)
    return { place: place ?? "fridge", unopenedDays: 0, openedDays: 0 };
  const unopenedDays = Math.min(MOST_DAYS, unopened[place]);
  const once =
    place === "freezer" ? [opened.freezer, opened.fridge] : [opened[place], opened.fridge, opened["dry-store"]];
  const openedDays = once.find((days) => days !== undefined) ?? 0;
  return { place, unopenedDays, openedDays: Math.min(unopenedDays, openedDays) };
}

/** Litres that a gram takes in a cold place: its mass over its density, with a quarter more for the pack. */
export function litresPerG(food: Pick<Food, "densityGPerMl">): number {
  const density = Math.min(1.1, Math.max(0.3, food.densityGPerMl ?? 0.8));
  return 1.25 / density / 1000;
}
