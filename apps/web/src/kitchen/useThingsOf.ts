import type { LedgerRow } from "@halfloaf/keep";
import { useFurther } from "../words/useFurther.ts";
import { useKitchen } from "./KitchenProvider.tsx";
import { useNames } from "./useNames.ts";

/** Tells what a row of the ledger is about, by name; nothing where it is about no single thing. */
export function useThingsOf(): (row: LedgerRow) => readonly string[] {
  const { further } = useFurther("kitchen");
  const { view } = useKitchen();
  const names = useNames();
  return (row) => {
    if (row.kind === "edited") return [nameOfThing(row.thing)];
    if ("dish" in row && row.dish !== undefined) return [names.dish(row.dish)];
    if ("pack" in row && row.pack !== undefined) return [nameOfPack(row.pack)];
    if ("food" in row && row.food !== undefined) return [names.food(row.food)];
    if (row.kind === "stocked") return ["dish" in row.stock ? names.dish(row.stock.dish) : names.food(row.stock.food)];
    const lot = "lot" in row ? view.state.lots.get(row.lot) : undefined;
    const held = lot?.food ?? lot?.cooked?.dish;
    return held === undefined ? [] : [names.food(held)];
  };

  function nameOfThing(thing: string): string {
    const [list = "", id] = thing.split("/");
    if (id === undefined) return further.kitchen.things[list] ?? ownName(list);
    if (list === "eaters") return names.eater(id);
    if (list === "shops") return names.shop(id);
    if (list === "packs") return nameOfPack(id);
    return list === "foods" || list === "overrides" ? names.food(id) : names.dish(id);
  }

  function nameOfPack(id: string): string {
    return view.edited.packs.find((pack) => pack.id === id)?.label ?? id;
  }

  function ownName(key: string): string {
    const name = further.kitchen[key as keyof typeof further.kitchen];
    return typeof name === "string" ? name : key;
  }
}
