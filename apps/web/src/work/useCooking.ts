import { useEffect, useSyncExternalStore } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { cookingRun, type Running } from "./CookingRun.ts";

/** The one cooking of this device, told as the dishes of the open kitchen tell it; undefined while nothing is cooked. */
export function useCooking(): Running | undefined {
  const { dishes } = useKitchen().view.tables;
  useEffect(() => cookingRun.speak(dishes), [dishes]);
  return useSyncExternalStore(cookingRun.subscribe, () => cookingRun.running);
}
