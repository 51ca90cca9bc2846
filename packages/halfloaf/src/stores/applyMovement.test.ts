import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { splitByLargestRemainder } from "../quantity/index.ts";
import { applyMovement } from "./applyMovement.ts";
import type { LotState } from "./lotState.ts";
import type { Movement, MovementOf } from "./movement.ts";
import { splitCost } from "./splitCost.ts";
import { buy, day, foods, stories } from "./stores.testing.ts";
import { accountOf } from "./storesAccount.ts";
import { deriveStores } from "./storesState.ts";

/** All that can be done of a story, in its order, and what was in doubt. */
function tell(story: readonly Movement[]) {
  const lots = new Map<string, LotState>();
  const doubts = story.map((movement) => {
    const applied = applyMovement(movement, lots, foods);
    for (const lot of applied.lots) lots.set(lot.id, lot);
    return applied.doubts;
  });
  return { lots, doubts: doubts.flat() };
}

const cooked = (over: Partial<MovementOf<"cooked">> = {}): Movement => ({
  kind: "cooked",
  on: day(1),
  lot: "stew-1",
  dish: "stew",
  portions: 4,
  portionG: 300,
  keeps: { fridgeDays: 2, freezerDays: 60 },
  uses: [
    { lot: "a", massG: 500, opens: true },
    { lot: "b", massG: 250 },
  ],
  ...over,
});
const pantry = [buy("a"), buy("b", { food: "rice", place: "dry-store", costMinor: 61 })];

