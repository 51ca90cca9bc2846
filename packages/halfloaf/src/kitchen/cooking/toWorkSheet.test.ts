import { describe, expect, test } from "vitest";
import { makeStep } from "../../dish/dish.testing.ts";
import { dishOf, makeKit, timesOf, timeWork, wishFor } from "./cooking.testing.ts";
import { findTooLong } from "./findTooLong.ts";
import { toWorkSheet } from "./toWorkSheet.ts";
import { clockMinutes, type StepLine, type WorkSheet } from "./WorkSheet.ts";

const lineOf = (sheet: WorkSheet, id: string) =>
  sheet.lines.find((line): line is StepLine => line.kind === "step" && line.step === id) as StepLine;
const codesAt = (sheet: WorkSheet, id: string) => lineOf(sheet, id).cautions.map(({ code }) => code);

describe("chicken and salad on one board", () => {
  const chicken = dishOf("chicken", [
    makeStep("joint", 4, { kind: "cut", kit: ["board"], foods: ["chicken"] }),
    makeStep("fry", 12, { kind: "fry", hands: "eye", kit: ["ring", "pan"], after: ["joint"], foods: ["chicken"] }),
    makeStep("simmer", 10, { kind: "simmer", hands: "none", kit: ["ring", "pan"], after: ["fry"] }),
    makeStep("carve", 3, { kind: "cut", kit: ["board"], after: ["simmer"], foods: ["chicken"] }),
  ]);
  const salad = dishOf("salad", [makeStep("shred", 5, { kind: "cut", kit: ["board"], foods: ["lettuce", "carrot"] })], {
    served: ["cold"],
  });
  const timed = timeWork(wishFor([chicken, salad]));
  const sheet = toWorkSheet(timed);

  test("raw comes off the board, and it is washed before anything ready to eat lies there", () => {
    const raw = timesOf(timed, 0, "joint");
    const washes = sheet.lines.filter(({ kind }) => kind === "board-wash");
    for (const ready of [timesOf(timed, 0, "carve"), timesOf(timed, 1, "shred")]) {
      if (ready.start < raw.start) continue;
      const between = washes.filter((wash) => wash.startMinutes >= raw.end && wash.endMinutes <= ready.start);
      expect(between.length).toBeGreaterThan(0);
    }
    expect(washes).toHaveLength(1);
    expect(washes[0]).toMatchObject({ cooks: [1], part: "board" });
  });

  test("with a second board nothing needs a wash", () => {
    expect(timeWork(wishFor([chicken, salad], { kit: makeKit({ boards: 2 }) })).plan.boardWashes).toEqual([]);
  });

  test("cautions stand where the hand needs them", () => {
    expect(codesAt(sheet, "joint")).toEqual(expect.arrayContaining(["raw-apart", "no-rinse"]));
    expect(codesAt(sheet, "fry")).toEqual(["wash-after-raw"]);
    expect(codesAt(sheet, "simmer")).toEqual(["core-temperature"]);
    expect(codesAt(sheet, "carve")).toEqual([]);
    expect(codesAt(sheet, "shred")).toEqual(["wash-soil"]);
  });

  test("the core temperature comes with its authority and times that do as much, none of them too cool for the stricter", () => {
    const [core] = lineOf(sheet, "simmer").cautions;
    expect(core).toMatchObject({ authority: "US FSIS and UK FSA", foods: ["chicken"] });
    const times = core?.otherTimes ?? [];
    expect(times.map(({ tempC }) => tempC)).toEqual([75, 80]);
    // 2 min at 70 C with z = 7.5 C; the FSA lists 75 C for 30 s and 80 C for 6 s.
    expect(times.map(({ minutes }) => Math.round(minutes * 60))).toEqual([26, 6]);
    const british = toWorkSheet(timeWork(wishFor([chicken], { authority: "uk" })));
    expect(lineOf(british, "simmer").cautions[0]?.otherTimes?.map(({ tempC }) => tempC)).toEqual([60, 65, 70, 75, 80]);
    const american = toWorkSheet(timeWork(wishFor([chicken], { authority: "us" })));
    expect(lineOf(american, "simmer").cautions[0]?.otherTimes).toEqual([]);
  });
});

