import { loadStarterFoods } from "@halfloaf/data";
import fc from "fast-check";
import { type Food, parseFoodTable } from "halfloaf/food";
import { describe, expect, it } from "vitest";
import { FoodIndex } from "./FoodIndex.ts";
import { type FoodFinding, findFood } from "./findFood.ts";
import { FOOD_SYNONYMS } from "./foodSynonyms.ts";

const parsed = parseFoodTable(loadStarterFoods());
if (!parsed.ok) throw new Error("the starter foods cannot be read");
const foods: Food[] = [...parsed.table.values()];
const index = new FoodIndex(foods);

const offered = (finding: FoodFinding) => finding.nearest.map(({ food }) => food);

describe("findFood", () => {
  it("offers a food by each of its names, in either English", () => {
    const missed = foods.flatMap(({ id, names }) =>
      [...names.british, ...names.american]
        .filter((name) => !offered(findFood(index, { name })).includes(id))
        .map((name) => `${id}: ${name}`),
    );
    expect(missed).toEqual([]);
  });

  it("offers first a food that bears the name, or is its synonym, where its English is known", () => {
    const plain = (name: string) => name.replace(/\s*\([^)]*\)/g, "").toLowerCase();
    const bears = ({ id, names }: Food, name: string) =>
      [...names.british, ...names.american].some((each) => plain(each) === plain(name)) ||
      FOOD_SYNONYMS.some(({ synonyms }) => synonyms.some((each) => each.food === id && each.name === plain(name)));
    const missed = foods.flatMap(({ names }) =>
      (["british", "american"] as const).flatMap((english) =>
        names[english]
          .filter((name) => {
            const first = parsed.table.get(offered(findFood(index, { name, english }))[0] ?? "");
            return first === undefined || !bears(first, name);
          })
          .map((name) => `${english}: ${name}`),
      ),
    );
    expect(missed).toEqual([]);
  });

  it("finds a food by each of its German names, in capitals and with umlauts and ß spelt out", () => {
    const spell = (name: string): string =>
      [...name.toLowerCase()].map((letter) => ({ ä: "ae", ö: "oe", ü: "ue", ß: "ss" })[letter] ?? letter).join("");
    const missed = foods.flatMap(({ id, names: { german = [] } }) =>
      german
        .flatMap((name) => [name, name.toUpperCase(), spell(name)])
        .filter((name) => !offered(findFood(index, { name })).includes(id))
        .map((name) => `${id}: ${name}`),
    );
    expect(missed).toEqual([]);
  });

  it("never takes another food silently for the first German name of one", () => {
    const taken = foods.flatMap(({ id, names: { german = [] } }) => {
      const finding = findFood(index, { name: german[0] ?? "" });
      return finding.kind === "found" && finding.best.food !== id ? [`${german[0]}: ${finding.best.food}`] : [];
    });
    expect(taken).toEqual([]);
  });

  it.each([
    ["Zwiebeln", "onion"],
    ["gehackte Zwiebeln", "onion"],
    ["Möhren", "carrot"],
    ["Mohrrüben", "carrot"],
    ["Knoblauchzehen", "garlic"],
    ["festkochende Kartoffeln", "potato"],
    ["Weizenmehl (Type 405)", "flour-plain"],
    ["saure Sahne", "soured-cream"],
    ["getrocknete Linsen", "lentils-brown-dried"],
    ["Kichererbsen aus der Dose", "chickpeas-tinned"],
    ["Erdäpfel", "potato"],
    ["Eier", "egg"],
  ])("reads German: %s", (name, food) => expect(offered(findFood(index, { name }))[0]).toBe(food));

  it.each(["Hackfleisch", "Käse", "Salat", "Pinienkerne", "Safran", "Rotwein", "Mohn"])(
    "is not sure of a German name that means several foods, or none of the table: %s",
    (name) => expect(findFood(index, { name }).kind).not.toBe("found"),
  );

  it("answers the same whatever the case, the order of words before the head and the number", () => {
    const name = (text: string) => offered(findFood(index, { name: text }))[0];
    expect(name("RED BELL PEPPER")).toBe("pepper-red");
    expect(name("bell red peppers")).toBe("pepper-red");
    expect(name("Chick Peas")).toBe("chickpeas-tinned");
    expect([name("tomatoes"), name("cherry tomato"), name("loaves")]).toEqual([
      "tomato",
      "cherry-tomatoes",
      "bread-white",
    ]);
  });

  it("mends a slip, but never surely", () => {
    for (const [name, food] of [
      ["brocolli", "broccoli"],
      ["mozarella", "mozzarella"],
      ["corgettes", "courgette"],
      ["self-raisng flour", "flour-self-raising"],
    ] as const) {
      expect(findFood(index, { name })).toMatchObject({ kind: "unsure", best: { food } });
    }
  });

  it.each([
    "water",
    "red wine",
    "saffron",
    "tamarind paste",
    "puff pastry",
    "pine nuts",
    "lobster",
    "",
    "???",
    "__proto__",
  ])("says that a food is not in the table: %j", (name) => expect(findFood(index, { name }).kind).toBe("not-in-table"));

  it.each(["almond butter", "coconut flour", "goose eggs", "rose water", "walnut oil", "butter", "fish"])(
    "is not sure of a name that may be another food: %s",
    (name) => expect(findFood(index, { name }).kind).not.toBe("found"),
  );

  it("how a food is kept decides between two that differ in nothing else", () => {
    const find = (name: string, prepared: string[] = [], said: string[] = []) =>
      findFood(index, { name, said, prepared }).nearest[0]?.food;
    expect(find("dried chickpeas")).toBe("chickpeas-dried");
    expect(find("chickpeas", ["soaked overnight"])).toBe("chickpeas-dried");
    expect(find("chickpeas", ["drained"])).toBe("chickpeas-tinned");
    expect(findFood(index, { name: "chopped tomatoes", tinned: true })).toMatchObject({
      best: { food: "tomatoes-tinned" },
    });
    expect(find("lettuce", ["rinsed", "dried"])).toBe("lettuce-iceberg");
    expect(find("spinach", [], ["frozen"])).toBe("spinach-frozen");
  });

  it("gives at most three, the best first, with scores from 0 to 1, whatever is asked", () => {
    const ids = new Set(foods.map(({ id }) => id));
    const words = fc.constantFrom("red", "pepper", "milk", "butter", "dried", "of", "tin", "beans", "(", "constructor");
    const name = fc.oneof(
      fc.string(),
      fc.array(fc.oneof(words, fc.string({ maxLength: 6 }))).map((all) => all.join(" ")),
    );
    fc.assert(
      fc.property(name, (asked) => {
        const finding = findFood(index, { name: asked });
        const scores = finding.nearest.map(({ score }) => score);
        expect(scores.length).toBeLessThanOrEqual(3);
        expect(scores).toEqual([...scores].sort((a, b) => b - a));
        expect(scores.every((score) => score >= 0 && score <= 1)).toBe(true);
        expect(offered(finding).every((id) => ids.has(id))).toBe(true);
        if (finding.kind !== "not-in-table") expect(finding.best).toEqual(finding.nearest[0]);
      }),
      { endOnFailure: true },
    );
  });

  it("works on a table of other foods, without the synonyms of foods it lacks", () => {
    const own = new FoodIndex([{ id: "quince", group: "fruit", names: { british: ["quince"], american: ["quince"] } }]);
    expect(findFood(own, { name: "quince cheese" }).kind).not.toBe("found");
    expect(findFood(own, { name: "quinces" })).toMatchObject({ kind: "found", best: { food: "quince" } });
    expect(findFood(own, { name: "kosher salt" })).toEqual({ kind: "not-in-table", nearest: [] });
  });

  it("every synonym means a food of the starter table", () => {
    const ids = new Set(foods.map(({ id }) => id));
    const meant = FOOD_SYNONYMS.flatMap(({ synonyms }) => synonyms.map(({ food }) => food));
    expect(meant.filter((food) => !ids.has(food))).toEqual([]);
  });
});
