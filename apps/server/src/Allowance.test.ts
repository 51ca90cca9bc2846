import fc from "fast-check";
import { expect, it } from "vitest";
import { Allowance, Allowances } from "./Allowance.ts";

it("Nobody gets more than what is there at first and what time brings", () => {
  const uses = fc.array(fc.tuple(fc.nat(2_000), fc.integer({ min: 1, max: 4 })), { maxLength: 60 });
  fc.assert(
    fc.property(uses, (list) => {
      const allowance = new Allowance({ burst: 5, perSecond: 2 }, 0);
      let [now, used] = [0, 0];
      for (const [passed, count] of list) {
        now += passed;
        if (allowance.take(now, count)) used += count;
        expect(used).toBeLessThanOrEqual(5 + (now / 1_000) * 2 + 1e-9);
      }
    }),
  );
});

it("Who waits as long as is said has paid for what was taken", () => {
  const allowance = new Allowance({ burst: 10, perSecond: 5 }, 0);
  expect(allowance.takeLater(0, 10)).toBe(0);
  expect(allowance.takeLater(0, 5)).toBe(1_000);
  expect(allowance.isSpent(1_000)).toBe(true);
  expect(allowance.take(1_200)).toBe(true);
});

it("One address does not use up what another may do", () => {
  const allowances = new Allowances({ burst: 1, perSecond: 0.1 });
  expect(allowances.take("a", 0)).toBe(true);
  expect(allowances.take("a", 0)).toBe(false);
  expect(allowances.isSpent("a", 0)).toBe(true);
  expect(allowances.take("b", 0)).toBe(true);
});
