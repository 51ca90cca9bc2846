import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WeekPlan } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterAll, beforeAll, expect, test } from "vitest";
import { widenLimits, writeKitchen } from "../input/draftKitchen.testing.ts";
import { toMemory } from "../output/memory.testing.ts";
import { textWidth } from "../output/textWidth.ts";
import { runCommands } from "../runCommands.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { WhyReport } from "./WhyReport.ts";

let folder = "";
let week: WeekPlan;

async function run(words: string, memory = toMemory(folder)) {
  const code = await runCommands(words.split(" "), "0.0.1", memory);
  return { code, printed: memory.printed.join("\n"), talked: memory.talked.join("\n"), lines: memory.printed };
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-why-"));
  writeKitchen(join(folder, "easy.json"), "port-ansel", widenLimits);
  await run("week easy.json --days 2 --effort quick --proof 0 --out w.json");
  week = v.parse(WeekPlan, JSON.parse(readFileSync(join(folder, "w.json"), "utf8")));
});
afterAll(() => rmSync(folder, { recursive: true }));

test("the reasons of a week are told in sentences with money, within the width, and the same every time", async () => {
  const first = await run("why w.json --kitchen easy.json", toMemory(folder, 60));
  expect(first.code).toBe(0);
  for (const line of first.lines) expect(textWidth(line), line).toBeLessThanOrEqual(60);
  expect(first.printed).toMatch(/The plan weighs \d+\.\d\d EUR/);
  expect(first.printed).toContain("WHAT THE LIMITS COST");
  expect(first.printed).toContain("WHY THIS DISH");
  expect(first.printed.replace(/\s+/g, " ")).toMatch(
    /The best plan found with another dish at this sitting is (\d+\.\d\d EUR (dearer|cheaper)|just as dear)\./,
  );
  expect((await run("why w.json --kitchen easy.json", toMemory(folder, 60))).printed).toBe(first.printed);
});

test("what is ready is printed at once, and what is looked for is told meanwhile", async () => {
  const memory = toMemory(folder, 60);
  const shown: { about: string; printed: number }[] = [];
  const showProgress = (about: string): void => void shown.push({ about, printed: memory.printed.length });
  await runCommands("why w.json --kitchen easy.json".split(" "), "0.0.1", { ...memory, showProgress });
  const looked = shown.filter(({ about }) => about !== "");
  expect(looked[0]?.about).toMatch(/^Reason 1 of \d+: why /);
  expect(looked.at(-1)?.about).toContain("what the limits cost");
  expect(looked[0]?.printed).toBeGreaterThan(0);
  for (const [at, { printed }] of looked.slice(1).entries()) expect(printed).toBeGreaterThan(looked[at]?.printed ?? 0);
  expect(shown.at(-1)?.about).toBe("");
});

test("a sitting, a dish that is not there, a pack and the limits are given as data of the published shape", async () => {
  const [sitting] = week.sittings;
  const [line] = week.trips.flatMap(({ lines }) => lines);
  if (!sitting || !line) throw new Error("the week is empty");
  const at = `${sitting.date}:${sitting.kind}`;
  const asked = await run(`why w.json --kitchen easy.json --sitting ${at} --pack ${line.pack} --limits --json`);
  const report = v.parse(WhyReport, JSON.parse(asked.printed));
  expect(report.moneyMinor).toBe(Math.round(week.search.moneyMinor));
  expect(report.dishes?.map(({ dish }) => dish)).toEqual(
    week.sittings.filter(({ date, kind }) => `${date}:${kind}` === at).map(({ dish }) => dish),
  );
  expect(report.packs?.[0]?.food).toBe(line.food);
  expect(report.packs?.[0]?.chosen.extraMinor).toBe(0);
  expect(report.limits?.every(({ savesMinor }) => savesMinor >= 0)).toBe(true);
  const evening = week.sittings.find(({ kind }) => kind === "evening");
  const other = "red-lentil-cumin-soup-pitta";
  const not = await run(`why w.json --kitchen easy.json --sitting ${evening?.date}:evening --dish ${other} --json`);
  const answers = v.parse(WhyReport, JSON.parse(not.printed));
  const told = [...(answers.otherDishes ?? []), ...(answers.dishes ?? [])];
  expect(told.map(({ dish }) => dish)).toContain(other);
  for (const one of answers.otherDishes ?? []) expect(one.outcome === "dearer").toBe(one.extraMinor !== undefined);
});

