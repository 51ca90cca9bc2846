import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeCooling } from "./judgeCooling.ts";
import { readSafetyTables } from "./safetyTables.testing.ts";

const { keepingRules: rules } = readSafetyTables();
const minutes = fc.double({ min: 0, max: 600, noNaN: true });

describe("laws", () => {
  test("quicker cooling is never judged worse", () => {
    fc.assert(
      fc.property(minutes, minutes, fc.double({ min: 0, max: 1, noNaN: true }), (first, more, factor) => {
        const slow = judgeCooling({ toMiddleMinutes: first, toEndMinutes: first + more }, rules);
        const quick = judgeCooling({ toMiddleMinutes: first * factor, toEndMinutes: (first + more) * factor }, rules);
        if (slow.kind === "within") expect(quick.kind).toBe("within");
      }),
    );
  });

  test("a point not measured never makes cooling pass", () => {
    fc.assert(
      fc.property(minutes, (time) => {
        expect(judgeCooling({ toMiddleMinutes: time }, rules).kind).not.toBe("within");
        expect(judgeCooling({ toEndMinutes: time }, rules).kind).not.toBe("within");
        expect(judgeCooling({}, rules, "room").kind).toBe("unknown");
      }),
    );
  });
});

describe("cases", () => {
  test.each([
    [120, 360, "within"],
    [120.1, 360, "too-slow"],
    [120, 360.1, "too-slow"],
  ])("a bound itself is kept: %d and %d min are %s", (toMiddleMinutes, toEndMinutes, kind) => {
    expect(judgeCooling({ toMiddleMinutes, toEndMinutes }, rules).kind).toBe(kind);
  });

  test("each bound that was passed is named", () => {
    const verdict = judgeCooling({ toMiddleMinutes: 130, toEndMinutes: 400 }, rules);
    expect(verdict.kind === "too-slow" ? verdict.passed.map(({ rule, minutes: of }) => [rule.rule, of]) : []).toEqual([
      ["cooling-first-minutes", 130],
      ["cooling-total-minutes", 400],
    ]);
  });

  test("too slow at one bound is too slow though the other is unknown", () => {
    expect(judgeCooling({ toMiddleMinutes: 121 }, rules).kind).toBe("too-slow");
    expect(judgeCooling({ toMiddleMinutes: 119 }, rules)).toMatchObject({
      kind: "unknown",
      notMeasured: [{ rule: "cooling-total-minutes" }],
    });
  });

  test.each([
    [{ toMiddleMinutes: -1, toEndMinutes: Number.NaN }, ["toMiddleMinutes", "toEndMinutes"]],
    [{ toMiddleMinutes: 100, toEndMinutes: 90 }, ["toEndMinutes"]],
  ])("%j cannot be of one curve", (points, paths) => {
    const verdict = judgeCooling(points, rules);
    expect(verdict.kind === "faulty" ? verdict.issues.map(({ path }) => path.join()) : []).toEqual(paths);
  });
});
