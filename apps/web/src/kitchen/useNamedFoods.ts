import type { FoodTable } from "halfloaf/food";
import { useEffect, useMemo, useState } from "react";
import { fetchStarter } from "./fetchStarter.ts";
import { useKitchen } from "./KitchenProvider.tsx";
import { type FoodNames, withGerman } from "./loadStarter.ts";

/** Found once for all that search. */
let known: FoodNames | undefined;

/**
 * The kitchen's foods with their names in every language, for whoever searches them. In English the German ones come a moment later;
 * where they can't be loaded, foods are found by their English names alone.
 */
export function useNamedFoods(): FoodTable {
  const { foods } = useKitchen().view.tables;
  const [names, setNames] = useState(known);
  useEffect(() => {
    let isWanted = true;
    const take = (found: unknown): void => {
      known = found as FoodNames;
      if (isWanted) setNames(known);
    };
    void fetchStarter("foods.de.json").then(take, () => {});
    return () => {
      isWanted = false;
    };
  }, []);
  return useMemo(() => (names === undefined ? foods : withGerman(foods, names)), [foods, names]);
}
