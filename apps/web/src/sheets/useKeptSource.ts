import type { KeptSource } from "halfloaf/sheet";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";

/** What the tables of the open kitchen are made from. */
export function useKeptSource(): KeptSource {
  const { view } = useKitchen();
  const names = useNames();
  return { edited: view.edited, state: view.state, foods: view.tables.foods, names };
}
