import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isGoneOff, keepsUntil } from "./keepsUntil.ts";
import { beans, day, makeFood, milk, rice } from "./stores.testing.ts";

const bought = { place: "fridge", boughtOn: day(0) } as const;
const until = (...args: Parameters<typeof keepsUntil>) => {
  const keeps = keepsUntil(...args);
  return keeps.ok ? [keeps.on, keeps.because] : keeps.reason;
};

describe("laws", () => {
  const offset = fc.option(fc.nat(30), { nil: undefined });
  const toDay = (at: number | undefined) => (at === undefined ? undefined : day(at));

  test("the earliest of unopened life, label and opened life", () => {
    fc.assert(
      fc.property(offset, offset, offset, (opened, useBy, bestBefore) => {
        const lot = { ...bought, openedOn: toDay(opened), useBy: toDay(useBy), bestBefore: toDay(bestBefore) };
        const ends = [7, useBy, bestBefore, opened === undefined ? undefined : opened + 3];
        const least = Math.min(...ends.filter((end) => end !== undefined));
        expect(until(lot, milk)[0]).toBe(day(least));
      }),
    );
  });

  test("opening, a label or a place before never makes it longer", () => {
    fc.assert(
      fc.property(offset, offset, offset, (opened, useBy, before) => {
        const [plain] = until(bought, milk);
        const lot = { ...bought, openedOn: toDay(opened), useBy: toDay(useBy), unopenedUntil: toDay(before) };
        expect((until(lot, milk)[0] as string) <= (plain as string)).toBe(true);
      }),
    );
  });
});

describe("cases", () => {
  test("what sets the day is told", () => {
    expect(until(bought, milk)).toEqual([day(7), "unopened-life"]);
    expect(until({ ...bought, openedOn: day(2) }, milk)).toEqual([day(5), "opened-life"]);
    expect(until({ ...bought, openedOn: day(6) }, milk)).toEqual([day(7), "unopened-life"]);
    expect(until({ ...bought, useBy: day(1) }, milk)).toEqual([day(1), "use-by"]);
    expect(until({ ...bought, bestBefore: day(4) }, milk)).toEqual([day(4), "best-before"]);
  });

  test("a place the table does not know is no place to keep it, whatever the label says", () => {
    expect(until({ ...bought, place: "dry-store", useBy: day(9) }, milk)).toBe("not-kept-there");
    expect(until({ ...bought, place: "dry-store", openedOn: day(0) }, beans)).toBe("not-kept-there");
    expect(until({ ...bought, openedOn: day(0) }, beans)).toEqual([day(2), "opened-life"]);
    expect(until({ ...bought, place: "dry-store", thawedOn: day(1) }, milk)).toBe("not-kept-there");
  });

  test("in the freezer the lives start anew and the label of what was frozen at home no longer counts", () => {
    const frozen = { place: "freezer", boughtOn: day(0), placedOn: day(5), useBy: day(6) } as const;
    expect(until(frozen, milk)).toEqual([day(95), "unopened-life"]);
    expect(until({ ...frozen, openedOn: day(3) }, milk)).toEqual([day(65), "opened-life"]);
    expect(until({ ...frozen, openedOn: day(9) }, milk)).toEqual([day(69), "opened-life"]);
    const boughtFrozen = { place: "freezer", boughtOn: day(0), bestBefore: day(40) } as const;
    expect(until(boughtFrozen, milk)).toEqual([day(40), "best-before"]);
  });

  test("what was thawed is eaten within a day", () => {
    expect(until({ ...bought, placedOn: day(50), thawedOn: day(50), useBy: day(6) }, milk)).toEqual([
      day(51),
      "thawed",
    ]);
  });

  test("what was left of its life in the place before still counts in the new one", () => {
    const both = makeFood("hard-cheese", { "dry-store": 60, fridge: 90 }, { fridge: 21 });
    const moved = { ...bought, placedOn: day(50), unopenedUntil: day(60) };
    expect(until(moved, both)).toEqual([day(60), "unopened-life"]);
    expect(until({ ...moved, openedOn: day(55) }, both)).toEqual([day(60), "unopened-life"]);
    expect(until({ ...moved, openedOn: day(50), unopenedUntil: day(80) }, both)).toEqual([day(71), "opened-life"]);
  });

  test("the last day itself is still good, and what is not known is not said to be off", () => {
    const keeps = keepsUntil(bought, milk);
    expect([day(7), day(8)].map((on) => isGoneOff(keeps, on))).toEqual([false, true]);
    expect(isGoneOff(keepsUntil({ ...bought, place: "fridge" }, rice), day(99))).toBe(false);
  });
});
