import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findWeek } from "halfloaf/sheet/testing";
import { afterAll, beforeAll, expect, test } from "vitest";
import { widenLimits, writeKitchen } from "../input/draftKitchen.testing.ts";
import { toMemory } from "../output/memory.testing.ts";
import { runCommands } from "../runCommands.ts";

let folder: string;
const { week } = findWeek("port-ansel", { days: 2, moves: 2000 });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-sheet-"));
  writeFileSync(join(folder, "week.json"), JSON.stringify(week));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...[first, ...rest]: [string | { readonly stopAfter: number }, ...string[]]) {
  const memory = toMemory(folder, 80, typeof first === "string" ? undefined : first.stopAfter);
  const words = typeof first === "string" ? [first, ...rest] : rest;
  const code = await runCommands(["sheet", ...words], "0.0.1", memory);
  return { code, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
}
const written = (name: string) => readFileSync(join(folder, name));

test("a day is printed to standard output, and into a file where one is named", async () => {
  const shown = await run("day", "week.json");
  expect([shown.code, shown.printed.slice(0, 15)]).toEqual([0, "<!doctype html>"]);
  const kept = await run("day", "week.json", "--out", "day.html");
  expect([kept.code, kept.printed]).toEqual([0, ""]);
  expect(written("day.html").toString().trimEnd()).toBe(shown.printed);
});

test("a component is told once: in the table of what is missed, as open, or as met", async () => {
  const { printed } = await run("week", "week.json");
  const listed = (title: string) =>
    [...printed.matchAll(new RegExp(`<p>${title}: ([^<]*)\\.</p>`, "g"))].map(([, names = ""]) => names.split(", "));
  const [open, met] = [listed("Open"), listed("Met by all")];
  expect(open.length).toBeGreaterThan(0);
  expect(met.length).toBe(open.length);
  open.forEach((names, at) => {
    expect(names.filter((name) => met[at]?.includes(name))).toEqual([]);
  });
});

test("a kitchen without a week is planned first, and the best plan so far counts where one asks to stop", async () => {
  writeKitchen(join(folder, "easy.json"), "port-ansel", widenLimits);
  const { code, printed, talked } = await run({ stopAfter: 12 }, "day", "easy.json");
  expect([code, talked]).toEqual([0, expect.stringContaining("first, as")]);
  expect(printed.slice(0, 15)).toBe("<!doctype html>");
});

test("a file that is there is left as it is, unless it is to be written over", async () => {
  writeFileSync(join(folder, "mine.html"), "mine");
  expect((await run("week", "week.json", "--out", "mine.html")).code).toBe(2);
  expect(written("mine.html").toString()).toBe("mine");
  expect((await run("week", "week.json", "--out", "mine.html", "--over")).code).toBe(0);
  expect(written("mine.html").toString()).toContain("Port Ansel");
});

test("a claim that is not true is told with its line and by how much, and nothing is written", async () => {
  const dearest = Math.max(...week.sittings.flatMap(({ plateMinor }) => plateMinor));
  const bound = (minor: number) => `plate=${(minor / 100).toFixed(2)}`;
  const { code, talked } = await run("week", "week.json", "--claim", bound(dearest), "--out", "claim.html");
  expect(code).toBe(2);
  expect(talked).toContain("not under it");
  expect(() => written("claim.html")).toThrow();
  const true_ = await run("week", "week.json", "--claim", bound(dearest + 1), "--out", "claim.html");
  expect(true_.code).toBe(0);
  expect(written("claim.html").toString()).toContain("Every plate under");
});

test("an ending that the sheet can't be written as is refused with those that it can", async () => {
  const { code, talked } = await run("ribbons", "week.json", "--out", "ribbons.pdf");
  expect(code).toBe(2);
  expect(talked).toContain(".svg or .png");
});

test("a picture is drawn as SVG and as PNG of twice its size", async () => {
  expect((await run("ribbons", "week.json", "--out", "ribbons.svg")).code).toBe(0);
  expect((await run("ribbons", "week.json", "--out", "ribbons.png")).code).toBe(0);
  const width = Number(/ width="(\d+)"/.exec(written("ribbons.svg").toString())?.[1]);
  const png = written("ribbons.png");
  expect(png.subarray(1, 4).toString()).toBe("PNG");
  expect(png.readUInt32BE(16)).toBe(2 * width);
});

test("a calendar has the times that were said, and a zone that is not known is refused", async () => {
  const { printed } = await run("calendar", "week.json", "--zone", "Europe/Berlin", "--at", "evening=18:30");
  expect(printed).toContain("BEGIN:VTIMEZONE");
  expect((await run("calendar", "week.json", "--zone", "Nowhere/Else")).code).toBe(2);
});

test("a dish is published with its cost and what a portion holds", async () => {
  const { printed } = await run("dish", week.batches[0]?.dish ?? "", "port-ansel");
  const dish = JSON.parse(printed);
  expect(dish.estimatedCost).toMatch(/^(at least )?\d+\.\d\d EUR a portion, /);
  expect(dish.nutrition["@type"]).toBe("NutritionInformation");
});

test("a day that is not planned is refused", async () => {
  expect((await run("day", "week.json", "--on", "2027-01-01")).code).toBe(2);
});
