import { describe, expect, test } from "vitest";
import { SITTING_KINDS } from "../../dish/index.ts";
import { checkPlan } from "../../menu/check/index.ts";
import { MenuSearch, replan } from "../../menu/index.ts";
import { addDays, type CivilDate, createRandomSource, type RandomSource } from "../../quantity/index.ts";
import { accountOf } from "../../stores/index.ts";
import { changeWeek } from "../changeWeek/changeWeek.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { writeWeek } from "../changeWeek/writeWeek.ts";
import type { SittingKind } from "../datedSittings.ts";
import { readDemoKitchens, readStarterTables } from "../kitchen.testing.ts";
import { type Tables, withOwnFoodsAndDishes } from "../tables.ts";
import { toMenuProblem } from "../toMenuProblem.ts";
import { toWeekPlan } from "../toWeekPlan.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { accountsBy } from "./account/accountsBy.ts";
import { plannedOn } from "./account/plannedOn.ts";
import { cook } from "./act/cook.ts";
import { eat } from "./act/eat.ts";
import { throwAway } from "./act/throwAway.ts";
import { tickPacks } from "./act/tickPacks.ts";
import { toCookWish } from "./act/toCookWish.ts";
import { type Edit, editsBetween } from "./edit.ts";
import { followWeek } from "./followWeek.ts";
import { kitchenOfMenu } from "./kitchenOfMenu.ts";
import type { EditedKitchen, KitchenRecord } from "./kitchenRecord.ts";
import { menuOn } from "./menuOn.ts";
import { type Pen, penOf } from "./Pen.ts";
import { parseRecord } from "./parseRecord.ts";
import { RecordLedger } from "./RecordLedger.ts";
import { remindersOf } from "./remindersOf.ts";
import { toKitchen } from "./toKitchen.ts";
import { weekChanges } from "./weekChanges.ts";

const MOVES = 2500;
const MENDING_MOVES = 800;
const WEEKS = 4;
const DAY_MS = 86_400_000;

/** A kitchen that lives by its record, day by day. */
class Household {
  readonly record: KitchenRecord;
  readonly tables: Tables;
  readonly ledger: RecordLedger;
  readonly luck: RandomSource | undefined;
  /** g of makings that the stores lacked. */
  lackedG = 0;
  private nowMs = 1_800_000_000_000;

  constructor(record: KitchenRecord, tables: Tables, luck?: RandomSource) {
    this.record = record;
    this.tables = withOwnFoodsAndDishes(tables, record.kitchen);
    this.ledger = new RecordLedger(tables.foods, record.events);
    this.luck = luck;
  }

  get pen(): Pen {
    return penOf(this.ledger, { device: "phone", nowMs: this.nowMs });
  }

  /** Plans what is left of the accepted week again after what was told since, and accepts that where there is such a plan. */
  mendWeek(today: CivilDate): boolean {
    const { state, events } = this.ledger;
    const menu = menuOn(state, today);
    if (menu === undefined) throw new Error("no accepted week");
    const kitchen = kitchenOfMenu(menu, state.menus, { events, edits: toEdits(this.record.kitchen) }, this.tables);
    const change = (changes: readonly WeekChange[]) => changeWeek(kitchen, this.tables, menu.week, changes, today);
    const followed = followWeek(change, [], weekChanges(state, menu.week, today));
    if (!followed.ok) throw new Error(JSON.stringify(followed.issues));
    const { changed } = followed.value;
    const outcome = replan(changed.week, { judge: checkPlan, moves: MENDING_MOVES, farMoves: MENDING_MOVES });
    if (outcome.kind === "none") return false;
    const search = { seed: 1, moves: outcome.moves, moneyMinor: outcome.moneyMinor };
    const week = writeWeek(kitchen, this.tables, changed, outcome.plan, search);
    const mended: WeekPlan = JSON.parse(JSON.stringify(week));
    this.ledger.add([this.pen.write({ kind: "menu-accepted", on: today, week: mended })]);
    return true;
  }

  /** Plans a week with what is there, and accepts it. A plan may break limits here: only its sums matter. */
  planWeek(from: CivilDate): WeekPlan {
    const kitchen = toKitchen(this.record.kitchen, this.ledger.state, this.tables.foods, from);
    const stated = toMenuProblem(kitchen, this.tables, from, 7);
    const search = new MenuSearch(stated.problem, 1, { expectedMoves: MOVES });
    while (search.advance().moves < MOVES);
    const menu = search.best() ?? search.leastBroken();
    if (menu === undefined) throw new Error("no menu");
    const week = toWeekPlan(kitchen, this.tables, stated, menu, { seed: 1, moves: MOVES, moneyMinor: 0 });
    const plain: WeekPlan = JSON.parse(JSON.stringify(week));
    this.ledger.add([this.pen.write({ kind: "menu-accepted", on: from, week: plain })]);
    return plain;
  }

