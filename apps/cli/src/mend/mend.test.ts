import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WeekPlan } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ChoicesReport } from "../choices/ChoicesReport.ts";
import { layChoices } from "../choices/layChoices.ts";
import { widenLimits, writeKitchen } from "../input/draftKitchen.testing.ts";
import { toMemory } from "../output/memory.testing.ts";
import { PLAIN } from "../output/paint.ts";
import { textWidth } from "../output/textWidth.ts";
import { runCommands } from "../runCommands.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { MendReport } from "./MendReport.ts";

let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-mend-"));
  writeKitchen(join(folder, "easy.json"), "port-ansel", widenLimits);
  await run("week easy.json --effort quick --searches 1 --proof 0 --out week.json");
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(words: string, width = 80) {
  const memory = toMemory(folder, width);
  const code = await runCommands(words.split(" "), "0.0.1", memory);
  return { code, lines: memory.printed, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
}

const read = (name: string): WeekPlan => v.parse(WeekPlan, JSON.parse(readFileSync(join(folder, name), "utf8")));
const dishOn = (week: WeekPlan, at: string): string | undefined =>
  week.sittings.find(({ date, kind }) => `${date}:${kind}` === at)?.dish;

test("a week that nothing happened to is kept, and the page says so", async () => {
  const { code, printed } = await run("mend week.json --kitchen easy.json --today 2026-12-03 --out same.json");
  expect([code, printed]).toEqual([0, expect.stringContaining("Nothing: the plan stands as it was.")]);
  const [old, same] = [read("week.json"), read("same.json")].map(({ search: _, ...rest }) => rest);
  expect(same).toEqual(old);
});

test("changes are made, told with their reasons, kept as a file, and can be built upon", async () => {
  const week = read("week.json");
  const at = "2026-12-05:evening";
  const refused = dishOn(week, at) as string;
  const words = `mend week.json --kitchen easy.json --today 2026-12-02 --refuse ${refused} --guest ${at}=2 --skip 2026-12-06:evening:maris`;
  const { code, lines, printed, talked } = await run(words, 60);
  expect([code, talked]).toEqual([0, expect.stringContaining("Kept as week-mended.json.")]);
  for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(60);
  for (const text of [
    "WHAT CHANGES",
    "WHAT IT COSTS",
    "PRICE OF KEEPING",
    "THE DAYS THAT CHANGE",
    "It was refused.",
    "Ask guests",
  ])
    expect(printed).toContain(text);
  const mended = read("week-mended.json");
  expect(mended.sittings.filter(({ date }) => date >= "2026-12-03").map(({ dish }) => dish)).not.toContain(refused);
  const seats = (date: string) => mended.sittings.find((one) => one.date === date && one.kind === "evening")?.eaters;
  expect([seats("2026-12-05"), seats("2026-12-06")]).toEqual([["joren", "maris", "guest-1", "guest-2"], ["joren"]]);
  const again = await run("mend week-mended.json --kitchen easy.json --today 2026-12-03 --json");
  const report = v.parse(MendReport, JSON.parse(again.printed));
  expect([again.code, report.kept, report.sittings, report.buying]).toEqual([0, true, [], []]);
  const mendedOnly = ({ search: _, ...rest }: WeekPlan) => rest;
  expect(mendedOnly(report.week)).toEqual(mendedOnly(mended));
});

test("what can't be done is told at once, with code 2 or 3, and nothing is written", async () => {
  const before = readdirSync(folder);
  const names = await run(
    "mend week.json --kitchen easy.json --refuse no-dish --gone no-pack --off no-lot --out x.json",
  );
  expect([names.code, names.talked]).toEqual([2, expect.stringContaining("week.json: 3 faults")]);
  const late = await run(
    "mend week.json --kitchen easy.json --today 2026-12-03 --guest 2026-12-01:midday:maris=1 --out x.json",
  );
  expect([late.code, late.talked.replace(/\s+/g, " ")]).toEqual([2, expect.stringContaining("is cooked already")]);
  const day = await run("mend week.json --kitchen easy.json --today 2027-01-01 --out x.json");
  expect([day.code, day.talked]).toEqual([2, expect.stringContaining("--today")]);
  for (const words of [
    "mend",
    "mend week.json --price oats",
    "mend week.json --skip noon",
    "mend week.json --guest 2026-12-01:evening=0",
  ])
    expect((await run(words)).code).toBe(2);
  const kitchenFile = await run("mend easy.json --json");
  expect(v.parse(FaultReport, JSON.parse(kitchenFile.printed)).faults.map(({ code }) => code)).toEqual(["not-a-week"]);
  writeKitchen(join(folder, "poor.json"), "port-ansel", (kitchen) => {
    widenLimits(kitchen);
    kitchen.limits.budgetMinor = 100;
  });
  const poor = await run("mend week.json --kitchen poor.json --json");
  const report = v.parse(FaultReport, JSON.parse(poor.printed));
  expect([poor.code, report.outcome]).toEqual([3, "no-plan"]);
  const codes = report.faults.map(({ code }) => code);
  for (const code of ["collision", "enough-alone", "budget"]) expect(codes).toContain(code);
  rmSync(join(folder, "poor.json"));
  expect(readdirSync(folder)).toEqual(before);
});

test("a damaged week is refused", async () => {
  writeFileSync(join(folder, "broken.json"), '{"format": "halfloaf-week", "version": 1}');
  const { code, talked } = await run("mend broken.json --kitchen easy.json");
  expect([code, talked]).toEqual([2, expect.stringContaining("Nothing was done.")]);
});

test("choices go from the cheapest on and say what the next step costs", async () => {
  const { code, printed } = await run("choices easy.json --days 2 --against minutes --effort quick --json");
  expect(code).toBe(0);
  const report = v.parse(ChoicesReport, JSON.parse(printed));
  expect(report.done).toBe(report.steps);
  const { choices } = report;
  expect(choices.length).toBeGreaterThan(1);
  for (const [at, choice] of choices.slice(1).entries()) {
    expect(choice.moneyMinor).toBeGreaterThanOrEqual(choices[at]?.moneyMinor as number);
    expect(choice.minutes).toBeLessThan(choices[at]?.minutes as number);
  }
  const lines = layChoices({ width: 60, paint: PLAIN }, report);
  for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(60);
  expect(lines.join(" ").replace(/\s+/g, " ")).toMatch(/\d+ min less for \d+\.\d\d/);
});
