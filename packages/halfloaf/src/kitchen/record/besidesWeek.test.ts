import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Food } from "../../food/index.ts";
import { checkPlan } from "../../menu/check/index.ts";
import { paidOf, replan } from "../../menu/index.ts";
import { addDays, type CivilDate, parseWith } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import { payBesides } from "../changeWeek/comeBesides.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import { foodLife, placesOf } from "../foodLife.ts";
import { toMenuProblem } from "../toMenuProblem.ts";
import { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { followWeek } from "./followWeek.ts";
import type { EventBody } from "./Pen.ts";
import type { RecordState } from "./recordState.ts";
import { weekChanges } from "./weekChanges.ts";
import { weekNews } from "./weekNews.ts";

const { kitchen, week, stateOf } = planAccepted();
const today = addDays(week.from, 1);

const lifeOf = (food: string) => foodLife(tables.foods.get(food) as Food, placesOf(kitchen.kit));

/** A food that keeps, is bought on a day to come and cooked of then, with all that is still to be cooked of it. */
const bought = (() => {
  for (const { date, lines } of week.trips)
    for (const { food } of date > today ? lines : []) {
      const uses = week.batches.flatMap((batch) => (batch.date > today ? batch.uses : []));
      const neededG = uses.reduce((sum, use) => (use.food === food ? sum + use.massG : sum), 0);
      if (neededG > 0 && lifeOf(food).unopenedDays > 7 && lifeOf(food).openedDays > 7) return { food, neededG };
    }
  throw new Error("nothing is bought later");
})();

const found = (massG: number, costMinor = 0): EventBody => {
  const { food } = bought;
  const stock = { id: "a-find", food, place: lifeOf(food).place, boughtOn: today, massG, costMinor };
  return { kind: "stocked", on: today, stock };
};
const boughtBesides = (massG: number, costMinor: number): EventBody => ({
  kind: "bought",
  on: today,
  lot: "a-pack",
  food: "salt",
  place: "dry-store",
  massG,
  costMinor,
});

const came = (changes: readonly WeekChange[]) => changes.filter(({ kind }) => kind === "came" || kind === "off");

function mend(state: RecordState, before: WeekPlan, on: CivilDate = today): WeekPlan {
  const known = weekChanges(state, before, on);
  const followed = followWeek((all) => changeWeek(kitchen, tables, before, all, on), [], known);
  if (!followed.ok) throw new Error(JSON.stringify(followed.issues));
  const { changed } = followed.value;
  const outcome = replan(changed.week, { judge: checkPlan, moves: 1500, wideMoves: 1, farMoves: 3000 });
  const plan = outcome.kind === "planned" ? outcome.plan : outcome.leastBroken;
  if (plan === undefined) throw new Error("no plan");
  return JSON.parse(JSON.stringify(writeWeek(kitchen, tables, changed, plan, { seed: 1, moves: 1500, moneyMinor: 0 })));
}

function expectSums({ accounts, lots }: WeekPlan): void {
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = accounts;
  expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
  for (const lot of lots) {
    expect(lot.usedMinor + lot.wastedMinor + lot.leftMinor).toBe(lot.costMinor);
    expect(lot.usedG + lot.wastedG + lot.leftG).toBeCloseTo(lot.massG, 6);
  }
}

const boughtOf = ({ trips }: WeekPlan, food: string) =>
  trips.flatMap(({ lines }) => lines).reduce((sum, line) => (line.food === food ? sum + line.count : sum), 0);

describe("what came besides an accepted week", () => {
  test("is planned with from today on: what it makes up for is not bought, and all sums hold", () => {
    const state = stateOf(found(bought.neededG + 1, 210));
    const mended = mend(state, week);
    expect(boughtOf(mended, bought.food)).toBeLessThan(boughtOf(week, bought.food));
    const lot = mended.lots.find(({ id }) => id === "a-find");
    expect(lot).toMatchObject({ from: "stores", massG: bought.neededG + 1, costMinor: 210 });
    expect(lot?.usedG).toBeGreaterThan(0);
    const early = mended.batches.filter(({ date }) => date < today);
    expect(early.flatMap(({ uses }) => uses.filter((use) => use.lot === "a-find"))).toEqual([]);
    expect(mended.accounts.openingMinor).toBe(week.accounts.openingMinor + 210);
    expectSums(mended);
    expect(mended.besides).toMatchObject([{ stock: { id: "a-find" }, paidMinor: 0 }]);
  });

  test("is known to the week that was planned again, which is read and planned again with it", () => {
    const state = stateOf(found(bought.neededG + 1));
    expect(weekNews(state, week, today)).toMatchObject([{ kind: "came" }]);
    const mended = mend(state, week);
    expect(parseWith(WeekPlan, mended).ok).toBe(true);
    expect(weekNews(state, mended, today)).toEqual([]);
    const again = mend(state, mended, addDays(today, 1));
    expect(again.lots.find(({ id }) => id === "a-find")?.massG).toBe(bought.neededG + 1);
    expect(again.besides).toEqual(mended.besides);
    expectSums(again);
  });

  test("counts as it is now: what was used of it is gone, what was lost of it is waste of the week, once", () => {
    const use = { kind: "used", on: today, lot: "a-find", massG: 100 } as const;
    const loss = { kind: "wasted", on: today, lot: "a-find", massG: 60 } as const;
    const state = stateOf(found(400, 80), use, loss);
    expect(came(weekChanges(state, week, today))).toEqual([
      { kind: "came", stock: expect.objectContaining({ id: "a-find", massG: 300, costMinor: 60 }), paidMinor: 0 },
      { kind: "off", lot: "a-find", massG: 60 },
    ]);
    const mended = mend(state, week);
    expect(mended.lots.find(({ id }) => id === "a-find")?.wastedG).toBeCloseTo(60, 6);
    expectSums(mended);
    expect(weekNews(state, mended, today)).toEqual([]);
  });

  test("is nothing where it has gone off, is used up, is of the plan, or is a part of what is, or where the week is over", () => {
    const all = { kind: "used", on: today, lot: "a-find", massG: 400 } as const;
    const label = { kind: "labelled", on: today, lot: "a-find", useBy: week.from } as const;
    const stock = kitchen.stores.find(({ massG }) => massG > 100);
    const part = { massG: 50, lot: "a-part" };
    const split = { kind: "moved", on: today, lot: stock?.id as string, to: "freezer", part } as const;
    const line = week.trips[0]?.lines[0];
    const planned = { week: week.from, lot: `${line?.pack}-day-1-1` };
    const known = week.lots.find(({ id }) => id === planned.lot);
    const home: EventBody = { ...(boughtBesides(9, 9) as Extract<EventBody, { kind: "bought" }>), planned };
    for (const bodies of [[found(400), all], [found(400), label], [split], ...(known ? [[home]] : [])])
      expect(came(weekChanges(stateOf(...bodies), week, today)).filter(({ kind }) => kind === "came")).toEqual([]);
    expect(weekChanges(stateOf(found(400)), week, addDays(week.from, week.days))).toEqual([]);
  });

  test("and was paid for is off the budget, and stands among the lots at what it cost", () => {
    const state = stateOf(boughtBesides(500, 137));
    expect(came(weekChanges(state, week, today))).toMatchObject([{ kind: "came", paidMinor: 137 }]);
    const changed = changeWeek(kitchen, tables, week, weekChanges(state, week, today), today);
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    const { before, week: now } = changed.value;
    const whole = toMenuProblem(kitchen, tables, week.from, week.days).problem.limits.budgetMinor as number;
    const planned = paidOf(before.stated.problem, before.plan.trips, before.plan.purchases);
    expect(now.problem.limits.budgetMinor).toBe(Math.max(whole - 137, planned));
    const mended = mend(state, week);
    expect(mended.accounts.openingMinor).toBe(week.accounts.openingMinor + 137);
    expectSums(mended);
  });

  test("of a food that nobody knows is an issue, and what the record knows of it is left out", () => {
    const stock = {
      id: "odd",
      food: "no-such-food",
      place: "fridge",
      boughtOn: today,
      massG: 9,
      costMinor: 0,
    } as const;
    const change: WeekChange = { kind: "came", stock, paidMinor: 0 };
    const asked = (all: readonly WeekChange[]) => changeWeek(kitchen, tables, week, all, today);
    expect(asked([change])).toMatchObject({ ok: false, issues: [{ code: "food-unknown", path: ["changes", 0] }] });
    expect(followWeek(asked, [], [change])).toMatchObject({ ok: true, value: { changes: [] } });
    const file = { ...week, besides: [{ stock, paidMinor: 0 }] };
    const path = ["besides", 0, "stock", "food"];
    expect(changeWeek(kitchen, tables, file, [], today)).toMatchObject({ ok: false, issues: [{ path }] });
  });
});

test("what was paid besides is off the budget as far as the plan leaves it, never more and never less", () => {
  const { problem } = toMenuProblem(kitchen, tables, week.from, week.days);
  const minor = fc.integer({ min: 0, max: 9000 });
  fc.assert(
    fc.property(minor, minor, fc.integer({ min: 0, max: 9 }), (budgetMinor, paidMinor, count) => {
      const given = { ...problem, limits: { ...problem.limits, budgetMinor } };
      const plan = { batches: [], trips: [0], purchases: [{ trip: 0, pack: 0, count }], uses: [] };
      const planned = paidOf(given, plan.trips, plan.purchases);
      const stock = { id: "x", food: "salt", place: "dry-store", boughtOn: today, massG: 1, costMinor: 0 } as const;
      const left = payBesides(given, plan, { besides: [{ stock, paidMinor }] }).limits.budgetMinor as number;
      expect(left).toBeLessThanOrEqual(budgetMinor);
      expect(left).toBeGreaterThanOrEqual(budgetMinor - paidMinor);
      if (planned <= budgetMinor) expect(left).toBeGreaterThanOrEqual(planned);
      if (planned <= budgetMinor - paidMinor) expect(left).toBe(budgetMinor - paidMinor);
    }),
    { endOnFailure: true },
  );
});
