import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { findPlace, nameWeekFile, saveWeek } from "./saveWeek.ts";
import { TWO_DAYS } from "./week.testing.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-save-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a week's file is named by kitchen and day in signs that every disk takes", () => {
  expect(nameWeekFile("port-ansel", "2026-11-30")).toBe("halfloaf-week-port-ansel-2026-11-30.json");
  expect(nameWeekFile("Küche / Café 2", "2026-11-30")).toBe("halfloaf-week-ku-che-cafe-2-2026-11-30.json");
  expect(nameWeekFile("麺", "2026-11-30")).toBe("halfloaf-week-kitchen-2026-11-30.json");
});

test("a plan is written whole, over an older week too, and nothing is left beside it", () => {
  for (let round = 0; round < 2; round++) {
    const place = findPlace("week.json", folder);
    expect(place.ok && saveWeek(TWO_DAYS, place.value, "week.json").ok).toBe(true);
  }
  expect(JSON.parse(readFileSync(join(folder, "week.json"), "utf8"))).toEqual(TWO_DAYS);
  expect(readdirSync(folder)).toEqual(["week.json"]);
});

test("a link to a week stays a link", () => {
  writeFileSync(join(folder, "real.json"), '{"format": "halfloaf-week"}');
  symlinkSync(join(folder, "real.json"), join(folder, "link.json"));
  const place = findPlace("link.json", folder);
  expect(place.ok && saveWeek(TWO_DAYS, place.value, "link.json").ok).toBe(true);
  expect(JSON.parse(readFileSync(join(folder, "real.json"), "utf8"))).toEqual(TWO_DAYS);
});

test("what is no week of ours is refused, also a folder", () => {
  mkdirSync(join(folder, "drawer"));
  writeFileSync(join(folder, "kitchen.json"), '{"format": "halfloaf-kitchen"}');
  writeFileSync(join(folder, "empty.json"), "");
  for (const name of ["drawer", "kitchen.json", "empty.json"]) {
    const place = findPlace(name, folder);
    expect(place.ok ? name : place.faults[0]?.code).toBe("out-taken");
  }
});

test("a file that can't be written is told and leaves nothing behind", () => {
  const place = join(folder, "gone", "week.json");
  const saved = saveWeek(TWO_DAYS, place, "week.json");
  expect(saved.ok ? "" : saved.faults[0]?.sentence).toBe('"week.json" can\'t be written (ENOENT).');
  expect(readdirSync(folder)).toEqual([]);
});
