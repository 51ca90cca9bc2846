import { foodName } from "halfloaf/food";
import type { Language } from "../words/languages.ts";
import { useWords } from "../words/WordsContext.tsx";
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
const known = new WeakMap<KitchenView, { readonly language: Language; readonly names: Names }>();

/** The names in the open kitchen, in the language in use and the kitchen's kind of English. */
export function useNames(): Names {
  const { view } = useKitchen();
  const { language } = useWords();
  const before = known.get(view);
  if (before?.language === language) return before.names;
  const names = toNames(view, language);
  known.set(view, { language, names });
  return names;
}

function toNames({ tables, kitchen }: KitchenView, language: Language): Names {
  const titles = new Map(tables.dishes.map(({ id, title }) => [id, title]));
  const shops = new Map(kitchen.shops.map(({ id, name }) => [id, name]));
  const eaters = new Map(kitchen.eaters.map(({ id, name }) => [id, name]));
  return {
    food: (id) => foodName(tables.foods.get(id), kitchen.english, language) ?? titles.get(id) ?? id,
    dish: (id) => titles.get(id) ?? id,
    shop: (id) => shops.get(id) ?? id,
    eater: (id) => eaters.get(id) ?? id,
  };
}
