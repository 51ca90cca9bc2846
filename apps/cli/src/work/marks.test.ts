import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as v from "valibot";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { toMemory } from "../output/memory.testing.ts";
import { textWidth } from "../output/textWidth.ts";
import { runCommands } from "../runCommands.ts";
import { PaceReport } from "./pace/PaceReport.ts";
import { WorkData } from "./WorkData.ts";

const SOUP = "red-lentil-cumin-soup-pitta";
const LENTILS = "red-lentils-spinach-pitta";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-marks-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(words: string, width = 80) {
  const memory = toMemory(folder, width);
  const code = await runCommands(words.split(" "), "0.0.1", memory);
  const printed = memory.printed.join("\n");
  return { code, lines: memory.printed, printed, flat: printed.replace(/\s+/g, " "), talked: memory.talked.join("\n") };
}

async function workData(words: string) {
  return v.parse(WorkData, JSON.parse((await run(`work ${words} --json`)).printed));
}

type Line = Extract<WorkData["lines"][number], { kind: "step" }>;
const stepOf = ({ lines }: WorkData, id: string) =>
  lines.find((line): line is Line => line.kind === "step" && line.step === id) as Line;

describe("a cooking that goes on", () => {
  test("changes nothing where all went as planned", async () => {
    const plan = await workData(`${SOUP} --serve 19:00`);
    const again = await workData(`${SOUP} --serve 19:00 --as-planned 18:45 --now 18:45`);
    expect(again.retimed).toEqual({ kind: "same", nowMinutes: 14, wasServeMinutes: plan.serveMinutes });
    expect(again.lines).toEqual(plan.lines);
    expect((await run(`work ${SOUP} --serve 19:00 --as-planned 18:45 --now 18:45`)).flat).toContain(
      "Now it is 18:45. All goes as planned; nothing changes.",
    );
  });

  test("a late step puts off what waits for it, by the clock, and what is over is not listed any more", async () => {
    const words = `${SOUP} --serve 19:00 --as-planned 18:45 --late A:simmer=20 --now 18:45`;
    const plan = await workData(`${SOUP} --serve 19:00`);
    const again = await workData(words);
    expect(again.retimed?.kind).toBe("timed");
    expect(stepOf(again, "simmer")).toMatchObject({
      startMinutes: stepOf(plan, "simmer").startMinutes,
      endMinutes: 34,
    });
    expect(again.serveMinutes).toBe(14 + 20 + 2);
    expect(again.serveAtMinutes).toBe(19 * 60 + again.serveMinutes - plan.serveMinutes);
    const { printed, flat, code } = await run(`work ${words}`);
    expect(code).toBe(0);
    expect(flat).toContain("The rest is timed anew. Served at 19:07, 7 min later than planned.");
    expect(printed).toMatch(/\n {2}18:43 +22 min +A:simmer/);
    expect(printed).not.toContain("A:chop");
  });

  test("minutes of the cooking do as well as clock times; what is not marked has not begun", async () => {
    const again = await workData(`${SOUP} --begun A:chop=0 --done A:chop=9 --now 12`);
    expect(stepOf(again, "chop")).toMatchObject({ startMinutes: 0, endMinutes: 9 });
    const others = again.lines.filter((line) => line.kind === "step" && line.step !== "chop");
    expect(others.length).toBeGreaterThan(3);
    for (const { startMinutes } of others) expect(startMinutes).toBeGreaterThanOrEqual(12);
  });

  test("a step done sooner than planned serves the meal sooner", async () => {
    const plan = await workData(SOUP);
    const again = await workData(`${SOUP} --as-planned 12 --done A:fry=10 --now 12`);
    expect(stepOf(again, "fry").endMinutes).toBe(10);
    expect(again.serveMinutes).toBeLessThanOrEqual(plan.serveMinutes);
  });

  test.each([60, 100])("no line is wider than %i columns", async (width) => {
    const { lines, code } = await run(`work ${SOUP} ${LENTILS} --serve 19:00 --as-planned 18:30 --now 18:50`, width);
    expect(code).toBe(0);
    for (const line of lines) expect(textWidth(line), line).toBeLessThanOrEqual(width);
  });

  test.each([
    ["--done A:nothing=5 --now 9", "names no step of this dish"],
    ["--done B:fry=5 --now 9", "names a letter that no dish has"],
    ["--done A:fry=12 --now 9", "lies after now"],
    ["--done A:fry=8", '"--now" is not said'],
    ["--begun A:fry=8 --done A:fry=7 --now 9", "is done before it is begun"],
    ["--done A:fry=8 --late A:fry=3 --now 9", "says another thing than a mark before it"],
    ["--done A:fry=18:40 --now 9", "is a time of day"],
    ["--serve 19:00 --now 18:20", "lies before the cooking begins"],
    ["--washed pan=3 --now 9", "is no wash of this order of work"],
    ["--as-planned 12 --now 9", "lies after now"],
    ["--done A:fry --now 9", "is not written as A:STEP=TIME"],
    ["--late fry=3 --now 9", "is no step"],
    ["--washed ring=3 --now 9", "is none of board, pan, pot, blender"],
    ["--begun A:fry=3 --done A:fry=5 --now 9 --week x.json", "dishes can't be named beside it"],
  ])("what can't be so is refused: %s", async (words, message) => {
    const { code, talked } = await run(`work ${SOUP} ${words}`);
    expect([code, talked.replace(/\s+/g, " ")]).toEqual([2, expect.stringContaining(message)]);
  });

  test("a step done ahead is told to be so", async () => {
    const { talked } = await run("work white-fish-potato-mustard-coconut --done A:thaw=0 --now 1");
    expect(talked.replace(/\s+/g, " ")).toContain("names a step that is done ahead");
  });
});

