import type { Shop } from "halfloaf/price";
import { foldText } from "../table/nearness.ts";

/** A shop by what a list or a receipt calls it: its id or its name, or a text that begins with the name. */
export function findShop<Known extends Pick<Shop, "id" | "name">>(
  text: string,
  shops: readonly Known[],
): Known | undefined {
  const folded = foldText(text);
  if (folded === "") return undefined;
  const exact = shops.find(({ id, name }) => text.trim() === id || folded === foldText(name));
  return exact ?? shops.find(({ name }) => foldText(name) !== "" && `${folded} `.startsWith(`${foldText(name)} `));
}
