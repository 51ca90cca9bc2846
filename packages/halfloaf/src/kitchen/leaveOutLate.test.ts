import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeDish, makeFood, makeMaking, makeStep, methods } from "../dish/dish.testing.ts";
import type { Dish } from "../dish/index.ts";
import { checkPlan } from "../menu/check/index.ts";
import { type MenuPlan, MenuSearch } from "../menu/index.ts";
import { makePack } from "../price/pack.testing.ts";
import { addDays } from "../quantity/index.ts";
import { changeWeek } from "./changeWeek/changeWeek.ts";
import { replanWeek } from "./changeWeek/replanWeek.ts";
import type { WeekChange } from "./changeWeek/WeekChange.ts";
import { jobsOfDay } from "./cooking/jobsOfDay.ts";
import type { SittingKind } from "./datedSittings.ts";
import { hindranceAt } from "./hindranceAt.ts";
import { makeEater, makeKitchen, readStarterTables, withTables } from "./kitchen.testing.ts";
import type { Kitchen } from "./kitchen.ts";
import { type KitchenProblem, stateKept, toMenuProblem } from "./toMenuProblem.ts";
import { toWeekPlan } from "./toWeekPlan.ts";
import type { WeekPlan } from "./weekPlan.ts";

const starter = readStarterTables();
const oats = makeFood("oats-rolled", {
  keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 90 }, authority: "a table" },
});
const makings = [makeMaking("oats-rolled", 200)];
const every = { fits: ["morning", "midday", "evening"] as SittingKind[], main: "oats-rolled", makings };
const plain = makeDish({ ...every, id: "plain" });
const soaked = makeDish({
  ...every,
  id: "soaked",
  method: [
    makeStep("mix", 2, { foods: ["oats-rolled"] }),
    makeStep("soak", 300, { kind: "soak", hands: "none", ahead: true, after: ["mix"] }),
    makeStep("serve", 2, { after: ["soak"] }),
  ],
});

/** Nobody's needs are reckoned where they are left to care, so any dishes make a week. */
const eaters = [makeEater("ada", { stage: "pregnancy" })];
const on = [1, 2, 3, 4, 5, 6, 7];
const sittingsOf = (...kinds: readonly SittingKind[]): Kitchen["sittings"] =>
  kinds.map((kind) => ({ kind, on, eaters: ["ada"], minutes: 30, heat: true, packed: false }));
const base = makeKitchen({ eaters, packs: [makePack({ content: { massG: 5000 } })] });
const limits = { ...base.limits, distinctEvenings: 0, usesPerDish: 30, mainMax: 30 };

function state(sittings: Kitchen["sittings"], dishes: readonly Dish[], days = 3) {
  const kitchen = { ...base, limits, sittings };
  const tables = withTables(starter, [oats], dishes);
  return { kitchen, tables, stated: toMenuProblem(kitchen, tables, kitchen.startsOn, days) };
}

function offered({ problem }: KitchenProblem): string[] {
  return problem.sittings.map(({ dishes }) => dishes.map((at) => problem.dishes[at]?.id).join(" "));
}

/** A plan that cooks the named dish at each sitting, all from one pack of the first day. */
function planOf({ problem }: KitchenProblem, names: readonly string[]): MenuPlan {
  const batches = names.map((name, k) => ({ dish: problem.dishes.findIndex(({ id }) => id === name), sittings: [k] }));
  const uses = batches.map(({ dish, sittings: [k = 0] }, batch) => {
    const massG = (problem.dishes[dish]?.makings[0]?.massG ?? 0) * (problem.sittings[k]?.portions ?? 0);
    return { lot: { purchase: 0, copy: 0 }, batch, massG };
  });
  return { batches, trips: [0], purchases: [{ trip: 0, pack: 0, count: 1 }], uses };
}

