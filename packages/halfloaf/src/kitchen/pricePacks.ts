import type { Food } from "../food/index.ts";
import type { MenuPack } from "../menu/index.ts";
import { limitOfPack, massOfPack, type Pack } from "../price/index.ts";
import { type CivilDate, daysBetween } from "../quantity/index.ts";
import { foodLife, placesOf } from "./foodLife.ts";
import type { Kitchen } from "./kitchen.ts";
import { raisePrice } from "./standRise.ts";

const NO_LIMIT = 9999;

/** A pack of the kitchen and what the planner sees of it. */
export interface PricedPack {
  readonly pack: Pack;
  readonly menu: MenuPack;
}

/** A trip that could be made: position of its shop in the kitchen, and its day. */
export interface PossibleTrip {
  readonly shop: number;
  readonly day: number;
  readonly date: CivilDate;
}

/** The packs of these foods as the planner sees them; those whose mass can't be known or that are gone are left out. */
export function pricePacks(
  kitchen: Kitchen,
  foods: readonly Food[],
  trips: readonly PossibleTrip[],
  from: CivilDate,
  days: number,
): PricedPack[] {
  const foodAt = new Map(foods.map(({ id }, at) => [id, at]));
  return kitchen.packs.flatMap((pack) => {
    const at = foodAt.get(pack.food);
    const menu = at === undefined ? undefined : toMenuPack(pack, foods[at] as Food, at, kitchen, trips, from, days);
    return menu ? [{ pack, menu }] : [];
  });
}

/** What is reduced to clear is there today: on the first trip, if its date allows that. */
function toMenuPack(
  pack: Pack,
  food: Food,
  foodAt: number,
  kitchen: Kitchen,
  trips: readonly PossibleTrip[],
  from: CivilDate,
  days: number,
): MenuPack | undefined {
  const mass = massOfPack(pack, food);
  if (!mass.ok) return undefined;
  const shop = kitchen.shops.findIndex(({ id }) => id === pack.shop);
  const life = foodLife(food, placesOf(kitchen.kit));
  const risePct = pack.estimate ? kitchen.limits.standRisePct : 0;
  const base = {
    food: foodAt,
    shop,
    massG: mass.massG,
    priceMinor: pack.priceMinor,
    ...raisePrice(pack.priceMinor, risePct),
    limit: limitOfPack(pack) ?? NO_LIMIT,
    fromDay: 0,
    toDay: days - 1,
    ...(pack.offer && {
      offer: {
        count: pack.offer.count,
        priceMinor: pack.offer.priceMinor,
        ...raisePrice(pack.offer.priceMinor, risePct),
      },
    }),
    ...(pack.loose && { openedDays: life.unopenedDays }),
  };
  if (!pack.reduced) return base;
  const first = trips.find((trip) => trip.shop === shop)?.day;
  const left = first === undefined ? -1 : daysBetween(from, pack.reduced.until) - first;
  if (first === undefined || left < 0) return undefined;
  return { ...base, fromDay: first, toDay: first, unopenedDays: Math.min(left, life.unopenedDays) };
}
