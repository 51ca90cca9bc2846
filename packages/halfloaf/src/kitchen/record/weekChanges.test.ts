import { describe, expect, test } from "vitest";
import { checkPlan } from "../../menu/check/index.ts";
import { replan } from "../../menu/index.ts";
import { addDays, daysBetween } from "../../quantity/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { planAccepted, tables } from "./acceptedWeek.testing.ts";
import { followWeek } from "./followWeek.ts";
import { menuOn } from "./menuOn.ts";
import type { EventBody } from "./Pen.ts";
import { weekChanges } from "./weekChanges.ts";
import { lotsInDanger, weekNews } from "./weekNews.ts";

const { kitchen, week, stateOf } = planAccepted();

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
