import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays, daysBetween } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import type { DayJob } from "../cooking/jobsOfDay.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { eat } from "./act/eat.ts";
import { followWeek } from "./followWeek.ts";
import { foods as frozenFoods } from "./frozen/frozen.testing.ts";
import { menuOn } from "./menuOn.ts";
import { type EventBody, penOf } from "./Pen.ts";
import { fromKitchen, parseRecord } from "./parseRecord.ts";
import { portionsAtHand } from "./portionsAtHand.ts";
import { RecordLedger } from "./RecordLedger.ts";
import { remindersOf, untoldJobs } from "./remindersOf.ts";
import { useUpList } from "./useUpList.ts";
import { weekChanges } from "./weekChanges.ts";
import { lotsInDanger, weekNews } from "./weekNews.ts";

const { kitchen, week, stateOf } = planAccepted();
const RAW = "chicken-thigh-boned";

describe("what the plan has to follow", () => {
  test("of a week that goes as planned there is nothing to tell", () => {
    expect(weekChanges(stateOf(), week, week.from)).toEqual([]);
  });

  test("skips, guests, prices and losses are changes that the re-planner takes", () => {
    const on = addDays(week.from, 4);
    const sitting = week.sittings.find(({ date, kind }) => date === on && kind === "evening");
    const line = week.trips.at(-1)?.lines[0];
    const stock = kitchen.stores[0];
    if (sitting === undefined || line === undefined || stock === undefined) throw new Error("the week lacks something");
    const eater = sitting.eaters[0] as string;
    const state = stateOf(
      { kind: "skipped", on, sitting: "evening", eater },
      { kind: "guest", on: addDays(week.from, 5), sitting: "evening", portions: 2 },
      { kind: "price-seen", on: week.from, pack: line.pack, priceMinor: 7, at: "Corner" },
      { kind: "wasted", on: week.from, lot: stock.id, massG: stock.massG },
    );
    const changes = weekChanges(state, week, week.from);
    expect(changes).toEqual(
      expect.arrayContaining([
        { kind: "skip", at: { date: on, kind: "evening", eater } },
        { kind: "guest", at: { date: addDays(week.from, 5), kind: "evening" }, portions: 2 },
        { kind: "price", pack: line.pack, priceMinor: 7 },
        { kind: "off", lot: stock.id, massG: stock.massG },
      ]),
    );
    expect(changes).toHaveLength(4);
    const changed = changeWeek(kitchen, tables, week, changes, week.from);
    expect(changed.ok ? [] : changed.issues).toEqual([]);
  });

  test("a sitting at which nobody eats is skipped whole, and what is past is left alone", () => {
    const on = addDays(week.from, 2);
    const state = stateOf({ kind: "ate-out", on, sitting: "evening" });
    expect(weekChanges(state, week, on)).toEqual([{ kind: "skip", at: { date: on, kind: "evening" } }]);
    expect(weekChanges(state, week, addDays(on, 1))).toEqual([]);
  });
});

