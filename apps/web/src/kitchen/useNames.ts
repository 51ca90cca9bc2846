import { useKitchen } from "./KitchenProvider.tsx";
import type { KitchenView } from "./KitchenSession.ts";

/** What things of the kitchen are called; an id that leads nowhere stands for itself. */
export interface Names {
  food(id: string): string;
  dish(id: string): string;
  shop(id: string): string;
  eater(id: string): string;
}

/** All lines of a page ask for the same names. */
const known = new WeakMap<KitchenView, Names>();

/** The names in the open kitchen, in its kind of English. */
export function useNames(): Names {
  const { view } = useKitchen();
  const names = known.get(view) ?? toNames(view);
  known.set(view, names);
  return names;
}

function toNames({ tables, kitchen }: KitchenView): Names {
  const titles = new Map(tables.dishes.map(({ id, title }) => [id, title]));
  const shops = new Map(kitchen.shops.map(({ id, name }) => [id, name]));
  const eaters = new Map(kitchen.eaters.map(({ id, name }) => [id, name]));
  return {
    food: (id) => tables.foods.get(id)?.names[kitchen.english][0] ?? titles.get(id) ?? id,
    dish: (id) => titles.get(id) ?? id,
    shop: (id) => shops.get(id) ?? id,
    eater: (id) => eaters.get(id) ?? id,
  };
}
