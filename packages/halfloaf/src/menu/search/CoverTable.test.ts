import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildCoverTable, buildLimitedTable, type CoverItem, findCover } from "./CoverTable.ts";

interface Offered {
  readonly massG: number;
  readonly priceMinor: number;
}

const offered = fc.record({ massG: fc.integer({ min: 20, max: 900 }), priceMinor: fc.integer({ min: 20, max: 900 }) });

function toItems(packs: readonly Offered[], minorPerG: number): CoverItem[] {
  return packs.map(({ massG, priceMinor }, pack) => ({
    pack,
    count: 1,
    massG,
    priceMinor,
    highMinor: priceMinor,
    weighedMinor: priceMinor + minorPerG * massG,
  }));
}

/** The least cost of at least so many grams, by trying every combination that is not wasteful. */
function tryAll(items: readonly CoverItem[], needG: number, most = Infinity): number {
  if (needG <= 1e-6) return 0;
  if (most <= 0) return Infinity;
  const [first, ...rest] = items;
  if (first === undefined) return Infinity;
  let best = Infinity;
  for (let count = 0; count <= Math.min(most, Math.ceil(needG / first.massG)); count++) {
    const others = tryAll(rest, needG - count * first.massG, most);
    best = Math.min(best, count * first.weighedMinor + others);
  }
  return best;
}

describe("a cover table", () => {
  it("holds the cheapest purchase for every need, to the gram", () => {
    const list = fc.array(offered, { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(
        list,
        fc.integer({ min: 1, max: 2000 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (packs, needG, perG) => {
          const items = toItems(packs, perG);
          const table = buildCoverTable(items, 2000);
          const row = findCover(table, needG);
          expect(row).toBeGreaterThanOrEqual(0);
          expect(table.massG[row]).toBeGreaterThanOrEqual(needG);
          expect(table.weighedMinor[row]).toBeCloseTo(tryAll(items, needG), 6);
        },
      ),
    );
  });

  it("says with every row what is bought, and its mass and price are of that", () => {
    fc.assert(
      fc.property(fc.array(offered, { minLength: 1, maxLength: 4 }), (packs) => {
        const items = toItems(packs, 0.1);
        const table = buildCoverTable(items, 3000);
        table.massG.forEach((massG, row) => {
          const counts = items.map((_, i) => table.counts[row * items.length + i] as number);
          const sum = (of: (item: CoverItem) => number): number =>
            items.reduce((total, item, i) => total + (counts[i] as number) * of(item), 0);
          expect(massG).toBeCloseTo(
            sum((item) => item.massG),
            6,
          );
          expect(table.priceMinor[row]).toBeCloseTo(
            sum((item) => item.priceMinor),
            6,
          );
          if (row > 0) expect(massG).toBeGreaterThan(table.massG[row - 1] as number);
        });
      }),
    );
  });

  it("has no cover beyond a limit", () => {
    fc.assert(
      fc.property(offered, fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5000 }), (pack, limit, needG) => {
        const table = buildLimitedTable(toItems([pack], 0), 5000, limit);
        const row = findCover(table, needG);
        if (needG > limit * pack.massG) expect(row).toBe(-1);
        else expect(table.weighedMinor[row]).toBe(Math.ceil(needG / pack.massG) * pack.priceMinor);
      }),
    );
  });
});
