import { expect, test } from "vitest";
import { minutesOf } from "../../dish/index.ts";
import { pickRule } from "../../safety/index.ts";
import { checkWork } from "../../work/check/index.ts";
import { readDemoKitchens, readStarterTables, timeWork } from "./cooking.testing.ts";
import { toWorkSheet } from "./toWorkSheet.ts";

const tables = readStarterTables();
const kitchens = readDemoKitchens();

/** Every starter dish by itself, for the portions it is written for, in every demo kitchen that has the kit. */
const cooked = kitchens.flatMap(({ name, kit }) =>
  tables.dishes.map((dish) => {
    const wish = {
      dishes: [{ dish, portions: dish.portions }],
      kit,
      cooks: 1 as const,
      tables,
      authority: "strictest" as const,
    };
    const stated = minutesOf(dish, dish.portions, { rings: Math.max(1, kit.rings), cooks: 1 });
    return { label: `${dish.id} in ${name}`, dish, timed: timeWork(wish), stated };
  }),
);

test("every starter dish has its minutes, proven, and no hold gone beyond", () => {
  expect(cooked).toHaveLength(3 * tables.dishes.length);
  expect(cooked.filter(({ timed }) => !timed.isProven || timed.excesses.length > 0).map(({ label }) => label)).toEqual(
    [],
  );
});

test("the independent judge finds no fault with any of them, nor with the minutes", () => {
  const faulty = cooked.flatMap(({ label, timed }) => {
    const { faults, measures } = checkWork(timed.cooking.problem, timed.plan, timed.excesses);
    return faults.length > 0 || measures?.serveMinutes !== timed.plan.serveMinutes ? [{ label, faults, measures }] : [];
  });
  expect(faulty).toEqual([]);
});

test("what a simple list does in 30 minutes is also done so by the order of work, whole minutes and washes included", () => {
  const quick = cooked.filter(({ stated }) => stated.elapsed <= 30);
  expect(quick.length).toBeGreaterThan(200);
  expect(quick.filter(({ timed }) => timed.plan.serveMinutes > 30).map(({ label }) => label)).toEqual([]);
});

test("the order of work is never longer than the simple list but for rounding up each step and washing the board", () => {
  const longer = cooked.flatMap(({ label, timed, stated, dish }) => {
    const washes = timed.plan.boardWashes.length * 3;
    const rounding = dish.method.length;
    return timed.plan.serveMinutes >= stated.elapsed + rounding + washes ? [label] : [];
  });
  expect(longer).toEqual([]);
});

test("every dish with raw meat, fish or egg has its core temperature at a step that heats it", () => {
  const rawDishes = cooked.filter(({ dish }) =>
    dish.makings.some(({ food, optional }) => !optional && tables.foods.get(food)?.hygiene.startsWith("raw-")),
  );
  expect(rawDishes.length).toBeGreaterThan(30);
  const heat = ["boil", "simmer", "steam", "fry", "bake", "grill", "microwave"];
  const missing = rawDishes.flatMap(({ label, timed }) => {
    const lines = toWorkSheet(timed).lines.filter((line) => line.kind === "step");
    const at = lines.filter(({ cautions }) => cautions.some(({ code }) => code === "core-temperature"));
    return at.length > 0 && at.every(({ stepKind }) => heat.includes(stepKind)) ? [] : [label];
  });
  expect(missing).toEqual([]);
});

test("dried kidney beans are soaked and boiled hard for as long as the stricter authority says", () => {
  const { keepingRules } = tables.safety;
  const soakMinutes = 60 * pickRule(keepingRules, "kidney-bean-soak-hours", "strictest").value;
  const boilMinutes = pickRule(keepingRules, "kidney-bean-boil-minutes", "strictest").value;
  const withBeans = tables.dishes.filter(({ makings }) => makings.some(({ food }) => food === "kidney-beans-dried"));
  expect(withBeans.length).toBeGreaterThan(0);
  for (const { method } of withBeans) {
    const own = method.filter(({ foods }) => foods.includes("kidney-beans-dried"));
    const soak = own.find(({ kind, ahead }) => kind === "soak" && ahead);
    const boil = own.find(({ kind }) => kind === "boil");
    expect(soak?.minutes.fixed).toBeGreaterThanOrEqual(soakMinutes);
    expect(boil?.minutes.fixed).toBeGreaterThanOrEqual(boilMinutes);
    expect(boil?.after).toContain(soak?.id);
  }
});

test("the same dish gives the same order of work again", () => {
  for (const { timed } of cooked.slice(0, 40)) expect(timeWork(timed.cooking.wish).plan).toEqual(timed.plan);
});
