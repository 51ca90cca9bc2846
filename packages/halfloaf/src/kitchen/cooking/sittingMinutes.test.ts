import { expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { linearMinutes } from "../../dish/index.ts";
import { dishOf, makeKit, readDemoKitchens, readStarterTables, timeWork, wishFor } from "./cooking.testing.ts";
import { sittingMinutes } from "./sittingMinutes.ts";

const tables = readStarterTables();
const [kitchen] = readDemoKitchens();
if (kitchen === undefined) throw new Error("no demo kitchen");
const sitting = { kit: kitchen.kit, cooks: 1, tables, authority: "strictest" } as const;
const at = ({ fixed, perPortion }: { fixed: number; perPortion: number }, portions: number) =>
  fixed + perPortion * portions;

test("the line is never below the order of work that is solved for 1 to 8 portions", () => {
  const below = tables.dishes.flatMap((dish, k) => {
    const { elapsed } = sittingMinutes(dish, sitting);
    // Every dish at two numbers of portions, and all numbers over four dishes.
    const portions = [1 + (k % 8), 1 + ((k + 3) % 8)];
    return portions.flatMap((each) => {
      const { serveMinutes } = timeWork({ ...sitting, dishes: [{ dish, portions: each }] }).plan;
      return at(elapsed, each) < serveMinutes - 1e-9
        ? [`${dish.id} for ${each}: ${at(elapsed, each)} < ${serveMinutes}`]
        : [];
    });
  });
  expect(below).toEqual([]);
});

test("it is close: at the portions a dish is written for at most three minutes above what was solved", () => {
  const far = tables.dishes.flatMap((dish) => {
    const { elapsed, basis } = sittingMinutes(dish, sitting);
    const { serveMinutes } = timeWork({ ...sitting, dishes: [{ dish, portions: dish.portions }] }).plan;
    const above = at(elapsed, dish.portions) - serveMinutes;
    return basis !== "scheduled" || above > 3 ? [`${dish.id} ${above}`] : [];
  });
  expect(far).toEqual([]);
});

test("hands-on is that of the steps, and of the washes of the board", () => {
  const plain = tables.dishes.filter(
    (dish) => timeWork({ ...sitting, dishes: [{ dish, portions: dish.portions }] }).plan.boardWashes.length === 0,
  );
  expect(plain.length).toBeGreaterThan(100);
  for (const dish of plain) {
    const { handsOn } = sittingMinutes(dish, sitting);
    const stated = linearMinutes(dish).handsOn;
    expect(handsOn.fixed).toBeCloseTo(stated.fixed, 9);
    expect(handsOn.perPortion).toBeCloseTo(stated.perPortion, 9);
  }
  const washed = dishOf("washed", [
    makeStep("joint", 4, { kind: "cut", kit: ["board"], foods: ["chicken"] }),
    makeStep("shred", 5, { kind: "cut", kit: ["board"], foods: ["lettuce"], after: ["joint"] }),
  ]);
  const { dishes: _, ...wish } = wishFor([]);
  expect(sittingMinutes(washed, wish)).toMatchObject({
    handsOn: { fixed: 12, perPortion: 0 },
    elapsed: { fixed: 12, perPortion: 0 },
  });
});

test("where the kit does not suffice a simple list stands in", () => {
  const fried = dishOf("fried", [makeStep("fry", 9, { kit: ["pan", "ring"] })]);
  const { dishes: _, ...wish } = wishFor([], { kit: makeKit({ pans: 0 }) });
  expect(sittingMinutes(fried, wish)).toMatchObject({ basis: "listed", elapsed: { fixed: 9, perPortion: 0 } });
});

test("the same dish and kit are not reckoned twice, another kit is", () => {
  const dish = tables.dishes[7];
  if (dish === undefined) throw new Error("no dish");
  expect(sittingMinutes(dish, sitting)).toBe(sittingMinutes(dish, { ...sitting }));
  expect(sittingMinutes(dish, { ...sitting, cooks: 2 })).not.toBe(sittingMinutes(dish, sitting));
});
