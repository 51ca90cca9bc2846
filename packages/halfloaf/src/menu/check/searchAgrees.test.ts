import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareWithSearch, isAgreed } from "./compareWithSearch.testing.ts";
import { arbitraryWeek } from "./randomWeek.testing.ts";

const RUNS = 80;

describe("the check and the search", () => {
  it("agree on every rule and on the money of the best plan", () => {
    let plans = 0;
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 1000 }), (week, seed) => {
        const comparison = compareWithSearch(week, seed);
        if (comparison === undefined) return;
        plans++;
        expect(comparison).toSatisfy(isAgreed);
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(plans).toBeGreaterThan(RUNS / 4);
  });
});
