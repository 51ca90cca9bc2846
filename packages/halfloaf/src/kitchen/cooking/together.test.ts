import { describe, expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { checkWork } from "../../work/check/index.ts";
import { dishOf, makeKit, readDemoKitchens, readStarterTables, timesOf, timeWork, wishFor } from "./cooking.testing.ts";
import { toWorkSheet } from "./toWorkSheet.ts";

const tables = readStarterTables();
const kitchens = readDemoKitchens();
const { dishes } = tables;

/** Pairs of starter dishes spread over all of them, each in one of the kitchens. */
const pairs = Array.from({ length: 36 }, (_, k) => {
  const kitchen = kitchens[k % kitchens.length] as (typeof kitchens)[number];
  const [first, second] = [dishes[(k * 29) % dishes.length], dishes[(k * 53 + 17) % dishes.length]];
  const toCook = [first, second].flatMap((dish) => (dish ? [{ dish, portions: dish.portions }] : []));
  return { kit: kitchen.kit, toCook, label: toCook.map(({ dish }) => dish.id).join(" with ") };
}).filter(({ toCook }) => toCook[0]?.dish !== toCook[1]?.dish);

describe("two starter dishes together", () => {
  const timed = pairs.map(({ kit, toCook, label }) => {
    const wish = { dishes: toCook, kit, cooks: 1 as const, tables, authority: "strictest" as const };
    const alone = toCook.map((one) => timeWork({ ...wish, dishes: [one] }).plan.serveMinutes);
    return { label, alone, together: timeWork(wish) };
  });

  test("are judged free of faults", () => {
    const faulty = timed.filter(
      ({ together: { cooking, plan, excesses } }) => checkWork(cooking.problem, plan, excesses).faults.length > 0,
    );
    expect(faulty.map(({ label }) => label)).toEqual([]);
  });

  test("take no longer than one after the other, with the washing up in between", () => {
    const longer = timed.flatMap(({ label, alone, together: { plan, cooking } }) => {
      const washes = cooking.problem.kit.reduce((sum, { washMinutes = 0 }) => sum + washMinutes, 0) + 3;
      const apart = alone.reduce((sum, minutes) => sum + minutes, washes);
      return plan.serveMinutes > apart ? [`${label}: ${alone.join(" + ")} < ${plan.serveMinutes}`] : [];
    });
    expect(longer).toEqual([]);
  });

  test("take no less than the longer of the two alone, and often less than both", () => {
    for (const { alone, together } of timed)
      expect(together.plan.serveMinutes).toBeGreaterThanOrEqual(Math.max(...alone));
    const shorter = timed.filter(
      ({ alone, together }) => together.plan.serveMinutes < (alone[0] ?? 0) + (alone[1] ?? 0),
    );
    expect(shorter.length).toBeGreaterThan(timed.length / 3);
  });

  test("are ready by the moment they are served, one of them just then", () => {
    for (const { together } of timed) {
      const sheet = toWorkSheet(together);
      for (const { readyMinutes, waitMinutes } of sheet.dishes)
        expect(readyMinutes + waitMinutes).toBe(sheet.serveMinutes);
      expect(Math.min(...sheet.dishes.map(({ waitMinutes }) => waitMinutes))).toBe(0);
    }
  });
});

describe("holds that collide", () => {
  /** Both want the one ring last and bear no waiting. */
  const fried = (id: string) =>
    dishOf(id, [
      makeStep("fry", 10, { kind: "fry", hands: "eye", kit: ["ring", "pan"], foods: ["barley"], holdMinutes: 2 }),
    ]);
  const timed = timeWork(wishFor([fried("first"), fried("second")], { kit: makeKit({ rings: 1, pans: 2 }) }));

  test("are gone beyond as little as can be, and the dish that waits is told", () => {
    const sheet = toWorkSheet(timed);
    expect(sheet.serveMinutes).toBe(20);
    expect(sheet.brokenHolds).toEqual([
      { dish: expect.any(Number), step: "fry", text: "fry", waitMinutes: 10, holdMinutes: 2 },
    ]);
    const [waiting] = sheet.brokenHolds;
    expect(sheet.dishes[waiting?.dish ?? -1]?.waitMinutes).toBe(10);
    expect(sheet.after.some(({ code }) => code === "hot-holding")).toBe(true);
  });

  test("a second ring ends the collision", () => {
    const free = timeWork(wishFor([fried("first"), fried("second")], { kit: makeKit({ rings: 2, pans: 2 }) }));
    expect([free.excesses, free.plan.serveMinutes]).toEqual([[], 10]);
  });
});

test("a pan that both need is washed up in between", () => {
  const fry = (id: string) =>
    dishOf(id, [makeStep("fry", 6, { kind: "fry", hands: "eye", kit: ["ring", "pan"], foods: ["barley"] })]);
  const timed = timeWork(wishFor([fry("first"), fry("second")]));
  expect(timed.plan.kitWashes).toHaveLength(1);
  expect(timed.plan.serveMinutes).toBe(6 + 3 + 6);
  const lines = toWorkSheet(timed).lines.map(({ kind }) => kind);
  expect(lines).toEqual(["step", "kit-wash", "step"]);
});

test("two cooks are never slower than one", () => {
  const cut = (id: string) => dishOf(id, [makeStep("cut", 8), makeStep("mix", 4, { after: ["cut"] })]);
  const wish = wishFor([cut("first"), cut("second")]);
  expect(timeWork(wish).plan.serveMinutes).toBe(24);
  const both = timeWork({ ...wish, cooks: 2 });
  expect(both.plan.serveMinutes).toBe(12);
  expect(timesOf(both, 0, "mix").end).toBe(12);
  const sheet = toWorkSheet(both);
  expect(new Set(sheet.lines.flatMap((line) => (line.kind === "step" ? line.cooks : [])))).toEqual(new Set([1, 2]));
});