describe("what would have to be begun before the first day", () => {
  test("is offered at no sitting, and at every later one", () => {
    const { stated } = state(sittingsOf("morning", "midday", "evening"), [plain, soaked], 2);
    const both = "plain soaked";
    // Five hours before midday are the same morning, and before the evening as well.
    expect(offered(stated)).toEqual(["plain", both, both, both, both, both]);
  });

  test("is where any kitchen's plan would have jobs before that day, and nowhere else", () => {
    const random = fc.record({
      method: methods(3),
      ahead: fc.array(fc.tuple(fc.boolean(), fc.nat(40)), { minLength: 3, maxLength: 3 }),
      kind: fc.constantFrom<SittingKind>("morning", "midday", "evening"),
      minutes: fc.integer({ min: 60, max: 240 }),
      pace: fc.record({
        mix: fc.double({ min: 0.5, max: 2, noNaN: true }),
        soak: fc.double({ min: 0.5, max: 2, noNaN: true }),
      }),
    });
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(random, ({ method, ahead, kind, minutes, pace }) => {
        const dish = makeDish({
          ...every,
          id: "any",
          method: method.map((step, at) => {
            const [isAhead = false, halfHours = 0] = ahead[at] ?? [];
            const soak = { kind: "soak" as const, minutes: { fixed: 30 * halfHours, perPortion: 1 }, kit: [] };
            return isAhead ? { ...step, ...soak, ahead: true } : step;
          }),
        });
        const kitchen = { ...base, pace, sittings: sittingsOf(kind).map((one) => ({ ...one, minutes })) };
        const tables = withTables(starter, [oats], [dish]);
        const { problem, from, dishes } = toMenuProblem(kitchen, tables, kitchen.startsOn, 3);
        if (dishes.length === 0) return;
        problem.sittings.forEach((sitting, k) => {
          const date = addDays(from, sitting.day);
          const portions = problem.limits.batchPortions;
          const batch = { dish: "any", date, kind, portions, elapsedMinutes: minutes, uses: [] };
          const week = { batches: [batch], sittings: [] } as unknown as WeekPlan;
          const before = [-4, -3, -2, -1].flatMap((day) => [
            ...jobsOfDay(week, kitchen, tables, addDays(from, day), pace),
            ...jobsOfDay(week, kitchen, tables, addDays(from, day)),
          ]);
          const isLate = before.some((job) => job.kind === "soak" || job.kind === "ahead");
          seen.add(isLate);
          expect(sitting.dishes.length > 0, `sitting ${k}`).toBe(!isLate);
        });
      }),
      { numRuns: 80, endOnFailure: true },
    );
    expect(seen.size).toBe(2);
  });

  test("is refused by the judge where a plan has it", () => {
    const { stated } = state(sittingsOf("morning"), [plain, soaked]);
    const codes = (names: readonly string[]) =>
      checkPlan(stated.problem, planOf(stated, names)).faults.map(({ code, path }) => [code, path.join(".")]);
    expect(codes(["plain", "soaked", "soaked"])).toEqual([]);
    expect(codes(["soaked", "plain", "soaked"])).toEqual([["dish-unfit", "batches.0.sittings.0"]]);
  });

  test("is told as the reason, with the day it is to be begun on", () => {
    const { kitchen, tables, stated } = state(sittingsOf("morning"), [plain, soaked]);
    expect(hindranceAt(kitchen, tables, stated, 0, soaked)).toEqual({ reason: "begun-before", date: "2026-03-01" });
    expect(hindranceAt(kitchen, tables, stated, 1, soaked)).toBeUndefined();
    expect(hindranceAt(kitchen, tables, stated, 0, plain)).toBeUndefined();
  });

  test("leaves a gap where a sitting has nothing else", () => {
    const { stated } = state(sittingsOf("morning"), [soaked]);
    expect(new MenuSearch(stated.problem, 1).gaps).toEqual([0]);
  });
});

describe("a kept week", () => {
  const { kitchen, tables } = state(sittingsOf("morning"), [plain, soaked]);

  /** A week as it was kept when such dishes were still planned. */
  function keep(names: readonly string[]): WeekPlan {
    const stated = stateKept(kitchen, tables, { from: kitchen.startsOn, days: names.length, batches: [] });
    const written = toWeekPlan(kitchen, tables, stated, planOf(stated, names), { seed: 1, moves: 0, moneyMinor: 0 });
    return JSON.parse(JSON.stringify(written));
  }

  function change(week: WeekPlan, day: number, changes: readonly WeekChange[] = []) {
    const changed = changeWeek(kitchen, tables, week, changes, addDays(week.from, day));
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    return changed.value;
  }

  /** The dishes of the week planned again. */
  function replan(week: WeekPlan, day: number, changes: readonly WeekChange[] = []): string[] | undefined {
    const { changed, outcome } = replanWeek(kitchen, tables, change(week, day, changes), {
      judge: checkPlan,
      wideMoves: 0,
    });
    if (outcome.kind === "none") return undefined;
    const { problem } = changed.week;
    expect(checkPlan(problem, outcome.plan).faults).toEqual([]);
    return problem.sittings.map(
      (_, k) => problem.dishes[outcome.plan.batches.find((batch) => batch.sittings.includes(k))?.dish ?? -1]?.id ?? "",
    );
  }

  const at = (week: WeekPlan, day: number) => ({ date: addDays(week.from, day), kind: "morning" as const });

  test("that has it on its first day stands as it is on every day", () => {
    const week = keep(["soaked", "plain", "soaked"]);
    for (const day of [0, 1, 2]) expect(replan(week, day)).toEqual(["soaked", "plain", "soaked"]);
  });

  test("keeps what was begun before today, and has nothing new of that kind before tomorrow", () => {
    const week = keep(["plain", "soaked", "plain", "plain"]);
    expect(offered(change(week, 0).stated)).toEqual(["plain", "plain soaked", "plain soaked", "plain soaked"]);
    expect(offered(change(week, 1).stated)).toEqual(["plain", "plain soaked", "plain soaked", "plain soaked"]);
    expect(offered(change(week, 2).stated)).toEqual(["plain", "plain soaked", "plain", "plain soaked"]);
    const refused: WeekChange[] = [{ kind: "refuse", dish: "plain" }];
    expect(replan(week, 1, refused)).toEqual(["plain", "soaked", "soaked", "soaked"]);
    // Today's breakfast is plain, and it is too late to soak another.
    expect(replan(week, 2, refused)).toBeUndefined();
  });

  test("says of a dish that is wanted too late what is wrong with it", () => {
    const week = keep(["plain", "plain", "plain"]);
    const want = (day: number): WeekChange[] => [{ kind: "want", at: at(week, day), dish: "soaked" }];
    const issues = changeWeek(kitchen, tables, week, want(1), at(week, 1).date);
    expect(issues.ok ? [] : issues.issues.map(({ code, path }) => [code, path])).toEqual([
      ["begun-before", ["changes", 0]],
    ]);
    expect(replan(week, 1, want(2))).toEqual(["plain", "plain", "soaked"]);
  });
});
