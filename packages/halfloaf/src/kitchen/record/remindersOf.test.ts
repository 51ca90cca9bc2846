import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { addDays } from "../../quantity/index.ts";
import type { DayJob } from "../cooking/jobsOfDay.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { eat } from "./act/eat.ts";
import { foods as frozenFoods } from "./frozen/frozen.testing.ts";
import { type EventBody, penOf } from "./Pen.ts";
import { fromKitchen, parseRecord } from "./parseRecord.ts";
import { portionsAtHand } from "./portionsAtHand.ts";
import { RecordLedger } from "./RecordLedger.ts";
import { remindersOf, untoldJobs } from "./remindersOf.ts";
import { useUpList } from "./useUpList.ts";

const { kitchen, week, stateOf } = planAccepted();
const RAW = "chicken-thigh-boned";

describe("reminders", () => {
  const jobsOn = (state: RecordLedger["state"], day: string) =>
    remindersOf(kitchen, state, tables, day).flatMap((told) => (told.kind === "job" ? [told.job] : []));

  test("every batch of the week is to be cooked on its day, until it was", () => {
    const state = stateOf();
    for (const [at, { date, dish, kind }] of week.batches.entries()) {
      expect(jobsOn(state, date)).toContainEqual(expect.objectContaining({ kind: "cook", batch: at, dish }));
      const cooked = stateOf({
        kind: "cooked",
        on: date,
        lot: "done",
        dish,
        portions: 1,
        portionG: 300,
        keeps: { fridgeDays: 1 },
        uses: [],
        sitting: kind,
      });
      expect(jobsOn(cooked, date)).not.toContainEqual(expect.objectContaining({ kind: "cook", batch: at }));
    }
  });

  test("a sitting at which nobody eats here has no job", () => {
    const batch = week.batches[0];
    if (batch === undefined) throw new Error("nothing is cooked");
    const { date, kind } = batch;
    const state = stateOf({ kind: "skipped", on: date, sitting: kind });
    expect(jobsOn(state, date).filter((job) => job.date === date && job.sitting === kind)).toEqual([]);
  });

  test("what the days before had to cook and serve is untold until it is told, and only for so many days", () => {
    const [first] = week.batches;
    if (first === undefined) throw new Error("nothing is cooked");
    const next = addDays(week.from, 1);
    const untold = (state: RecordLedger["state"], day: string, days?: number) =>
      untoldJobs(kitchen, state, tables, day, days).map(({ job }) => `${job.date} ${job.sitting} ${job.dish}`);
    const planned = week.sittings.filter(({ date }) => date === week.from);
    const all = untold(stateOf(), next);
    expect(new Set(all)).toEqual(new Set(planned.map(({ date, kind, dish }) => `${date} ${kind} ${dish}`)));
    expect(untold(stateOf(), week.from)).toEqual([]);
    expect(untold(stateOf(), addDays(week.from, 3), 1).every((each) => each.startsWith(addDays(week.from, 2)))).toBe(
      true,
    );
    const { date, kind, dish } = first;
    const rest = { portions: 1, portionG: 300, keeps: { fridgeDays: 1 }, uses: [] };
    const told = stateOf({ kind: "cooked", on: date, lot: "done", dish, sitting: kind, ...rest });
    expect(untold(told, next)).not.toContain(`${date} ${kind} ${dish}`);
    const away = stateOf({ kind: "skipped", on: date, sitting: kind });
    expect(untold(away, next).filter((each) => each.startsWith(`${date} ${kind}`))).toEqual([]);
  });

  test("what is left over is short by what eating would miss: by all of it until it is told as cooked, and once it is gone", () => {
    const left = week.sittings.find(
      ({ leftover, date, batch }) => leftover && date > (week.batches[batch]?.date ?? date),
    );
    const batch = week.batches[left?.batch ?? -1];
    if (left === undefined || batch === undefined) throw new Error("nothing is left over for another day");
    const { date, kind, dish, portions } = left;
    const pot = (count: number, fridgeDays: number): EventBody => ({
      kind: "cooked",
      on: batch.date,
      lot: "pot",
      dish,
      portions: count,
      portionG: 300,
      keeps: { fridgeDays },
      uses: [],
    });
    const gone: EventBody = { kind: "wasted", on: date, lot: "pot", massG: 1200 };
    const shortOf = (...bodies: EventBody[]) => {
      const state = stateOf(...bodies);
      const isIt = ({ job }: { readonly job: DayJob }): boolean =>
        ["re-heat", "take-out"].includes(job.kind) &&
        `${job.date} ${job.sitting} ${job.dish}` === `${date} ${kind} ${dish}`;
      const today = remindersOf(kitchen, state, tables, date).find((told) => told.kind === "job" && isIt(told));
      const later = untoldJobs(kitchen, state, tables, addDays(date, 1)).find(isIt);
      if (today?.kind !== "job" || later === undefined) throw new Error("it is not told");
      expect(later.shortPortions).toBe(today.shortPortions);
      const pen = penOf(new RecordLedger(tables.foods, []), { device: "phone", nowMs: 9 });
      const { eaten, short } = eat(state, { on: date, sitting: kind, plates: [{ dish, portions }] }, pen);
      expect(eaten === undefined).toBe(today.shortPortions === portions);
      expect(short).toEqual(today.shortPortions === undefined ? [] : [{ dish, portions: today.shortPortions }]);
      return today.shortPortions;
    };
    expect(shortOf()).toBe(portions);
    expect(shortOf(pot(4, 30))).toBeUndefined();
    expect(shortOf(pot(portions / 2, 30))).toBeCloseTo(portions / 2, 9);
    expect(shortOf(pot(4, 30), gone)).toBe(portions);
    expect(shortOf(pot(4, 0))).toBe(portions);
  });

  test("what is left over from the same day is told to be cooked first for as long as its cooking is to come, today and untold", () => {
    const left = week.sittings.find(({ leftover, batch }) => leftover && week.batches[batch] !== undefined);
    const batch = week.batches[left?.batch ?? -1];
    if (left === undefined || batch === undefined) throw new Error("nothing is left over");
    const { date, dish, kind: sitting } = batch;
    const kind = sitting === "evening" ? ("between" as const) : ("evening" as const);
    const sameDay = {
      ...week,
      sittings: week.sittings.map((each) => (each === left ? { ...each, date, kind } : each)),
    };
    const accepted: EventBody = { kind: "menu-accepted", on: week.from, week: sameDay };
    const cooked: EventBody = {
      kind: "cooked",
      on: date,
      lot: "pot",
      dish,
      sitting,
      portions: 9,
      portionG: 300,
      keeps: { fridgeDays: 2 },
      uses: [],
    };
    const standing = (state: RecordLedger["state"]) =>
      [...remindersOf(kitchen, state, tables, date), ...untoldJobs(kitchen, state, tables, addDays(date, 1))].flatMap(
        (told) =>
          "job" in told && told.job.kind !== "cook" && told.job.dish === dish && told.job.sitting === kind
            ? [{ isToCook: told.isToCook, isShort: told.shortPortions !== undefined }]
            : [],
      );
    const first = { isToCook: true, isShort: true };
    expect(standing(stateOf(accepted))).toEqual([first, first]);
    const there = { isToCook: undefined, isShort: false };
    expect(standing(stateOf(accepted, cooked))).toEqual([there, there]);
  });

  test("what should have begun before the week was accepted is told late on that day, unless an earlier menu told it", () => {
    const overnight = tables.dishes.find(({ method }) => method.some(({ ahead, kind }) => ahead && kind === "soak"));
    const [batch, ...others] = week.batches;
    if (overnight === undefined || batch === undefined) throw new Error("no dish is soaked");
    const soaked = { ...batch, dish: overnight.id, kind: "morning" as const, date: week.from, taken: [] };
    const early: WeekPlan = { ...week, batches: [soaked, ...others] };
    const accept = (week: WeekPlan, on: string): EventBody => ({ kind: "menu-accepted", on, week });
    const late = (day: string, ...bodies: EventBody[]) => {
      const ledger = new RecordLedger(tables.foods, fromKitchen(kitchen).events);
      const pen = penOf(ledger, { device: "phone", nowMs: 9 });
      ledger.add(bodies.map((body) => pen.write(body)));
      return remindersOf(kitchen, ledger.state, tables, day).filter((told) => told.kind === "job" && told.isLate);
    };
    const [today, before] = [week.from, addDays(week.from, -1)];
    expect(late(today, accept(early, today)).length).toBeGreaterThan(0);
    expect(late(today, accept(early, before))).toEqual([]);
    expect(late(today, accept(early, before), accept(early, today))).toEqual([]);
    expect(late(before, accept(early, before))).toEqual([]);
  });

  test("raw food that lies in the freezer on the day it is to be cooked is told that day, until it lies elsewhere or is cooked", () => {
    const dish = tables.dishes.find(({ main, method }) => main === RAW && method.every(({ ahead }) => !ahead));
    const [batch, ...others] = week.batches;
    if (dish === undefined || batch === undefined) throw new Error("no dish is made of it");
    const of = {
      dish: dish.id,
      kind: "evening" as const,
      uses: [{ lot: "bag", food: RAW, massG: 300, costMinor: 200 }],
    };
    const stock = {
      id: "bag",
      food: RAW,
      place: "freezer" as const,
      boughtOn: "2026-11-20",
      massG: 300,
      costMinor: 200,
    };
    const thaws = (day: string, date: string, ...bodies: EventBody[]) => {
      const frozen = { ...week, batches: [{ ...batch, ...of, date, taken: [] }, ...others] };
      const had: EventBody = { kind: "stocked", on: "2026-11-20", stock };
      const state = stateOf(had, { kind: "menu-accepted", on: week.from, week: frozen }, ...bodies);
      return remindersOf(kitchen, state, tables, day).flatMap((told) =>
        told.kind === "job" && told.job.kind === "thaw" && told.job.foods.includes(RAW)
          ? [told.job.cautions?.map(({ code }) => code) ?? "fridge"]
          : [],
      );
    };
    const [first, third] = [week.from, addDays(week.from, 2)];
    expect(thaws(first, first)).toEqual([["thaw-at-once"]]);
    expect(thaws(addDays(third, -1), third)).toEqual(["fridge"]);
    expect(thaws(third, third)).toEqual([["thaw-at-once"]]);
    expect(thaws(third, third, { kind: "moved", on: addDays(third, -1), lot: "bag", to: "fridge" })).toEqual([]);
    const begun = { kind: "begun" as const, dish: dish.id, servedOn: third, sitting: "evening" as const };
    expect(thaws(third, third, { ...begun, on: addDays(third, -1) })).toEqual([]);
    expect(thaws(third, third, { ...begun, on: first, servedOn: first })).toEqual([["thaw-at-once"]]);
    expect(thaws(third, third, { ...begun, on: first, step: "soak" })).toEqual([["thaw-at-once"]]);
    const cooked = { kind: "cooked" as const, lot: "pan", dish: dish.id, sitting: "evening" as const, portions: 2 };
    expect(thaws(third, third, { ...cooked, on: third, portionG: 300, keeps: { fridgeDays: 2 }, uses: [] })).toEqual(
      [],
    );
  });

  test("the last day, what has gone off and what is to be counted are told", () => {
    const read = parseRecord(JSON.parse(readFileSync(new URL("./frozen/record-1.json", import.meta.url), "utf8")));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { kitchen: edited, events } = read.value;
    const ledger = new RecordLedger(frozenFoods, events);
    const told = (day: string) =>
      remindersOf(edited, ledger.state, { ...tables, foods: frozenFoods, dishes: [] }, day).map((each) =>
        each.kind === "job" ? each.kind : `${each.kind} ${each.kind === "to-count" ? each.count.lot : each.line.lot}`,
      );
    expect(told("2026-12-21")).toEqual([]);
    expect(told("2026-12-22")).toEqual(["last-day onion-start"]);
    const pen = penOf(ledger, { device: "phone", nowMs: 9 });
    ledger.add([pen.write({ kind: "used", on: "2026-12-22", lot: "onion-start", massG: 900 })]);
    expect(told("2026-12-23")).toEqual(["to-count onion-start"]);
  });
});

test("what ends soon comes first, what has gone off before it, and portions are portions", () => {
  const read = parseRecord(JSON.parse(readFileSync(new URL("./frozen/record-1.json", import.meta.url), "utf8")));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { state } = new RecordLedger(frozenFoods, read.value.events);
  const lines = useUpList(state, "2026-12-23", 60);
  expect(lines.map(({ lot, daysLeft, portions }) => [lot, daysLeft, portions])).toEqual([
    ["onion-start", -1, undefined],
    ["bean-rice-pot-kitchen-phone-20", 41, 1],
  ]);
  expect(useUpList(state, "2026-12-23", 10)).toHaveLength(1);
  expect(portionsAtHand(state, "2026-12-23")).toMatchObject([{ dish: "bean-rice-pot", portions: 1, place: "freezer" }]);
  expect(portionsAtHand(state, "2027-03-01")).toEqual([]);
});
