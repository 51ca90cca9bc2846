import { describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays, type CivilDate, weekday } from "../../quantity/index.ts";
import type { Kitchen } from "../kitchen.ts";
import { planAccepted, tables } from "../record/acceptedWeek.testing.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { changeWeek } from "./changeWeek.ts";
import { kitchenChanges } from "./kitchenChanges.ts";
import { writeWeek } from "./writeWeek.ts";

const { kitchen, week } = planAccepted();
const today = addDays(week.from, 2);

const spentOn = ({ batches }: WeekPlan, date: CivilDate): number =>
  batches.reduce((sum, each) => (each.date === date ? sum + each.handsOnMinutes : sum), 0);

/** The kitchen's minutes of each weekday, with some of them others. */
const minutesWith = (others: ReadonlyMap<CivilDate, number>): number[] => {
  const { handsOnMinutes } = kitchen.limits;
  const all = Array.isArray(handsOnMinutes) ? [...handsOnMinutes] : Array<number>(7).fill(handsOnMinutes);
  for (const [date, minutes] of others) all[weekday(date) - 1] = minutes;
  return all;
};

function change(limits: Partial<Kitchen["limits"]>, on: CivilDate = today, sittings = kitchen.sittings) {
  const now = { ...kitchen, limits: { ...kitchen.limits, ...limits }, sittings };
  const changed = changeWeek(kitchen, tables, week, kitchenChanges(kitchen, now), on);
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
  return changed.value;
}

const days = Array.from({ length: week.days }, (_, day) => addDays(week.from, day));

/** The plan without what is still to be cooked. */
const onlyCooked = ({ week: { problem, plan, today: day } }: ReturnType<typeof change>) => ({
  ...plan,
  batches: plan.batches.filter(({ sittings: [first = 0] }) => (problem.sittings[first]?.day ?? 0) < day),
});

