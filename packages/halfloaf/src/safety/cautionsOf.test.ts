import { loadStarterDishes, loadStarterFoods } from "@halfloaf/data";
import * as v from "valibot";
import { describe, expect, test } from "vitest";
import { Dish } from "../dish/dish.ts";
import type { Food } from "../food/food.ts";
import { parseFoodTable } from "../food/foodTable.ts";
import { CAUTION_CODES, type Caution, cautionsOf } from "./cautionsOf.ts";
import { tellTime } from "./cautionTexts.ts";
import { readSafetyTables } from "./safetyTables.testing.ts";

const tables = readSafetyTables();
const parsed = parseFoodTable(loadStarterFoods());
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
const foods = parsed.table;
const dishes = loadStarterDishes().flatMap(({ content }) => v.parse(v.array(Dish), content));

type Subject = Parameters<typeof cautionsOf>[0];

function dishOf(ids: string[], more: Partial<Subject> = {}): Subject {
  const makings = ids.map((food) => ({
    food,
    amount: { value: 100, unit: "g" as const },
    optional: false,
    alternatives: [],
  }));
  return { makings, keeps: { fridgeDays: 2, authority: "the dish" }, served: ["hot"], travels: false, ...more };
}

const codes = (list: readonly Caution[]) => list.map(({ code }) => code);
const find = (list: readonly Caution[], code: string) => list.find((each) => each.code === code);

describe("laws, over every starter dish", () => {
  test("the label comes first, each caution has text and authority, and the order is that of the work", () => {
    expect(dishes.length).toBeGreaterThan(50);
    for (const dish of dishes) {
      const list = cautionsOf(dish, foods, tables);
      expect(list[0]?.code).toBe("label-first");
      expect(list.every(({ text, authority }) => text !== "" && authority !== "")).toBe(true);
      const order = codes(list).map((code) => CAUTION_CODES.indexOf(code));
      expect(order).toEqual(order.toSorted((a, b) => a - b));
    }
  });

  test("whatever is raw is told apart and has a temperature", () => {
    for (const dish of dishes) {
      const list = cautionsOf(dish, foods, tables);
      const raw = dish.makings.map(({ food }) => food).filter((id) => foods.get(id)?.hygiene.startsWith("raw-"));
      const told = list.filter(({ code }) => code === "core-temperature").flatMap((each) => each.foods);
      expect([dish.id, new Set(told)]).toEqual([dish.id, new Set(raw)]);
      expect(list.some(({ code }) => code === "raw-apart")).toBe(raw.length > 0);
    }
  });

  test("the strictest is no laxer than either authority", () => {
    for (const dish of dishes) {
      const strictest = cautionsOf(dish, foods, tables);
      for (const choice of ["us", "uk"] as const) {
        const chosen = cautionsOf(dish, foods, tables, choice);
        expect(codes(strictest)).toEqual(codes(chosen));
        for (const [at, { tempC, days, code }] of strictest.entries()) {
          const other = chosen[at] as Caution;
          if (tempC !== undefined) expect(tempC).toBeGreaterThanOrEqual(other.tempC as number);
          if (code === "eat-within") expect(days).toBeLessThanOrEqual(other.days as number);
        }
      }
    }
  });
});

describe("the language of a food's names", () => {
  const named = (id: string, name: string) => {
    const { german: _, ...names } = (foods.get(id) as Food).names;
    return { ...(foods.get(id) as Food), names: name === "" ? names : { british: [name], american: [name] } };
  };

  test("changes no caution of a starter food", () => {
    const english = new Map([...foods.keys()].map((id) => [id, named(id, "")]));
    for (const id of foods.keys())
      expect([id, codes(cautionsOf(dishOf([id]), foods, tables))]).toEqual([
        id,
        codes(cautionsOf(dishOf([id]), english, tables)),
      ]);
  });

  test.each([
    ["beef-liver", "Kalbsleber vom Hof"],
    ["honey", "Waldhonig"],
    ["rice-brown", "Roter Reis"],
    ["kidney-beans-dried", "Kidneybohnen, getrocknet"],
    ["beansprouts", "Linsensprossen"],
    ["spinach-frozen", "TK-Spinat"],
  ])("takes none from a food of one's own that is named in German: %s as %s", (id, name) => {
    const own = new Map([[id, named(id, name)]]);
    expect(codes(cautionsOf(dishOf([id]), own, tables))).toEqual(codes(cautionsOf(dishOf([id]), foods, tables)));
  });
});

