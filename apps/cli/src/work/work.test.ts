import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as v from "valibot";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { writeKitchen } from "../input/draftKitchen.testing.ts";
import { loadTables } from "../input/loadTables.ts";
import { toMemory } from "../output/memory.testing.ts";
import { textWidth } from "../output/textWidth.ts";
import { runCommands } from "../runCommands.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { HELP } from "../words/helpTexts.ts";
import { parseClock } from "./parseClock.ts";
import { WorkData } from "./WorkData.ts";

const CHICKEN = "chicken-pepper-paprika-rice";
const LENTILS = "red-lentils-spinach-pitta";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-work-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(words: string, width = 80) {
  const memory = toMemory(folder, width);
  const code = await runCommands(["work", ...words.split(" ")], "0.0.1", memory);
  return { code, lines: memory.printed, printed: memory.printed.join("\n"), talked: memory.talked.join("\n") };
}

describe("the page", () => {
  test("measures out what is cooked, the water of the steps too, not what the dish is written for", async () => {
    const { printed } = await run("creamy-macaroni-broccoli-cheddar --portions 6");
    expect(printed).toMatch(/\nMAKINGS\n\n {2}- 510 g pasta \(white\), short shapes\n/);
    expect(printed).toMatch(/\n {2}- 900 ml semi-skimmed milk\n/);
    expect(printed).toContain("1.05 L of water");
    // As data too.
    const told = v.parse(
      WorkData,
      JSON.parse((await run("creamy-macaroni-broccoli-cheddar --portions 6 --json")).printed),
    );
    const makings = told.dishes[0]?.makings ?? [];
    expect(makings.map(({ text }) => text)).toContain("900 ml semi-skimmed milk");
    for (const { text } of makings) expect(printed.replace(/\s+/g, " ")).toContain(`- ${text}`);
    const { foods } = loadTables();
    expect(makings.filter(({ food }) => !foods.has(food))).toEqual([]);
  });

  test("has the picture, the steps with clock times and cautions, what waits, what comes after", async () => {
    const { code, printed } = await run(`${CHICKEN} ${LENTILS} --serve 19:00`);
    expect(code).toBe(0);
    for (const heading of ["STEPS", "BEFORE YOU BEGIN", "AFTERWARDS"]) expect(printed).toContain(`\n${heading}\n`);
    expect(printed).toMatch(/\n {2}hands +[ABab]+/);
    expect(printed).toMatch(/\n {2}ring 1 +[AB]+/);
    expect(printed).toMatch(/\n {2}19:00 +Serve A, B\./);
    expect(printed.replace(/\s+/g, " ")).toContain(
      "Poultry: 73.9 °C in the middle, held for 37 s. Does as much: 75 °C for 26 s",
    );
    expect(printed.trimEnd()).toMatch(/before\s+anything said here\.$/);
  });

  test.each([60, 100])("no line is wider than %i columns, whatever is cooked", async (width) => {
    const ids = loadTables().dishes.map(({ id }) => id);
    for (let at = 0; at + 1 < ids.length; at += 9) {
      const { lines, code } = await run(
        `${ids[at]} ${ids[at + 1]} --serve 12:30 --minutes 20 --cooks ${1 + (at % 2)}`,
        width,
      );
      expect(code).toBe(0);
      for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(width);
    }
  });

  test("the picture has as many columns for a minute in each of its rows", async () => {
    const { lines } = await run(LENTILS, 60);
    const hands = lines.find((line) => line.startsWith("  hands")) as string;
    const data = v.parse(WorkData, JSON.parse((await run(`${LENTILS} --json`)).printed));
    const room = 60 - hands.search(/[A-Z]/) - 1;
    const columns = Math.min(3, Math.floor(room / data.serveMinutes));
    expect(hands.trim().replace(/^hands +/, "")).toHaveLength(columns * data.serveMinutes);
  });

  test("without a time of serving, times are minutes from the beginning", async () => {
    const { printed } = await run(LENTILS);
    expect(printed).toContain("STEPS, BY MINUTE");
    expect(printed).not.toMatch(/\d\d:\d\d/);
  });

  test("what is done ahead has its latest time, on the day before where that is so", async () => {
    const { printed } = await run("white-fish-potato-mustard-coconut --serve 8:00");
    expect(printed.replace(/\s+/g, " ")).toContain("AHEAD begun by 21:27, day before 10 h A Thaw");
  });

  test("a cooking that is too long says by how much and what to do earlier", async () => {
    const { printed } = await run("split-pea-root-soup --minutes 60");
    expect(printed).toMatch(/Too long by \d+ min for the minutes at hand\./);
    expect(printed).toMatch(/"cut" of A earlier in the day|No single step/);
  });
});