describe("limits that were changed after a week was accepted", () => {
  test("are no change where they are as they were", () => {
    expect(kitchenChanges(kitchen, structuredClone(kitchen))).toEqual([]);
    expect(kitchenChanges(kitchen, { ...kitchen, limits: { ...kitchen.limits, tripsPerWeek: 9 } })).toHaveLength(1);
  });

  test("hold for what is left of the week, and what is over stays as it was however many minutes it took", () => {
    const busiest = days
      .filter((date) => date > today)
      .sort((a, b) => spentOn(week, b) - spentOn(week, a))[0] as CivilDate;
    const few = 0.8 * spentOn(week, busiest);
    const changed = change({
      handsOnMinutes: minutesWith(
        new Map([
          [busiest, few],
          [week.from, 0],
        ]),
      ),
    });
    const faults = checkPlan(changed.week.problem, changed.week.plan).faults.map(({ code, path }) => [code, path[2]]);
    expect(faults).toEqual([["hands-on", days.indexOf(busiest)]]);
    const outcome = replan(changed.week, { judge: checkPlan, moves: 1500, wideMoves: 0, farMoves: 20_000 });
    if (outcome.kind !== "planned") throw new Error("no menu was found");
    const mended = writeWeek(kitchen, tables, changed, outcome.plan, { seed: 1, moves: 1500, moneyMinor: 0 });
    expect(spentOn(mended, busiest)).toBeLessThanOrEqual(few);
    for (const date of days.filter((each) => each < today))
      expect(mended.batches.filter((batch) => batch.date === date)).toEqual(
        week.batches.filter((batch) => batch.date === date),
      );
  });

  test("take budget and trips as they are now, and never less than what is spent", () => {
    const limits = ({ week: { problem } }: ReturnType<typeof change>) => problem.limits;
    expect(limits(change({ budgetMinor: 99_000, tripsPerWeek: 5 }))).toMatchObject({
      budgetMinor: 99_000,
      maxTrips: 5,
    });
    const { budgetMinor: _, ...unbound } = kitchen.limits;
    const free = changeWeek(kitchen, tables, week, kitchenChanges(kitchen, { ...kitchen, limits: unbound }), today);
    expect(free.ok && free.value.week.problem.limits).not.toHaveProperty("budgetMinor");
    const over = week.trips.filter(({ date }) => date < today);
    const least = limits(change({ budgetMinor: 0, tripsPerWeek: 1 }));
    expect(least.maxTrips).toBe(Math.max(1, over.length));
    expect(least.budgetMinor).toBeGreaterThanOrEqual(
      over.reduce((sum, { tillMinor, fareMinor }) => sum + tillMinor + fareMinor, 0),
    );
  });

  test("take energy tolerance and variety as they are now, never stricter than what is cooked already leaves", () => {
    const { problem, plan } = change({ energyTolerancePct: 2, distinctEvenings: 7, mainMax: 1, usesPerDish: 1 }).week;
    expect(problem.limits).toMatchObject({ energyTolerance: 0.02 });
    expect(problem.dishes.some(({ maxUses }) => maxUses === 1)).toBe(true);
    const over = new Set(days.filter((date) => date < today));
    const { faults } = checkPlan(problem, plan);
    const energyDays = faults.flatMap(({ code, path }) => (code === "energy" ? [days[Number(path[3])]] : []));
    expect(energyDays.filter((date) => over.has(date as CivilDate))).toEqual([]);
    const last = change({ energyTolerancePct: 2, distinctEvenings: 7, mainMax: 1, usesPerDish: 1 }, days.at(-1));
    const cooked = week.batches.filter(({ date }) => date < (days.at(-1) as CivilDate)).length;
    expect(cooked).toBeGreaterThan(0);
    const evenings = week.sittings.filter(({ kind }) => kind === "evening");
    const isCooked = ({ batch }: (typeof evenings)[number]): boolean =>
      (week.batches[batch]?.date ?? "") < (days.at(-1) as CivilDate);
    const different = new Set(evenings.filter(isCooked).map(({ dish }) => dish)).size;
    const open = evenings.filter((sitting) => !isCooked(sitting)).length;
    expect(last.week.problem.limits.distinct).toBeLessThanOrEqual(different + open);
    for (const code of ["main", "uses"] as const) {
      const found = checkPlan(last.week.problem, onlyCooked(last)).faults.filter((fault) => fault.code === code);
      expect(found, code).toEqual([]);
    }
  });

  test("take the rules of variety as they are now, but for what is cooked already, and the rise that the budget stands", () => {
    const variety: Kitchen["limits"]["variety"] = [{ by: "dish", daysApart: 3 }];
    const ruled = change({ variety, standRisePct: 20 }, days.at(-1));
    const { problem, plan } = ruled.week;
    expect(ruled.stated.wishes).toHaveLength(problem.wishes?.length ?? 0);
    expect(ruled.stated.wishes.map(({ path }) => path[0])).toContain("limits");
    expect(checkPlan(problem, onlyCooked(ruled)).faults.filter(({ code }) => code === "wish")).toEqual([]);
    const first = change({ variety }, week.from);
    expect(first.week.problem.wishes?.every(({ most }) => most === undefined || most <= 1)).toBe(true);
    expect(change({ variety: [] }, week.from).stated.wishes.filter(({ path }) => path[0] === "limits")).toEqual([]);
    expect(problem.packs.some(({ highMinor }) => highMinor !== undefined)).toBe(true);
    expect(plan.purchases.length).toBeGreaterThan(0);
  });

  test("leave the room for keeping and the pot as they were", () => {
    const limits = (set: Partial<Kitchen["limits"]>) => change(set).week.problem.limits;
    const [then, now] = [limits({}), limits({ mainMax: 9 })];
    expect({ ...now, mainMax: then.mainMax }).toEqual(then);
    expect(now.mainMax).toBe(9);
  });

  test("give each sitting to come the minutes that it has now", () => {
    const sittings = kitchen.sittings.map((sitting) => ({ ...sitting, minutes: sitting.minutes + 7, heat: false }));
    const [then, now] = [change({}), change({}, today, sittings)];
    const differ = now.stated.sittings.map(({ date, putBy }, k) => {
      const minutes = [then, now].map(({ week: { problem } }) => problem.sittings[k]?.minutes ?? 0) as [number, number];
      return [date < today || putBy ? 0 : 7, minutes[1] - minutes[0]];
    });
    for (const [expected, seen] of differ) expect(seen).toBe(expected);
    const warm = now.stated.sittings.filter(({ putBy, heat }) => !putBy && heat);
    expect(warm).toEqual([]);
  });
});
