import { changeProblem, type Loss, type MenuPlan } from "../../menu/index.ts";
import { addDays, type CivilDate, daysBetween, type Issue, type Parsed } from "../../quantity/index.ts";
import { accountLots } from "../accountLots.ts";
import { stateTogether } from "../cooking/stateTogether.ts";
import type { DatedSitting } from "../datedSittings.ts";
import type { Kitchen } from "../kitchen.ts";
import { leaveOutLate } from "../leaveOutLate.ts";
import { readWeekPlan } from "../readWeekPlan.ts";
import { withStandRise } from "../standRise.ts";
import { stockBesides } from "../stockBesides.ts";
import type { Tables } from "../tables.ts";
import { type KitchenProblem, stateKept } from "../toMenuProblem.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { payBesides } from "./comeBesides.ts";
import { isGuest } from "./isGuest.ts";
import { repricePacks } from "./repricePacks.ts";
import { leaveSeats, NO_PLAN, reseat, type Seats, setPlates, toSeats, withoutSittings } from "./Seats.ts";
import type { KitchenNow } from "./WeekChange.ts";

/** A kept week stated anew as it was when it was written, with what earlier changes made of it. */
export interface RestoredWeek extends Seats {
  /** The file itself. */
  readonly week: WeekPlan;
  readonly plan: MenuPlan;
  /** What the file says was thrown away before its time. */
  readonly losses: readonly Loss[];
  /** The kitchen as it is now, where it is stated for that as well. */
  readonly now?: RestoredFor;
}

/** Of a kitchen as it is now what a week is stated for as well, so that it can follow. */
export type RestoredFor = Pick<KitchenNow, "eaters" | "limits">;

const DUST_G = 1e-3;

/**
 * States the days of a kept week as a problem again: those who were away stay away, guests sit where they sat, prices
 * that were paid or expected are those of the file, what came besides is there, what went off is gone; what it cooks at once takes the minutes of its order
 * of work. All else is as the kitchen now says, and what would have to be begun before the first day stands only where the
 * file has it. What the file has on a plate stands there whatever its eaters take, as that may have become known later: `barPlates`
 * takes it off what is left. With `now` there are dishes for its eaters, too, and the budget stands the rise of its limits. Every place where the file does not fit the kitchen is an issue with its path
 * in the file.
 */
export function restoreWeek(kitchen: Kitchen, tables: Tables, week: WeekPlan, now?: RestoredFor): Parsed<RestoredWeek> {
  const strangers = [...findStrangers(kitchen, week), ...findStrangeFoods(tables, week)];
  if (strangers.length > 0) return { ok: false, issues: strangers };
  const asked = withStandRise(stockBesides(kitchen, week), now?.limits.standRisePct ?? week.accounts.risen?.pct ?? 0);
  const fresh = stateKept(asked, tables, week, {
    servedAt: ({ date, kind }) =>
      week.sittings.flatMap((each) => {
        const batch = each.date === date && each.kind === kind ? week.batches[each.batch] : undefined;
        return batch ?? [];
      }),
    ...(now !== undefined && { eatersNow: now.eaters }),
  });
  const seats = restoreSeats(kitchen, week, toSeats(fresh));
  const stated = restorePrices(kitchen, week, seats.stated);
  const read = readWeekPlan(week, stated);
  if (!read.ok) return read;
  const losses = findLosses(week, stated, read.value);
  const timed = stateTogether(stated, read.value, asked, tables);
  const problem = payBesides(timed.problem, read.value, week);
  return {
    ok: true,
    value: onDay(
      { ...seats, stated: { ...timed, problem }, plan: read.value, losses, week, ...(now !== undefined && { now }) },
      asked,
      week.from,
    ),
  };
}

/** The week as it can still be changed on one of its days: what would have to be begun before, and was not, stands nowhere. */
export function onDay(restored: RestoredWeek, kitchen: Pick<Kitchen, "pace">, today: CivilDate): RestoredWeek {
  return { ...restored, stated: leaveOutLate(restored.stated, kitchen, today, restored.plan) };
}

/** Eaters of the file that are neither the kitchen's nor guests. */
function findStrangers(kitchen: Kitchen, week: WeekPlan): Issue[] {
  const known = new Set(kitchen.eaters.map(({ id }) => id));
  return week.sittings.flatMap(({ eaters }, at) =>
    eaters.flatMap((id, i) =>
      known.has(id) || isGuest(id)
        ? []
        : [weekIssue("eater-unknown", ["sittings", at, "eaters", i], "an eater of the kitchen", id)],
    ),
  );
}

/** Foods of what came besides that no table has. */
function findStrangeFoods({ foods }: Tables, { besides = [] }: WeekPlan): Issue[] {
  return besides.flatMap(({ stock: { food } }, at) =>
    foods.has(food) ? [] : [weekIssue("food-unknown", ["besides", at, "stock", "food"], "a food of the table", food)],
  );
}

/** The kitchen's sitting of each sitting of the file: the same time and kind, and the most of those who sit there. */
function matchSittings(week: WeekPlan, stated: KitchenProblem): Map<number, number> {
  const found = new Map<number, number>();
  const pairs = week.sittings.flatMap((sitting, at) =>
    stated.sittings.flatMap((own, k) => {
      if (own.putBy || own.date !== sitting.date || own.kind !== sitting.kind) return [];
      const shared = own.eaters.filter((id) => sitting.eaters.includes(id)).length;
      const alike = Number(own.packed === sitting.packed) + Number(own.heat === sitting.heat);
      return [{ at, k, likeness: 10 * shared + alike }];
    }),
  );
  const taken = new Set<number>();
  for (const { at, k } of pairs.sort((a, b) => b.likeness - a.likeness)) {
    if (found.has(k) || taken.has(at)) continue;
    found.set(k, at);
    taken.add(at);
  }
  return found;
}

