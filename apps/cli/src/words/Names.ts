import { foodName } from "halfloaf/food";
import type { Kitchen, Tables } from "halfloaf/kitchen";
import { harmless } from "../output/harmless.ts";

/** What things are called on a page, by their id; an id that leads nowhere is shown itself. */
export interface Names {
  readonly dish: (id: string) => string;
  readonly food: (id: string) => string;
  readonly eater: (id: string) => string;
  readonly shop: (id: string) => string;
}

/** The names of a kitchen, in its English, harmless to a terminal. Eaters go by what stands before the comma. */
export function toNames(
  kitchen: Pick<Kitchen, "eaters" | "shops" | "english">,
  tables: Pick<Tables, "foods" | "dishes">,
): Names {
  const dishes = new Map(tables.dishes.map(({ id, title }) => [id, title]));
  const shops = new Map(kitchen.shops.map(({ id, name }) => [id, name]));
  const eaters = shortenNames(kitchen.eaters);
  const look = (found: string | undefined, id: string): string => harmless(found ?? id);
  return {
    dish: (id) => look(dishes.get(id), id),
    // Cooked portions go by the name of their dish.
    food: (id) => look(foodName(tables.foods.get(id), kitchen.english) ?? dishes.get(id), id),
    eater: (id) => look(eaters.get(id), id),
    shop: (id) => look(shops.get(id), id),
  };
}

function shortenNames(eaters: Kitchen["eaters"]): Map<string, string> {
  const shorten = (name: string): string => (name.split(",")[0] as string).trim() || name;
  const taken = eaters.map(({ name }) => shorten(name));
  return new Map(
    eaters.map(({ id, name }) => [
      id,
      taken.filter((each) => each === shorten(name)).length > 1 ? name : shorten(name),
    ]),
  );
}
