import type { Issue } from "halfloaf/quantity";
import { addValues, type Item, type ItemValue, toName } from "./Item.ts";
import { elementsOf, type PageElement } from "./PageElement.ts";
import { type LooseValue, parseLooseJson } from "./parseLooseJson.ts";

type LooseMap = ReadonlyMap<string, LooseValue>;

/** Keys that wrap values without meaning anything themselves. */
const WRAPPINGS = ["@graph", "@list", "@set", "@value"];

/** Most scripts of one page that are read; pages have one or a few. */
const MOST_SCRIPTS = 100;

/**
 * The items of all JSON-LD scripts of a page, and where one of them could not be read on. What only names another item by
 * its `@id` is that item. No context is fetched: every context is taken for that of schema.org.
 *
 * Paths begin with `json-ld` and the position of the script. **Source**: W3C JSON-LD 1.1, as far as schema.org uses it.
 */
export function jsonLdItems(root: PageElement): { readonly items: readonly Item[]; readonly issues: readonly Issue[] } {
  const items: Item[] = [];
  const issues: Issue[] = [];
  let script = 0;
  for (const element of elementsOf(root)) {
    if (element.name !== "script" || !/ld\+json/i.test(element.attributes.get("type") ?? "")) continue;
    if (script >= MOST_SCRIPTS) break;
    const path = ["json-ld", script++];
    const read = parseLooseJson(element.children.filter((child) => typeof child === "string").join(""));
    issues.push(...read.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] })));
    items.push(...toValues(read.values, path).filter((value) => typeof value === "object"));
  }
  return { items: linkItems(items), issues };
}

function toValues(value: LooseValue, path: Issue["path"]): ItemValue[] {
  if (value === null) return [];
  if (typeof value === "string") return [value];
  if (typeof value === "number" || typeof value === "boolean") return [String(value)];
  if (isMap(value)) return toItems(value, path);
  return value.length === 1
    ? toValues(value[0] as LooseValue, path)
    : value.flatMap((each, at) => toValues(each, [...path, at]));
}

function toItems(map: LooseMap, path: Issue["path"]): ItemValue[] {
  const wrapped = WRAPPINGS.flatMap((key) => toValues(map.get(key) ?? null, [...path, key]));
  const properties = new Map<string, ItemValue[]>();
  for (const [key, value] of map) {
    if (key.startsWith("@")) continue;
    const name = toName(key);
    addValues(properties, name, toValues(value, [...path, name]));
  }
  const types = toValues(map.get("@type") ?? map.get("type") ?? null, path).filter((type) => typeof type === "string");
  const id = map.get("@id");
  if (properties.size === 0 && types.length === 0 && (wrapped.length > 0 || typeof id !== "string")) return wrapped;
  const item: Item = { types: types.map(toName), properties, path };
  return [typeof id === "string" ? { ...item, id } : item, ...wrapped];
}

/** Puts in place of each item that only names another the one that is named. */
function linkItems(items: readonly Item[]): readonly Item[] {
  const named = new Map<string, Item>();
  const every: Item[] = [];
  const waiting = [...items];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    every.push(next);
    if (next.id !== undefined && next.properties.size > 0) named.set(next.id, next);
    for (const values of next.properties.values()) {
      for (const value of values) if (typeof value === "object") waiting.push(value);
    }
  }
  const link = (value: ItemValue): ItemValue => {
    const isName = typeof value === "object" && value.id !== undefined && value.properties.size === 0;
    return (isName ? named.get(value.id as string) : undefined) ?? value;
  };
  for (const item of every) {
    for (const [name, values] of item.properties) {
      if (values.some((value) => link(value) !== value)) {
        (item.properties as Map<string, readonly ItemValue[]>).set(name, values.map(link));
      }
    }
  }
  return items;
}

function isMap(value: LooseValue): value is LooseMap {
  return value instanceof Map;
}
