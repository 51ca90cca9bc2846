import { describe, expect, test } from "vitest";
import { makeDish, makeFood, makeMaking } from "../dish/dish.testing.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { changeWeek } from "./changeWeek/changeWeek.ts";
import type { SittingKind } from "./datedSittings.ts";
import { makeEater, makeKitchen, readDemoKitchens, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { leaveOutOver, listOver } from "./leaveOutOver.ts";
import { toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";

const on = [1, 2, 3, 4, 5, 6, 7];
const sittingsOf = (...kinds: readonly SittingKind[]): Kitchen["sittings"] =>
  kinds.map((kind) => ({ kind, on, eaters: ["ada"], minutes: 30, heat: true, packed: false }));
const daily = { sittings: sittingsOf("morning", "midday", "evening") };
const from = "2026-03-02";

describe("a sitting of today is over", () => {
  const at = (hours: number, minutes = 0) => ({ date: from, minutes: 60 * hours + minutes });

  test("an hour after its usual time, or after the time that is said", () => {
    const over = (hours: number, minutes: number) => listOver(daily, { from, days: 7 }, at(hours, minutes));
    expect(over(8, 29)).toEqual([]);
    expect(over(8, 30)).toEqual(["morning"]);
    expect(over(16, 30)).toEqual(["morning", "midday"]);
    expect(over(20, 0)).toEqual(["morning", "midday", "evening"]);
    expect(listOver(daily, { from, days: 7 }, at(16, 30), { midday: 16 * 60 })).toEqual(["morning"]);
  });

  test("only where the kitchen has it that day, and where the days begin today", () => {
    expect(listOver({ sittings: sittingsOf("midday", "evening") }, { from, days: 1 }, at(16))).toEqual(["midday"]);
    expect(listOver(daily, { from: "2026-03-03", days: 7 }, at(16))).toEqual([]);
    expect(listOver(daily, { from: "2026-03-01", days: 7 }, at(16))).toEqual([]);
  });

  test("and is planned all the same where else there would be none", () => {
    expect(listOver(daily, { from, days: 1 }, at(23))).toEqual([]);
  });
});

describe("days without what is over", () => {
  test.each(readDemoKitchens())("of $name have every other sitting, and want no more on it", ({ kitchen }) => {
    const tables = readStarterTables();
    const whole = toMenuProblem(kitchen, tables, kitchen.startsOn, 3);
    const over: SittingKind[] = ["morning", "midday"];
    const left = leaveOutOver(whole, kitchen, over);
    const isLeft = ({ day, kind, putBy }: (typeof whole.sittings)[number]) => day > 0 || putBy || !over.includes(kind);
    expect(left.sittings.length).toBeLessThan(whole.sittings.length);
    expect(left.sittings.map(({ date, kind, eaters }) => [date, kind, eaters])).toEqual(
      whole.sittings.filter(isLeft).map(({ date, kind, eaters }) => [date, kind, eaters]),
    );
    const stays = whole.sittings.flatMap((sitting, k) => (isLeft(sitting) ? [k] : []));
    expect(left.problem.sittings.map(({ portions }) => portions)).toEqual(
      stays.map((k) => whole.problem.sittings[k]?.portions),
    );
    left.problem.profiles.forEach((profile, at) => {
      const before = whole.problem.profiles[at];
      expect(profile.sittings.map((k) => stays[k])).toEqual(before?.sittings.filter((k) => stays.includes(k)));
      const wanted = (energyKj: readonly number[] = []) => energyKj.map((each) => Math.round(each));
      expect(wanted(profile.energyKj).slice(1)).toEqual(wanted(before?.energyKj).slice(1));
    });
    const firstDay = ({ problem }: typeof whole) =>
      problem.profiles.reduce((sum, each) => sum + (each.energyKj[0] ?? 0), 0);
    expect(firstDay(left)).toBeLessThan(firstDay(whole));
  });

  test("make a week that is read back as it was planned", () => {
    const oats = makeFood("oats-rolled", {
      keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 90 }, authority: "a table" },
    });
    const makings = [makeMaking("oats-rolled", 200)];
    const dish = makeDish({ id: "plain", fits: ["morning", "midday", "evening"], main: "oats-rolled", makings });
    const tables = withTables(readStarterTables(), [oats], [dish]);
    const base = makeKitchen({ eaters: [makeEater("ada", { stage: "pregnancy" })], ...daily });
    const limits = { ...base.limits, distinctEvenings: 0, usesPerDish: 30, mainMax: 30 };
    const kitchen = { ...base, limits, packs: [makePack({ content: { massG: 5000 } })] };
    const stated = leaveOutOver(toMenuProblem(kitchen, tables, kitchen.startsOn, 2), kitchen, ["morning", "midday"]);
    expect(stated.sittings.map(({ day, kind }) => `${day} ${kind}`)).toEqual([
      "0 evening",
      "1 morning",
      "1 midday",
      "1 evening",
    ]);
    expect(new MenuSearch(stated.problem, 1).gaps).toEqual([]);
    const batches = stated.sittings.map((_, k) => ({ dish: 0, sittings: [k] }));
    const uses = batches.map(({ sittings: [k = 0] }, batch) => {
      const massG = (stated.problem.dishes[0]?.makings[0]?.massG ?? 0) * (stated.problem.sittings[k]?.portions ?? 0);
      return { lot: { purchase: 0, copy: 0 }, batch, massG };
    });
    const plan: MenuPlan = { batches, trips: [0], purchases: [{ trip: 0, pack: 0, count: 1 }], uses };
    const week = toWeekPlan(kitchen, tables, stated, plan, { seed: 1, moves: 0, moneyMinor: 0 });
    expect(week.sittings.map(({ kind }) => kind)).toEqual(["evening", "morning", "midday", "evening"]);
    const read = changeWeek(kitchen, tables, JSON.parse(JSON.stringify(week)), [], week.from);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.value.stated.problem).toEqual(stated.problem);
    expect(read.value.stated.sittings).toEqual(stated.sittings);
  });
});
