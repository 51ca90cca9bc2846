import type { Issue } from "halfloaf/quantity";

/** A value of an item: a text as written, markup and all, or another item. */
export type ItemValue = string | Item;

/**
 * A thing with properties, however a page states it. Types and names of properties are the last part of their address in
 * lower case ("recipe", "recipeyield"); lists of lists are one list.
 */
export interface Item {
  readonly types: readonly string[];
  readonly id?: string;
  readonly properties: ReadonlyMap<string, readonly ItemValue[]>;
  /** What a reader of the page sees of it; absent where the page doesn't show it. */
  readonly text?: () => string;
  readonly path: Issue["path"];
}

/** Deepest nesting of items that is followed; also ends rings of items that name each other. */
export const MAX_ITEM_DEPTH = 20;

/** Longest term that is looked at. */
const MAX_TERM = 200;

/** The name in a vocabulary without its address or prefix, in lower case; only letters, digits, "_", "." and "-" are kept. */
export function toName(term: string): string {
  return term
    .slice(0, MAX_TERM)
    .trim()
    .replace(/[#/\s]+$/, "")
    .replace(/^.*[#/:]/s, "")
    .replace(/[^\p{L}\p{N}_.-]/gu, "")
    .toLowerCase();
}

/** Most values of one property that are kept. */
const MOST_VALUES = 1_000;

/** Adds values to a property while an item is being read, as many as are kept. */
export function addValues(properties: Map<string, ItemValue[]>, name: string, values: readonly ItemValue[]): void {
  const list = properties.get(name) ?? [];
  for (const value of values.slice(0, MOST_VALUES - list.length)) list.push(value);
  properties.set(name, list);
}

/** The values of a property, none where it is absent. */
export function valuesOf(item: Item, name: string): readonly ItemValue[] {
  return item.properties.get(name.toLowerCase()) ?? [];
}

/** Every item of a type among these and within them, the outer ones first. */
export function findItems(items: readonly Item[], type: string): Item[] {
  const seen = new Set<Item>();
  const found: Item[] = [];
  const visit = (item: Item, depth: number): void => {
    if (seen.has(item) || depth > MAX_ITEM_DEPTH) return;
    seen.add(item);
    if (item.types.includes(type)) found.push(item);
    for (const values of item.properties.values()) {
      for (const value of values) if (typeof value === "object") visit(value, depth + 1);
    }
  };
  for (const item of items) visit(item, 0);
  return found;
}
