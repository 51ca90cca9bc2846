import { loadStarterDishes, loadStarterFoods } from "@halfloaf/data";
import { massOfAmount, parseFoodTable } from "halfloaf/food";
import type { Amount } from "halfloaf/quantity";
import { describe, expect, test } from "vitest";

/** What this check reads of a dish; that the dishes hold to their whole schema is tested elsewhere. */
interface StarterDish {
  readonly id: string;
  readonly manner: string;
  readonly main: string;
  readonly portions: number;
  readonly makings: readonly { readonly food: string; readonly amount: Amount; readonly optional?: boolean }[];
  readonly method: readonly {
    readonly kind: string;
    readonly hands: string;
    readonly minutes: { readonly fixed: number };
  }[];
}

const parsed = parseFoodTable(loadStarterFoods());
const table = parsed.ok ? parsed.table : new Map<string, never>();
const dishes = loadStarterDishes().flatMap(({ content }) => content as StarterDish[]);

/** Porridges and soaked oats: the dishes where oats are the plate itself, not its binding or its topping. */
const bowls = dishes.filter(({ main, manner }) => main === "oats-rolled" && /^(porridge|no-heat)$/.test(manner));
const soaked = bowls.filter(({ manner }) => manner === "no-heat");

function oatsAPortionG(dish: StarterDish): number {
  const oats = dish.makings.find(({ food }) => food === "oats-rolled");
  const food = table.get("oats-rolled");
  if (oats === undefined || food === undefined) throw new Error(`${dish.id} or the food table has no rolled oats`);
  const mass = massOfAmount(food, oats.amount);
  if (!mass.ok || mass.edibleG.low !== mass.edibleG.high) throw new Error(`${dish.id} has no one mass of oats`);
  return mass.edibleG.low / dish.portions;
}

/** Facts of the trade: common practice, no source. */
describe("common practice", () => {
  test("there are porridges and soaked oats to judge", () => {
    expect(soaked.length).toBeGreaterThanOrEqual(3);
    expect(bowls.length - soaked.length).toBeGreaterThanOrEqual(3);
  });

  // About 40 g of rolled oats is a portion; from 30 g for a small eater to 60 g for a plate that must last the morning.
  test.each(bowls.map((dish) => [dish.id, dish] as const))(
    "%s takes 30 to 60 g of rolled oats a portion",
    (_, dish) => {
      expect(oatsAPortionG(dish)).toBeGreaterThanOrEqual(30);
      expect(oatsAPortionG(dish)).toBeLessThanOrEqual(60);
    },
  );

  // Rolled oats are soft enough to eat cold after 5 to 10 minutes; they may stand longer.
  test.each(soaked.map((dish) => [dish.id, dish] as const))(
    "%s lets its oats soak for 5 minutes or more",
    (_, dish) => {
      const waits = dish.method.filter(({ kind, hands }) => /^(soak|rest|chill)$/.test(kind) && hands === "none");
      expect(waits.reduce((sum, { minutes }) => sum + minutes.fixed, 0)).toBeGreaterThanOrEqual(5);
    },
  );

  test("boned chicken thigh is fatter than breast, and has less protein", () => {
    const [thigh, breast] = ["chicken-thigh-boned", "chicken-breast"].map((id) => table.get(id)?.composition);
    expect(thigh?.fatG).toBeGreaterThan(breast?.fatG as number);
    expect(thigh?.proteinG).toBeLessThan(breast?.proteinG as number);
  });
});