describe("what is not at the shelf", () => {
  const missedOn = (on: string, line: { readonly pack: string }, trip: WeekPlan["trips"][number]): EventBody => ({
    kind: "at-shelf",
    on,
    trip: trip.date,
    shop: trip.shop,
    pack: line.pack,
    isThere: false,
  });

  test("is not to be had until its trip is over, and is no news once the week does without it", () => {
    const [trip] = week.trips;
    const line = trip?.lines[0];
    if (trip === undefined || line === undefined) throw new Error("the week lacks something");
    const state = stateOf(missedOn(trip.date, line, trip));
    const gone = { kind: "gone", pack: line.pack };
    expect(weekChanges(state, week, trip.date)).toEqual([gone]);
    expect(weekNews(state, week, trip.date)).toEqual([gone]);
    const without = {
      ...week,
      trips: week.trips.map((each) => ({ ...each, lines: each.lines.filter(({ pack }) => pack !== line.pack) })),
    };
    expect(weekChanges(state, without, trip.date)).toEqual([gone]);
    expect(weekNews(state, without, trip.date)).toEqual([]);
    const changed = changeWeek(kitchen, tables, week, [gone as { kind: "gone"; pack: string }], trip.date);
    expect(changed.ok ? [] : changed.issues).toEqual([]);
  });

  test("never came home once its trip is over, which is news as long as something is to be cooked of it", () => {
    const { trip, line } = neededLater();
    const state = stateOf(missedOn(trip.date, line, trip));
    const tomorrow = addDays(trip.date, 1);
    const lost = lotsOfLine(week, trip.date, line).map((lot) => ({ kind: "off" as const, lot }));
    expect(weekChanges(state, week, tomorrow)).toEqual(lost);
    expect(weekNews(state, week, tomorrow).length).toBeGreaterThan(0);
    expect(weekNews(state, { ...week, batches: [] }, tomorrow)).toEqual([]);
    const changed = changeWeek(kitchen, tables, week, lost, tomorrow);
    expect(changed.ok ? [] : changed.issues).toEqual([]);
    // Bought after all, as planned, it is there.
    const { food, pack, count, massG } = line;
    const bought = lotsOfLine(week, trip.date, line).map((lot, at): EventBody => {
      const rest = { food, pack, place: "dry-store" as const, massG: massG / count, costMinor: 1 };
      return { kind: "bought", on: tomorrow, lot: `late-${at}`, planned: { week: week.from, lot }, ...rest };
    });
    expect(weekChanges(stateOf(missedOn(trip.date, line, trip), ...bought), week, tomorrow)).toEqual([]);
  });

  /** A line of a trip of which something is cooked on a later day. */
  function neededLater() {
    for (const trip of week.trips)
      for (const line of trip.lines) {
        const lots = lotsOfLine(week, trip.date, line);
        const isNeeded = week.batches.some(
          ({ date, uses }) => date > trip.date && uses.some(({ lot }) => lots.includes(lot)),
        );
        if (isNeeded) return { trip, line };
      }
    throw new Error("nothing is bought for later");
  }

  test("what is asked of a pack stands in for what the record says of it", () => {
    const known = [
      { kind: "gone" as const, pack: "oats" },
      { kind: "price" as const, pack: "rice", priceMinor: 9 },
    ];
    const asked = [{ kind: "price" as const, pack: "oats", priceMinor: 5 }];
    const followed = followWeek((all) => ({ ok: true, value: all }), asked, known);
    expect(followed).toMatchObject({ ok: true, value: { changes: [asked[0], known[1]] } });
  });
});

describe("a label that says an earlier day than the week took a lot to keep", () => {
  /** A pack for the fridge that is bought on a trip and still cooked of after the day that its label is to say. */
  function boughtForLater() {
    for (const trip of week.trips)
      for (const line of trip.lines) {
        if (tables.foods.get(line.food)?.keeping.unopened.fridge === undefined) continue;
        const lots = lotsOfLine(week, trip.date, line);
        const [lot = ""] = lots;
        const later = week.batches.filter(
          ({ date, uses, putBy }) => putBy === undefined && date > trip.date && uses.some((use) => use.lot === lot),
        );
        if (later.length > 0) return { trip, line, lot, lots, later };
      }
    throw new Error("nothing is bought for later");
  }

  const bringHome = (label: { readonly useBy?: string }): EventBody[] => {
    const { trip, line, lots } = boughtForLater();
    return lots.flatMap((lot, at): EventBody[] => {
      const rest = { food: line.food, pack: line.pack, place: "fridge" as const, costMinor: 1 };
      const planned = { week: week.from, lot };
      return [
        { kind: "bought", on: trip.date, lot: `home-${at}`, massG: line.massG / line.count, planned, ...rest },
        { kind: "labelled", on: trip.date, lot: `home-${at}`, ...label },
      ];
    });
  };

  test("is a change, names what is in danger, and is obeyed when the week is planned again, then and ever after", () => {
    const { trip, lot, lots, later } = boughtForLater();
    const state = stateOf(...bringHome({ useBy: trip.date }));
    const known = weekChanges(state, week, trip.date);
    const ends = { kind: "off", lot, lastDate: trip.date };
    expect(known).toContainEqual(ends);
    expect(weekNews(state, week, trip.date)).toContainEqual(ends);
    expect(lotsInDanger(state, week, trip.date)).toContainEqual(
      expect.objectContaining({ lot: "home-0", lastDate: trip.date, batches: expect.arrayContaining(later) }),
    );
    const mended = mend(week, known, trip.date);
    const isUsedLate = ({ batches }: WeekPlan) =>
      batches.some(({ date, uses }) => date > trip.date && uses.some((use) => lots.includes(use.lot)));
    expect(isUsedLate(mended)).toBe(false);
    expect(mended.lots.find(({ id }) => id === lot)).toMatchObject({ keepsUntil: trip.date, leftG: 0 });
    const { openingMinor, tillMinor, platesMinor, wasteMinor, carryOverMinor } = mended.accounts;
    expect(openingMinor + tillMinor).toBe(platesMinor + wasteMinor + carryOverMinor);
    expect(weekNews(state, mended, trip.date)).toEqual([]);
    expect(lotsInDanger(state, mended, trip.date)).toEqual([]);
    expect(isUsedLate(mend(mended, [{ kind: "bought", lot }], trip.date))).toBe(false);
  });

  test("is none where all of it is cooked by then, or where no day stands on it", () => {
    const { trip, later } = boughtForLater();
    const state = stateOf(...bringHome({ useBy: later.at(-1)?.date ?? trip.date }));
    expect(weekNews(state, week, trip.date)).toEqual([]);
    expect(weekChanges(stateOf(...bringHome({})), week, trip.date)).toMatchObject([{ kind: "bought" }]);
  });

  function mend(before: WeekPlan, changes: Parameters<typeof changeWeek>[3], today: string): WeekPlan {
    const followed = followWeek((all) => changeWeek(kitchen, tables, before, all, today), [], changes);
    if (!followed.ok) throw new Error(JSON.stringify(followed.issues));
    const { changed } = followed.value;
    const outcome = replan(changed.week, { judge: checkPlan, moves: 1500, wideMoves: 1, farMoves: 3000 });
    const plan = outcome.kind === "planned" ? outcome.plan : outcome.leastBroken;
    if (plan === undefined) throw new Error("no plan");
    return writeWeek(kitchen, tables, changed, plan, { seed: 1, moves: 1500, moneyMinor: 0 });
  }
});