  liveDay(week: WeekPlan, day: CivilDate): void {
    this.nowMs += DAY_MS;
    this.ledger.add(throwAway(this.ledger.state, day, this.pen));
    for (const kind of SITTING_KINDS) {
      this.shop(week, day, kind);
      this.cookAll(week, day, kind);
      this.sit(week, day, kind);
    }
    this.spoil(day);
  }

  private shop(week: WeekPlan, day: CivilDate, kind: SittingKind): void {
    const { kitchen } = this.record;
    for (const trip of week.trips) {
      const shop = kitchen.shops.find(({ id }) => id === trip.shop);
      if (trip.date !== day || shop?.beforeSitting !== kind) continue;
      const lines = trip.lines.map(({ pack, count, priceMinor, savedMinor }) => {
        const isDearer = this.happens(0.08);
        const dearer = isDearer ? { priceMinor: Math.round((priceMinor + savedMinor) / count) + 10 } : {};
        const planned = week.lots.filter(({ id }) => id.startsWith(`${pack}-day-${dayNumber(week, day)}-`));
        return { pack, count, ...dearer, planned: planned.map(({ id }) => id) };
      });
      const now = toKitchen(kitchen, this.ledger.state, this.tables.foods, day);
      const done = { on: day, shop: trip.shop, lines, week: week.from, fareMinor: trip.fareMinor };
      const bought = tickPacks(now, this.tables.foods, done, this.pen);
      if (!bought.ok) throw new Error(JSON.stringify(bought.issues));
      this.ledger.add(bought.value);
    }
  }

  private cookAll(week: WeekPlan, day: CivilDate, kind: SittingKind): void {
    for (const [at, batch] of week.batches.entries()) {
      if (batch.date !== day || batch.kind !== kind || batch.putBy !== undefined) continue;
      const dish = this.tables.dishes.find(({ id }) => id === batch.dish);
      const wish = dish && toCookWish(week, at, dish);
      if (wish === undefined) throw new Error(`no dish ${batch.dish}`);
      const { cooked, boxed } = cook(this.ledger.state, this.tables.foods, wish, this.pen);
      this.lackedG += (cooked.unbooked ?? []).reduce((sum, { massG }) => sum + (massG ?? 0), 0);
      this.ledger.add([cooked, ...boxed]);
    }
  }

  private sit(week: WeekPlan, day: CivilDate, kind: SittingKind): void {
    for (const { date, kind: at, eaters, dish, portions } of week.sittings) {
      if (date !== day || at !== kind) continue;
      const { pen } = this;
      if (this.happens(0.06)) {
        this.ledger.add([pen.write({ kind: "skipped", on: day, sitting: kind })]);
        continue;
      }
      if (this.happens(0.04)) this.ledger.add([pen.write({ kind: "guest", on: day, sitting: kind, portions: 1 })]);
      const plates = eaters.map((eater) => ({ eater, dish, portions: portions / eaters.length }));
      const { eaten } = eat(this.ledger.state, { on: day, sitting: kind, plates }, this.pen);
      if (eaten !== undefined) this.ledger.add([eaten]);
    }
  }

  /** Now and then something is found to be off before its time. */
  private spoil(day: CivilDate): void {
    const filled = [...this.ledger.state.lots.values()].filter(({ leftG }) => leftG > 0);
    const lot = filled[Math.floor((this.luck?.() ?? 0) * filled.length)];
    if (lot === undefined || !this.happens(0.15)) return;
    this.ledger.add([this.pen.write({ kind: "wasted", on: day, lot: lot.id, massG: lot.leftG, why: "spoiled" })]);
  }

  private happens(chance: number): boolean {
    return this.luck !== undefined && this.luck() < chance;
  }
}

function dayNumber(week: WeekPlan, day: CivilDate): number {
  let number = 1;
  for (let each = week.from; each < day; each = addDays(each, 1)) number++;
  return number;
}