describe("cases", () => {
  test("chicken: own board, no rinsing, the temperature of both authorities", () => {
    const list = cautionsOf(dishOf(["chicken-thigh-boned", "carrot"]), foods, tables);
    expect(codes(list)).toEqual([
      "label-first",
      "raw-apart",
      "no-rinse",
      "wash-soil",
      "core-temperature",
      "room-time",
      "chill-within",
      "eat-within",
      "re-heat",
      "re-heat-times",
    ]);
    expect(find(list, "core-temperature")).toMatchObject({
      tempC: 73.9,
      authority: "US FSIS and UK FSA",
      foods: ["chicken-thigh-boned"],
      text: "Poultry: 73.9 °C in the middle, held for 37 s.",
    });
  });

  test("the authority chosen alone gives its own figures", () => {
    const dish = dishOf(["chicken-thigh-boned"], { keeps: { fridgeDays: 4, authority: "the dish" } });
    const us = cautionsOf(dish, foods, tables, "us");
    expect(find(us, "core-temperature")).toMatchObject({ holdMinutes: 0, authority: "US FSIS" });
    expect(find(us, "eat-within")).toMatchObject({ days: 3, authority: "US FoodSafety.gov" });
    const uk = cautionsOf(dish, foods, tables, "uk");
    expect(find(uk, "core-temperature")).toMatchObject({ tempC: 70, holdMinutes: 2, authority: "UK FSA" });
    expect(find(uk, "eat-within")).toMatchObject({ days: 2, authority: "UK FSA" });
  });

  test("rice is chilled within an hour and eaten within a day", () => {
    const list = cautionsOf(dishOf(["rice-white-long"]), foods, tables);
    expect(find(list, "chill-within")).toMatchObject({ minutes: 60, foods: ["rice-white-long"] });
    expect(find(list, "eat-within")).toMatchObject({ days: 1 });
    const others = cautionsOf(dishOf(["rice-noodles", "vinegar-rice"]), foods, tables);
    expect(find(others, "chill-within")).toMatchObject({ minutes: 120, foods: [] });
  });

  test("dried kidney beans are boiled hard; tinned ones are not meant", () => {
    const beans = find(cautionsOf(dishOf(["kidney-beans-dried"]), foods, tables), "kidney-beans");
    expect(beans).toMatchObject({ hours: 5, minutes: 30, authority: "US FDA" });
    expect(find(cautionsOf(dishOf(["kidney-beans-dried"]), foods, tables, "uk"), "kidney-beans")?.minutes).toBe(10);
    expect(find(cautionsOf(dishOf(["kidney-beans-tinned"]), foods, tables), "kidney-beans")).toBeUndefined();
  });

  test.each([
    ["beef-liver", "liver-pregnancy"],
    ["honey", "honey-infants"],
    ["egg", "egg-soft"],
    ["flour-plain", "raw-flour"],
    ["beansprouts", "sprouts"],
    ["mixed-berries-frozen", "frozen-produce"],
    ["potato", "wash-soil"],
  ] as const)("%s calls for %s", (id, code) => {
    expect(foods.has(id)).toBe(true);
    expect(find(cautionsOf(dishOf([id]), foods, tables), code)?.foods).toEqual([id]);
    expect(find(cautionsOf(dishOf(["cheddar"]), foods, tables), code)).toBeUndefined();
  });

  test("what is eaten the same day and cold says nothing of keeping and heating", () => {
    const dish = dishOf(["cheddar"], { keeps: { fridgeDays: 0, authority: "the dish" }, served: ["cold"] });
    expect(codes(cautionsOf(dish, foods, tables))).toEqual(["label-first", "room-time"]);
  });

  test("what only freezes is chilled and heated again but has no days in the fridge", () => {
    const keeps = { fridgeDays: 0, freezerDays: 60, authority: "the dish" };
    const list = codes(cautionsOf(dishOf(["cheddar"], { keeps }), foods, tables));
    expect(list).toEqual(["label-first", "room-time", "chill-within", "re-heat", "re-heat-times"]);
  });

  test("what travels is carried cold", () => {
    const list = cautionsOf(dishOf(["cheddar"], { travels: true }), foods, tables);
    expect(find(list, "carry-cold")).toMatchObject({ minutes: 120, authority: "US FSIS" });
    expect(find(list, "carry-cold")?.text).toContain("2 h, in great heat 1 h");
  });

  test("an alternative that is taken brings its own cautions and drops those of the making", () => {
    const chicken = dishOf(["chicken-thigh-boned"]);
    const list = cautionsOf(chicken, foods, tables, "strictest", (making) => ({ ...making, food: "tofu-firm" }));
    expect(codes(list)).not.toContain("raw-apart");
    expect(codes(cautionsOf(chicken, foods, tables, "strictest", () => undefined))).not.toContain("raw-apart");
  });

  test.each([
    [0.604, "37 s"],
    [0.5, "30 s"],
    [2, "2 min"],
    [1.427, "1 min 26 s"],
    [60, "1 h"],
    [120, "2 h"],
    [90, "90 min"],
  ])("%d min is told as %s", (minutes, text) => {
    expect(tellTime(minutes)).toBe(text);
  });
});
