import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Food } from "../food/index.ts";
import { addDays } from "../quantity/index.ts";
import { makePack, measures } from "./pack.testing.ts";
import type { Offer } from "./pack.ts";
import { cheapestByFood, latestPrices, type Observation } from "./priceBook.ts";

const DAY = "2026-03-10";
const days = fc.integer({ min: -30, max: 30 }).map((offset) => addDays(DAY, offset));
const at = "shelf";

function observe(on: string, priceMinor: number, offer?: Offer): Observation {
  const seen = { pack: "oats-500", priceMinor, seen: { on, at } };
  return offer === undefined ? seen : { ...seen, offer };
}

const observations = fc.array(
  fc.tuple(days, fc.nat(500)).map(([on, priceMinor]) => observe(on, priceMinor)),
  { maxLength: 8 },
);
const estimated = makePack({ priceMinor: 999, seen: undefined, estimate: true });

describe("the latest price", () => {
  test("is the last told of those from the latest day not after the day asked for", () => {
    fc.assert(
      fc.property(observations, (all) => {
        const past = all.filter(({ seen }) => seen.on <= DAY);
        const latestDay = past
          .map(({ seen }) => seen.on)
          .sort()
          .at(-1);
        const expected = past.filter(({ seen }) => seen.on === latestDay).at(-1);
        const priced = latestPrices([estimated], all, DAY).get("oats-500");
        expect(priced?.pack.priceMinor).toBe(expected?.priceMinor ?? 999);
        expect(priced?.pack.seen).toEqual(expected?.seen);
        expect(priced?.estimate).toBe(expected === undefined);
        expect(priced?.ageDays === undefined).toBe(expected === undefined);
      }),
    );
  });

  test("does not change by what is seen after the day asked for", () => {
    fc.assert(
      fc.property(observations, observations, (past, later) => {
        const after = later.filter(({ seen }) => seen.on > DAY);
        expect(latestPrices([makePack()], [...past, ...after], DAY)).toEqual(latestPrices([makePack()], past, DAY));
      }),
    );
  });

  test("ages by a day a day", () => {
    fc.assert(
      fc.property(fc.nat(400), (age) => {
        const priced = latestPrices([makePack()], [], addDays("2026-03-02", age)).get("oats-500");
        expect(priced).toEqual({ pack: makePack(), estimate: false, ageDays: age });
      }),
    );
  });

  test("the pack's own sight stands while nothing newer is seen", () => {
    const priced = latestPrices([makePack()], [observe("2026-03-01", 99)], DAY);
    expect(priced.get("oats-500")?.pack.priceMinor).toBe(120);
    expect(latestPrices([makePack()], [observe("2026-03-02", 99)], DAY).get("oats-500")?.pack.priceMinor).toBe(99);
  });

  test("of a day before the pack's own sight is what was seen till then, or nothing", () => {
    const before = latestPrices([makePack()], [observe("2026-02-20", 99)], "2026-03-01").get("oats-500");
    expect(before).toMatchObject({ pack: { priceMinor: 99 }, ageDays: 9 });
    expect(latestPrices([makePack()], [], "2026-03-01").size).toBe(0);
  });

  test("an observation ends an estimate and an offer it does not name", () => {
    const offer: Offer = { kind: "several", count: 2, priceMinor: 200 };
    const pack = makePack({ seen: undefined, estimate: true, offer });
    const once = latestPrices([pack], [observe("2026-03-09", 110)], DAY).get("oats-500");
    expect(once).toEqual({
      pack: makePack({ priceMinor: 110, seen: { on: "2026-03-09", at } }),
      estimate: false,
      ageDays: 1,
    });
    const again = latestPrices([pack], [observe("2026-03-09", 110, offer)], DAY).get("oats-500");
    expect(again?.pack.offer).toEqual(offer);
  });

  test("an observation of no known pack is passed over", () => {
    expect(latestPrices([], [observe("2026-03-01", 1)], DAY).size).toBe(0);
  });
});

describe("the cheapest price by food", () => {
  const foods = new Map([["oats-rolled", { id: "oats-rolled", ...measures } as unknown as Food]]);
  const seen = (over: Parameters<typeof makePack>[0]) => ({ pack: makePack(over), estimate: false });
  const estimate = (over: Parameters<typeof makePack>[0]) => ({ pack: makePack(over), estimate: true });

  test("no pack has a lower one, and one has it", () => {
    const packs = fc.array(fc.record({ priceMinor: fc.nat(500), massG: fc.integer({ min: 1, max: 5000 }) }), {
      minLength: 1,
    });
    fc.assert(
      fc.property(packs, (all) => {
        const priced = all.map(({ priceMinor, massG }, index) =>
          seen({ id: `pack-${index}`, priceMinor, content: { massG } }),
        );
        const best = cheapestByFood(priced, foods, DAY).prices.get("oats-rolled");
        expect(best?.minorPerG).toBeCloseTo(Math.min(...all.map((each) => each.priceMinor / each.massG)), 12);
      }),
    );
  });

  test("keeps the flag of an estimate, and at an equal price takes what was seen", () => {
    const cheap = estimate({ id: "cheap", priceMinor: 50 });
    expect(cheapestByFood([seen({}), cheap], foods, DAY).prices.get("oats-rolled")).toEqual({
      minorPerG: 0.1,
      estimate: true,
      pack: "cheap",
    });
    expect(cheapestByFood([estimate({}), seen({ id: "seen" })], foods, DAY).prices.get("oats-rolled")).toEqual({
      minorPerG: 0.24,
      estimate: false,
      pack: "seen",
    });
  });

  test("an offer for several is not the price of one", () => {
    const offer: Offer = { kind: "several", count: 2, priceMinor: 10 };
    expect(cheapestByFood([seen({ offer })], foods, DAY).prices.get("oats-rolled")?.minorPerG).toBe(0.24);
  });

  test("a pack reduced until yesterday is gone, until today it is there", () => {
    const until = (day: string) => seen({ id: "last", priceMinor: 10, reduced: { until: day, limit: 1 } });
    expect(cheapestByFood([until("2026-03-09")], foods, DAY).prices.size).toBe(0);
    expect(cheapestByFood([until(DAY)], foods, DAY).prices.size).toBe(1);
  });

  test("packs without a known mass are named, not priced at nothing", () => {
    const strange = seen({ id: "strange", food: "unheard-of" });
    const tiny = seen({ id: "tiny", content: { pieces: 1, size: "tiny" } });
    expect(cheapestByFood([strange, tiny], foods, DAY)).toEqual({
      prices: new Map(),
      unknown: [
        { pack: "strange", reason: "food-unknown" },
        { pack: "tiny", reason: "size-unknown" },
      ],
    });
  });
});
