import fc from "fast-check";
import { expect, test } from "vitest";
import type { Pack } from "../../../price/index.ts";
import { foods } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import { fromKitchen } from "../parseRecord.ts";
import { RecordLedger } from "../RecordLedger.ts";
import { deeds, live, skews } from "../record.testing.ts";
import { listAccounts } from "./listAccounts.ts";
import { listMovements } from "./listMovements.ts";
import { listPrices } from "./listPrices.ts";
import { listStores } from "./listStores.ts";

const { kitchen } = fromKitchen(makeKitchen({}));
const sumOf = <Row>(rows: readonly Row[], of: (row: Row) => number) => rows.reduce((sum, row) => sum + of(row), 0);

/** Rows for a table hold nothing but plain values. */
function expectPlain(rows: readonly object[]): void {
  for (const value of rows.flatMap((row) => Object.values(row))) expect(["string", "number"]).toContain(typeof value);
}

test("the movements of a lot add up to what is left of it, all of them to what the stores cost and the accounts carry over", () => {
  const property = fc.property(deeds, skews, (list, skewMs) => {
    const { all, lastDay } = live(list, skewMs);
    const { state } = new RecordLedger(foods, all);
    const moved = listMovements(state);
    const stores = listStores(state, lastDay);
    const accounts = listAccounts(state, "week", "2026-03-02", lastDay);
    for (const rows of [moved, stores, accounts, listPrices(kitchen, state, foods)]) expectPlain(rows);
    for (const lot of state.lots.values()) {
      const own = moved.filter((row) => row.lot === lot.id);
      expect(sumOf(own, ({ massG }) => massG)).toBeCloseTo(lot.leftG, 6);
      expect(sumOf(own, ({ costMinor }) => costMinor)).toBe(lot.leftMinor);
    }
    const leftMinor = sumOf(stores, ({ costMinor }) => costMinor);
    expect(sumOf(moved, ({ costMinor }) => costMinor)).toBe(leftMinor);
    expect(accounts.at(-1)?.carryOverMinor).toBe(leftMinor);
    const bought = moved.filter(({ kind }) => kind === "bought");
    expect(sumOf(accounts, ({ tillMinor }) => tillMinor)).toBe(sumOf(bought, ({ costMinor }) => costMinor));
  });
  fc.assert(property, { numRuns: 150, endOnFailure: true });
});

test("every look at a price is a row with its unit price and its change", () => {
  const pack: Pack = {
    id: "milk-1l",
    shop: "corner",
    food: "milk",
    label: "Milk",
    section: "fridge",
    content: { massG: 1000 },
    priceMinor: 100,
    seen: { on: "2026-11-30", at: "Corner" },
  };
  const seen = { event: "a-1", pack: pack.id, priceMinor: 300, massG: 500, seen: { on: "2026-12-02", at: "there" } };
  const rows = listPrices({ packs: [pack] }, { prices: [seen] }, foods);
  expect(rows.at(-1)).toMatchObject({ on: "2026-12-02", pack: pack.id, priceMinor: 300, massG: 500, perKgMinor: 600 });
  expect(rows.map(({ perKgMinor, changePct }) => [perKgMinor, changePct])).toEqual([
    [100, undefined],
    [600, 500],
  ]);
});
