import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween } from "../../../quantity/index.ts";
import { day, foods } from "../../../stores/stores.testing.ts";
import { makeKitchen } from "../../kitchen.testing.ts";
import { RecordLedger } from "../RecordLedger.ts";
import { deeds, live, skews } from "../record.testing.ts";
import { accountsBy } from "./accountsBy.ts";
import { budgetOf } from "./budgetOf.ts";
import { nameStretch, type Stretch, startOf, startOfNext } from "./calendar.ts";
import { platesBy } from "./platesBy.ts";

const stretches = fc.constantFrom<Stretch>("day", "week", "month");
const leftMinor = ({ lots }: RecordLedger["state"]) => [...lots.values()].reduce((sum, lot) => sum + lot.leftMinor, 0);
const offsets = fc.tuple(fc.integer({ min: -10, max: 60 }), fc.nat(80));

describe("the accounts, whatever was lived", () => {
  test("each line adds up to the coin, opens with what was carried over, and carries over what was in the stores", () => {
    fc.assert(
      fc.property(deeds, skews, stretches, offsets, (list, skewMs, stretch, [first, length]) => {
        const ledger = new RecordLedger(foods, live(list, skewMs).all);
        const { state } = ledger;
        const [from, to] = [day(first), day(first + length)];
        let carriedMinor = leftMinor(ledger.stateOn(addDays(from, -1)));
        for (const line of accountsBy(state, stretch, from, to)) {
          expect(line.openingMinor).toBe(carriedMinor);
          expect(line.openingMinor + line.enteredMinor + line.tillMinor).toBe(
            line.platesMinor + line.wasteMinor + line.carryOverMinor,
          );
          carriedMinor = leftMinor(ledger.stateOn(line.to));
          expect(line.carryOverMinor).toBe(carriedMinor);
        }
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  test("days, weeks and months tell the same sums, and the lines hold all days once", () => {
    fc.assert(
      fc.property(deeds, skews, offsets, (list, skewMs, [first, length]) => {
        const { state } = new RecordLedger(foods, live(list, skewMs).all);
        const [from, to] = [day(first), day(first + length)];
        const sums = (["day", "week", "month"] as const).map((stretch) => {
          const lines = accountsBy(state, stretch, from, to);
          expect(lines.reduce((sum, line) => sum + daysBetween(line.from, line.to) + 1, 0)).toBe(length + 1);
          expect(lines.every((line, at) => at === 0 || line.from === addDays(lines[at - 1]?.to as string, 1))).toBe(
            true,
          );
          const add = (key: "tillMinor" | "platesMinor" | "wasteMinor" | "faresMinor") =>
            lines.reduce((sum, line) => sum + line[key], 0);
          return [
            add("tillMinor"),
            add("platesMinor"),
            add("wasteMinor"),
            add("faresMinor"),
            lines.at(-1)?.carryOverMinor,
          ];
        });
        expect(sums[1]).toEqual(sums[0]);
        expect(sums[2]).toEqual(sums[0]);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test("plates told with their sitting are in the plate costs, each once", () => {
    fc.assert(
      fc.property(deeds, skews, (list, skewMs) => {
        const { all, lastDay } = live(list, skewMs);
        const { state } = new RecordLedger(foods, all);
        const sittings = platesBy(state, day(0), lastDay);
        const told = state.plates.filter(({ sitting }) => sitting !== undefined);
        expect(sittings.flatMap(({ eaten }) => eaten)).toHaveLength(told.length);
        const toldMinor = told.reduce((sum, { costMinor }) => sum + costMinor, 0);
        expect(sittings.reduce((sum, { eatenMinor }) => sum + eatenMinor, 0)).toBe(toldMinor);
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});

describe("the calendar", () => {
  test.each([
    ["2024-12-30", "2025-W01", "2024-12-30"],
    ["2026-12-31", "2026-W53", "2026-12-28"],
    ["2027-01-03", "2026-W53", "2026-12-28"],
    ["2027-01-04", "2027-W01", "2027-01-04"],
    ["2026-03-02", "2026-W10", "2026-03-02"],
  ])("%s is of the week %s from %s", (date, name, monday) => {
    expect([nameStretch(date, "week"), startOf(date, "week")]).toEqual([name, monday]);
  });

  test("a month ends where the next begins", () => {
    expect(["2026-02-10", "2024-02-29", "2026-12-31"].map((date) => startOfNext(date, "month"))).toEqual([
      "2026-03-01",
      "2024-03-01",
      "2027-01-01",
    ]);
    expect(nameStretch("2026-02-10", "month")).toBe("2026-02");
  });
});

test("money left is the week's budget less tills and fares; eating elsewhere is told apart", () => {
  const kitchen = makeKitchen({ limits: { ...makeKitchen().limits, budgetMinor: 2000 } });
  const base = { atMs: 1, tick: 0 };
  const bought = { kind: "bought", lot: "a", food: "milk", place: "fridge", massG: 1000 } as const;
  const { state } = new RecordLedger(foods, [
    { id: "a-1", ...base, ...bought, on: day(0), costMinor: 1500 },
    { id: "a-2", ...base, ...bought, lot: "b", on: day(-1), costMinor: 900 },
    { id: "a-3", ...base, kind: "trip", on: day(6), shop: "corner", fareMinor: 700 },
    { id: "a-4", ...base, kind: "ate-out", on: day(2), sitting: "midday", costMinor: 650 },
  ]);
  expect(budgetOf(kitchen, state, day(3))).toEqual({
    from: day(0),
    to: day(6),
    spentMinor: 2200,
    ateOutMinor: 650,
    budgetMinor: 2000,
    leftMinor: -200,
  });
});