describe("doing what can be done", () => {
  test("whatever is told, the sums hold, and a story without doubts is what the strict stores make of it", () => {
    fc.assert(
      fc.property(stories, (unsorted) => {
        const story = [...unsorted].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
        const { lots, doubts } = tell(story);
        const account = accountOf(lots.values());
        expect(account.openingMinor + account.boughtMinor).toBe(
          account.usedMinor + account.wastedMinor + account.leftMinor,
        );
        for (const lot of lots.values()) expect(Math.min(lot.leftG, lot.leftMinor)).toBeGreaterThanOrEqual(0);
        const strict = deriveStores([], story, foods);
        expect(strict.issues.length === 0).toBe(doubts.length === 0);
        if (doubts.length === 0) expect(strict.lots).toEqual(lots);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  test("a lot gives what is left of it, and the difference is named", () => {
    const { lots, doubts } = tell([buy("a"), { kind: "used", on: day(1), lot: "a", massG: 1200 }]);
    expect(lots.get("a")).toMatchObject({ leftG: 0, leftMinor: 0 });
    expect(doubts).toMatchObject([{ code: "too-much", lot: "a", shortG: 200 }]);
  });

  test("of what has gone off nothing is used", () => {
    const { lots, doubts } = tell([buy("a"), { kind: "used", on: day(8), lot: "a", massG: 100 }]);
    expect(lots.get("a")?.leftG).toBe(1000);
    expect(doubts).toMatchObject([{ code: "gone-off", shortG: 100 }]);
  });
});

describe("a label", () => {
  test("that is read says when the lot ends, an earlier day as well as none, and never more than its food keeps", () => {
    const readAs = (label: object) =>
      tell([buy("a", { useBy: day(5) }), { kind: "labelled", on: day(1), lot: "a", ...label }]);
    expect(readAs({ useBy: day(3) }).lots.get("a")?.keeps).toEqual({ ok: true, on: day(3), because: "use-by" });
    expect(readAs({ bestBefore: day(2) }).lots.get("a")).toMatchObject({ useBy: undefined, bestBefore: day(2) });
    for (const label of [{}, { useBy: day(300) }])
      expect(readAs(label).lots.get("a")?.keeps).toMatchObject({ on: day(7), because: "unopened-life" });
    const { doubts } = tell([{ kind: "labelled", on: day(1), lot: "none", useBy: day(3) }]);
    expect(doubts).toMatchObject([{ code: "lot-unknown" }]);
  });

  test("may be read when the lot seemed to have gone off, and what was used before stays so", () => {
    const { lots, doubts } = tell([
      buy("a", { useBy: day(2) }),
      { kind: "used", on: day(1), lot: "a", massG: 100 },
      { kind: "labelled", on: day(4), lot: "a", useBy: day(6) },
      { kind: "used", on: day(5), lot: "a", massG: 100 },
    ]);
    expect(doubts).toEqual([]);
    expect(lots.get("a")?.leftG).toBe(800);
  });
});

describe("cooking", () => {
  test("portions cost what went in, and the lots gave it to them", () => {
    const { lots, doubts } = tell([...pantry, cooked()]);
    expect(doubts).toEqual([]);
    expect(lots.get("stew-1")).toMatchObject({
      origin: "cooked",
      place: "fridge",
      leftG: 1200,
      broughtMinor: 65,
      keeps: { ok: true, on: day(3) },
      cooked: { dish: "stew", portionG: 300, atLeast: false },
    });
    expect(lots.get("a")).toMatchObject({ openedOn: day(1), leftG: 500, leftMinor: 50 });
    expect(lots.get("b")).toMatchObject({ openedOn: undefined, leftMinor: 46 });
    expect(accountOf(lots.values())).toMatchObject({ boughtMinor: 161, usedMinor: 0, leftMinor: 161 });
  });

  test("eaten they are used, and frozen they keep as long as the dish says", () => {
    const { lots } = tell([
      ...pantry,
      cooked(),
      { kind: "used", on: day(1), lot: "stew-1", massG: 600 },
      { kind: "moved", on: day(2), lot: "stew-1", to: "freezer", part: { massG: 300, lot: "box" } },
    ]);
    expect(accountOf(lots.values()).usedMinor).toBe(33);
    expect(lots.get("box")).toMatchObject({ food: undefined, leftMinor: 16, keeps: { ok: true, on: day(62) } });
    expect(lots.get("box")?.cooked).toEqual(lots.get("stew-1")?.cooked);
  });

  test("a dish that is eaten the day it is cooked has gone off the next", () => {
    const { doubts } = tell([
      ...pantry,
      cooked({ keeps: { fridgeDays: 0 } }),
      { kind: "used", on: day(2), lot: "stew-1", massG: 1 },
    ]);
    expect(doubts).toMatchObject([{ code: "gone-off", lot: "stew-1" }]);
  });

  test("what a lot of unknown cost went into costs the least it was, and so does what is cooked of that", () => {
    const found = { id: "f", food: "rice", place: "dry-store", boughtOn: day(0), massG: 500 } as const;
    const { lots, doubts } = tell([
      { kind: "stocked", on: day(0), stock: { ...found, costMinor: 0, costUnknown: true } },
      cooked({ uses: [{ lot: "f", massG: 100 }] }),
      cooked({ lot: "stew-2", uses: [{ lot: "stew-1", massG: 100 }] }),
    ]);
    expect(doubts).toEqual([]);
    for (const id of ["stew-1", "stew-2"]) expect(lots.get(id)?.cooked?.atLeast).toBe(true);
    expect(lots.get("f")).toMatchObject({ costUnknown: true, leftG: 400, leftMinor: 0 });
  });

  test.each<[string, Partial<MovementOf<"cooked">>, object]>([
    ["a lot that is not there", { uses: [{ lot: "c", massG: 5 }] }, { code: "lot-unknown", lot: "c", shortG: 5 }],
    ["more than is left", { uses: [{ lot: "a", massG: 1005 }] }, { code: "too-much", lot: "a", shortG: 5 }],
    ["what has gone off", { on: day(9), uses: [{ lot: "a", massG: 5 }] }, { code: "gone-off", lot: "a", shortG: 5 }],
  ])("%s leaves the cost of the portions the least it was", (_, over, doubt) => {
    const { lots, doubts } = tell([...pantry, cooked(over)]);
    expect(doubts).toMatchObject([doubt]);
    expect(lots.get("stew-1")?.cooked?.atLeast).toBe(true);
  });

  test("one lot may go in twice, and its rest goes to another place", () => {
    const uses = [
      { lot: "a", massG: 300 },
      { lot: "a", massG: 300, movesTo: "freezer" as const },
    ];
    const { lots, doubts } = tell([...pantry, cooked({ uses })]);
    expect(doubts).toEqual([]);
    expect(lots.get("a")).toMatchObject({ leftG: 400, place: "freezer", placedOn: day(1) });
    expect(lots.get("stew-1")?.broughtMinor).toBe(60);
  });

  test("strictly, a cooking of which anything is in doubt did not happen", () => {
    const { lots, issues } = deriveStores([], [...pantry, cooked({ uses: [{ lot: "c", massG: 5 }] })], foods);
    expect(issues).toMatchObject([{ code: "lot-unknown", path: [2, "uses"] }]);
    expect(lots.has("stew-1")).toBe(false);
  });
});

describe("what is there without a purchase", () => {
  const stock = { id: "gift", food: "rice", place: "dry-store", boughtOn: day(-9), massG: 500, costMinor: 0 } as const;

  test("is at hand from the day it is told of", () => {
    const story: Movement[] = [{ kind: "stocked", on: day(2), stock }];
    expect(tell(story).lots.get("gift")).toMatchObject({ origin: "opening", since: day(2), boughtOn: day(-9) });
    expect(tell([...story, { kind: "opened", on: day(1), lot: "gift" }]).doubts).toMatchObject([
      { code: "lot-unknown" },
    ]);
  });

  test("can't be there twice", () => {
    const again: Movement = { kind: "stocked", on: day(2), stock };
    expect(tell([again, again]).doubts).toMatchObject([{ code: "lot-twice", lot: "gift" }]);
  });
});

test.each([
  ["used", { usedMinor: 40, wastedMinor: 0 }],
  ["wasted", { usedMinor: 0, wastedMinor: 40 }],
  [undefined, { usedMinor: 0, wastedMinor: 40 }],
] as const)("what a count finds missing is booked as told: %s", (as, sums) => {
  const { lots } = tell([buy("a"), { kind: "counted", on: day(1), lot: "a", massG: 600, ...(as && { as }) }]);
  expect(accountOf(lots.values())).toMatchObject(sums);
});

test("a cost is split in two as by largest remainder, halves too", () => {
  const mass = fc.oneof(fc.constantFrom(0.5, 1, 2, 250, 333), fc.double({ min: 0.001, max: 5000, noNaN: true }));
  fc.assert(
    fc.property(fc.nat(100_000), mass, mass, (costMinor, wentG, leftG) => {
      expect(splitCost(costMinor, wentG, leftG)).toBe(splitByLargestRemainder(costMinor, [wentG, leftG])[1]);
    }),
    { numRuns: 2000 },
  );
});