describe("pace", () => {
  const marked = "--begun A:chop=0 --done A:chop=12 --now 12 --learn";

  test("is learned from steps whose begin and end are marked, reckoned with, shown and forgotten", async () => {
    const before = await workData(SOUP);
    expect(before.pace).toEqual([]);
    expect((await run(`work ${SOUP} ${marked}`)).talked).toContain("1 step kept for the pace");
    const after = await workData(SOUP);
    // 6 minutes took 12: one step seen against four as stated makes (2 + 4) / 5.
    expect(after.pace).toEqual([{ kind: "cut", factor: expect.closeTo(1.2, 9) }]);
    expect(stepOf(after, "chop").endMinutes - stepOf(after, "chop").startMinutes).toBe(8);
    const report = v.parse(PaceReport, JSON.parse((await run("pace --json")).printed));
    expect(report.learned).toEqual([{ kind: "cut", count: 1, median: 2, factor: expect.closeTo(1.2, 9) }]);
    expect((await run("pace")).flat).toContain("cutting 1 200 % 120 %");
    expect((await run("pace --forget fry")).flat).toContain("cutting");
    expect((await run("pace --forget cut")).talked).toContain("1 step forgotten");
    expect((await workData(SOUP)).lines).toEqual(before.lines);
    expect((await run("pace")).flat).toContain("Nothing is known yet");
  });

  test("what only went as planned teaches nothing", async () => {
    const { code, talked } = await run(`work ${SOUP} --as-planned 12 --now 12 --learn`);
    expect([code, talked]).toEqual([2, expect.stringContaining("nothing can be learned")]);
    expect(existsSync(join(folder, "halfloaf-pace-port-ansel.json"))).toBe(false);
  });

  test("is kept in the file that is named, and never over a file of another kind", async () => {
    await run(`work ${SOUP} ${marked} --pace mine.json`);
    expect(JSON.parse(readFileSync(join(folder, "mine.json"), "utf8"))).toMatchObject({ format: "halfloaf-pace" });
    expect((await workData(`${SOUP} --pace mine.json`)).pace).toHaveLength(1);
    expect((await workData(SOUP)).pace).toEqual([]);
    writeFileSync(join(folder, "letter.json"), '{"to": "Ada"}');
    for (const words of [`work ${SOUP} ${marked} --pace letter.json`, "pace --forget all --pace letter.json"])
      expect((await run(words)).code).toBe(2);
    expect(readFileSync(join(folder, "letter.json"), "utf8")).toBe('{"to": "Ada"}');
    expect((await run(`work ${SOUP} ${marked} --pace nowhere/a.json`)).code).toBe(2);
  });
});
