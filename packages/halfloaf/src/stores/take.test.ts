import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstExpiredFirstOut } from "./firstExpiredFirstOut.ts";
import { isGoneOff, keepsUntil } from "./keepsUntil.ts";
import type { LotState } from "./lotState.ts";
import type { Movement } from "./movement.ts";
import { beans, buy, day, foods, milk, rice, stories } from "./stores.testing.ts";
import { costsByUse } from "./storesAccount.ts";
import { deriveStores } from "./storesState.ts";
import { take } from "./take.ts";
import { wasteOn } from "./wasteOn.ts";

const add = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const stock = (...story: Movement[]) => [...deriveStores([], story, foods).lots.values()];
/** A day after every movement of a story, so that taking comes last. */
const later = fc.integer({ min: 20, max: 40 }).map(day);
const wanted = fc.oneof(fc.constantFrom(1, 250, 1000), fc.double({ min: 0.1, max: 2500, noNaN: true }));
const anyFood = fc.constantFrom(milk, beans, rice);
const isGood = (lot: LotState, food: typeof milk, on: string) => {
  const keeps = keepsUntil(lot, food);
  return lot.food === food.id && lot.leftG > 0 && keeps.ok && !isGoneOff(keeps, on);
};

describe("laws of taking", () => {
  test("the movements are possible and take exactly what was wanted, or the shortage says what is missing", () => {
    fc.assert(
      fc.property(stories, anyFood, wanted, later, (story, food, massG, on) => {
        const { lots, issues } = deriveStores([], story, foods);
        const taken = take(lots.values(), food, massG, on, "supper");
        const goodG = add([...lots.values()].filter((lot) => isGood(lot, food, on)).map(({ leftG }) => leftG));
        expect(taken.ok).toBe(goodG >= massG - 1e-6);
        if (!taken.ok) {
          expect(taken.shortG).toBeCloseTo(massG - goodG, 6);
          return;
        }
        const after = deriveStores([], [...story, ...taken.movements], foods);
        expect(after.issues).toEqual(issues);
        const used = [...after.lots.values()].flatMap(({ outflows }) => outflows.filter((out) => out.for === "supper"));
        expect(add(used.map((out) => out.massG))).toBeCloseTo(massG, 5);
      }),
      { numRuns: 300 },
    );
  });

  test("no good lot of the food is left that expires before one that was touched, and only one is left in part", () => {
    fc.assert(
      fc.property(stories, anyFood, wanted, later, (story, food, massG, on) => {
        const lots = [...deriveStores([], story, foods).lots.values()];
        const taken = take(lots, food, massG, on);
        if (!taken.ok) return;
        const used = new Map(
          taken.movements.flatMap((each) => (each.kind === "used" ? [[each.lot, each.massG] as const] : [])),
        );
        const order = firstExpiredFirstOut(lots.filter((lot) => isGood(lot, food, on)));
        const touched = order.filter(({ id }) => used.has(id));
        expect(touched).toEqual(order.slice(0, used.size));
        for (const lot of touched.slice(0, -1)) expect(used.get(lot.id)).toBe(lot.leftG);
      }),
      { numRuns: 300 },
    );
  });

  test("what has gone off is thrown away whole, and then nothing that has gone off is left", () => {
    fc.assert(
      fc.property(stories, later, (story, on) => {
        const { lots } = deriveStores([], story, foods);
        const waste = wasteOn(lots.values(), on);
        const after = deriveStores([], [...story, ...waste], foods);
        expect(wasteOn(after.lots.values(), on)).toEqual([]);
        for (const lot of after.lots.values()) {
          const before = lots.get(lot.id) as LotState;
          const keeps = keepsUntil(before, foods.get(before.food as string) as typeof milk);
          expect(lot.leftG).toBe(keeps.ok && keeps.on < on ? 0 : before.leftG);
        }
      }),
    );
  });
});

describe("cases", () => {
  test("the earliest last day goes first: an opened pack, then the one bought before", () => {
    const lots = stock(
      buy("new", { on: day(3) }),
      buy("old"),
      buy("open", { on: day(3) }),
      { kind: "opened", on: day(3), lot: "open" },
      buy("tin", { food: "beans-tinned", place: "fridge" }),
    );
    expect(firstExpiredFirstOut(lots).map(({ id }) => id)).toEqual(["open", "old", "new", "tin"]);
    const taken = take(lots, milk, 1500, day(4), "soup");
    expect(taken).toEqual({
      ok: true,
      movements: [
        { kind: "used", on: day(4), lot: "open", massG: 1000, for: "soup" },
        { kind: "opened", on: day(4), lot: "old" },
        { kind: "used", on: day(4), lot: "old", massG: 500, for: "soup" },
      ],
    });
  });

  test("of two with the same last day the open one goes first, then the one bought first, then by id", () => {
    const lots = stock(
      buy("b", { useBy: day(3) }),
      buy("a", { useBy: day(3) }),
      buy("new", { on: day(1), useBy: day(3) }),
      buy("open", { on: day(1), useBy: day(3) }),
      { kind: "opened", on: day(1), lot: "open" },
    );
    expect(firstExpiredFirstOut(lots).map(({ id }) => id)).toEqual(["open", "a", "b", "new"]);
  });

  test("a tin used in part is opened and goes to the fridge, one used whole is not", () => {
    const tin = stock(buy("tin", { food: "beans-tinned", place: "dry-store", massG: 400 }));
    expect(take(tin, beans, 240, day(1))).toEqual({
      ok: true,
      movements: [
        { kind: "opened", on: day(1), lot: "tin" },
        { kind: "moved", on: day(1), lot: "tin", to: "fridge" },
        { kind: "used", on: day(1), lot: "tin", massG: 240 },
      ],
    });
    expect(take(tin, beans, 400, day(1))).toEqual({
      ok: true,
      movements: [{ kind: "used", on: day(1), lot: "tin", massG: 400 }],
    });
  });

  test("separate pieces are never opened, rice is opened where it is", () => {
    const net = stock(buy("net", { loose: true }));
    expect(take(net, milk, 100, day(5))).toMatchObject({ movements: [{ kind: "used" }] });
    const bag = stock(buy("bag", { food: "rice", place: "dry-store" }));
    expect(take(bag, rice, 100, day(5))).toMatchObject({ movements: [{ kind: "opened" }, { kind: "used" }] });
  });

  test("what is not there yet, has gone off or is doubtful is not taken", () => {
    const lots = stock(buy("later", { on: day(9) }), buy("off"), buy("lost", { place: "dry-store" }));
    expect(take(lots, milk, 500, day(8))).toEqual({ ok: false, shortG: 500, doubtful: ["lost"] });
    expect(take(lots, milk, 500, day(9)).ok).toBe(true);
  });

  test("what a use cost is found by its name", () => {
    const used = { kind: "used", lot: "a", massG: 100 } as const;
    const lots = stock(
      buy("a"),
      { ...used, on: day(1), for: "soup" },
      { ...used, on: day(2), for: "tea" },
      { ...used, on: day(3), for: "soup" },
      { ...used, on: day(3) },
    );
    expect(costsByUse(lots)).toEqual(
      new Map([
        ["soup", 20],
        ["tea", 10],
      ]),
    );
  });

  test.each([0, -1, Number.NaN])("%d g are a defect", (massG) => {
    expect(() => take([], milk, massG, day(0))).toThrow(RangeError);
  });
});
