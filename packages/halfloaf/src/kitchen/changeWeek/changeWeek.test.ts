import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { beforeAll, describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { MenuSearch, type ReplanOutcome } from "../../menu/index.ts";
import { addDays } from "../../quantity/index.ts";
import { parseKitchen } from "../checkKitchen.ts";
import { settleTogether } from "../cooking/settleTogether.ts";
import { stateTogether } from "../cooking/stateTogether.ts";
import type { Kitchen } from "../kitchen.ts";
import { parseTables, type Tables } from "../tables.ts";
import { toMenuProblem } from "../toMenuProblem.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { type ChangedKitchenWeek, changeWeek } from "./changeWeek.ts";
import { replanWeek } from "./replanWeek.ts";
import type { WeekChange } from "./WeekChange.ts";
import { writeWeek } from "./writeWeek.ts";

/** Few, as no test here is about how cheap a plan is. */
const WIDE_MOVES = 6000;
const MOVES = 12_000;
let tables: Tables;
let kitchen: Kitchen;
let week: WeekPlan;

beforeAll(() => {
  const parsed = parseTables(loadStarterTables());
  const demo = parseKitchen(loadDemoKitchens().find(({ name }) => name === "port-ansel")?.content);
  if (!parsed.ok || !demo.ok) throw new Error("the demo cannot be read");
  tables = parsed.value;
  const { limits } = demo.value;
  // Limits so wide that a short search finds a plan, and a change leaves room for another.
  kitchen = {
    ...demo.value,
    useUp: [],
    limits: {
      ...limits,
      budgetMinor: 12_000,
      handsOnMinutes: 150,
      energyTolerancePct: 25,
      distinctEvenings: 2,
      tripsPerWeek: 5,
    },
  };
  week = plan(kitchen);
});

function plan(own: Kitchen): WeekPlan {
  const stated = toMenuProblem(own, tables, own.startsOn, 7);
  const search = new MenuSearch(stated.problem, 1, { expectedMoves: MOVES });
  while (search.advance().moves < MOVES || !search.best());
  const menu = search.best();
  if (menu === undefined) throw new Error("no menu");
  const found = { problem: stated.problem, plan: menu, today: 0, losses: [], isCheaper: false, skippedShare: 0 };
  const { stated: known, outcome } = settleTogether({ stated, kitchen: own, tables }, found, {
    judge: checkPlan,
    wideMoves: WIDE_MOVES,
  });
  if (outcome.kind === "none") throw new Error("no week in which all that is cooked at once is done in time");
  const made = { seed: 1, moves: MOVES, moneyMinor: 0 };
  return JSON.parse(JSON.stringify(toWeekPlan(own, tables, known, outcome.plan, made)));
}

function change(changes: readonly WeekChange[], today = week.from, of = week): ChangedKitchenWeek {
  const changed = changeWeek(kitchen, tables, of, changes, today);
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
  return changed.value;
}

function issuesOf(changes: readonly WeekChange[], today = week.from): string[] {
  const changed = changeWeek(kitchen, tables, week, changes, today);
  return changed.ok ? [] : changed.issues.map(({ code }) => code);
}

/** Plans again and writes down; the judge and the accounts must agree with it. */
function mend(changed: ChangedKitchenWeek): {
  outcome: Extract<ReplanOutcome, { kind: "planned" }>;
  written: WeekPlan;
} {
  const { changed: known, outcome } = replanWeek(kitchen, tables, changed, { judge: checkPlan, wideMoves: WIDE_MOVES });
  if (outcome.kind !== "planned") throw new Error("no plan");
  expect(checkPlan(known.week.problem, outcome.plan).faults).toEqual([]);
  // All that it cooks at once has an order of work, so that nothing is left to learn.
  expect(stateTogether(known.stated, outcome.plan, kitchen, tables)).toBe(known.stated);
  const search = { seed: 1, moves: outcome.moves, moneyMinor: outcome.moneyMinor };
  const written: WeekPlan = JSON.parse(JSON.stringify(writeWeek(kitchen, tables, known, outcome.plan, search)));
  const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = written.accounts;
  expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
  return { outcome, written };
}

const withoutSearch = ({ search: _, ...rest }: WeekPlan) => rest;
const evening = (day: number) => ({ date: addDays(week.from, day), kind: "evening" as const });

describe("a kept week", () => {
  test("without changes is the same week, whatever day it is", () => {
    for (const day of [0, 3, 6]) {
      const { outcome, written } = mend(change([], addDays(week.from, day)));
      expect(outcome.kept).toBe(true);
      expect(withoutSearch(written)).toEqual(withoutSearch(week));
    }
  });

  test("leaves what is over as it was when a dish is refused on the third day", () => {
    const today = addDays(week.from, 2);
    const later = week.batches.find(({ date }) => date > today)?.dish as string;
    const { outcome, written } = mend(change([{ kind: "refuse", dish: later }], today));
    expect(outcome.kept).toBe(false);
    expect(written.batches.filter(({ date }) => date < today)).toEqual(week.batches.filter(({ date }) => date < today));
    expect(written.trips.filter(({ date }) => date < today)).toEqual(week.trips.filter(({ date }) => date < today));
    expect(written.batches.filter(({ date }) => date >= today).map(({ dish }) => dish)).not.toContain(later);
  });

  test("has the dish that is wanted", () => {
    const { before } = change([]);
    const k = before.stated.sittings.findIndex(({ date, kind }) => date === evening(4).date && kind === "evening");
    const served = week.sittings.find(({ date, kind }) => date === evening(4).date && kind === "evening")?.dish;
    const { problem } = before.stated;
    const other = problem.sittings[k]?.dishes
      .map((dish) => problem.dishes[dish]?.id as string)
      .find((id) => id !== served);
    const { written, outcome } = mend(change([{ kind: "want", at: evening(4), dish: other as string }]));
    expect(written.sittings.find(({ date, kind }) => date === evening(4).date && kind === "evening")?.dish).toBe(other);
    expect(outcome.changes.length).toBeGreaterThan(0);
  });

  test("pays the price at the shelf from today on, and what was paid stays paid", () => {
    const today = addDays(week.from, 2);
    const paid = week.trips.find(({ date }) => date < today)?.lines[0];
    if (paid === undefined) throw new Error("nothing bought on the first days");
    const changed = change([{ kind: "price", pack: paid.pack, priceMinor: 999 }], today);
    const { written } = mend(changed);
    const lines = written.trips.flatMap(({ date, lines: own }) => own.map((line) => ({ date, ...line })));
    for (const line of lines.filter(({ pack }) => pack === paid.pack)) {
      if (line.date < today) expect(line.priceMinor).toBe(paid.priceMinor);
      else expect(line.priceMinor / line.count).toBe(999);
    }
    expect(withoutSearch(mend(change([], today, written)).written)).toEqual(withoutSearch(written));
  });

  test("takes an eater away and gives the others their plates; the file tells so to the next change", () => {
    const skipped: WeekChange = { kind: "skip", at: { ...evening(4), eater: "maris" } };
    const changed = change([skipped]);
    const share = changed.stated.shares.find(({ eater }) => eater.id === "maris");
    expect(share?.dayShare[4]).toBeLessThan(1 - 0.3);
    const { written } = mend(changed);
    const at = written.sittings.find(({ date, kind }) => date === evening(4).date && kind === "evening");
    expect(at?.eaters).toEqual(["joren"]);
    expect(withoutSearch(mend(change([], addDays(week.from, 5), written)).written)).toEqual(withoutSearch(written));
  });

  test("drops a sitting that nobody comes to, and seats guests", () => {
    const changed = change([
      { kind: "skip", at: evening(5) },
      { kind: "guest", at: evening(6), portions: 2 },
    ]);
    const { written } = mend(changed);
    const at = (day: number) =>
      written.sittings.filter(({ date, kind }) => date === evening(day).date && kind === "evening");
    expect(at(5)).toEqual([]);
    expect(at(6)[0]?.eaters).toEqual(["joren", "maris", "guest-1", "guest-2"]);
    expect(at(6)[0]?.plateMinor.length).toBe(4);
    expect(withoutSearch(mend(change([], week.from, written)).written)).toEqual(withoutSearch(written));
  });

  test("books what went off as waste and does not use it any more, also after the next change", () => {
    const today = addDays(week.from, 2);
    const lot = week.lots.find(({ from, leftG, usedG }) => from === "stores" && leftG > 1 && usedG > 0);
    if (lot === undefined) throw new Error("no lot that is used and left");
    const { written } = mend(change([{ kind: "off", lot: lot.id }], today));
    const after = written.lots.find(({ id }) => id === lot.id);
    expect([after?.leftG, after?.leftMinor]).toEqual([0, 0]);
    expect(after?.wastedG).toBeGreaterThan(0);
    expect(withoutSearch(mend(change([], today, written)).written)).toEqual(withoutSearch(written));
  });

  test("says what can't be changed, all at once", () => {
    const eaten = week.sittings.find(({ kind }) => kind === "evening") as WeekPlan["sittings"][number];
    expect(
      issuesOf([
        { kind: "refuse", dish: "no-dish" },
        { kind: "want", at: evening(1), dish: "no-dish" },
        { kind: "gone", pack: "no-pack" },
        { kind: "skip", at: { ...evening(0), eater: "nobody" } },
        { kind: "guest", at: { date: addDays(week.from, 30), kind: "evening" }, portions: 1 },
        { kind: "off", lot: "no-lot" },
      ]),
    ).toEqual(["dish-unknown", "dish-unknown", "pack-unknown", "eater-unknown", "sitting-unknown", "lot-unknown"]);
    const want: WeekChange = { kind: "want", at: { date: eaten.date, kind: "evening" }, dish: eaten.dish };
    expect(issuesOf([want], addDays(week.from, 2))).toContain("change-cooked-already");
    expect(issuesOf([], addDays(week.from, 7))).toEqual(["day-outside"]);
    const strange = { ...week, sittings: week.sittings.map((each) => ({ ...each, eaters: ["somebody"] })) };
    const misfit = changeWeek(kitchen, tables, strange, []);
    expect(misfit.ok ? [] : misfit.issues.map(({ code }) => code)).toContain("eater-unknown");
  });
});
