import * as v from "valibot";
import { Id } from "../../food/index.ts";
import { type Issue, type Parsed, parseWith } from "../../quantity/index.ts";
import { EventId } from "./eventId.ts";
import { EditedKitchen } from "./kitchenRecord.ts";
import { STAMP_ENTRIES } from "./stamp.ts";

/** Lists of an edited kitchen whose elements are edited one by one, with what names an element. */
const LISTS = {
  eaters: "id",
  shops: "id",
  packs: "id",
  foods: "id",
  overrides: "food",
  dishes: "id",
  ratings: "dish",
} as const;
type ListName = keyof typeof LISTS;

/**
 * One thing of the kitchen as it was set by hand: `thing` is a key of the kitchen (`kit`) or an element of one of its lists
 * (`eaters/ada`); without `value` it was taken away. A row that never changes, like an event; ids are drawn from the same
 * numbers.
 */
export const Edit = v.strictObject({
  id: EventId,
  ...STAMP_ENTRIES,
  by: v.optional(Id),
  act: v.optional(EventId),
  kind: v.literal("edited"),
  thing: v.pipe(v.string(), v.regex(/^[A-Za-z]+(\/[a-z0-9-]+)?$/, "a key of the kitchen, or a list and an element")),
  /** Place in its list, for an element of one; equal places go by name. */
  at: v.optional(v.number()),
  value: v.optional(v.unknown()),
  /** The first row of the act that this one takes back. */
  undoes: v.optional(EventId),
});
export type Edit = v.InferOutput<typeof Edit>;

/** A thing of the kitchen as it stands. */
export interface Thing {
  readonly value: unknown;
  readonly at?: number;
}

/** Each thing of a kitchen by its name. */
export function toThings(kitchen: EditedKitchen): Map<string, Thing> {
  const things = new Map<string, Thing>();
  for (const [key, value] of Object.entries(kitchen)) {
    if (!isList(key)) things.set(key, { value });
    else
      for (const [at, each] of (value as Record<string, unknown>[]).entries())
        things.set(`${key}/${String(each[LISTS[key]])}`, { value: each, at });
  }
  return things;
}

/**
 * The kitchen of which these are the things, or all that keeps them from being one. The path of an issue names an element
 * of a list by its id, as things do, not by its position.
 */
export function fromThings(things: ReadonlyMap<string, Thing>): Parsed<EditedKitchen> {
  const kitchen: Record<string, unknown> = {};
  const lists = new Map<ListName, [string, Thing][]>();
  for (const list of Object.keys(LISTS) as ListName[]) lists.set(list, []);
  for (const [name, thing] of things) {
    const [key = "", element] = name.split("/");
    if (element === undefined) kitchen[key] = thing.value;
    else if (isList(key)) lists.get(key)?.push([element, thing]);
  }
  for (const [key, elements] of lists) kitchen[key] = elements.sort(byPlace).map(([, { value }]) => value);
  const read = parseWith(EditedKitchen, kitchen);
  if (read.ok) return read;
  return { ok: false, issues: read.issues.map((issue) => ({ ...issue, path: nameElement(issue.path, lists) })) };
}

function nameElement(path: Issue["path"], lists: ReadonlyMap<ListName, [string, Thing][]>): Issue["path"] {
  const [key, at, ...rest] = path;
  if (typeof key !== "string" || typeof at !== "number" || !isList(key)) return path;
  return [key, lists.get(key)?.[at]?.[0] ?? at, ...rest];
}

/** Name of the thing that an issue of a kitchen is about. */
export function thingOf({ path: [key, element] }: Issue): string {
  return isList(String(key)) && element !== undefined ? `${key}/${element}` : String(key);
}

function byPlace([a, { at: placeA = 0 }]: [string, Thing], [b, { at: placeB = 0 }]: [string, Thing]): number {
  return placeA - placeB || (a < b ? -1 : 1);
}

function isList(key: string): key is ListName {
  return Object.hasOwn(LISTS, key);
}

/** What was edited between two states of a kitchen: the things that are new, other or gone, without ids and stamps. */
export function editsBetween(
  before: EditedKitchen | undefined,
  after: EditedKitchen,
): readonly Pick<Edit, "kind" | "thing" | "at" | "value">[] {
  const old = before === undefined ? new Map<string, Thing>() : toThings(before);
  const now = toThings(after);
  const edits: Pick<Edit, "kind" | "thing" | "at" | "value">[] = [];
  for (const [thing, { value, at }] of now) {
    const was = old.get(thing);
    if (was !== undefined && was.at === at && isSame(was.value, value)) continue;
    edits.push({ kind: "edited", thing, value, ...(at === undefined ? {} : { at }) });
  }
  for (const thing of old.keys()) if (!now.has(thing)) edits.push({ kind: "edited", thing });
  return edits;
}

/** Reads a row that is an edit; what its value may be is judged with the whole kitchen. */
export function parseEdit(input: unknown): Parsed<Edit> {
  return parseWith(Edit, input);
}

/** Equal as JSON, whatever the order of keys. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a).filter((key) => (a as Record<string, unknown>)[key] !== undefined);
  const others = Object.keys(b).filter((key) => (b as Record<string, unknown>)[key] !== undefined);
  return (
    keys.length === others.length &&
    keys.every(
      (key) =>
        Object.hasOwn(b, key) && isSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    )
  );
}