function restoreSeats(kitchen: Kitchen, week: WeekPlan, fresh: Seats): Seats {
  const fileOf = matchSittings(week, fresh.stated);
  const eatersAt = (k: number): readonly string[] => week.sittings[fileOf.get(k) ?? -1]?.eaters ?? [];
  let seats = fresh;
  for (const { eater, sittings } of fresh.stated.shares) {
    const away = sittings.filter((k) => !eatersAt(k).includes(eater.id));
    seats = leaveSeats(seats, kitchen, eater.id, away);
  }
  // Boxes that are put by have nobody at them and stay.
  const isKept = (k: number): boolean => fileOf.has(k) || fresh.stated.sittings[k]?.putBy === true;
  const kept = fresh.stated.sittings.flatMap((_, k) => (isKept(k) ? [k] : []));
  const gone = fresh.stated.sittings.flatMap((_, k) => (isKept(k) ? [] : [k]));
  const problem = withoutSittings(seats.stated.problem, gone);
  const sittings = kept.map(
    (k): DatedSitting => ({ ...(fresh.stated.sittings[k] as DatedSitting), eaters: eatersAt(k) }),
  );
  const plates = setPlates(problem, (k) => {
    const at = fileOf.get(kept[k] as number);
    return (at === undefined ? problem.sittings[k]?.portions : week.sittings[at]?.portions) ?? 0;
  });
  return { ...seats, stated: reseat(kitchen, { ...seats.stated, problem: plates }, sittings) };
}

/** The kitchen's packs at the prices of the file, each from the day of the trip on that has it. */
function restorePrices(kitchen: Kitchen, week: WeekPlan, stated: KitchenProblem): KitchenProblem {
  let now = stated;
  for (const { date, lines } of [...week.trips].sort((a, b) => (a.date < b.date ? -1 : 1))) {
    const day = daysBetween(week.from, date);
    for (const { pack: id, count, priceMinor, savedMinor, seenOn } of lines) {
      const shelfMinor = (priceMinor + savedMinor) / count;
      const pack = now.packs.findIndex((each, at) => {
        const menu = now.problem.packs[at];
        return each.id === id && menu !== undefined && menu.fromDay <= day && day <= menu.toDay;
      });
      if (pack < 0 || now.packs[pack]?.priceMinor === shelfMinor) continue;
      now = setPrice(kitchen, now, { pack, priceMinor: shelfMinor, day, seenOn: seenOn ?? date });
    }
  }
  return now;
}

interface PriceSeen {
  readonly pack: number;
  readonly priceMinor: number;
  readonly day: number;
  readonly seenOn: CivilDate;
}

function setPrice(
  kitchen: Kitchen,
  stated: KitchenProblem,
  { pack, priceMinor, day, seenOn }: PriceSeen,
): KitchenProblem {
  const changed = changeProblem(stated.problem, NO_PLAN, [{ kind: "price", pack, priceMinor }], { today: day });
  if (!changed.ok) throw new RangeError(`pack ${pack} could not get its price of the file`);
  const { problem, packBefore } = changed.value;
  return { ...stated, problem, packs: repricePacks(kitchen, problem, stated.packs, packBefore, seenOn) };
}

/** What was thrown away of lots that would have kept to the last day, and lots that end earlier than the kitchen says. */
function findLosses(week: WeekPlan, stated: KitchenProblem, plan: MenuPlan): Loss[] {
  const lastDate = addDays(week.from, week.days - 1);
  const ends = new Map(accountLots(stated, plan).map(({ id, lastDay }) => [id, addDays(week.from, lastDay)]));
  return week.lots.flatMap((lot): Loss[] => {
    const isEarly = lot.keepsUntil !== undefined && lot.keepsUntil < (ends.get(lot.id) ?? lot.keepsUntil);
    const early = isEarly ? nameLot(lot.id, stated, plan) : undefined;
    if (early !== undefined) return [{ lot: early, lastDay: daysBetween(week.from, lot.keepsUntil as CivilDate) }];
    const keeps = lot.keepsUntil === undefined || lot.keepsUntil >= lastDate;
    const name = lot.wastedG > DUST_G && keeps ? nameLot(lot.id, stated, plan) : undefined;
    return name === undefined ? [] : [{ lot: name, massG: lot.wastedG }];
  });
}

/** The lot of an id as weeks name them: a lot of the stores, or a pack by the day it is bought and its number. */
export function nameLot(id: string, stated: KitchenProblem, plan: MenuPlan): Loss["lot"] | undefined {
  const stock = stated.lots.findIndex((lot) => lot.id === id);
  if (stock >= 0) return { stock };
  for (const [purchase, { trip, pack, count }] of plan.purchases.entries()) {
    const day = stated.problem.trips[trip]?.day ?? 0;
    for (let copy = 0; copy < count; copy++) if (id === nameCopy(stated, pack, day, copy)) return { purchase, copy };
  }
  return undefined;
}

/** The id of a lot in weeks. */
export function idOfLot(name: Loss["lot"], stated: KitchenProblem, plan: MenuPlan): string | undefined {
  if ("stock" in name) return stated.lots[name.stock]?.id;
  const purchase = plan.purchases[name.purchase];
  if (purchase === undefined) return undefined;
  return nameCopy(stated, purchase.pack, stated.problem.trips[purchase.trip]?.day ?? 0, name.copy);
}

function nameCopy({ packs }: KitchenProblem, pack: number, day: number, copy: number): string {
  return `${packs[pack]?.id}-day-${day + 1}-${copy + 1}`;
}

/** One issue as the reader of weeks tells them. */
export function weekIssue(code: string, path: Issue["path"], expected: string, received: string): Issue {
  return { code, path, expected, received };
}
