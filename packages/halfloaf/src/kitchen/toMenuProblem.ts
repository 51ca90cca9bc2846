import type { Food } from "../food/index.ts";
import type { MenuLot, MenuProblem, MenuSitting, MenuTrip } from "../menu/index.ts";
import type { Pack } from "../price/index.ts";
import { addDays, type CivilDate, daysBetween, weekday } from "../quantity/index.ts";
import { keepsUntil, type Lot } from "../stores/index.ts";
import { type DatedSitting, datedSittings, orderInDay, type SittingKind } from "./datedSittings.ts";
import { type EaterShare, eaterShares } from "./eaterShares.ts";
import type { FittedDish, Unfit } from "./fitDish.ts";
import { fitDishes, type KeptFitting } from "./fitDishes.ts";
import type { KeptCooking } from "./keptWays.ts";
import type { Kitchen } from "./kitchen.ts";
import { leaveOutLate } from "./leaveOutLate.ts";
import { type PossibleTrip, pricePacks } from "./pricePacks.ts";
import { isFreezable, listFreezable, makeNothing, wishBoxes, withBoxes, withWorth } from "./puttingBy.ts";
import { statePutBy, toMenuPutBy } from "./statePutBy.ts";
import type { Tables } from "./tables.ts";
import { toLimits } from "./toLimits.ts";
import { PLANNED_COMPONENTS, rememberRetained, toMenuDish } from "./toMenuDish.ts";
import { toMenuFood } from "./toMenuFood.ts";
import { toProfiles } from "./toProfiles.ts";
import { listWeeks, type StatedWish, toWishes } from "./toWishes.ts";

const LEFTOVER_MINUTES = 2;
const SHORTFALL_KNEE = 0.1;

/** A kitchen's days as a planning problem, with the meaning of every index. */
export interface KitchenProblem {
  readonly problem: MenuProblem;
  readonly from: CivilDate;
  readonly sittings: readonly DatedSitting[];
  readonly shares: readonly EaterShare[];
  readonly foods: readonly Food[];
  /**
   * A dish may stand here several times: cooked with other alternatives for other eaters, or put by already. Where boxes are
   * put by, the problem has one dish more at its end: nothing.
   */
  readonly dishes: readonly FittedDish[];
  readonly packs: readonly Pack[];
  readonly lots: readonly Lot[];
  readonly trips: readonly { readonly shop: string; readonly date: CivilDate }[];
  /** How many percent higher the estimated prices may come out for the budget to hold still. */
  readonly standRisePct: number;
  /** What the problem's wishes are about, each by its index. */
  readonly wishes: readonly StatedWish[];
  /** Dishes that no sitting can have, and why. */
  readonly unfit: readonly { readonly dish: string; readonly why: Unfit }[];
  /** Lots of the stores that are past their time on the first day. */
  readonly goneOff: readonly Lot[];
  /** First day on which anything can be begun: no dish stands where something of it would have to begin before. */
  readonly beginsOn: CivilDate;
}

/**
 * States the kitchen's days from a date on as a problem for `menu/`; the kitchen must have passed `checkKitchen`. What would
 * have to be begun before the first day is not in it.
 */
export function toMenuProblem(kitchen: Kitchen, tables: Tables, from: CivilDate, days: number): KitchenProblem {
  return leaveOutLate(stateDays(kitchen, tables, from, days), kitchen, from);
}

/**
 * The days of a kept week, so that it can be read: the ways in which its cookings took their makings are there too, and all
 * that may have been begun before the first day. Once it is read, `leaveOutLate` leaves out what it does not have of that.
 * `fitting` has the dishes stand besides where the week had them, and for eaters as they have become.
 */
export function stateKept(
  kitchen: Kitchen,
  tables: Tables,
  {
    from,
    days,
    batches,
  }: { readonly from: CivilDate; readonly days: number; readonly batches: readonly KeptCooking[] },
  fitting: Omit<KeptFitting, "cooked"> = {},
): KitchenProblem {
  return stateDays(kitchen, tables, from, days, { cooked: batches, ...fitting });
}