test("where days are over the limits are told of what is left alone, in the same data", async () => {
  const last = week.sittings.at(-1)?.date as string;
  const asked = await run(`why w.json --kitchen easy.json --today ${last} --json`);
  expect(asked.code).toBe(0);
  const report = v.parse(WhyReport, JSON.parse(asked.printed));
  expect(Object.keys(report)).not.toContain("dishes");
  expect(report.moneyMinor).toBe(Math.round(week.search.moneyMinor));
  const days = (report.limits ?? []).flatMap(({ date, sitting }) => date ?? sitting?.date ?? []);
  expect(days.filter((date) => date < last)).toEqual([]);
  const tight = structuredClone(JSON.parse(readFileSync(join(folder, "easy.json"), "utf8")));
  // Minutes of a day that is over bind no more, however few they are.
  const first = new Date(`${week.from}T12:00:00Z`).getUTCDay();
  const spent = Array<number>(7)
    .fill(600)
    .with((first + 6) % 7, 0);
  writeFileSync(
    join(folder, "tight.json"),
    JSON.stringify({ ...tight, limits: { ...tight.limits, handsOnMinutes: spent } }),
  );
  expect((await run("why w.json --kitchen tight.json --limits --json")).code).toBe(2);
  expect((await run(`why w.json --kitchen tight.json --today ${last} --json`)).code).toBe(0);
  for (const [words, code] of [
    [`w.json --kitchen easy.json --today ${last} --pack onion`, "today-limits-alone"],
    ["w.json --kitchen easy.json --today 2031-01-01", "day-outside"],
    [`easy.json --today ${last}`, "today-no-week"],
  ] as const) {
    const { code: exit, printed } = await run(`why ${words} --json`);
    expect([exit, v.parse(FaultReport, JSON.parse(printed)).faults.map((fault) => fault.code)], words).toEqual([
      2,
      [code],
    ]);
  }
});

test("a dish that would have to be begun before the first day is not there, and that is why", async () => {
  const asked = `why w.json --kitchen easy.json --sitting ${week.from}:morning --dish soaked-oats-banana-peanut`;
  const { code, printed } = await run(asked);
  expect(code).toBe(0);
  expect(printed.replace(/\s+/g, " ")).toContain("they must be begun on Sun 29 Nov, before these days begin.");
});

test("what the plan does not have, and a week that no longer fits its kitchen, is refused", async () => {
  const codesOf = async (words: string): Promise<(string | number)[]> => {
    const { code, printed } = await run(`${words} --json`);
    const report = v.parse(FaultReport, JSON.parse(printed));
    return [code, ...new Set(report.faults.map((fault) => fault.code))];
  };
  expect(await codesOf("why w.json --kitchen easy.json --sitting 2031-01-01:evening")).toEqual([2, "sitting-unknown"]);
  expect(await codesOf("why w.json --kitchen easy.json --dish no-such-dish")).toEqual([2, "dish-unknown"]);
  expect(await codesOf("why w.json --kitchen easy.json --pack no-such-pack")).toEqual([2, "pack-unknown"]);
  const strange = { ...week, kitchen: "Nowhere" };
  writeFileSync(join(folder, "strange.json"), JSON.stringify(strange));
  expect(await codesOf("why strange.json")).toEqual([2, "week-kitchen"]);
  const sittings = week.sittings.slice(1);
  writeFileSync(join(folder, "short.json"), JSON.stringify({ ...week, sittings }));
  expect(await codesOf("why short.json --kitchen easy.json")).toContain("sitting-missing");
  expect((await run("why w.json --sitting 2026-12-01:supper")).talked).toContain("is no sitting");
});

test("a week that is not possible is told by what collides and what would be enough", async () => {
  writeKitchen(join(folder, "hasty.json"), "port-ansel", (kitchen) => {
    widenLimits(kitchen);
    kitchen.limits.handsOnMinutes = 3;
  });
  const { code, printed } = await run("week hasty.json --days 2 --effort quick --proof 0 --json");
  const { faults } = v.parse(FaultReport, JSON.parse(printed));
  expect(code).toBe(3);
  const told = faults.filter((fault) => ["collision", "enough-alone"].includes(fault.code));
  expect(told.map((fault) => fault.code)).toEqual(["collision", "enough-alone"]);
  expect(told[0]?.value).toBe("hands-on");
  expect(told[1]?.sentence).toMatch(/^Enough by itself: \d+ min more hands-on on Monday 30 November/);
});
