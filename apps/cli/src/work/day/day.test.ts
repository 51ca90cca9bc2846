import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { WeekPlan } from "halfloaf/kitchen";
import * as v from "valibot";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { toMemory } from "../../output/memory.testing.ts";
import { textWidth } from "../../output/textWidth.ts";
import { runCommands } from "../../runCommands.ts";
import { TWO_DAYS } from "../../week/week.testing.ts";
import { WorkData } from "../WorkData.ts";
import { DayData } from "./DayData.ts";

/** Two dishes at once on the first evening, one of them eaten again on the day after; beans soaked for the second. */
const WEEK: WeekPlan = {
  ...TWO_DAYS,
  kitchen: "Port Ansel",
  sittings: [
    sitting("2026-11-30", ["joren"], "red-lentil-cumin-soup-pitta", 0, false),
    sitting("2026-11-30", ["maris"], "red-lentils-spinach-pitta", 1, false),
    sitting("2026-12-01", ["joren"], "red-lentil-cumin-soup-pitta", 0, true),
    sitting("2026-12-01", ["maris"], "red-beans-walnut-coriander", 2, false),
  ],
  batches: [
    batch("red-lentil-cumin-soup-pitta", "2026-11-30", 2, 29),
    batch("red-lentils-spinach-pitta", "2026-11-30", 1, 31),
    batch("red-beans-walnut-coriander", "2026-12-01", 1, 92),
  ],
  lots: [],
  cautions: [],
  intake: [],
};

function sitting(
  date: string,
  eaters: string[],
  dish: string,
  at: number,
  leftover: boolean,
): WeekPlan["sittings"][number] {
  const base = TWO_DAYS.sittings[0] as WeekPlan["sittings"][number];
  return { ...base, date, eaters, dish, batch: at, leftover, portions: 1, plateMinor: [50] };
}

function batch(dish: string, date: string, portions: number, elapsedMinutes: number): WeekPlan["batches"][number] {
  return { dish, date, kind: "evening", portions, handsOnMinutes: 10, elapsedMinutes, uses: [], costMinor: 100 };
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfloaf-day-"));
  writeFileSync(join(folder, "week.json"), JSON.stringify(WEEK));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(words: string, width = 80) {
  const memory = toMemory(folder, width);
  const code = await runCommands(["work", "--week", "week.json", ...words.split(" ")], "0.0.1", memory);
  const printed = memory.printed.join("\n");
  return { code, lines: memory.printed, printed, flat: printed.replace(/\s+/g, " "), talked: memory.talked.join("\n") };
}

describe("the jobs of a day", () => {
  test("are cooking and what is begun the evening before; dishes cooked at once are timed as one", async () => {
    const data = v.parse(DayData, JSON.parse((await run("--on 2026-11-30 --json")).printed));
    expect(data.jobs.map(({ kind, dish }) => [kind, dish])).toEqual(
      expect.arrayContaining([
        ["soak", "red-beans-walnut-coriander"],
        ["cook", "red-lentil-cumin-soup-pitta"],
        ["cook", "red-lentils-spinach-pitta"],
      ]),
    );
    expect(data.cookings).toHaveLength(1);
    const [cooking] = data.cookings;
    expect(cooking).toMatchObject({ sitting: "evening", packed: false, batches: [0, 1], reckonedMinutes: 31 });
    expect(cooking?.serveMinutes).toBeGreaterThan(31);
    const order = v.parse(WorkData, JSON.parse((await run("--on 2026-11-30 --sitting evening --json")).printed));
    expect(order.serveMinutes).toBe(cooking?.serveMinutes);
    expect(order.dishes.map(({ dish, portions }) => [dish, portions])).toEqual([
      ["red-lentil-cumin-soup-pitta", 2],
      ["red-lentils-spinach-pitta", 1],
    ]);
  });

  test("name what is left over with its cautions, and a cooking that is too long for its sitting", async () => {
    const { flat, code } = await run("--on 2026-12-01");
    expect(code).toBe(0);
    expect(flat).toContain(
      "Heat again Red lentil soup with cumin oil and pitta, 1 portion, left over from Mon 30 Nov.",
    );
    expect(flat).toMatch(/evening: Stewed red beans [^:]+: \d+ min of 45 min at hand, \d+ min too long\./);
    const order = await run("--on 2026-12-01 --sitting evening");
    expect(order.flat).toMatch(/Too long by \d+ min for the minutes at hand/);
  });

  test("a day with nothing to do says so", async () => {
    expect((await run("--on 2026-11-29")).flat).toContain("Nothing is to be done on this day.");
  });

  test.each([60, 100])("no line is wider than %i columns", async (width) => {
    for (const date of ["2026-11-30", "2026-12-01"])
      for (const line of (await run(`--on ${date}`, width)).lines)
        expect(textWidth(line), line).toBeLessThanOrEqual(width);
  });

  test.each([
    ["--on 2026-12-08", "is no day of this week"],
    ["--on 2026-12-01 --sitting morning", "nothing is cooked"],
    ["--on 2026-12-01 --sitting evening --packed", "to take along"],
    ["--serve 19:00", "no sitting is named"],
    ["--portions 3", "cannot be used with"],
    ["--kitchen nowhere", "no demo kitchen"],
  ])("what can't be is refused: %s", async (words, message) => {
    const { code, talked, printed } = await run(words);
    expect([code, printed, talked.replace(/\s+/g, " ")]).toEqual([2, "", expect.stringContaining(message)]);
  });
});
