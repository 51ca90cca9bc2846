import type { WeekPlan } from "../../kitchen/index.ts";
import { addDays, type CivilDate } from "../../quantity/index.ts";
import { labelOfLot, purchaseOf, wastedOn } from "../lotFacts.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { DayFlow, DayLeft, DayRest, DayWaiting } from "./DaySheet.ts";

type Lot = WeekPlan["lots"][number];

const MORE_THAN_DUST_G = 1e-4;
/** What keeps longer than this after the day is no news and stands with the rest of the stores. */
const SOON_DAYS = 5;

/** What is there when the day is over, and what was thrown away on it. */
export interface DayStock {
  readonly flow: DayFlow;
  readonly left: DayLeft;
  readonly wasted: readonly DayRest[];
}

/**
 * The stores of a day in money: opening + till = plates + waste + left. What is cooked and not yet eaten is left as well, at
 * what went into it. The opening of a day is what the day before left.
 */
export function dayStock(source: WeekSource, date: CivilDate): DayStock {
  const { week } = source;
  const left = leftOn(source, date);
  const before = addDays(date, -1);
  const wasted = week.lots.filter((lot) => lot.wastedG > 0 && wastedOn(week, lot) === date);
  const flow: DayFlow = {
    openingMinor: date <= week.from ? week.accounts.openingMinor : leftOn(source, before).totalMinor,
    tillMinor: add(week.trips.filter((trip) => trip.date === date).map(({ tillMinor }) => tillMinor)),
    platesMinor: add(week.sittings.filter((one) => one.date === date).flatMap(({ plateMinor }) => plateMinor)),
    wasteMinor: add(wasted.map(({ wastedMinor }) => wastedMinor)),
    leftMinor: left.totalMinor,
  };
  return {
    flow,
    left,
    wasted: wasted.map((lot) => toRest(source, lot, lot.wastedG, lot.wastedMinor)),
  };
}

function leftOn(source: WeekSource, date: CivilDate): DayLeft {
  const { week } = source;
  const rests = week.lots.flatMap((lot) => restOn(week, lot, date));
  const until = addDays(date, SOON_DAYS);
  const touched = rests.filter(
    ({ lot, massG, usedToday }) => massG > MORE_THAN_DUST_G && (lot.keepsUntil ?? (usedToday ? date : "9")) <= until,
  );
  const others = rests.filter((rest) => !touched.includes(rest));
  const waiting = waitingOn(source, date);
  const lines = gatherAlike(touched.map(({ lot, massG, costMinor }) => toRest(source, lot, massG, costMinor)));
  const othersMinor = add(others.map(({ costMinor }) => costMinor));
  return {
    soon: lines.sort((a, b) => ((a.keepsUntil ?? "9") < (b.keepsUntil ?? "9") ? -1 : 1)),
    waiting,
    others: { packs: others.filter(({ massG }) => massG > MORE_THAN_DUST_G).length, costMinor: othersMinor },
    totalMinor: add([...lines, ...waiting].map(({ costMinor }) => costMinor)) + othersMinor,
  };
}

interface Rest {
  readonly lot: Lot;
  readonly massG: number;
  readonly costMinor: number;
  readonly usedToday: boolean;
}

/** What is left of a lot at the end of a day; nothing where it has not been bought yet. */
function restOn(week: WeekPlan, lot: Lot, date: CivilDate): Rest[] {
  const boughtOn = purchaseOf(week, lot)?.trip.date;
  if (boughtOn !== undefined && boughtOn > date) return [];
  const uses = week.batches.flatMap((batch) =>
    batch.date <= date ? batch.uses.filter((use) => use.lot === lot.id).map((use) => ({ ...use, on: batch.date })) : [],
  );
  const isGone = lot.wastedG > 0 && wastedOn(week, lot) <= date;
  const [goneG, goneMinor] = isGone ? [lot.wastedG, lot.wastedMinor] : [0, 0];
  return [
    {
      lot,
      massG: Math.max(0, lot.massG - add(uses.map(({ massG }) => massG)) - goneG),
      costMinor: lot.costMinor - add(uses.map(({ costMinor }) => costMinor)) - goneMinor,
      usedToday: uses.some(({ on }) => on === date),
    },
  ];
}

/** Cooked and not eaten by the end of a day, boxes for later weeks among it. */
function waitingOn({ week, names }: WeekSource, date: CivilDate): DayWaiting[] {
  return week.batches.flatMap(({ dish, date: cookedOn, portions, costMinor }, batch) => {
    if (cookedOn > date) return [];
    const eaten = week.sittings.filter((sitting) => sitting.batch === batch && sitting.date <= date);
    const rest = portions - add(eaten.map((sitting) => sitting.portions));
    const restMinor = costMinor - add(eaten.flatMap(({ plateMinor }) => plateMinor));
    if (rest < 1e-6 && restMinor === 0) return [];
    return [{ dish: { id: dish, name: names.dish(dish) }, portions: Math.max(0, rest), costMinor: restMinor }];
  });
}

/** Packs of one kind that keep until the same day, as one line. */
function gatherAlike(rests: readonly DayRest[]): DayRest[] {
  const lines = new Map<string, DayRest>();
  for (const rest of rests) {
    const key = `${rest.label} ${rest.keepsUntil}`;
    const same = lines.get(key);
    const [massG, costMinor] = [rest.massG + (same?.massG ?? 0), rest.costMinor + (same?.costMinor ?? 0)];
    lines.set(key, { ...rest, massG, costMinor });
  }
  return [...lines.values()];
}

function toRest(source: WeekSource, lot: Lot, massG: number, costMinor: number): DayRest {
  const { keepsUntil } = lot;
  return { label: labelOfLot(source, lot), massG, costMinor, ...(keepsUntil !== undefined && { keepsUntil }) };
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
