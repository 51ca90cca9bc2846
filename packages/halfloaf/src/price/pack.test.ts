import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edibleFromPurchased } from "../food/index.ts";
import { parseWith } from "../quantity/index.ts";
import { makePack, measures } from "./pack.testing.ts";
import { limitOfPack, massOfPack, Pack } from "./pack.ts";

function readIssues(over: object): string[] {
  const parsed = parseWith(Pack, { ...makePack(), ...over });
  return parsed.ok ? [] : parsed.issues.map(({ path }) => path.join("/"));
}

describe("reading a pack", () => {
  test("a sound pack is read as it stands", () => {
    const pack = makePack({ gtin: "12345670", loose: true, limit: 2, reduced: { until: "2026-03-04", limit: 1 } });
    expect(parseWith(Pack, pack)).toEqual({ ok: true, value: pack });
    expect(readIssues({ priceMinor: 0, brand: "Mill Lane" })).toEqual([]);
  });

  test.each([
    [{ priceMinor: -1 }, "priceMinor"],
    [{ priceMinor: 1.5 }, "priceMinor"],
    [{ content: { massG: 0 } }, "content/massG"],
    [{ content: { massG: 5, volumeMl: 5 } }, "content/volumeMl"],
    [{ content: { pieces: 1.5 } }, "content/pieces"],
    [{ gtin: "12345671" }, "gtin"],
    [{ seen: { on: "2026-02-29", at: "shelf" } }, "seen/on"],
    [{ offer: { kind: "several", count: 1, priceMinor: 1 } }, "offer/count"],
    [{ offer: { kind: "several", count: 2, priceMinor: -1 } }, "offer/priceMinor"],
    [{ reduced: { until: "2026-03-04" } }, "reduced/limit"],
    [{ limit: 0 }, "limit"],
    [{ colour: "red" }, "colour"],
  ])("%j is refused", (over, path) => {
    const found = readIssues(over);
    expect(found).toHaveLength(1);
    // Where several shapes were allowed the path may end at the choice between them.
    expect(path.startsWith(found[0] as string) && found[0] !== "").toBe(true);
  });

  test("a price is seen or an estimate, exactly one of them", () => {
    expect(readIssues({ seen: undefined, estimate: true })).toEqual([]);
    expect(readIssues({ estimate: true })).toEqual(["seen"]);
    expect(readIssues({ seen: undefined })).toEqual(["seen"]);
    expect(readIssues({ seen: undefined, estimate: false })).toEqual(["estimate"]);
  });

  test("an offer dearer than its packs one by one is none", () => {
    expect(readIssues({ offer: { kind: "several", count: 3, priceMinor: 360 } })).toEqual([]);
    expect(readIssues({ offer: { kind: "several", count: 3, priceMinor: 361 } })).toEqual(["offer"]);
  });
});

describe("the mass of a pack as purchased", () => {
  test("a mass is itself", () => {
    expect(massOfPack(makePack(), measures)).toEqual({ ok: true, massG: 500 });
  });

  test("a volume goes by the density", () => {
    expect(massOfPack(makePack({ content: { volumeMl: 750 } }), measures)).toEqual({ ok: true, massG: 375 });
  });

  test("pieces weigh their edible mass with the refuse put back on", () => {
    expect(massOfPack(makePack({ content: { pieces: 3 } }), measures)).toEqual({ ok: true, massG: 360 });
    expect(massOfPack(makePack({ content: { pieces: 2, size: "large" } }), measures)).toEqual({ ok: true, massG: 320 });
  });

  test("what comes out of pieces edible is the pieces' own mass", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), fc.double({ min: 0, max: 90, noNaN: true }), (pieces, refusePct) => {
        const mass = massOfPack(makePack({ content: { pieces } }), { ...measures, refusePct });
        expect(mass.ok && edibleFromPurchased({ refusePct }, mass.massG)).toBeCloseTo(pieces * 90, 6);
      }),
    );
  });

  const bare: Pick<typeof measures, "pieces" | "refusePct"> = { pieces: [], refusePct: 0 };

  test.each([
    [{ volumeMl: 1 }, bare, "density-unknown"],
    [{ pieces: 1 }, bare, "pieces-unknown"],
    [{ pieces: 1, size: "tiny" }, measures, "size-unknown"],
  ] as const)("%j is unknown where the food lacks the measure", (content, food, reason) => {
    expect(massOfPack(makePack({ content }), food)).toEqual({ ok: false, reason });
  });
});

test("the lower of two limits holds", () => {
  expect(limitOfPack(makePack())).toBeUndefined();
  expect(limitOfPack(makePack({ limit: 3 }))).toBe(3);
  expect(limitOfPack(makePack({ limit: 3, reduced: { until: "2026-03-04", limit: 2 } }))).toBe(2);
  expect(limitOfPack(makePack({ reduced: { until: "2026-03-04", limit: 5 } }))).toBe(5);
});