describe("what was cooked before and is too little", () => {
  const left = week.sittings.find(
    ({ leftover, date, batch }) => leftover && date > (week.batches[batch]?.date ?? date),
  );
  const batch = week.batches[left?.batch ?? -1];
  if (left === undefined || batch === undefined) throw new Error("nothing is left over for another day");
  const { date, kind, dish, eaters } = left;
  const fed = week.sittings.filter((each) => each.batch === left.batch);
  const later = fed.filter((each) => each.date > batch.date);
  const pot = (portions: number): EventBody => {
    const rest = { portions, portionG: 300, keeps: { fridgeDays: 30 }, uses: [] };
    return { kind: "cooked", on: batch.date, sitting: batch.kind, lot: "pot", dish, ...rest };
  };
  const today = addDays(batch.date, 1);
  const shortOf = (...bodies: EventBody[]) =>
    weekChanges(stateOf(...bodies), week, today).filter((change) => change.kind === "short");
  const at = { date, kind, eater: eaters[0] as string };
  const needed = later.reduce((sum, each) => sum + each.portions, 0);

  test("is missed at the sittings that it was left over for, the first served first, unless nobody eats there", () => {
    expect(shortOf()).toEqual([]);
    expect(shortOf(pot(needed))).toEqual([]);
    expect(shortOf(pot(0.95 * needed))).toEqual([]);
    expect(shortOf(pot(left.portions / 2))).toContainEqual({ kind: "short", at, dish });
    expect(shortOf(pot(needed - (later.at(-1)?.portions ?? 0) / 2))).toHaveLength(1);
    const gone: EventBody = { kind: "wasted", on: batch.date, lot: "pot", massG: 300 * needed };
    expect(shortOf(pot(needed), gone)).toHaveLength(later.length);
    const skipped = later.map((each): EventBody => ({ kind: "skipped", on: each.date, sitting: each.kind }));
    expect(shortOf(pot(needed), gone, ...skipped)).toEqual([]);
  });

  test("is news, and no plate of the week that follows is to come of it", () => {
    const state = stateOf(pot(left.portions / 4));
    expect(weekNews(state, week, today).map((change) => change.kind)).toContain("short");
    const changed = changeWeek(kitchen, tables, week, weekChanges(state, week, today), today);
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    const { week: asked, stated } = changed.value;
    const isIt = (k: number): boolean =>
      stated.sittings[k]?.date === date && stated.sittings[k]?.eaters[0] === at.eater;
    const feeding = asked.plan.batches.filter(({ sittings }) =>
      sittings.some((k) => isIt(k) && stated.sittings[k]?.kind === kind),
    );
    const feeds = feeding.flatMap(({ sittings }) => sittings.map((k) => stated.sittings[k]?.date ?? ""));
    expect(feeds.length).toBeGreaterThan(0);
    expect(feeds.filter((day) => day < today)).toEqual([]);
    expect(asked.losses.length).toBeGreaterThan(0);
  });
});

