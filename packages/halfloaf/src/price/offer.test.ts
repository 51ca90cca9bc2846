import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { priceOfCount, unitPrice } from "./offer.ts";
import { makePack, measures, offers } from "./pack.testing.ts";

const counts = fc.nat(40);

describe("the price of several packs", () => {
  test("is never more than one by one and never less for one pack more", () => {
    fc.assert(
      fc.property(offers, counts, ({ priceMinor, offer }, count) => {
        expect(priceOfCount({ priceMinor, offer }, count)).toBeLessThanOrEqual(count * priceMinor);
        if (count % offer.count !== offer.count - 1) {
          const [now, next] = [count, count + 1].map((each) => priceOfCount({ priceMinor, offer }, each));
          expect(next).toBe((now as number) + priceMinor);
        }
      }),
    );
  });

  test("a full offer more costs the offer more", () => {
    fc.assert(
      fc.property(offers, counts, ({ priceMinor, offer }, count) => {
        expect(priceOfCount({ priceMinor, offer }, count + offer.count)).toBe(
          priceOfCount({ priceMinor, offer }, count) + offer.priceMinor,
        );
      }),
    );
  });

  test("is the cheapest way to cut the packs into offers and single ones", () => {
    fc.assert(
      fc.property(offers, fc.nat(20), ({ priceMinor, offer }, count) => {
        const ways = Array.from({ length: Math.floor(count / offer.count) + 1 }, (_, full) => {
          return full * offer.priceMinor + (count - full * offer.count) * priceMinor;
        });
        expect(priceOfCount({ priceMinor, offer }, count)).toBe(Math.min(...ways));
      }),
    );
  });

  test("three for 2.50", () => {
    const pack = makePack({ priceMinor: 100, offer: { kind: "several", count: 3, priceMinor: 250 } });
    expect([0, 1, 2, 3, 4, 6, 8].map((count) => priceOfCount(pack, count))).toEqual([0, 100, 200, 250, 350, 500, 700]);
  });

  test("without an offer each costs the same", () => {
    expect(priceOfCount(makePack(), 7)).toBe(840);
  });

  test.each([-1, 1.5, Number.NaN])("%d packs are a defect", (count) => {
    expect(() => priceOfCount(makePack(), count)).toThrow(RangeError);
  });
});

describe("the unit price", () => {
  test("times the mass gives the price back", () => {
    fc.assert(
      fc.property(fc.nat(9999), fc.double({ min: 1, max: 25_000, noNaN: true }), (priceMinor, massG) => {
        const price = unitPrice(makePack({ priceMinor, content: { massG } }), measures);
        expect(price.ok && (price.perKgMinor * massG) / 1000).toBeCloseTo(priceMinor, 6);
        expect(price.ok && price.per100gMinor * 10).toBeCloseTo(price.ok ? price.perKgMinor : Number.NaN, 6);
      }),
    );
  });

  test("1.20 for 500 g is 2.40 a kg", () => {
    expect(unitPrice(makePack(), measures)).toEqual({ ok: true, perKgMinor: 240, per100gMinor: 24, perGMinor: 0.24 });
  });

  test("an offer counts only for who buys as many", () => {
    const pack = makePack({ offer: { kind: "several", count: 2, priceMinor: 200 } });
    expect(unitPrice(pack, measures)).toMatchObject({ perKgMinor: 240 });
    expect(unitPrice(pack, measures, 2)).toMatchObject({ perKgMinor: 200 });
  });

  test("pieces go by their mass as purchased", () => {
    // Three pieces of 90 g with a quarter of refuse put back on weigh 360 g.
    expect(unitPrice(makePack({ priceMinor: 90, content: { pieces: 3 } }), measures)).toMatchObject({
      perKgMinor: 250,
    });
  });

  test("is unknown where the mass is", () => {
    expect(unitPrice(makePack({ content: { pieces: 3, size: "tiny" } }), measures)).toEqual({
      ok: false,
      reason: "size-unknown",
    });
  });

  test("of no packs is a defect", () => {
    expect(() => unitPrice(makePack(), measures, 0)).toThrow(RangeError);
  });
});
