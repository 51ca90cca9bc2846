import { InvalidArgumentError } from "commander";
import { findFoodCalled } from "halfloaf/food";
import { firstExpiredFirstOut, type LotState } from "halfloaf/stores";
import { type Found, refuse } from "../words/Fault.ts";
import { tellTooMuch, tellUnknownThing } from "../words/keepFaultWords.ts";
import { quote } from "../words/valueWords.ts";
import type { OpenKeep } from "./openKeep.ts";

/** Something of the stores and how much of it, as it was written; without an amount all of it. */
export interface AskedItem {
  readonly text: string;
  readonly name: string;
  readonly amount?: AskedAmount;
}

/** A number with its unit; without one it is g of a food and portions of a dish. */
export interface AskedAmount {
  readonly value: number;
  readonly unit?: "g" | "kg" | "portions";
}

/** Something of the stores, looked up. */
export type Item =
  | { readonly kind: "lot"; readonly lot: LotState }
  | { readonly kind: "food"; readonly food: string }
  | { readonly kind: "dish"; readonly dish: string };

/** Reads `ITEM` or `ITEM=AMOUNT`; anything else is refused. */
export function parseItem(text: string): AskedItem {
  const at = text.lastIndexOf("=");
  if (at < 0 && text.trim() !== "") return { text, name: text };
  const name = text.slice(0, Math.max(0, at));
  const [, number, unit] = /^(\d{1,7}(?:\.\d{1,3})?) ?(g|kg|portions?)?$/i.exec(text.slice(at + 1)) ?? [];
  if (name.trim() === "" || number === undefined)
    throw new InvalidArgumentError(
      `${quote(text)} is not written as ITEM=AMOUNT, such as rice=200g or soup=2portions.`,
    );
  const word = unit?.toLowerCase();
  const amount = { value: Number(number), ...(word !== undefined && { unit: toUnit(word) }) };
  return { text, name, amount };
}

function toUnit(word: string): "g" | "kg" | "portions" {
  return word === "g" || word === "kg" ? word : "portions";
}

/** Gathers the values of an argument or an option that may come several times. */
export function gatherItems(text: string, before: readonly AskedItem[] = []): AskedItem[] {
  return [...before, parseItem(text)];
}

/** What a name means: the id of a lot, a food, or a dish, by id or by name. */
export function findItem(name: string, { state, tables, kitchen }: OpenKeep): Found<Item> {
  const wanted = name.trim().toLowerCase();
  const lot = state.lots.get(wanted);
  if (lot !== undefined) return { ok: true, value: { kind: "lot", lot } };
  const food = findFoodCalled(tables.foods, name, kitchen.english);
  if (food !== undefined) return { ok: true, value: { kind: "food", food: food.id } };
  const dish = tables.dishes.find(({ id, title }) => id === wanted || title.toLowerCase() === wanted);
  if (dish !== undefined) return { ok: true, value: { kind: "dish", dish: dish.id } };
  const lots = firstExpiredFirstOut(state.lots.values());
  const there = lots.flatMap(({ food, cooked }) => food ?? cooked?.dish ?? []);
  const all = [...tables.foods.keys(), ...tables.dishes.map(({ id }) => id), ...lots.map(({ id }) => id)];
  return refuse(tellUnknownThing(name, there, all));
}

/** The lots of an item with anything left that are there on the day, in the order in which to use them. */
export function lotsOf(item: Item, { state, day }: OpenKeep): LotState[] {
  const isIt = (lot: LotState): boolean =>
    item.kind === "lot"
      ? lot.id === item.lot.id
      : item.kind === "food"
        ? lot.food === item.food
        : lot.cooked?.dish === item.dish;
  return firstExpiredFirstOut([...state.lots.values()].filter((lot) => isIt(lot) && lot.since <= day));
}

/** An amount of an item in g; portions weigh what they do in the first of its lots. */
export function amountG({ value, unit }: AskedAmount, item: Item, open: OpenKeep): number {
  const [first] = item.kind === "lot" ? [item.lot] : lotsOf(item, open);
  const dish = item.kind === "dish" ? open.tables.dishes.find(({ id }) => id === item.dish) : undefined;
  const portionG = first?.cooked?.portionG ?? dish?.portionMassG;
  const isPortions = unit === "portions" || (unit === undefined && portionG !== undefined);
  if (isPortions && portionG !== undefined) return value * portionG;
  return unit === "kg" ? value * 1000 : value;
}

/** How much of which lots an asked item is, first expired first out; what is not there is refused. */
export function shareOut(
  asked: AskedItem,
  open: OpenKeep,
): Found<{ readonly lot: LotState; readonly massG: number }[]> {
  const item = findItem(asked.name, open);
  if (!item.ok) return item;
  const lots = lotsOf(item.value, open);
  const thereG = lots.reduce((sum, { leftG }) => sum + leftG, 0);
  const wantedG = asked.amount === undefined ? thereG : amountG(asked.amount, item.value, open);
  // What is shown is rounded, so a hair more than there is means all of it.
  if (!(wantedG > 0) || wantedG > thereG + 0.5) return refuse(tellTooMuch(asked.text, thereG));
  let restG = Math.min(wantedG, thereG);
  const shares = lots.map((lot) => {
    const massG = Math.min(lot.leftG, restG);
    restG -= massG;
    return { lot, massG };
  });
  return { ok: true, value: shares.filter(({ massG }) => massG > 0) };
}
