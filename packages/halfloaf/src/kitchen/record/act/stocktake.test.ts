import fc from "fast-check";
import { expect, test } from "vitest";
import { accountOf, MASS_TOLERANCE_G } from "../../../stores/index.ts";
import { day } from "../../../stores/stores.testing.ts";
import { deeds, live, skews } from "../record.testing.ts";
import { boughtOf, ledgerOf, penFor } from "./acts.testing.ts";
import { stocktake } from "./stocktake.ts";
import { throwAway } from "./throwAway.ts";

const two = () => ledgerOf(boughtOf("old"), boughtOf("new", { on: day(2) }));

test("what is missing of a food is taken from what expires first, what was found is put to the last", () => {
  const ledger = two();
  const missing = stocktake(ledger.state, [{ food: "milk", massG: 1300 }], day(3), penFor(ledger));
  expect(missing.events).toMatchObject([{ kind: "counted", lot: "old", massG: 300 }]);
  expect(missing.differences).toEqual([{ lot: "old", recordedG: 1000, countedG: 300, costMinor: 70 }]);
  const found = stocktake(ledger.state, [{ food: "milk", massG: 2100 }], day(3), penFor(ledger));
  expect(found.differences).toEqual([{ lot: "new", recordedG: 1000, countedG: 1100, costMinor: 0 }]);
});

test("a difference is booked as told", () => {
  for (const as of ["used", "wasted", undefined] as const) {
    const ledger = two();
    const count = { lot: "old", massG: 400, ...(as !== undefined && { as }) };
    ledger.add(stocktake(ledger.state, [count], day(3), penFor(ledger)).events);
    const { usedMinor, wastedMinor } = accountOf(ledger.state.lots.values());
    expect([usedMinor, wastedMinor]).toEqual(as === "used" ? [60, 0] : [0, 60]);
    expect(ledger.state.plates).toHaveLength(as === "used" ? 1 : 0);
  }
});

test("what agrees is not counted, but where it was in doubt, which then is over", () => {
  const ledger = two();
  const counts = [{ food: "milk", massG: 2000 }];
  expect(stocktake(ledger.state, counts, day(3), penFor(ledger)).events).toEqual([]);
  ledger.add([penFor(ledger).write({ kind: "used", on: day(9), lot: "old", massG: 10 })]);
  expect([...ledger.state.toCount.values()]).toEqual([{ lot: "old", shortG: 10, since: day(9), events: ["a-3"] }]);
  ledger.add(stocktake(ledger.state, counts, day(9), penFor(ledger)).events);
  expect(ledger.state.toCount.size).toBe(0);
});

test("what nobody recorded is strange and has to be stocked", () => {
  const ledger = two();
  const rice = { food: "rice", massG: 500 };
  expect(stocktake(ledger.state, [rice], day(3), penFor(ledger))).toEqual({
    events: [],
    differences: [],
    strange: [rice],
  });
  expect(stocktake(ledger.state, [{ food: "rice", massG: 0 }], day(3), penFor(ledger)).strange).toEqual([]);
});

test("after a stocktake of all lots the record is what was counted, without any doubt", () => {
  fc.assert(
    fc.property(deeds, skews, fc.double({ min: 0, max: 1.5, noNaN: true }), (list, skewMs, share) => {
      const { ledgers, lastDay } = live(list, skewMs);
      const [ledger] = ledgers;
      const known = [...ledger.state.lots.values()];
      const counts = known.map(({ id, leftG }) => ({ lot: id, massG: leftG * share }));
      ledger.add(stocktake(ledger.state, counts, lastDay, penFor(ledger)).events);
      for (const { lot, massG } of counts) {
        const counted = ledger.state.lots.get(lot);
        if (counted === undefined || counted.since > lastDay) continue;
        expect(Math.abs(counted.leftG - massG)).toBeLessThanOrEqual(MASS_TOLERANCE_G);
      }
      expect([...ledger.state.toCount.keys()].filter((lot) => known.some(({ id }) => id === lot))).toEqual([]);
    }),
    { numRuns: 200, endOnFailure: true },
  );
});

test("all that has gone off is thrown away at once", () => {
  const ledger = two();
  expect(throwAway(ledger.state, day(8), penFor(ledger))).toMatchObject([
    { id: "a-3", kind: "wasted", lot: "old", massG: 1000, why: "unopened-life" },
  ]);
});
