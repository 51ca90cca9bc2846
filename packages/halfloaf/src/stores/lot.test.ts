import { describe, expect, test } from "vitest";
import { parseWith } from "../quantity/index.ts";
import { Lot } from "./lot.ts";

const lot = { id: "milk-1", food: "milk", place: "fridge", boughtOn: "2026-03-02", massG: 600, costMinor: 63 };

function readIssues(over: object): string[] {
  const parsed = parseWith(Lot, { ...lot, ...over });
  return parsed.ok ? [] : parsed.issues.map(({ path }) => path.join("/"));
}

describe("reading a lot", () => {
  test("a sound lot is read as it stands", () => {
    const opened = { ...lot, openedOn: "2026-03-03", placedOn: "2026-03-02", useBy: "2026-03-01", pack: "milk-1l" };
    expect(parseWith(Lot, opened)).toEqual({ ok: true, value: opened });
    expect(readIssues({ loose: true, costMinor: 0 })).toEqual([]);
    expect(readIssues({ costUnknown: true, costMinor: 0 })).toEqual([]);
  });

  test.each([
    [{ massG: 0 }, "massG"],
    [{ costMinor: -1 }, "costMinor"],
    [{ costMinor: 1.5 }, "costMinor"],
    [{ place: "garage" }, "place"],
    [{ boughtOn: "2026-02-30" }, "boughtOn"],
    [{ openedOn: "2026-03-01" }, "boughtOn"],
    [{ thawedOn: "2026-03-01" }, "boughtOn"],
    [{ loose: true, openedOn: "2026-03-03" }, "openedOn"],
    [{ costUnknown: true }, "costMinor"],
    [{ colour: "white" }, "colour"],
  ])("%j is refused", (over, path) => {
    expect(readIssues(over)).toEqual([path]);
  });
});
