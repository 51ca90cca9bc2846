import { Id } from "../food/index.ts";
import { type Issue, parseWith } from "../quantity/index.ts";
import { checkKitchen, parseKitchen } from "./checkKitchen.ts";
import { Kitchen } from "./kitchen.ts";
import { type Tables, withOwnFoodsAndDishes } from "./tables.ts";

type Path = Issue["path"];
type Keys = Readonly<Record<string, unknown>>;

/** Lists of a kitchen whose entries can be left out one by one to look at the others. */
const LISTS = [
  "eaters",
  "shops",
  "packs",
  "stores",
  "sittings",
  "foods",
  "overrides",
  "dishes",
  "ratings",
  "useUp",
  "refusedDishes",
] as const;
type List = (typeof LISTS)[number];

/** Keys down to the food of an alternative: dishes, 0, makings, 0, alternatives, 0, food. */
const DEEPEST_FOOD = 7;

/** The list that an issue between two parts looks into, besides the one its path names. */
const LOOKED_INTO: Readonly<Record<string, List>> = {
  "shop-unknown": "shops",
  "eater-unknown": "eaters",
  "lot-unknown": "stores",
  "dish-unknown": "dishes",
  "energy-share-missing": "sittings",
};

/** What stands for a faulty part while the sound ones are looked at; nothing of it is ever shown. */
const STAND_IN: Keys = {
  format: "halfloaf-kitchen",
  version: 1,
  name: "stand-in",
  currency: "EUR",
  startsOn: "2026-01-05",
  authorities: { intake: "efsa" },
  eaters: [{ id: "stand-in", name: "x", sex: "male", ageYears: 30, heightCm: 175, massKg: 70, activity: "active" }],
  kit: {
    rings: 1,
    pans: 1,
    pots: 1,
    potPortions: 4,
    oven: true,
    microwave: true,
    kettle: true,
    blender: true,
    boards: 1,
    fridgeLitres: 50,
    freezerLitres: 50,
  },
  shops: [{ id: "stand-in", name: "x", openDays: [1], trip: { costMinor: 0, minutes: 0 }, beforeSitting: "evening" }],
  packs: [],
  stores: [],
  energySharePct: { morning: 25, midday: 30, between: 10, evening: 35 },
  sittings: [{ kind: "evening", on: [1], eaters: ["stand-in"], minutes: 30 }],
  limits: { handsOnMinutes: 60, tripsPerWeek: 3 },
  worth: { minuteMinor: 3 },
};

/**
 * Everything that is wrong with a value that should be a kitchen: faults of shape, and at the same time what does not
 * fit together in the parts whose shape is right. Empty = a sound kitchen.
 */
export function findKitchenFaults(input: unknown, starter: Tables): readonly Issue[] {
  const parsed = parseKitchen(input);
  if (parsed.ok) return checkKitchen(parsed.value, withOwnFoodsAndDishes(starter, parsed.value));
  const pruned =
    typeof input === "object" && input !== null && !Array.isArray(input) ? prune(input as Keys) : undefined;
  const among = pruned === undefined ? [] : checkPruned(pruned, starter);
  const within = pruned === undefined ? [] : findUnknownFoods(input as Keys, pruned, starter);
  return [...parsed.issues, ...among, ...within];
}

/** A kitchen without its faulty parts. */
interface Pruned {
  readonly kitchen: Kitchen;
  /** Keys whose value is a stand-in. */
  readonly replaced: ReadonlySet<string>;
  /** Positions in the input of the entries that are left, by list. */
  readonly kept: ReadonlyMap<string, readonly number[]>;
  /** Ids of the entries left out. */
  readonly lost: ReadonlySet<unknown>;
}

function prune(input: Keys): Pruned | undefined {
  const replaced = new Set<string>();
  const kept = new Map<string, readonly number[]>();
  const lost = new Set<unknown>();
  const candidate: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(Kitchen.entries)) {
    const value = Object.hasOwn(input, key) ? input[key] : undefined;
    const entries = (LISTS as readonly string[]).includes(key) && Array.isArray(value) ? value : undefined;
    if (entries !== undefined) {
      const sound = [...entries.keys()].filter((at) => isSoundEntry(schema, entries[at]));
      kept.set(key, sound);
      for (const [at, entry] of entries.entries()) if (!sound.includes(at)) lost.add(idOf(entry));
      candidate[key] = sound.map((at) => entries[at]);
    } else candidate[key] = value;
    if (parseWith(schema, candidate[key]).ok) continue;
    replaced.add(key);
    candidate[key] = STAND_IN[key];
  }
  const parsed = parseKitchen(Object.fromEntries(Object.entries(candidate).filter(([, value]) => value !== undefined)));
  return parsed.ok ? { kitchen: parsed.value, replaced, kept, lost } : undefined;
}

function isSoundEntry(schema: Parameters<typeof parseWith>[0], entry: unknown): boolean {
  return parseWith(schema, [entry]).ok;
}

/** What does not fit together among the sound parts, at the paths of the input, without what follows from leaving out. */
function checkPruned({ kitchen, replaced, kept, lost }: Pruned, starter: Tables): Issue[] {
  return checkKitchen(kitchen, withOwnFoodsAndDishes(starter, kitchen))
    .filter(({ path, code, received }) => {
      const isOfStandIn = [String(path[0]), LOOKED_INTO[code]].some((key) => key !== undefined && replaced.has(key));
      return !isOfStandIn && !lost.has(received);
    })
    .map((issue) => ({ ...issue, path: toInputPath(issue.path, kept) }));
}

function toInputPath(path: Path, kept: ReadonlyMap<string, readonly number[]>): Path {
  const [list, position, ...rest] = path;
  const at = typeof position === "number" ? kept.get(String(list))?.[position] : undefined;
  return at === undefined ? path : [list as string, at, ...rest];
}

/** Unknown foods of the packs, lots and dishes that were left out, so that no fault hides behind another. */
function findUnknownFoods(input: Keys, { kept }: Pruned, { foods }: Tables): Issue[] {
  const isLost = ([list, at]: Path): boolean =>
    kept.has(String(list)) && !kept.get(String(list))?.includes(at as number);
  const own = Array.isArray(input.foods) ? input.foods.map((food) => idOf(food)) : [];
  return (["packs", "stores", "overrides", "dishes"] as const)
    .flatMap((list) => collectFoods(input[list], [list]))
    .filter(({ path, food }) => isLost(path) && isId(food) && !foods.has(food) && !own.includes(food))
    .map(({ path, food }) => ({ code: "food-unknown", path, expected: "a food of the table", received: food }));
}

/** Every text under a key "food", with its path. */
function collectFoods(value: unknown, path: Path): { readonly path: Path; readonly food: string }[] {
  if (path.length > DEEPEST_FOOD || typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) => {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    return key === "food" && typeof member === "string" ? [{ path: here, food: member }] : collectFoods(member, here);
  });
}

function idOf(entry: unknown): unknown {
  return typeof entry === "object" && entry !== null && "id" in entry ? entry.id : undefined;
}

function isId(text: string): boolean {
  return parseWith(Id, text).ok;
}
