import { describe, expect, it } from "vitest";
import { makeDish, makeFood, makeMaking } from "../dish/dish.testing.ts";
import { makePack } from "../price/pack.testing.ts";
import type { Lot } from "../stores/index.ts";
import { parseKitchen } from "./checkKitchen.ts";
import { faultsOf, makeEater, makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";

const oats = makeFood("oats-rolled");
const tables = withTables(
  readStarterTables(),
  [oats],
  [makeDish({ id: "oat-bowl", makings: [makeMaking("oats-rolled", 40)] })],
);

const lot: Lot = {
  id: "lot-oats",
  food: "oats-rolled",
  place: "dry-store",
  boughtOn: "2026-03-01",
  massG: 300,
  costMinor: 60,
};
const sitting: Kitchen["sittings"][number] = {
  kind: "evening",
  on: [1, 2],
  eaters: ["ada"],
  minutes: 60,
  heat: true,
  packed: false,
};
const [corner] = makeKitchen().shops;
const shop = corner as Kitchen["shops"][number];

describe("checking a kitchen", () => {
  it("finds nothing in a sound one", () => {
    const kitchen = makeKitchen({
      packs: [makePack()],
      stores: [lot],
      useUp: ["lot-oats"],
      refusedDishes: ["oat-bowl"],
    });
    expect(faultsOf(kitchen, tables)).toEqual([]);
    expect(parseKitchen(JSON.parse(JSON.stringify(kitchen)))).toEqual({ ok: true, value: kitchen });
  });

  it.each<[string, Partial<Kitchen>, string[]]>([
    ["an eater named twice", { eaters: [makeEater("ada"), makeEater("ada")] }, ["name-twice eaters.1.id"]],
    ["a shop named twice", { shops: [shop, shop] }, ["name-twice shops.1.id"]],
    ["a pack named twice", { packs: [makePack(), makePack()] }, ["name-twice packs.1.id"]],
    ["a lot named twice", { stores: [lot, lot] }, ["name-twice stores.1.id"]],
    [
      "a trip home before a sitting that is none",
      { shops: [{ ...shop, beforeSitting: "supper" }] },
      ["sitting-kind-unknown shops.0.beforeSitting"],
    ],
    ["a pack of a shop that is none", { packs: [makePack({ shop: "mall" })] }, ["shop-unknown packs.0.shop"]],
    ["a pack of a food that is none", { packs: [makePack({ food: "oats-rold" })] }, ["food-unknown packs.0.food"]],
    ["a lot of a food that is none", { stores: [{ ...lot, food: "oat" }] }, ["food-unknown stores.0.food"]],
    [
      "a food avoided that is none",
      { eaters: [makeEater("ada", { avoids: { allergens: [], foods: ["oat"] } })] },
      ["food-unknown eaters.0.avoids.foods.0"],
    ],
    [
      "a pack sold by volume of a food without density",
      { packs: [makePack({ content: { volumeMl: 500 } })] },
      ["density-unknown packs.0.content"],
    ],
    [
      "a pack of pieces of a food that has none",
      { packs: [makePack({ content: { pieces: 4 } })] },
      ["pieces-unknown packs.0.content"],
    ],
    ["a lot to use up that is none", { useUp: ["lot-rice"] }, ["lot-unknown useUp.0"]],
    [
      "a sitting of an eater who is none",
      { sittings: [{ ...sitting, eaters: ["ada", "bob"] }] },
      ["eater-unknown sittings.0.eaters.1"],
    ],
    [
      "an eater at two sittings of one time, however many days",
      { sittings: [sitting, sitting] },
      ["eater-twice sittings.1.eaters.0"],
    ],
    [
      "an eater twice at one sitting",
      { sittings: [{ ...sitting, eaters: ["ada", "ada"] }] },
      ["eater-twice sittings.0.eaters.1"],
    ],
    [
      "no share of energy for a kind of sitting, however often it is",
      { energySharePct: { morning: 100 }, sittings: [sitting, { ...sitting, on: [3] }] },
      ["energy-share-missing energySharePct.evening"],
    ],
    [
      "a rating of a dish that is none",
      { ratings: [{ dish: "rice-bowl", points: 3 }] },
      ["dish-unknown ratings.0.dish"],
    ],
    [
      "a wish for what is none, by someone who is none",
      { wishes: [{ what: { dish: "rice-bowl", main: "oat" }, eaters: ["bob"], least: 1 }] },
      ["eater-unknown wishes.0.eaters.0", "dish-unknown wishes.0.what.dish", "food-unknown wishes.0.what.main"],
    ],
    [
      "a wish for a sitting that is none",
      { sittings: [sitting], wishes: [{ what: { dish: "oat-bowl" }, on: [3], most: 1 }] },
      ["wish-no-sitting wishes.0"],
    ],
    [
      "a wish for more servings than there are sittings",
      { sittings: [sitting], packs: [makePack()], wishes: [{ what: { dish: "oat-bowl" }, least: 3 }] },
      ["wish-beyond wishes.0.least"],
    ],
    [
      "a wish that no dish can meet",
      {
        packs: [makePack()],
        wishes: [
          { what: { dish: "oat-bowl" }, least: 1 },
          { what: { manner: "soup" }, least: 1 },
          { what: { dish: "oat-bowl", group: "fish" }, least: 1 },
          { what: { manner: "soup" }, most: 1 },
        ],
      },
      ["wish-unmet wishes.1.what", "wish-unmet wishes.2.what"],
    ],
    [
      "a wish that no food is there for",
      { wishes: [{ what: { dish: "oat-bowl" }, least: 1 }] },
      ["wish-unmet wishes.0.what"],
    ],
    ["a dish refused that is none", { refusedDishes: ["rice-bowl"] }, ["dish-unknown refusedDishes.0"]],
  ])("finds %s, once", (_title, over, faults) => {
    expect(faultsOf(makeKitchen(over), tables)).toEqual(faults);
  });

  it("refuses a wish without an end, one that means nothing and one of crossed ends", () => {
    const asked = (wish: object) => {
      const read = parseKitchen({ ...makeKitchen(), wishes: [wish] });
      return read.ok ? [] : read.issues.map(({ path }) => path.join("."));
    };
    expect(asked({ what: { manner: "soup" }, least: 1, most: 1 })).toEqual([]);
    expect(asked({ what: { manner: "soup" } })).toEqual(["wishes.0"]);
    expect(asked({ what: {}, most: 1 })).toEqual(["wishes.0.what"]);
    expect(asked({ what: { manner: "soup" }, least: 2, most: 1 })).toEqual(["wishes.0.least"]);
  });

  it("lets an eater sit at other times and on other days, and a weekday stand twice", () => {
    const sittings: Kitchen["sittings"] = [
      { ...sitting, on: [1, 1] },
      { ...sitting, on: [2] },
      { ...sitting, kind: "morning" },
    ];
    expect(faultsOf(makeKitchen({ sittings }), tables)).toEqual([]);
  });

  it("finds what is wrong with a dish of the kitchen's own, with the way to it", () => {
    const own = makeDish({ id: "own", makings: [makeMaking("nothing", 10)] });
    const faults = faultsOf(makeKitchen({ dishes: [own] }), tables);
    expect(faults.length).toBeGreaterThan(0);
    for (const fault of faults) expect(fault).toMatch(/ dishes\.0\./);
  });

  it("finds all faults of all kinds at once", () => {
    const kitchen = makeKitchen({
      packs: [makePack({ shop: "mall", food: "oat" })],
      useUp: ["none"],
      sittings: [{ ...sitting, eaters: ["bob"] }],
    });
    expect(faultsOf(kitchen, tables)).toEqual([
      "shop-unknown packs.0.shop",
      "food-unknown packs.0.food",
      "lot-unknown useUp.0",
      "eater-unknown sittings.0.eaters.0",
    ]);
  });
});
