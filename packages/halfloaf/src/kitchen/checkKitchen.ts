import { checkDish, SITTING_KINDS } from "../dish/index.ts";
import { massOfPack } from "../price/index.ts";
import { type Issue, type Parsed, parseWith } from "../quantity/index.ts";
import { checkPutBy } from "./checkPutBy.ts";
import { checkWishes } from "./checkWishes.ts";
import { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

type Path = Issue["path"];

/** Reads a kitchen file; all that is wrong with its shape at once. */
export function parseKitchen(input: unknown): Parsed<Kitchen> {
  return parseWith(Kitchen, input);
}

/**
 * All that is wrong in a kitchen whose shape is right: names that lead nowhere or stand twice, packs whose mass
 * can't be known, eaters in two places at once, dishes that can't be cooked as written, wishes that can't be met. Empty = nothing.
 */
export function checkKitchen(kitchen: Kitchen, tables: Tables): Issue[] {
  return [
    ...checkNames(kitchen),
    ...checkShops(kitchen),
    ...checkFoods(kitchen, tables),
    ...checkSittings(kitchen),
    ...checkDishes(kitchen, tables),
    ...checkPutBy(kitchen, tables),
    ...checkWishes(kitchen, tables),
  ];
}

function issue(code: string, path: Path, expected: string, received: string): Issue {
  return { code, path, expected, received };
}

function checkNames(kitchen: Kitchen): Issue[] {
  const lists = {
    eaters: kitchen.eaters,
    shops: kitchen.shops,
    packs: kitchen.packs,
    stores: kitchen.stores,
    putBy: kitchen.putBy,
    foods: kitchen.foods,
    overrides: kitchen.overrides,
    dishes: kitchen.dishes,
  };
  return Object.entries(lists).flatMap(([list, items]) => {
    const seen = new Set<string>();
    return items.flatMap((item, at) => {
      const [key, id] = "id" in item ? ["id", item.id] : ["food", item.food];
      const again = seen.has(id);
      seen.add(id);
      return again ? [issue("name-twice", [list, at, key], "a name used once", id)] : [];
    });
  });
}

function checkShops(kitchen: Kitchen): Issue[] {
  const kinds: readonly string[] = SITTING_KINDS;
  return [
    ...kitchen.shops.flatMap(({ beforeSitting }, at) =>
      kinds.includes(beforeSitting)
        ? []
        : [issue("sitting-kind-unknown", ["shops", at, "beforeSitting"], kinds.join(", "), beforeSitting)],
    ),
    ...kitchen.packs.flatMap(({ shop }, at) =>
      kitchen.shops.some(({ id }) => id === shop)
        ? []
        : [issue("shop-unknown", ["packs", at, "shop"], "a shop of this kitchen", shop)],
    ),
  ];
}

function checkFoods(kitchen: Kitchen, { foods }: Tables): Issue[] {
  const named: [Path, string][] = [
    ...kitchen.packs.map(({ food }, at): [Path, string] => [["packs", at, "food"], food]),
    ...kitchen.stores.map(({ food }, at): [Path, string] => [["stores", at, "food"], food]),
    ...kitchen.overrides.map(({ food }, at): [Path, string] => [["overrides", at, "food"], food]),
    ...kitchen.eaters.flatMap(({ avoids }, at) =>
      avoids.foods.map((food, i): [Path, string] => [["eaters", at, "avoids", "foods", i], food]),
    ),
  ];
  const unknown = named
    .filter(([, food]) => !foods.has(food))
    .map(([path, food]) => issue("food-unknown", path, "a food of the table", food));
  const weightless = kitchen.packs.flatMap((pack, at) => {
    const food = foods.get(pack.food);
    if (!food) return [];
    const mass = massOfPack(pack, food);
    return mass.ok
      ? []
      : [issue(mass.reason, ["packs", at, "content"], "a content whose mass is known", JSON.stringify(pack.content))];
  });
  const lots = new Set([...kitchen.stores, ...kitchen.putBy].map(({ id }) => id));
  const lost = kitchen.useUp.flatMap((id, at) =>
    lots.has(id) ? [] : [issue("lot-unknown", ["useUp", at], "a lot of the stores", id)],
  );
  return [...unknown, ...weightless, ...lost];
}

function checkSittings(kitchen: Kitchen): Issue[] {
  const known = new Set(kitchen.eaters.map(({ id }) => id));
  const seats = new Set<string>();
  return [
    ...kitchen.sittings.flatMap(({ eaters }, at) =>
      eaters.flatMap((id, i) =>
        known.has(id) ? [] : [issue("eater-unknown", ["sittings", at, "eaters", i], "an eater of this kitchen", id)],
      ),
    ),
    ...kitchen.sittings.flatMap((sitting, at) => findTakenSeats(sitting, at, seats)),
    ...checkShares(kitchen),
  ];
}

/** Eaters of a sitting who sit elsewhere at that time, each once, by the first weekday; their seats are then taken. */
function findTakenSeats({ kind, on, eaters }: Kitchen["sittings"][number], at: number, seats: Set<string>): Issue[] {
  return eaters.flatMap((id, i) => {
    const days = [...new Set(on)];
    const taken = days.find((day) => seats.has(`${day} ${kind} ${id}`));
    for (const day of days) seats.add(`${day} ${kind} ${id}`);
    const expected = `one ${kind} sitting on weekday ${taken}`;
    return taken === undefined ? [] : [issue("eater-twice", ["sittings", at, "eaters", i], expected, id)];
  });
}

function checkShares(kitchen: Kitchen): Issue[] {
  const kinds = [...new Set(kitchen.sittings.map(({ kind }) => kind))];
  return kinds.flatMap((kind) =>
    kitchen.energySharePct[kind] === undefined
      ? [issue("energy-share-missing", ["energySharePct", kind], "a share in percent", "nothing")]
      : [],
  );
}

function checkDishes(kitchen: Kitchen, tables: Tables): Issue[] {
  const known = new Set(tables.dishes.map(({ id }) => id));
  const own = kitchen.dishes.flatMap((dish, at) =>
    checkDish(dish, tables.foods).map((one) => ({ ...one, path: ["dishes", at, ...one.path] })),
  );
  const rated = kitchen.ratings.flatMap(({ dish }, at) =>
    known.has(dish) ? [] : [issue("dish-unknown", ["ratings", at, "dish"], "a dish", dish)],
  );
  const refused = kitchen.refusedDishes.flatMap((dish, at) =>
    known.has(dish) ? [] : [issue("dish-unknown", ["refusedDishes", at], "a dish", dish)],
  );
  return [...own, ...rated, ...refused];
}