function open(name: string): KitchenRecord {
  const demo = readDemoKitchens().find((each) => each.name === name);
  const read = parseRecord(JSON.parse(JSON.stringify(demo?.kitchen)));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

/**
 * A record whose limits are so wide that short searches find plans, in the middle of a week too, and that what is cooked at
 * once, which nobody times here, is done in time; it puts portions by.
 */
function openWide(name: string): KitchenRecord {
  const { kitchen, ...rest } = open(name);
  const { limits, kit, sittings } = kitchen;
  const wide = { ...limits, handsOnMinutes: 240, energyTolerancePct: 40, distinctEvenings: 1, tripsPerWeek: 7 };
  const { budgetMinor } = limits;
  return {
    ...rest,
    kitchen: {
      ...kitchen,
      sittings: sittings.map((sitting) => ({ ...sitting, minutes: 2 * sitting.minutes })),
      useUp: [],
      puttingBy: { portions: 1, least: kit.freezerLitres > 0 ? 1 : 0, most: 2 },
      limits: budgetMinor === undefined ? wide : { ...wide, budgetMinor: 3 * budgetMinor },
    },
  };
}

function toEdits(kitchen: EditedKitchen): Edit[] {
  return editsBetween(undefined, kitchen).map((edit, at) => ({ id: `setter-${at + 1}`, atMs: 0, tick: at, ...edit }));
}

const tables = readStarterTables();
const names = readDemoKitchens().map(({ name }) => name);

describe.each(names)("four weeks in %s", (name) => {
  test("with a life of chance, planned again amid each week: plans, stores, tills, plates and accounts agree every day", () => {
    const home = new Household(openWide(name), tables, createRandomSource(7));
    const first = home.record.kitchen.startsOn;
    let mended = 0;
    for (let number = 0; number < WEEKS; number++) {
      const from = addDays(first, 7 * number);
      let week = home.planWeek(from);
      for (let at = 0; at < 7; at++) {
        const day = addDays(from, at);
        if (at === 2 + (number % 3) && home.mendWeek(day)) mended++;
        week = menuOn(home.ledger.state, day)?.week ?? week;
        home.liveDay(week, day);
        expectAgreement(home, first, day);
      }
      expectDone(home, week, from);
      // What is past can't be changed any more; what went off can only be told.
      const late = weekChanges(home.ledger.state, week, addDays(from, 7));
      expect(late.every(({ kind }) => kind === "off")).toBe(true);
    }
    expect(mended).toBeGreaterThan(1);
    expect(home.ledger.state.plates.length).toBeGreaterThan(WEEKS * 7);
    const again = new RecordLedger(home.tables.foods, JSON.parse(JSON.stringify(home.ledger.events)));
    expect(again.state).toEqual(home.ledger.state);
  });
});

/** All that the weeks had of these days was bought and cooked, and what they put by is in the freezer or eaten. */
function expectDone({ ledger }: Household, week: WeekPlan, from: CivilDate): void {
  const { state } = ledger;
  const to = addDays(from, 6);
  const lots = [...state.planned.keys()].filter((key) => key.startsWith(`${from} `));
  const packs = week.trips.flatMap(({ lines }) => lines).reduce((sum, { count }) => sum + count, 0);
  expect(lots.length).toBe(packs);
  const cooked = [...state.cookings.values()].filter(({ on }) => on >= from && on <= to);
  expect(cooked.length).toBe(week.batches.filter(({ putBy }) => putBy === undefined).length);
  expect(plannedOn(state, from, to)?.tillMinor).toBe(week.accounts.tillMinor);
  const frozen = [...state.lots.values()].filter(({ cooked: portions, origin }) => portions && origin === "split");
  expect(frozen.filter(({ since }) => since >= from && since <= to).length).toBe(week.boxes?.length ?? 0);
}

function expectAgreement({ ledger, record, tables: of }: Household, first: CivilDate, day: CivilDate): void {
  const { state } = ledger;
  expect(state.faults).toEqual([]);
  expect(state.toCount.size).toBe(0);
  const { leftMinor, boughtMinor, openingMinor, usedMinor, wastedMinor } = accountOf(state.lots.values());
  const lines = accountsBy(state, "day", first, day);
  const sum = (key: "tillMinor" | "platesMinor" | "wasteMinor") => lines.reduce((total, line) => total + line[key], 0);
  expect(lines[0]?.openingMinor).toBe(openingMinor);
  expect([sum("tillMinor"), sum("platesMinor"), sum("wasteMinor")]).toEqual([boughtMinor, usedMinor, wastedMinor]);
  expect(lines.at(-1)?.carryOverMinor).toBe(leftMinor);
  const told = remindersOf(record.kitchen, state, of, day);
  expect(told.filter(({ kind }) => kind === "gone-off")).toEqual([]);
}

test("a week lived as planned costs at the till what was planned, lacks nothing, and eats what was cooked", () => {
  const home = new Household(open("port-ansel"), tables);
  const from = home.record.kitchen.startsOn;
  const week = home.planWeek(from);
  for (let at = 0; at < 7; at++) home.liveDay(week, addDays(from, at));
  const { state } = home.ledger;
  const to = addDays(from, 6);
  const [line] = accountsBy(state, "week", from, to);
  const planned = plannedOn(state, from, to);
  expect([line?.tillMinor, line?.faresMinor]).toEqual([planned?.tillMinor, planned?.faresMinor]);
  expect(planned?.tillMinor).toBe(week.accounts.tillMinor);
  expect(planned?.platesMinor).toBe(week.accounts.platesMinor);
  expect(planned?.wasteMinor).toBe(week.accounts.wasteMinor);
  expect(home.lackedG).toBeLessThan(1);
  expect(state.cookings.size).toBe(week.batches.length);
  const eatenG = state.plates.reduce((sum, { massG }) => sum + massG, 0);
  const cookedG = [...state.lots.values()].reduce((sum, lot) => sum + (lot.cooked === undefined ? 0 : lot.broughtG), 0);
  expect(eatenG).toBeCloseTo(cookedG, 3);
});
