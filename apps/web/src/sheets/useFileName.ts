import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";

/** Names files without their ending: the kitchen, what it is, and the day, today unless another is given. */
export function useFileName(): (what: string, day?: string) => string {
  const { view } = useKitchen();
  return (what, day = view.day) => `${newId(view.edited.name, [], "kitchen")}-${newId(what, [], "sheet")}-${day}`;
}