describe("rice", () => {
  const keeps = { fridgeDays: 1, authority: "common practice, no source" };
  const rice = dishOf(
    "rice",
    [makeStep("boil", 15, { kind: "boil", hands: "none", kit: ["ring", "pot"], foods: ["rice"] })],
    { keeps },
  );

  test("what is left goes into the cold within the hour of the end of cooking, on the clock", () => {
    const sheet = toWorkSheet(timeWork(wishFor([rice])), 19 * 60);
    const chill = sheet.after.find(({ code }) => code === "chill-within");
    expect(chill).toMatchObject({ byMinutes: 15 + 60, authority: "UK FSA" });
    expect(clockMinutes(sheet, chill?.byMinutes ?? 0)).toBe(20 * 60);
  });

  test("never waits for more than the hour, however that is cooked beside it", () => {
    const roast = dishOf("roast", [
      makeStep("stew", 150, { kind: "simmer", hands: "none", kit: ["ring", "pot"], foods: ["chicken"] }),
    ]);
    const timed = timeWork(wishFor([rice, roast]));
    expect(timed.plan.serveMinutes - timesOf(timed, 0, "boil").end).toBeLessThanOrEqual(60);
    const { dishes } = timed.cooking.problem;
    expect([dishes[0], dishes[1]]).toMatchObject([
      { holdMinutes: 60, isFirm: true },
      { holdMinutes: 120, isFirm: true },
    ]);
  });

  test("a hold of the dish's own gives way, the hour does not", () => {
    const soft = dishOf("soft", [
      makeStep("boil", 15, { kind: "boil", hands: "none", kit: ["ring", "pot"], foods: ["rice"], holdMinutes: 5 }),
    ]);
    const { waits } = timeWork(wishFor([soft])).cooking.problem;
    expect(waits.map(({ mostMinutes, isFirm = false }) => [mostMinutes, isFirm])).toEqual([
      [5, false],
      [60, true],
    ]);
  });
});

describe("what is done ahead", () => {
  const fish = dishOf("fish", [
    makeStep("thaw", 600, { kind: "rest", hands: "none", ahead: true, foods: ["fish-frozen"] }),
    makeStep("fry", 10, { kind: "fry", hands: "eye", kit: ["ring", "pan"], after: ["thaw"], foods: ["fish-frozen"] }),
  ]);

  test("has its latest beginning, on the day before where that is so", () => {
    const sheet = toWorkSheet(timeWork(wishFor([fish])), 8 * 60);
    expect(sheet.ahead).toMatchObject([{ kind: "thaw", step: "thaw", minutes: 600, latestStartMinutes: -600 }]);
    expect(clockMinutes(sheet, -600)).toBe(8 * 60 - 10 - 600);
    expect(sheet.ahead[0]?.cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(["raw-apart", "thawed"]));
  });
});

describe("too long for the minutes at hand", () => {
  const pot = dishOf("pot", [
    makeStep("peel", 12, { kind: "cut", kit: ["board"], foods: ["carrot"] }),
    makeStep("joint", 5, { kind: "cut", kit: ["board"], foods: ["chicken"] }),
    makeStep("stew", 30, {
      kind: "simmer",
      hands: "none",
      kit: ["ring", "pot"],
      after: ["peel", "joint"],
      foods: ["chicken", "carrot"],
    }),
  ]);
  const timed = timeWork(wishFor([pot]));

  test("says by how much, and which step to move; raw meat is never cut hours before", () => {
    expect(timed.plan.serveMinutes).toBe(47);
    expect(findTooLong(timed, 40)).toEqual({
      byMinutes: 7,
      earlier: [{ dish: 0, step: "peel", along: [], savedMinutes: 12 }],
    });
    expect(findTooLong(timed, 47)).toBeUndefined();
  });
});
