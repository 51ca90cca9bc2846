import type { Dish } from "../../dish/index.ts";
import { retellCautions, type WeekPlan } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { DayPlate, DaySheet, DaySittingLine, DayTrip, SheetCaution } from "./DaySheet.ts";
import { dayIntake } from "./dayIntake.ts";
import { dayStock } from "./dayStock.ts";
import { priceSources } from "./priceSources.ts";

/**
 * The sheet of one day of a week; of a day outside it, a sheet without sittings.
 */
export function toDaySheet(source: WeekSource, date: CivilDate): DaySheet {
  const { week } = source;
  const sittings = week.sittings.filter((sitting) => sitting.date === date).map((one) => toLine(source, one));
  const { flow, left, wasted } = dayStock(source, date);
  return {
    kitchen: week.kitchen,
    currency: week.currency,
    date,
    sittings,
    platesMinor: add(sittings.map(({ costMinor }) => costMinor)),
    eaters: byEater(sittings),
    handsOnMinutes: add(sittings.map(({ handsOnMinutes }) => handsOnMinutes)),
    trips: week.trips.filter((trip) => trip.date === date).map((trip) => toTrip(source, trip)),
    flow,
    left,
    wasted,
    intake: dayIntake(source, date),
    cautions: cautionsOfDishes(source, new Set(sittings.map(({ dish }) => dish.id))),
    sources: priceSources(source, date),
  };
}

function toLine(source: WeekSource, sitting: WeekPlan["sittings"][number]): DaySittingLine {
  const { week, names, tables } = source;
  const batch = week.batches[sitting.batch] as WeekPlan["batches"][number];
  const dish = tables.dishes.find(({ id }) => id === sitting.dish);
  const plates = sitting.eaters.map((id, at) => ({
    eater: { id, name: names.eater(id) },
    costMinor: sitting.plateMinor[at] ?? 0,
  }));
  return {
    kind: sitting.kind,
    dish: { id: sitting.dish, name: names.dish(sitting.dish) },
    batch: sitting.batch,
    packed: sitting.packed,
    leftover: sitting.leftover,
    ...(batch.putBy !== undefined && { putBy: batch.putBy }),
    ...(batch.date !== sitting.date && { cookedOn: batch.date }),
    ahead: !sitting.leftover && batch.putBy === undefined && isBegunAhead(dish),
    handsOnMinutes: wholeMinutes(sitting.handsOnMinutes),
    elapsedMinutes: wholeMinutes(sitting.elapsedMinutes),
    plates,
    costMinor: add(plates.map(({ costMinor }) => costMinor)),
  };
}

/** Rounded up; what floating point adds to a whole minute does not count. */
export function wholeMinutes(minutes: number): number {
  return Math.ceil(minutes - 1e-6);
}

function isBegunAhead(dish: Dish | undefined): boolean {
  return dish?.method.some(({ ahead }) => ahead) === true;
}

function byEater(sittings: readonly DaySittingLine[]): DayPlate[] {
  const sums = new Map<string, DayPlate>();
  for (const { eater, costMinor } of sittings.flatMap(({ plates }) => plates)) {
    sums.set(eater.id, { eater, costMinor: (sums.get(eater.id)?.costMinor ?? 0) + costMinor });
  }
  return [...sums.values()];
}

/** A trip with its bill as it is printed. */
function toTrip({ names }: Pick<WeekSource, "names">, trip: WeekPlan["trips"][number]): DayTrip {
  const lines = trip.lines.map(({ label, section, count, massG, priceMinor, savedMinor, estimate, seenOn }) => ({
    label,
    section,
    count,
    massG,
    priceMinor,
    savedMinor,
    estimate,
    ...(seenOn !== undefined && { seenOn }),
  }));
  return {
    shop: { id: trip.shop, name: names.shop(trip.shop) },
    lines,
    tillMinor: add(lines.map(({ priceMinor }) => priceMinor)),
    fareMinor: trip.fareMinor,
    minutes: wholeMinutes(trip.minutes),
  };
}

/** The cautions of some dishes of a week; the one that goes for everything is said by the page itself. */
export function cautionsOfDishes({ week, names, tables }: WeekSource, dishes: ReadonlySet<string>): SheetCaution[] {
  const authored = (id: string) => tables.dishes.find((dish) => dish.id === id)?.cautions;
  const said = retellCautions(week.cautions, authored).filter(({ code }) => code !== "label-first");
  return said.flatMap(({ code, text, authority, dishes: about }) => {
    const here = [...new Set(about)].filter((id) => dishes.has(id));
    if (here.length === 0) return [];
    const named = here.length === dishes.size ? [] : here.map((id) => ({ id, name: names.dish(id) }));
    return [{ code, text, authority, dishes: named }];
  });
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
