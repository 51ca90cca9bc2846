import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Assessment, assess, type KnownIntake } from "./assess.ts";
import type { ReferenceIntake } from "./referenceIntake.ts";

function reference(kind: ReferenceIntake["kind"], amountPerDay: number): ReferenceIntake {
  return { component: "ironMg", kind, amountPerDay, basis: "RDA", authority: "nasem", source: "a table" };
}

function judge(kind: ReferenceIntake["kind"], perDay: number, ironMg?: KnownIntake, days = 1): Assessment {
  const [only] = assess(ironMg ? { ironMg } : {}, [reference(kind, perDay)], days);
  return only as Assessment;
}

const amount = fc.double({ min: 0, max: 1000, noNaN: true });
const share = fc.oneof(fc.double({ min: 0.01, max: 0.999, noNaN: true }), fc.constant(1));
const kind = fc.constantFrom("at-least" as const, "at-most" as const);
const perDay = fc.double({ min: 0.1, max: 100, noNaN: true });
const dayCount = fc.integer({ min: 1, max: 14 });

describe("laws", () => {
  test("whatever the unknown part turns out to be, a verdict that was given stands", () => {
    fc.assert(
      fc.property(kind, perDay, dayCount, amount, share, amount, (of, wanted, days, known, knownShare, unknown) => {
        const before = judge(of, wanted, { amount: known, knownShare }, days);
        const truth = judge(of, wanted, { amount: known + unknown, knownShare: 1 }, days);
        if (before.verdict !== "open" && knownShare < 1) expect(truth.verdict).toBe(before.verdict);
        expect(truth.verdict).not.toBe("open");
      }),
    );
  });

  test("whatever the unknown part turns out to be, the distance is as sure as was said", () => {
    fc.assert(
      fc.property(kind, perDay, dayCount, amount, share, amount, (of, wanted, days, known, knownShare, unknown) => {
        const before = judge(of, wanted, { amount: known, knownShare }, days);
        const missing = before.wanted - (known + unknown);
        if (before.bySureness === "at-most") expect(missing).toBeLessThanOrEqual(before.by + 1e-6);
        if (before.bySureness === "at-least") expect(-missing).toBeGreaterThanOrEqual(before.by - 1e-6);
        expect(before.by).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("a share known of less than the whole never says exactly, nor met of an at-most", () => {
    fc.assert(
      fc.property(perDay, amount, fc.double({ min: 0, max: 0.999, noNaN: true }), (wanted, known, knownShare) => {
        const most = judge("at-most", wanted, { amount: known, knownShare });
        expect(most.verdict).not.toBe("met");
        expect(most.bySureness).not.toBe("exactly");
        expect(judge("at-least", wanted, { amount: known, knownShare }).verdict).not.toBe("short");
      }),
    );
  });

  test("days scale the reference, not the intake", () => {
    fc.assert(
      fc.property(kind, perDay, dayCount, amount, (of, wanted, days, known) => {
        const perWeek = judge(of, wanted, { amount: known, knownShare: 1 }, days);
        expect(perWeek.wanted).toBeCloseTo(wanted * days, 9);
        expect(perWeek.amount).toBe(known);
      }),
    );
  });
});

describe("cases", () => {
  test.each([
    ["at-least", 12, 1, "met", 4, "exactly"],
    ["at-least", 5, 1, "short", 3, "exactly"],
    ["at-least", 8, 1, "met", 0, "exactly"],
    ["at-least", 12, 0.6, "met", 4, "at-least"],
    ["at-least", 5, 0.6, "open", 3, "at-most"],
    ["at-most", 12, 1, "above", 4, "exactly"],
    ["at-most", 5, 1, "met", 3, "exactly"],
    ["at-most", 8, 1, "met", 0, "exactly"],
    ["at-most", 12, 0.6, "above", 4, "at-least"],
    ["at-most", 5, 0.6, "open", 3, "at-most"],
  ] as const)("%s 8 with %d known for a share of %d: %s by %d, %s", (of, known, knownShare, verdict, by, sureness) => {
    expect(judge(of, 8, { amount: known, knownShare })).toMatchObject({
      verdict,
      by,
      bySureness: sureness,
      knownShare,
    });
  });

  test.each(["at-least", "at-most"] as const)("%s: of an intake nobody knows the amount is absent, not zero", (of) => {
    for (const unknown of [undefined, { amount: undefined, knownShare: 0 }, { amount: 0, knownShare: 0 }]) {
      const result = judge(of, 8, unknown);
      expect(result).toMatchObject({ verdict: "open", knownShare: 0, by: 8, bySureness: "at-most" });
      expect(result).not.toHaveProperty("amount");
    }
  });

  test("sums that differ by rounding alone are equal", () => {
    expect(judge("at-least", 0.1, { amount: 0.1 + 0.2, knownShare: 1 }, 3).verdict).toBe("met");
    expect(judge("at-most", 0.1, { amount: 0.1 + 0.2, knownShare: 1 }, 3)).toMatchObject({ verdict: "met", by: 0 });
    expect(judge("at-most", 0.3, { amount: 0.1, knownShare: 0.1 + 0.2 + 0.7 }).verdict).toBe("met");
  });

  test("assessments come in the order of the references", () => {
    const references = [reference("at-most", 45), reference("at-least", 8)];
    expect(assess({}, references, 7).map((each) => each.reference)).toEqual(references);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("%d days are a defect", (days) => {
    expect(() => assess({}, [], days)).toThrow(RangeError);
  });
});
