import { describe, expect, test } from "vitest";
import { parseWith } from "../quantity/index.ts";
import { Shop } from "./shop.ts";

const corner = {
  id: "corner",
  name: "Corner shop",
  openDays: [1, 3, 7],
  trip: { costMinor: 0, minutes: 20, carryKg: 8 },
  beforeSitting: "evening",
};

function readIssues(over: object): string[] {
  const parsed = parseWith(Shop, { ...corner, ...over });
  return parsed.ok ? [] : parsed.issues.map(({ path }) => path.join("/"));
}

describe("reading a shop", () => {
  test("a sound shop is read as it stands", () => {
    expect(parseWith(Shop, corner)).toEqual({ ok: true, value: corner });
    expect(readIssues({ trip: { costMinor: 340, minutes: 0 } })).toEqual([]);
  });

  test.each([
    [{ openDays: [] }, "openDays"],
    [{ openDays: [0] }, "openDays/0"],
    [{ openDays: [2, 8] }, "openDays/1"],
    [{ openDays: [2, 2] }, "openDays"],
    [{ trip: { costMinor: -1, minutes: 1 } }, "trip/costMinor"],
    [{ trip: { costMinor: 1.5, minutes: 1 } }, "trip/costMinor"],
    [{ trip: { costMinor: 1, minutes: 1, carryKg: 0 } }, "trip/carryKg"],
    [{ beforeSitting: "Late Night" }, "beforeSitting"],
    [{ opens: "08:00" }, "opens"],
  ])("%j is refused", (over, path) => {
    expect(readIssues(over)).toEqual([path]);
  });
});
