import { expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { compareStated } from "./compareStated.ts";
import { dishOf, makeKit, readDemoKitchens, readStarterTables, timeWork, wishFor } from "./cooking.testing.ts";

const tables = readStarterTables();
const kitchens = readDemoKitchens();
const inKitchen = ({ kit }: (typeof kitchens)[number]) => ({ kit, cooks: 1, tables, authority: "strictest" }) as const;

test("every starter dish that is stated with 30 minutes or less takes no more, in every demo kitchen", () => {
  const quick = tables.dishes.filter(({ statedMinutes = 31 }) => statedMinutes <= 30);
  expect(quick.length).toBeGreaterThan(80);
  const longer = quick.flatMap((dish) =>
    kitchens.flatMap((kitchen) => {
      const time = compareStated(dish, inKitchen(kitchen));
      return time?.isProven && time.computedMinutes <= 30 ? [] : [`${dish.id} in ${kitchen.name}`];
    }),
  );
  expect(longer).toEqual([]);
});

test("no stated time of a starter dish is shorter than its steps, nor more than 15 minutes longer", () => {
  const off = tables.dishes.flatMap((dish) =>
    kitchens.flatMap((kitchen) => {
      const { offMinutes = 0 } = compareStated(dish, inKitchen(kitchen)) ?? {};
      return offMinutes > 0 || offMinutes < -15 ? [`${dish.id} in ${kitchen.name}: ${offMinutes}`] : [];
    }),
  );
  expect(off).toEqual([]);
});

test("the computed time is that of the order of work, for the portions the dish is written for", () => {
  for (const dish of tables.dishes.filter(({ statedMinutes }) => statedMinutes).slice(0, 20)) {
    const sitting = inKitchen(kitchens[0] as (typeof kitchens)[number]);
    const { plan } = timeWork({ ...sitting, dishes: [{ dish, portions: dish.portions }] });
    expect(compareStated(dish, sitting)).toMatchObject({
      portions: dish.portions,
      computedMinutes: plan.serveMinutes,
      offMinutes: plan.serveMinutes - (dish.statedMinutes as number),
    });
  }
});

test("a dish that takes longer than it says is told by how much; one that says nothing, or can't be cooked, is not judged", () => {
  const method = [makeStep("fry", 9, { kit: ["pan", "ring"] })];
  const { dishes: _, ...sitting } = wishFor([]);
  const told = (statedMinutes: number) => compareStated(dishOf("fried", method, { statedMinutes }), sitting);
  expect(told(7)).toMatchObject({ offMinutes: 2, isProven: true });
  expect(told(12)).toMatchObject({ offMinutes: -3 });
  expect(compareStated(dishOf("fried", method), sitting)).toBeUndefined();
  const withoutPan = { ...sitting, kit: makeKit({ pans: 0 }) };
  expect(compareStated(dishOf("fried", method, { statedMinutes: 7 }), withoutPan)).toBeUndefined();
});