function stateDays(
  kitchen: Kitchen,
  tables: Tables,
  from: CivilDate,
  days: number,
  kept?: KeptFitting,
): KitchenProblem {
  const sittings = withBoxes(kitchen, datedSittings(kitchen, from, days));
  const shares = eaterShares(kitchen, sittings, days);
  const stock = kitchen.stores.map((lot) => ({ lot, lastDay: lastDayOf(lot, tables, from) }));
  const good = stock.filter(({ lastDay }) => lastDay >= 0);
  const hadFoods = new Set([...kitchen.packs.map(({ food }) => food), ...good.map(({ lot }) => lot.food)]);
  const isToBeHad = (food: string): boolean => hadFoods.has(food);
  const { fitted: cooked, servedAt, unfit } = fitDishes(kitchen, tables, sittings, isToBeHad, kept);
  const putBy = statePutBy(kitchen, tables, sittings, from);
  const fitted = [...cooked, ...putBy.map(({ dish }) => dish)];
  const arrivals = [...new Set(kitchen.shops.map((shop) => orderInDay(shop.beforeSitting as SittingKind)))].sort(
    (a, b) => a - b,
  );
  const periodOf = (day: number, order: number): number =>
    day * (arrivals.length + 1) + arrivals.filter((arrival) => arrival <= order).length;

  const foodIds = [
    ...new Set([
      ...cooked.flatMap((dish) => dish.makings.map((making) => making.food)),
      ...good.map(({ lot }) => lot.food),
    ]),
  ];
  const foods = foodIds.map((id) => tables.foods.get(id) as Food);
  const foodAt = new Map(foodIds.map((id, at) => [id, at]));
  const trips = listTrips(kitchen, from, days);
  const priced = pricePacks(kitchen, foods, trips, from, days);
  const portions = sittings.map(({ eaters, putBy: isBox }) =>
    isBox
      ? (kitchen.puttingBy?.portions ?? 0)
      : eaters.reduce((sum, id) => sum + (shares.find(({ eater }) => eater.id === id)?.portions ?? 1), 0),
  );
  const cached = { ...tables, retain: rememberRetained(tables.retain) };
  const lots = good.map(
    ({ lot, lastDay }): MenuLot => ({
      food: foodAt.get(lot.food) as number,
      massG: lot.massG,
      opened: lot.openedOn !== undefined || lot.loose === true,
      lastDay,
      mustUse: kitchen.useUp.includes(lot.id),
    }),
  );
  const portionLots = putBy.flatMap((one, i) =>
    one.lots.flatMap(({ lot, lastDay, menu }) =>
      lastDay >= 0 ? [{ lot, menu: { ...menu, food: foods.length + i } satisfies MenuLot }] : [],
    ),
  );
  const wishes = [
    ...toWishes(kitchen, tables.foods, fitted, sittings, days),
    ...wishBoxes(kitchen, fitted, putBy, sittings, listWeeks(days)),
  ];
  const mains = [...new Set(fitted.map(({ dish }) => dish.main))];
  const menuFoods = [
    ...foods.map((food, at) =>
      toMenuFood(
        food,
        kitchen,
        priced.filter(({ menu }) => menu.food === at).map(({ menu }) => menu),
      ),
    ),
    ...putBy.map(({ menuFood }) => menuFood),
  ];
  const hasBoxes = sittings.some((sitting) => sitting.putBy);
  const dishes = fitted.map((one, at) => {
    const family = fitted.findIndex(({ dish }) => dish === one.dish);
    const alone = toMenuDish(one, kitchen, cached, foodAt, mains, days);
    const dish = family < at ? { ...alone, family } : alone;
    const ready = putBy[at - cooked.length];
    if (ready !== undefined) return toMenuPutBy(dish, ready, foods.length + at - cooked.length);
    return hasBoxes && isFreezable(one) ? withWorth(dish, one, menuFoods) : dish;
  });
  const dishesAt = sittings.map((sitting, k): number[] =>
    sitting.putBy
      ? [...listFreezable(fitted, servedAt, sittings, sitting.day), fitted.length]
      : [...(servedAt[k] ?? []), ...putBy.flatMap((one, i) => (one.sittings.includes(k) ? [cooked.length + i] : []))],
  );
  const together = labelTogether(sittings);
  const seated = sittings.flatMap((sitting, k) => (sitting.putBy ? [] : [k]));
  const problem: MenuProblem = {
    days,
    periodDay: Array.from({ length: days * (arrivals.length + 1) }, (_, period) =>
      Math.floor(period / (arrivals.length + 1)),
    ),
    foods: menuFoods,
    dishes: hasBoxes ? [...dishes, makeNothing(mains.length, PLANNED_COMPONENTS.length, sittings.length)] : dishes,
    sittings: sittings.map(
      (sitting, k): MenuSitting => ({
        day: sitting.day,
        period: periodOf(sitting.day, orderInDay(sitting.kind)),
        minutes: sitting.minutes,
        ...(together[k] !== undefined && { together: together[k] }),
        heat: sitting.heat,
        packed: sitting.packed,
        portions: portions[k] as number,
        dishes: dishesAt[k] as readonly number[],
        variety: sitting.kind === "evening" && !sitting.putBy,
        ...(sitting.putBy && { putBy: true }),
      }),
    ),
    lots: [...lots, ...portionLots.map(({ menu }) => menu)],
    packs: priced.map(({ menu }) => menu),
    shopCount: kitchen.shops.length,
    trips: trips.map(({ shop, day }): MenuTrip => {
      const { trip, beforeSitting } = kitchen.shops[shop] as Kitchen["shops"][number];
      const period = periodOf(day, orderInDay(beforeSitting as SittingKind));
      return {
        shop,
        day,
        period,
        costMinor: trip.costMinor,
        minutes: trip.minutes,
        ...(trip.carryKg !== undefined && { carryG: trip.carryKg * 1000 }),
      };
    }),
    components: PLANNED_COMPONENTS,
    profiles: toProfiles(kitchen, tables, shares, days),
    limits: toLimits(
      kitchen,
      seated.map((k) => sittings[k] as DatedSitting),
      seated.map((k) => portions[k] as number),
      from,
      days,
    ),
    worth: {
      minuteMinor: kitchen.worth.minuteMinor,
      vesselMinutes: kitchen.worth.vesselMinutes,
      leftoverMinutes: LEFTOVER_MINUTES,
      shortfallFirstMinor: kitchen.worth.shortfallFirstMinor,
      shortfallRestMinor: kitchen.worth.shortfallRestMinor,
      shortfallKnee: SHORTFALL_KNEE,
    },
    ...(wishes.length > 0 && { wishes: wishes.map(({ menu }) => menu) }),
  };
  return {
    problem,
    from,
    sittings,
    shares,
    foods: [...foods, ...putBy.map(({ food }) => food)],
    dishes: fitted,
    packs: priced.map(({ pack }) => pack),
    lots: [...good, ...portionLots].map(({ lot }) => lot),
    trips: trips.map(({ shop, date }) => ({ shop: (kitchen.shops[shop] as Kitchen["shops"][number]).id, date })),
    standRisePct: kitchen.limits.standRisePct,
    wishes,
    unfit,
    beginsOn: from,
    goneOff: [...stock, ...putBy.flatMap((one) => one.lots)].filter(({ lastDay }) => lastDay < 0).map(({ lot }) => lot),
  };
}

/**
 * Sittings of one kind and day have one number where they are cooked for at once, whoever eats; what is taken along is cooked
 * before leaving, apart from what is eaten here. Undefined = cooked for by itself.
 */
function labelTogether(sittings: readonly DatedSitting[]): (number | undefined)[] {
  const keys = sittings.map(({ day, kind, packed, putBy }, k) => (putBy ? `box ${k}` : `${day} ${kind} ${packed}`));
  return keys.map((key) => (keys.indexOf(key) < keys.lastIndexOf(key) ? keys.indexOf(key) : undefined));
}

/** The last day a lot may be used; one that is not known to keep where it is should be used on the first. */
function lastDayOf(lot: Lot, tables: Tables, from: CivilDate): number {
  const keeps = keepsUntil(lot, tables.foods.get(lot.food) as Food);
  return keeps.ok ? daysBetween(from, keeps.on) : 0;
}

function listTrips(kitchen: Kitchen, from: CivilDate, days: number): PossibleTrip[] {
  return Array.from({ length: days }, (_, day) => {
    const date = addDays(from, day);
    return kitchen.shops.flatMap((shop, at) =>
      shop.openDays.includes(weekday(date)) ? [{ shop: at, day, date }] : [],
    );
  }).flat();
}
