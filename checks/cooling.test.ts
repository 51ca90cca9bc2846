import { judgeCooling, parseKeepingRules, pickRule } from "halfloaf/safety";
import { describe, expect, test } from "vitest";
import { readDataFile } from "./readDataFile.ts";

const parsed = parseKeepingRules(readDataFile("safety/rules.json"));
if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
const rules = parsed.value;

/** **Source**: FDA Food Code 3-501.14 (A): 57 to 21 C within 2 hours, and 57 to 5 C within 6 hours in all. */
describe("hot food", () => {
  test.each([
    [120, 360, "within"],
    [120.1, 360, "too-slow"],
    [120, 360.1, "too-slow"],
    [119, 359, "within"],
    // The second step may take longer than 4 hours where the first was quick: the bound is on the whole.
    [30, 360, "within"],
    [150, 300, "too-slow"],
  ] as const)("21 C after %d min, 5 C after %d min: %s", (toMiddleMinutes, toEndMinutes, kind) => {
    expect(judgeCooling({ toMiddleMinutes, toEndMinutes }, rules).kind).toBe(kind);
  });

  test("the points of the curve are 57, 21 and 5 C", () => {
    const points = ["cooling-start-c", "cooling-middle-c", "cooling-end-c"] as const;
    expect(points.map((name) => pickRule(rules, name, "us").value)).toEqual([57, 21, 5]);
  });
});

/** **Source**: FDA Food Code 3-501.14 (B): from room temperature to 5 C within 4 hours. */
describe("food made at room temperature", () => {
  test.each([
    [240, "within"],
    [240.1, "too-slow"],
  ] as const)("5 C after %d min: %s", (toEndMinutes, kind) => {
    expect(judgeCooling({ toEndMinutes }, rules, "room").kind).toBe(kind);
  });
});
