import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Arrivals } from "./Arrivals.ts";

const way = fc.record({ rest: fc.nat(6), spent: fc.nat(6) });

describe("ways in which a search comes to a need", () => {
  test("are given up where an earlier one was no worse in both, and only there", () => {
    fc.assert(
      fc.property(fc.array(way, { maxLength: 12 }), (ways) => {
        const arrivals = new Arrivals(2);
        const seen: (typeof ways)[number][] = [];
        for (const { rest, spent } of ways) {
          const expected = seen.some((old) => old.rest <= rest && old.spent <= spent);
          expect(arrivals.isBettered(1, rest, spent)).toBe(expected);
          seen.push({ rest, spent });
        }
      }),
    );
  });

  test("to one need say nothing of another, and nothing after they are cleared", () => {
    const arrivals = new Arrivals(2);
    expect(arrivals.isBettered(0, 1, 1)).toBe(false);
    expect(arrivals.isBettered(1, 2, 2)).toBe(false);
    arrivals.clear();
    expect(arrivals.isBettered(0, 2, 2)).toBe(false);
  });

  test("are never given up for want of room", () => {
    const arrivals = new Arrivals(1);
    for (let at = 0; at < 40; at++) expect(arrivals.isBettered(0, at, 40 - at)).toBe(false);
  });
});