describe("what is done today", () => {
  test("packs of today's trip that came home stay in the week that is planned again, and so does the dish that is cooked", () => {
    const trip = week.trips[0] as WeekPlan["trips"][number];
    const [first] = trip.lines;
    const missing = trip.lines.at(-1);
    const batch = week.batches.find(({ date, putBy }) => date >= trip.date && putBy === undefined);
    if (first === undefined || missing === undefined || missing === first || batch === undefined)
      throw new Error("the week lacks something");
    const day = daysBetween(week.from, trip.date) + 1;
    const homecoming = Array.from({ length: first.count }, (_, copy): EventBody => {
      const lot = `${first.pack}-day-${day}-${copy + 1}`;
      const planned = { week: week.from, lot };
      const rest = { place: "dry-store" as const, massG: first.massG / first.count, costMinor: 1, pack: first.pack };
      return { kind: "bought", on: trip.date, lot: `home-${copy}`, food: first.food, planned, ...rest };
    });
    const known = weekChanges(stateOf(...homecoming), week, trip.date);
    expect(known).toContainEqual({ kind: "bought", lot: `${first.pack}-day-${day}-1` });
    const asked = { kind: "gone" as const, pack: missing.pack };
    const followed = followWeek((all) => changeWeek(kitchen, tables, week, all, trip.date), [asked], known);
    if (!followed.ok) throw new Error(JSON.stringify(followed.issues));
    const { stated, week: changed } = followed.value.changed;
    const outcome = replan(changed, { judge: checkPlan, moves: 1500, farMoves: 3000 });
    expect(outcome.kind).toBe("planned");
    const plan = outcome.kind === "planned" ? outcome.plan : undefined;
    const counts = (id: string) =>
      plan?.purchases.reduce((sum, { pack, count }) => (stated.packs[pack]?.id === id ? sum + count : sum), 0);
    expect(counts(first.pack)).toBeGreaterThanOrEqual(first.count);
    expect(counts(missing.pack)).toBe(0);
  });

  test("a dish of today that is cooked is wanted where it was, and one of another day is not", () => {
    const batch = week.batches.find(({ putBy }) => putBy === undefined);
    if (batch === undefined) throw new Error("nothing is cooked");
    const { date, kind, dish } = batch;
    const rest = { portions: 1, portionG: 300, keeps: { fridgeDays: 1 }, uses: [], sitting: kind };
    const state = stateOf({ kind: "cooked", on: date, lot: "done", dish, ...rest });
    const wanted = { kind: "want" as const, at: { date, kind }, dish };
    expect(weekChanges(state, week, date)).toEqual([{ ...wanted, done: "cooked" }]);
    expect(weekChanges(state, week, addDays(date, 1))).toEqual([]);
    const plates = [{ lot: "done", massG: 300 }];
    const eaten = stateOf(
      { kind: "cooked", on: date, lot: "done", dish, ...rest },
      { kind: "eaten", on: date, sitting: kind, plates },
    );
    expect(weekChanges(eaten, week, date)).toEqual([{ ...wanted, done: "eaten" }]);
  });
});

describe("the accepted week of a day", () => {
  test("is the last accepted by then, or the first where all were accepted later", () => {
    const later = { ...week, kitchen: "later" };
    const state = stateOf({ kind: "menu-accepted", on: addDays(week.from, 3), week: later });
    const nameOn = (at: number) => menuOn(state, addDays(week.from, at))?.week.kitchen;
    expect([0, 2, 3, 6].map(nameOn)).toEqual([week.kitchen, week.kitchen, "later", "later"]);
    expect([nameOn(-1), nameOn(7)]).toEqual([undefined, undefined]);
  });
});

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
