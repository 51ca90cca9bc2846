import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays } from "../quantity/index.ts";
import { AGED_AFTER_DAYS, judgePriceAge } from "./judgePriceAge.ts";
import { makePack } from "./pack.testing.ts";
import { latestPrices } from "./priceBook.ts";

test("a price is sure until the kitchen's number of days has passed, then it has aged", () => {
  fc.assert(
    fc.property(fc.nat(400), fc.nat(400), (ageDays, agedAfterDays) => {
      const on = addDays("2026-03-02", ageDays);
      const priced = latestPrices([makePack()], [], on).get("oats-500");
      const kind = ageDays <= agedAfterDays ? "seen" : "aged";
      expect(priced && judgePriceAge(priced, agedAfterDays)).toEqual({ kind, ageDays });
    }),
  );
});

test("an estimate stays one, whatever its age", () => {
  expect(judgePriceAge({ estimate: true })).toEqual({ kind: "estimate" });
  expect(judgePriceAge({ estimate: true, ageDays: 1 }, 0)).toEqual({ kind: "estimate" });
});

test("eight weeks are taken where a kitchen says nothing; less than none is refused", () => {
  expect(judgePriceAge({ estimate: false, ageDays: AGED_AFTER_DAYS }).kind).toBe("seen");
  expect(judgePriceAge({ estimate: false, ageDays: AGED_AFTER_DAYS + 1 }).kind).toBe("aged");
  expect(() => judgePriceAge({ estimate: false, ageDays: 1 }, -1)).toThrow(RangeError);
  expect(() => judgePriceAge({ estimate: false, ageDays: 1 }, Number.NaN)).toThrow(RangeError);
});
