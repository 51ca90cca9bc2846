import fc from "fast-check";
import { type Dish, nutrientsOfDish } from "halfloaf/dish";
import { dishToJsonLd, toJsonLdText } from "halfloaf/sheet";
import { expect, test } from "vitest";
import { readPage } from "../page/readPage.ts";
import { draftDish } from "./draftDish.ts";
import { starterDishes, starterOptions } from "./reading.testing.ts";
import { toDish } from "./toDish.ts";

const OPTIONS = starterOptions();
const DISHES = starterDishes();

function toPage(dish: Dish, english: "british" | "american"): string {
  const { foods } = OPTIONS;
  const nutrients = nutrientsOfDish(dish, foods, undefined);
  const jsonLd = dishToJsonLd(dish, { foods, english, minutes: { total: 42.5 }, nutrients });
  return `<html><head><script type="application/ld+json">${toJsonLdText(jsonLd)}</script></head><body></body></html>`;
}

function readBack(html: string) {
  const { dishes, issues } = readPage(html);
  expect(issues).toEqual([]);
  expect(dishes.length).toBe(1);
  return draftDish(dishes[0] as (typeof dishes)[number], OPTIONS);
}

test.each(["british", "american"] as const)(
  "every starter dish that is written in %s English is read back the same",
  (english) => {
    for (const dish of DISHES) {
      expect(toDish(readBack(toPage(dish, english)), {}, OPTIONS)).toEqual({ ok: true, value: dish });
    }
  },
);

test("dishes with every optional detail are read back the same", () => {
  const amount: fc.Arbitrary<Dish["makings"][number]["amount"]> = fc.oneof(
    fc.record({ value: fc.double({ min: 0.01, max: 5000, noNaN: true }), unit: fc.constant("g" as const) }),
    fc.constant({ from: 100, to: 250.5, unit: "g" as const }),
    fc.constant("to-taste" as const),
  );
  const words = fc.constantFrom("½ & more", 'the "best"', "x > y", "5 < 6", "a \\ b", "naïve");
  const details = fc.record({
    amount,
    words,
    as: fc.constantFrom({}, { as: "purchased" as const }),
    statedMinutes: fc.integer({ min: 1, max: 500 }),
    tempC: fc.integer({ min: 100, max: 250 }),
    perPortion: fc.double({ min: 0, max: 3, noNaN: true }),
  });
  const pieces: Dish["makings"][number] = {
    food: "egg",
    amount: { from: 1, to: 2, unit: "piece", size: "large" },
    optional: true,
    alternatives: [
      { food: "salt", amount: "to-taste" },
      { food: "onion", amount: { value: 30, unit: "g" }, as: "purchased" },
      { food: "salt", amount: { value: 1, unit: "[oz_av]" } },
    ],
  };
  fc.assert(
    fc.property(fc.constantFrom(...DISHES), details, (dish, drawn) => {
      const [first, ...makings] = dish.makings as [Dish["makings"][number], ...Dish["makings"]];
      const [step, ...method] = dish.method as [Dish["method"][number], ...Dish["method"]];
      const changed: Dish = {
        ...dish,
        title: `${dish.title}, ${drawn.words}`,
        statedMinutes: drawn.statedMinutes,
        cautions: [drawn.words, ...dish.cautions],
        makings: [{ ...first, ...drawn.as, amount: drawn.amount, cut: drawn.words }, ...makings, pieces],
        method: [
          { ...step, tempC: drawn.tempC, minutes: { fixed: 1.25, perPortion: drawn.perPortion }, holdMinutes: 7 },
          ...method,
        ],
      };
      expect(toDish(readBack(toPage(changed, "british")), {}, OPTIONS)).toEqual({ ok: true, value: changed });
    }),
    { numRuns: 60, endOnFailure: true },
  );
});

test("a dish that was tampered with is read as any other, and the issues say what was unsound", () => {
  const [dish] = DISHES as [Dish, ...Dish[]];
  const html = toPage(dish, "british")
    .replace('"value": "none"', '"value": "both"')
    .replace('"value": "full"', '"value": "four"');
  const draft = readBack(html);
  expect(draft.issues.length).toBeGreaterThan(0);
  expect(draft.issues[0]?.path[0]).toBe("written");
  expect(draft.makings.length).toBe(dish.makings.length);
  expect(draft.method.some(({ minutes }) => minutes.sure === "guess")).toBe(true);
});

test("read as any other page, lines give back amounts, and foods wherever they are sure", () => {
  const counts = { makings: 0, amounts: 0, sure: 0, right: 0 };
  for (const dish of DISHES) {
    const [text] = readPage(toPage(dish, "british")).dishes;
    const { written: _, ...plain } = text as NonNullable<typeof text>;
    const draft = draftDish(plain, OPTIONS);
    if (draft.makings.length !== dish.makings.length) continue;
    for (const [at, making] of dish.makings.entries()) {
      const read = draft.makings[at];
      counts.makings++;
      counts.amounts += JSON.stringify(read?.amount?.value) === JSON.stringify(making.amount) ? 1 : 0;
      counts.sure += read?.food === undefined ? 0 : 1;
      counts.right += read?.food?.value === making.food ? 1 : 0;
    }
  }
  expect(counts.makings).toBeGreaterThan(1300);
  expect(counts.amounts / counts.makings).toBeGreaterThan(0.95);
  expect(counts.right / counts.sure).toBeGreaterThan(0.97);
});