describe("data", () => {
  test("are as their schema says, the same each time", async () => {
    const first = await run(`${CHICKEN} ${LENTILS} --serve 19:00 --minutes 30 --json`);
    const data = v.parse(WorkData, JSON.parse(first.printed));
    expect(data).toMatchObject({ format: "halfloaf-work", isProven: true, serveAtMinutes: 1140, cooks: 1 });
    expect(data.tooLong?.byMinutes).toBe(data.serveMinutes - 30);
    expect((await run(`${CHICKEN} ${LENTILS} --serve 19:00 --minutes 30 --json`)).printed).toBe(first.printed);
  });

  test("--portions goes for every dish", async () => {
    const data = v.parse(WorkData, JSON.parse((await run(`${CHICKEN} ${LENTILS} --portions 5 --json`)).printed));
    expect(data.dishes.map(({ portions }) => portions)).toEqual([5, 5]);
  });
});

describe("the picture as a file", () => {
  test("is drawn, and drawn anew over a picture of ours alone", async () => {
    expect((await run(`${LENTILS} --svg evening.svg`)).talked).toContain("Drawn as evening.svg.");
    const text = readFileSync(join(folder, "evening.svg"), "utf8");
    expect(text).toMatch(/^<svg .*<\/svg>\n$/s);
    expect((await run(`${LENTILS} --svg evening.svg --serve 19:00`)).code).toBe(0);
    expect(readFileSync(join(folder, "evening.svg"), "utf8")).not.toBe(text);
    writeFileSync(join(folder, "letter.txt"), "Dear Ada");
    const refused = await run(`${LENTILS} --svg letter.txt`);
    expect([refused.code, refused.printed]).toEqual([2, ""]);
    expect(readFileSync(join(folder, "letter.txt"), "utf8")).toBe("Dear Ada");
    expect((await run(`${LENTILS} --svg nowhere/a.svg`)).code).toBe(2);
    expect((await run(`${LENTILS} --svg .`)).code).toBe(2);
    expect(readdirSync(folder).sort()).toEqual(["evening.svg", "letter.txt"]);
  });
});

describe("refused", () => {
  test("an unknown dish with the nearest names, every one of them at once", async () => {
    const { code, talked } = await run("red-lentils-spinach-pita thick-potato-omelette");
    expect(code).toBe(2);
    expect(talked).toContain("2 faults");
    expect(talked).toContain(LENTILS);
    expect(talked).toContain("thick-potato-onion-omelette");
  });

  test("a dish that the kit can't cook, also as data", async () => {
    writeKitchen(join(folder, "bare.json"), "port-ansel", (kitchen) => {
      kitchen.kit.pots = 0;
    });
    const { code, printed, talked } = await run(`${LENTILS} --kitchen bare.json --json`);
    expect(code).toBe(2);
    expect(talked.replace(/\s+/g, " ")).toContain("the kit has no pot");
    expect(v.parse(FaultReport, JSON.parse(printed)).faults.map((fault) => fault.code)).toEqual(["kit-missing"]);
  });

  test.each([
    [`${LENTILS} --serve 24:00`, '"24:00" is no time of day'],
    [`${LENTILS} --serve noon`, '"noon" is no time of day'],
    [`${LENTILS} --cooks 3`, "is no whole number from 1 to 2"],
    [`${LENTILS} --portions 0`, "is no whole number from 1 to 1000"],
    [`${LENTILS} --kitchen nowhere`, "no demo kitchen"],
  ])("wrong usage: %s", async (words, message) => {
    const { code, talked } = await run(words);
    expect([code, talked]).toEqual([2, expect.stringContaining(message)]);
  });
});

test("times of day are read from midnight to the last minute", () => {
  expect(["0:00", "07:05", "23:59"].map(parseClock)).toEqual([0, 425, 1439]);
  for (const text of ["7", "24:00", "12:60", "-1:00", "1e1:00", "12:5"]) expect(() => parseClock(text)).toThrow();
});

test("the examples of the help name dishes that are there", () => {
  const ids = new Set(loadTables().dishes.map(({ id }) => id));
  const examples = Object.values(HELP).flatMap((text) =>
    [...text.matchAll(/halfloaf work (.+)/g)].map((found) => found[1] as string),
  );
  const named = examples.flatMap((words) => ` ${words}`.split(" --")[0]?.split(" ").slice(1) ?? []);
  expect(named.length).toBeGreaterThan(4);
  expect(named.filter((id) => !ids.has(id))).toEqual([]);
});
