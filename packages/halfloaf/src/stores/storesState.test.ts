import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { daysBetween } from "../quantity/index.ts";
import type { Lot } from "./lot.ts";
import type { Movement } from "./movement.ts";
import { buy, day, foods, milk, stories } from "./stores.testing.ts";
import { accountOf } from "./storesAccount.ts";
import { deriveStores } from "./storesState.ts";

const add = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const opening: Lot[] = [
  { id: "old-rice", food: "rice", place: "dry-store", boughtOn: day(-30), massG: 750, costMinor: 61 },
  { id: "lot-d", food: "milk", place: "fridge", boughtOn: day(-1), openedOn: day(0), massG: 400, costMinor: 47 },
];
const derive = (...story: Movement[]) => deriveStores([], story, foods);
const use = (lot: string, offset: number, massG: number): Movement => ({ kind: "used", on: day(offset), lot, massG });
const codes = (...story: Movement[]) => derive(...story).issues.map(({ code, path }) => `${path.join("/")} ${code}`);

describe("laws, whatever is recorded", () => {
  test("what came in is what was used, wasted, split off and is left: in money exactly, in mass with what was found", () => {
    fc.assert(
      fc.property(stories, (story) => {
        for (const lot of deriveStores(opening, story, foods).lots.values()) {
          expect(add(lot.outflows.map(({ costMinor }) => costMinor)) + lot.leftMinor).toBe(lot.broughtMinor);
          const gone = add(lot.outflows.map(({ massG }) => massG));
          expect(gone + lot.leftG).toBeCloseTo(lot.broughtG + lot.foundG, 6);
        }
      }),
    );
  });

  test("nothing is ever negative, and nothing left costs nothing", () => {
    fc.assert(
      fc.property(stories, (story) => {
        for (const { leftG, leftMinor, foundG, outflows } of deriveStores(opening, story, foods).lots.values()) {
          expect(
            Math.min(leftG, leftMinor, foundG, ...outflows.flatMap((out) => [out.massG, out.costMinor])),
          ).toBeGreaterThanOrEqual(0);
          if (leftG === 0) expect(leftMinor).toBe(0);
        }
      }),
    );
  });

  test("opening + bought = used + wasted + left, to the minor unit", () => {
    fc.assert(
      fc.property(stories, (story) => {
        const { lots } = deriveStores(opening, story, foods);
        const account = accountOf(lots.values());
        expect(account.openingMinor).toBe(108);
        expect(account.usedMinor + account.wastedMinor + account.leftMinor).toBe(108 + account.boughtMinor);
      }),
    );
  });

  test("nothing is used after it has gone off", () => {
    fc.assert(
      fc.property(stories, (story) => {
        // Only what stayed in the fridge with its first label, where the days can be counted without the code under test.
        const { lots } = deriveStores([], story, foods);
        for (const lot of lots.values()) {
          const isRead = story.some((each) => each.kind === "labelled" && each.lot === lot.id);
          const stayed =
            !isRead &&
            lot.food === "milk" &&
            lot.origin === "bought" &&
            lot.place === "fridge" &&
            lot.placedOn === undefined;
          for (const out of stayed ? lot.outflows.filter(({ kind }) => kind === "used") : []) {
            expect(daysBetween(lot.boughtOn, out.on)).toBeLessThanOrEqual(7);
            if (lot.openedOn !== undefined && lot.openedOn < out.on) {
              expect(daysBetween(lot.openedOn, out.on)).toBeLessThanOrEqual(3);
            }
            if (lot.useBy !== undefined) expect(out.on <= lot.useBy).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test("all that went is priced within half a minor unit of its share while nothing more was found", () => {
    fc.assert(
      fc.property(stories, (story) => {
        for (const lot of deriveStores([], story, foods).lots.values()) {
          if (lot.foundG > 0) continue;
          let [massG, costMinor] = [0, 0];
          for (const out of lot.outflows) {
            massG += out.massG;
            costMinor += out.costMinor;
            expect(Math.abs(costMinor - (lot.broughtMinor * massG) / lot.broughtG)).toBeLessThanOrEqual(0.5 + 1e-6);
          }
        }
      }),
    );
  });

  test("what happens later never changes what an earlier movement cost", () => {
    fc.assert(
      fc.property(stories, fc.nat(20), (story, cut) => {
        const till = story.filter(({ on }) => on <= day(cut));
        const [before, after] = [till, story].map((each) => deriveStores(opening, each, foods).lots);
        for (const [id, lot] of before ?? []) {
          expect(after?.get(id)?.outflows.slice(0, lot.outflows.length)).toEqual(lot.outflows);
        }
      }),
    );
  });

  test("every movement either counts or has its issue, and leaving out those with one changes nothing", () => {
    fc.assert(
      fc.property(stories, (story) => {
        const whole = deriveStores(opening, story, foods);
        const refused = new Set(whole.issues.map(({ path }) => path[0]));
        const sound = deriveStores(
          opening,
          story.filter((_, at) => !refused.has(at)),
          foods,
        );
        expect(sound.issues).toEqual([]);
        expect(sound.lots).toEqual(whole.lots);
      }),
    );
  });

  test("the order in which days are told does not matter", () => {
    fc.assert(
      fc.property(stories, (story) => {
        const byDay = [...story].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
        expect(deriveStores([], story, foods).lots).toEqual(deriveStores([], byDay, foods).lots);
      }),
    );
  });
});

describe("cases of cost", () => {
  test("three thirds of a pack at 1.00 cost 33, 34 and 33, and the last gram takes the last coin", () => {
    const { lots } = derive(buy("a", { massG: 300 }), ...[1, 2, 3].map((at) => use("a", at, 100)));
    expect(lots.get("a")?.outflows.map(({ costMinor }) => costMinor)).toEqual([33, 34, 33]);
    expect(lots.get("a")).toMatchObject({ leftG: 0, leftMinor: 0 });
  });

  test("many small uses of a cheap pack share its cost evenly", () => {
    const rice = buy("a", { food: "rice", place: "dry-store", massG: 1000, costMinor: 60 });
    const { lots } = derive(rice, ...Array.from({ length: 250 }, () => use("a", 1, 2)));
    expect(lots.get("a")?.leftMinor).toBe(30);
  });

  test("what is found when counting costs nothing more, what is missing is waste", () => {
    const found = derive(buy("a"), use("a", 1, 500), { kind: "counted", on: day(1), lot: "a", massG: 600 });
    expect(found.lots.get("a")).toMatchObject({ foundG: 100, leftG: 600, leftMinor: 50 });
    const missing = derive(buy("a"), { kind: "counted", on: day(9), lot: "a", massG: 250 });
    expect(accountOf(missing.lots.values())).toEqual({
      openingMinor: 0,
      boughtMinor: 100,
      usedMinor: 0,
      wastedMinor: 75,
      leftMinor: 25,
    });
    expect(missing.lots.get("a")?.outflows).toEqual([{ kind: "missing", on: day(9), massG: 750, costMinor: 75 }]);
  });

  test("adding up tenths loses no crumb: the lot is empty and the cost is gone", () => {
    const { lots, issues } = derive(
      buy("a", { massG: 1, costMinor: 7 }),
      ...Array.from({ length: 10 }, () => use("a", 1, 0.1)),
    );
    expect(issues).toEqual([]);
    expect(lots.get("a")).toMatchObject({ leftG: 0, leftMinor: 0 });
  });

  test("a hair less than all is all", () => {
    const { lots } = derive(buy("a"), use("a", 1, 999.9999999));
    expect(lots.get("a")).toMatchObject({ leftG: 0, outflows: [{ massG: 1000, costMinor: 100 }] });
  });
});

describe("cases of place and time", () => {
  test("half a pack frozen is a lot of its own with half the cost, and dividing opens the pack", () => {
    const part = { massG: 500, lot: "b" };
    const { lots, issues } = derive(
      buy("a"),
      { kind: "moved", on: day(2), lot: "a", to: "freezer", part },
      use("b", 50, 500),
    );
    expect(issues).toEqual([]);
    expect(lots.get("a")).toMatchObject({ place: "fridge", openedOn: day(2), leftG: 500, leftMinor: 50 });
    expect(lots.get("b")).toMatchObject({ place: "freezer", origin: "split", broughtMinor: 50, leftG: 0 });
  });

  test("thawed it is used within a day, and never frozen again", () => {
    const story = [
      buy("a"),
      { kind: "moved", on: day(2), lot: "a", to: "freezer" },
      { kind: "moved", on: day(40), lot: "a", to: "fridge" },
    ] as Movement[];
    expect(codes(...story, use("a", 41, 10))).toEqual([]);
    expect(codes(...story, use("a", 42, 10))).toEqual(["3/on gone-off"]);
    expect(codes(...story, { kind: "moved", on: day(41), lot: "a", to: "freezer" })).toEqual(["3/to refrozen"]);
  });

  test("a tin opened late goes to the fridge and keeps as the table says", () => {
    const story = [
      buy("a", { food: "beans-tinned", place: "dry-store" }),
      { kind: "opened", on: day(300), lot: "a" },
      { kind: "moved", on: day(300), lot: "a", to: "fridge" },
    ] as Movement[];
    expect(codes(...story, use("a", 302, 10))).toEqual([]);
    expect(codes(...story, use("a", 303, 10))).toEqual(["3/on gone-off"]);
  });

  test("moving from one place to another does not start an old life anew", () => {
    const cheese = { ...milk, id: "cheese", keeping: { ...milk.keeping, unopened: { "dry-store": 10, fridge: 30 } } };
    const story = [
      buy("a", { food: "cheese", place: "dry-store" }),
      { kind: "moved", on: day(9), lot: "a", to: "fridge" },
      use("a", 11, 10),
    ] as Movement[];
    expect(deriveStores([], story, new Map([["cheese", cheese]])).issues).toMatchObject([
      { code: "gone-off", path: [2, "on"] },
    ]);
  });
});

describe("what cannot have happened", () => {
  const part = (massG: number, lot: string): Movement => ({
    kind: "moved",
    on: day(1),
    lot: "a",
    to: "freezer",
    part: { massG, lot },
  });

  test.each<[string, Movement[]]>([
    ["1/lot lot-twice", [buy("a"), buy("a")]],
    ["1/lot lot-unknown", [buy("a"), use("b", 1, 1)]],
    ["1/lot lot-unknown", [buy("a"), use("a", -1, 1)]],
    ["1/massG too-much", [buy("a"), use("a", 1, 1001)]],
    ["1/on gone-off", [buy("a"), use("a", 8, 1)]],
    [
      "2/lot opened-twice",
      [buy("a"), { kind: "opened", on: day(1), lot: "a" }, { kind: "opened", on: day(2), lot: "a" }],
    ],
    ["1/lot never-opened", [buy("a", { loose: true }), { kind: "opened", on: day(1), lot: "a" }]],
    ["1/to same-place", [buy("a"), { kind: "moved", on: day(1), lot: "a", to: "fridge" }]],
    ["1/on gone-off", [buy("a"), { kind: "moved", on: day(8), lot: "a", to: "freezer" }]],
    ["1/part too-much", [buy("a"), part(1001, "b")]],
    ["1/part lot-twice", [buy("a"), part(1, "a")]],
  ])("%s", (issue, story) => {
    expect(codes(...story)).toEqual([issue]);
  });

  test("two lots of one id at the start are an issue", () => {
    const [lot] = opening as [Lot];
    expect(deriveStores([lot, lot], [], foods).issues).toMatchObject([
      { code: "lot-twice", path: ["opening", 1, "id"] },
    ]);
  });

  test("what has gone off can still be thrown away", () => {
    expect(codes(buy("a"), { kind: "wasted", on: day(30), lot: "a", massG: 1000 })).toEqual([]);
  });
});
