import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WeekPlan } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterEach, beforeEach, expect, test } from "vitest";
import { CardData } from "../card/CardData.ts";
import { type Draft, widenLimits, writeKitchen } from "../input/draftKitchen.testing.ts";
import { loadTables } from "../input/loadTables.ts";
import { toMemory } from "../output/memory.testing.ts";
import { textWidth } from "../output/textWidth.ts";
import { runCommands } from "../runCommands.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { HELP } from "../words/helpTexts.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-commands-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(words: string, memory = toMemory(folder)) {
  const code = await runCommands(words.split(" "), "0.0.1", memory);
  return { code, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
}

function write(name: string, change: (kitchen: Draft) => void): void {
  writeKitchen(join(folder, name), "port-ansel", change);
}

test("week prints every part, keeps the plan as a file, and gives the same plan again", async () => {
  write("easy.json", widenLimits);
  const memory = toMemory(folder, 60);
  const first = await run("week easy.json --effort quick --searches 1 --proof 1", memory);
  expect(first.code).toBe(0);
  for (const line of memory.printed) expect(textWidth(line), line).toBeLessThanOrEqual(60);
  expect(memory.progress.findLast((line) => line.startsWith("Searching"))).toMatch(
    /^Searching 100 %: best so far \d+\.\d\d EUR/,
  );
  const proven = /no plan within these limits can be cheaper by more than (\d+\.\d\d) EUR \(\d+\.\d %\)/g;
  expect(first.talked).toMatch(/Proven: no plan [\s\S]*Among the \d+ dishes of this plan alone: no plan/);
  const [all, own] = [...first.talked.matchAll(proven)].map(([, gap]) => Number(gap));
  expect(own).toBeLessThan(all ?? 0);
  expect(memory.progress.at(-1)).toBe("");
  for (const heading of [
    "MENU",
    "TO BUY",
    "ACCOUNTS",
    "INTAKE A DAY",
    "USED FROM THE STORES",
    "THROWN AWAY",
    "CAUTIONS",
  ]) {
    expect(first.printed).toContain(`\n${heading}`);
  }
  const file = join(folder, "halfloaf-week-easy-2026-11-30.json");
  const kept = JSON.parse(readFileSync(file, "utf8"));
  expect(v.safeParse(WeekPlan, kept).issues).toBe(undefined);
  const again = await run("week easy.json --effort quick --searches 1 --proof 0 --json");
  expect(JSON.parse(again.printed)).toEqual(kept);
  expect(readdirSync(folder)).toEqual(["easy.json", "halfloaf-week-easy-2026-11-30.json"]);
});

test("week takes days, first day, seed and file, and writes over an older week", async () => {
  write("easy.json", widenLimits);
  writeFileSync(join(folder, "mine.json"), '{"format": "halfloaf-week", "version": 1}');
  const { code, talked } = await run(
    "week easy.json --from 2026-12-01 --days 2 --seed 7 --effort quick --searches 1 --proof 0 --out mine.json",
  );
  expect([code, talked]).toEqual([0, expect.stringContaining("Kept as mine.json.")]);
  const kept = v.parse(WeekPlan, JSON.parse(readFileSync(join(folder, "mine.json"), "utf8")));
  expect(kept).toMatchObject({ from: "2026-12-01", days: 2, search: { seed: 7 } });
});

test("a file that is not a week of ours is left as it is", async () => {
  for (const [name, text] of [
    ["letter.txt", "Dear Ada"],
    ["other.json", '{"format": "something"}'],
  ] as const) {
    writeFileSync(join(folder, name), text);
    const { code, talked } = await run(`week --effort quick --out ${name}`);
    expect([code, talked.replace(/\s+/g, " ")]).toEqual([
      2,
      expect.stringContaining("is not a week of Halfloaf; it is left as it is"),
    ]);
    expect(readFileSync(join(folder, name), "utf8")).toBe(text);
  }
  expect((await run("week --out nowhere/week.json")).talked).toContain(
    'The folder of "nowhere/week.json" is not there.',
  );
  expect((await run("week --out .")).code).toBe(2);
});

test("who asks to stop gets the best plan so far", async () => {
  write("easy.json", widenLimits);
  const asked = "week easy.json --effort long --proof 0 --json --searches";
  const { code, talked } = await run(`${asked} 1`, toMemory(folder, 80, 12));
  expect([code, talked]).toEqual([0, expect.stringContaining("Stopped after 24")]);
  const memory = toMemory(folder);
  let stop = (): void => undefined;
  const several = await run(`${asked} 2`, {
    ...memory,
    onStop: (listener) => {
      stop = listener;
      return () => undefined;
    },
    showProgress: (line) => void (line.includes("best so far") && stop()),
  });
  expect([several.code, several.talked]).toEqual([
    0,
    expect.stringMatching(/Stopped after \d+ moves from seed \d+, the best of 2 searches/),
  ]);
});

test("of several searches the best is kept, with the seed from which one alone finds it again", async () => {
  write("easy.json", widenLimits);
  const asked = "week easy.json --days 2 --effort quick --proof 0 --json";
  const [first, several] = [await run(`${asked} --searches 1`), await run(`${asked} --searches 2`)];
  const weeks = [first, several].map(({ printed }) => v.parse(WeekPlan, JSON.parse(printed)));
  const [alone, best] = weeks.map(({ search }) => search);
  expect(best?.moneyMinor).toBeLessThanOrEqual(alone?.moneyMinor as number);
  const again = await run(`${asked} --searches 1 --seed ${best?.seed}`);
  expect(JSON.parse(again.printed)).toEqual(weeks[1]);
});

test("limits that can't be kept end with code 3, in words and as data, and no file", async () => {
  write("poor.json", (kitchen) => {
    kitchen.limits.budgetMinor = 500;
  });
  const words = await run("week poor.json --effort quick --days 3 --proof 0");
  expect(words.code).toBe(3);
  const told = words.printed.replace(/\s+/g, " ");
  const [collision, enough, broken] = [
    /keeps the budget|These collide: .*the budget/,
    /Enough by itself: \d+\.\d\d EUR more budget/,
    /breaks: - Money: \d+\.\d\d EUR would be paid, the budget is 2\.14 EUR/,
  ].map((words) => told.search(words));
  expect([collision, enough, broken].every((at) => at !== undefined && at >= 0)).toBe(true);
  expect([collision, enough, broken]).toEqual([collision, enough, broken].toSorted((a = 0, b = 0) => a - b));
  const data = v.parse(
    FaultReport,
    JSON.parse((await run("week poor.json --effort quick --days 3 --proof 0 --json")).printed),
  );
  expect(data.outcome).toBe("no-plan");
  expect(data.faults.map(({ code }) => code)).toContain("budget");
  expect(readdirSync(folder)).toEqual(["poor.json"]);
});

test("a sitting without any dish is named with the commonest reasons", async () => {
  write("bare.json", (kitchen) => {
    Object.assign(kitchen.kit, { pans: 0, pots: 0, boards: 0, microwave: false, kettle: false });
    kitchen.sittings = [{ kind: "evening", on: [1], eaters: ["joren"], minutes: 30 }];
  });
  const { code, printed } = await run("week bare.json --effort quick");
  expect(code).toBe(3);
  expect(printed).toContain("Monday 30 November, evening (Joren Pell): there is no dish for it.");
  expect(printed.replace(/\s+/g, " ")).toMatch(/\d+ dishes: the kit has no \w+/);
});

test("days without a sitting are told before any search", async () => {
  write("fasting.json", (kitchen) => {
    kitchen.sittings = [{ kind: "evening", on: [7], eaters: ["joren"], minutes: 30 }];
  });
  const { code, talked } = await run("week fasting.json --days 2");
  expect([code, talked]).toEqual([2, expect.stringContaining("has no sitting in the days from 2026-11-30 on")]);
});

test("card prints the costing card and gives it as data", async () => {
  const { code, printed } = await run("card red-lentil-cumin-soup-pitta --portions 3");
  expect(code).toBe(0);
  for (const heading of ["COST", "WORK", "IN ONE PORTION", "ALLERGENS", "DIET", "KEEPING", "CAUTIONS"]) {
    expect(printed).toContain(`\n${heading}\n`);
  }
  expect(printed).toContain("CEREALS CONTAINING GLUTEN");
  const data = v.parse(
    CardData,
    JSON.parse((await run("card red-lentil-cumin-soup-pitta --portions 3 --json")).printed),
  );
  expect(data.platesMinor).toHaveLength(3);
});

test("an unknown dish is answered with the three nearest", async () => {
  const { code, talked } = await run("card red-lentl-soup");
  expect([code, talked.match(/Nearest to it: (.*\n? *.*)\./)?.[1]?.split(/,\s+/)]).toEqual([
    2,
    expect.arrayContaining(["red-lentil-cumin-soup-pitta"]),
  ]);
});

test("check says that a kitchen is sound, or everything that is wrong", async () => {
  const sound = await run("check port-ansel");
  expect([sound.code, sound.printed]).toEqual([0, expect.stringContaining("no fault found. It holds 2 eaters")]);
  expect(v.parse(FaultReport, JSON.parse((await run("check port-ansel --json")).printed)).faults).toEqual([]);
  write("bad.json", (kitchen) => {
    kitchen.packs[0].priceMinor = -1;
    kitchen.packs[1].food = "oats-roled";
  });
  const bad = await run("check bad.json");
  expect([bad.code, bad.printed]).toEqual([2, expect.stringContaining("bad.json: 2 faults")]);
  const data = v.parse(FaultReport, JSON.parse((await run("check bad.json --json")).printed));
  expect(data.faults.map(({ code, line }) => [code, line])).toEqual([
    ["min_value", expect.any(Number)],
    ["food-unknown", expect.any(Number)],
  ]);
});

test.each([
  ["week --days 0", '"0" is no whole number from 1 to 28'],
  ["week --days 2.5", '"2.5" is no whole number'],
  ["week --from 2026-02-30", '"2026-02-30" is no day of the calendar'],
  ["week --from 9999-12-30", "run past the end of the year 9999"],
  ["week --seed -1", "is no whole number"],
  ["week --effort huge", "Allowed choices are quick, usual, long"],
  ["week port-ansel more", "too many arguments"],
  ["card", "missing required argument"],
  ["card red-lentil-cumin-soup-pitta --portions 0", "is no whole number from 1 to 1000"],
  ["check", "missing required argument"],
  ["wek", "unknown command"],
  ["week --otu x", "unknown option"],
])("wrong usage is told and nothing done: %s", async (words, message) => {
  const { code, talked, printed } = await run(words);
  expect([code, printed, talked]).toEqual([2, "", expect.stringContaining(message)]);
  expect(readdirSync(folder)).toEqual([]);
});

test("help goes to the output and its examples name what is there", async () => {
  for (const words of ["--help", "week --help", "card --help", "check --help"]) {
    const { code, printed } = await run(words);
    expect(code).toBe(0);
    expect(printed).toContain("Examples:");
  }
  const dishes = new Set(loadTables().dishes.map(({ id }) => id));
  const named = Object.values(HELP).flatMap((text) =>
    [...text.matchAll(/halfloaf card (\S+)/g)].map((found) => found[1] as string),
  );
  expect(named.filter((id) => !dishes.has(id))).toEqual([]);
  expect((await run("--version")).printed).toBe("0.0.1");
});

test.each([40, 60, 80])("help keeps to a page of %i columns, but for its examples", async (width) => {
  const main = (await run("--help", toMemory(folder, width))).printed;
  const commands = [...(main.split("Commands:")[1] ?? "").matchAll(/^ {2}([a-z]+)/gm)].map(([, name]) => name);
  expect(commands).toContain("week");
  for (const words of ["--help", ...commands.map((name) => `${name} --help`)]) {
    const { printed } = await run(words, toMemory(folder, width));
    const [told = ""] = printed.split(/^Examples?:/m);
    for (const line of told.split("\n")) expect(textWidth(line), `${words}: ${line}`).toBeLessThanOrEqual(width);
  }
});

test("a kitchen named by a path with steering characters is told harmlessly", async () => {
  const { code, printed, talked } = await run("check ./\u001b[2Jx.json");
  expect([code, talked]).toEqual([2, ""]);
  expect(printed).toContain('There is no file "./\\u{1b}[2Jx.json"');
  expect((await run("week --\u001b[2J")).talked).not.toContain("\u001b");
});
