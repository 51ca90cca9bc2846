import { needsHeat, nutrientsOfDish } from "../dish/index.ts";
import type { Food, Nutrient, Place } from "../food/index.ts";
import { type ReferenceIntake, referencesFor } from "../intake/index.ts";
import type {
  MenuBound,
  MenuDish,
  MenuFood,
  MenuLot,
  MenuPack,
  MenuProblem,
  MenuProfile,
  MenuSitting,
  MenuTrip,
} from "../menu/index.ts";
import { limitOfPack, massOfPack, type Pack } from "../price/index.ts";
import { addDays, type CivilDate, daysBetween, weekday } from "../quantity/index.ts";
import { keepsUntil, type Lot } from "../stores/index.ts";
import { sittingMinutes } from "./cooking/sittingMinutes.ts";
import { type DatedSitting, datedSittings, orderInDay, type SittingKind } from "./datedSittings.ts";
import { type EaterShare, eaterShares, STANDARD_DAY_KJ } from "./eaterShares.ts";
import { type FittedDish, fitDish, type Unfit } from "./fitDish.ts";
import { foodLife, litresPerG } from "./foodLife.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** Components that a menu is steered by; the others are assessed but not planned for, as too few figures are known. */
export const PLANNED_COMPONENTS = [
  "proteinG",
  "fibreG",
  "saturatesG",
  "freeSugarsG",
  "sodiumMg",
  "potassiumMg",
  "calciumMg",
  "ironMg",
  "magnesiumMg",
  "zincMg",
  "vitaminARaeUg",
  "vitaminCMg",
  "vitaminEMg",
  "thiaminMg",
  "riboflavinMg",
  "niacinMg",
  "vitaminB6Mg",
  "folateDfeUg",
  "vitaminB12Ug",
  "vegetablesFruitG",
] as const satisfies readonly (Nutrient | "vegetablesFruitG")[];

/** What of a stock's price is left after the plan: unopened or lasting, and opened but still good. Common practice, no source. */
const CREDIT_SHARE = { unopened: 0.9, opened: 0.4 };
/** What throwing away costs beyond the price, as a share of it. Common practice, no source. */
const WASTE_SHARE = 0.3;
const LEFTOVER_MINUTES = 2;
const SHORTFALL_KNEE = 0.1;
const NO_LIMIT = 9999;
const UNRATED_POINTS = 6;

/** A kitchen's days as a planning problem, with the meaning of every index. */
export interface KitchenProblem {
  readonly problem: MenuProblem;
  readonly from: CivilDate;
  readonly sittings: readonly DatedSitting[];
  readonly shares: readonly EaterShare[];
  readonly foods: readonly Food[];
  /** A dish may stand here twice, cooked with other alternatives for other eaters. */
  readonly dishes: readonly FittedDish[];
  readonly packs: readonly Pack[];
  readonly lots: readonly Lot[];
  readonly trips: readonly { readonly shop: string; readonly date: CivilDate }[];
  /** Dishes that no sitting can have, and why. */
  readonly unfit: readonly { readonly dish: string; readonly why: Unfit }[];
  /** Lots of the stores that are past their time on the first day. */
  readonly goneOff: readonly Lot[];
}

/** States the kitchen's days from a date on as a problem for `menu/`; the kitchen must have passed `checkKitchen`. */
export function toMenuProblem(kitchen: Kitchen, tables: Tables, from: CivilDate, days: number): KitchenProblem {
  const sittings = datedSittings(kitchen, from, days);
  const shares = eaterShares(kitchen, sittings, days);
  const { fitted, servedAt, unfit } = fitDishes(kitchen, tables, sittings);
  const arrivals = [...new Set(kitchen.shops.map((shop) => orderInDay(shop.beforeSitting as SittingKind)))].sort(
    (a, b) => a - b,
  );
  const periodOf = (day: number, order: number): number =>
    day * (arrivals.length + 1) + arrivals.filter((arrival) => arrival <= order).length;

  const stock = kitchen.stores.map((lot) => ({ lot, lastDay: lastDayOf(lot, tables, from) }));
  const good = stock.filter(({ lastDay }) => lastDay >= 0);
  const foodIds = [
    ...new Set([
      ...fitted.flatMap((dish) => dish.makings.map((making) => making.food)),
      ...good.map(({ lot }) => lot.food),
    ]),
  ];
  const foods = foodIds.map((id) => tables.foods.get(id) as Food);
  const foodAt = new Map(foodIds.map((id, at) => [id, at]));
  const packsOf = kitchen.packs.filter((pack) => foodAt.has(pack.food));
  const trips = listTrips(kitchen, from, days);
  const priced = packsOf.flatMap((pack) =>
    toMenuPacks(pack, foods[foodAt.get(pack.food) as number] as Food, foodAt, kitchen, trips, from, days),
  );
  const lots = good.map(
    ({ lot, lastDay }): MenuLot => ({
      food: foodAt.get(lot.food) as number,
      massG: lot.massG,
      opened: lot.openedOn !== undefined || lot.loose === true,
      lastDay,
      mustUse: kitchen.useUp.includes(lot.id),
    }),
  );
  const mains = [...new Set(fitted.map(({ dish }) => dish.main))];
  const problem: MenuProblem = {
    days,
    periodDay: Array.from({ length: days * (arrivals.length + 1) }, (_, period) =>
      Math.floor(period / (arrivals.length + 1)),
    ),
    foods: foods.map((food, at) =>
      toMenuFood(
        food,
        kitchen,
        priced.filter(({ menu }) => menu.food === at).map(({ menu }) => menu),
      ),
    ),
    dishes: fitted.map((one) => toMenuDish(one, kitchen, tables, foodAt, mains, days)),
    sittings: sittings.map(
      (sitting, k): MenuSitting => ({
        day: sitting.day,
        period: periodOf(sitting.day, orderInDay(sitting.kind)),
        minutes: sitting.minutes,
        heat: sitting.heat,
        packed: sitting.packed,
        portions: sitting.eaters.reduce(
          (sum, id) => sum + (shares.find(({ eater }) => eater.id === id)?.portions ?? 1),
          0,
        ),
        dishes: servedAt[k] as number[],
        variety: sitting.kind === "evening",
      }),
    ),
    lots,
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
    limits: toLimits(kitchen, sittings, shares, from, days),
    worth: {
      minuteMinor: kitchen.worth.minuteMinor,
      leftoverMinutes: LEFTOVER_MINUTES,
      shortfallFirstMinor: kitchen.worth.shortfallFirstMinor,
      shortfallRestMinor: kitchen.worth.shortfallRestMinor,
      shortfallKnee: SHORTFALL_KNEE,
    },
  };
  return {
    problem,
    from,
    sittings,
    shares,
    foods,
    dishes: fitted,
    packs: priced.map(({ pack }) => pack),
    lots: good.map(({ lot }) => lot),
    trips: trips.map(({ shop, date }) => ({ shop: (kitchen.shops[shop] as Kitchen["shops"][number]).id, date })),
    unfit,
    goneOff: stock.filter(({ lastDay }) => lastDay < 0).map(({ lot }) => lot),
  };
}

/** The last day a lot may be used; one that is not known to keep where it is should be used on the first. */
function lastDayOf(lot: Lot, tables: Tables, from: CivilDate): number {
  const keeps = keepsUntil(lot, tables.foods.get(lot.food) as Food);
  return keeps.ok ? daysBetween(from, keeps.on) : 0;
}

interface FittedDishes {
  readonly fitted: FittedDish[];
  readonly servedAt: number[][];
  readonly unfit: { dish: string; why: Unfit }[];
}

/** Fits every dish to every sitting's eaters; sittings whose eaters lead to the same makings share one fitted dish. */
function fitDishes(kitchen: Kitchen, tables: Tables, sittings: readonly DatedSitting[]): FittedDishes {
  const hadFoods = new Set([...kitchen.packs.map((pack) => pack.food), ...kitchen.stores.map((lot) => lot.food)]);
  const fitted: FittedDish[] = [];
  const servedAt: number[][] = sittings.map(() => []);
  const unfit: FittedDishes["unfit"] = [];
  for (const dish of tables.dishes) {
    if (kitchen.refusedDishes.includes(dish.id)) continue;
    const variants = new Map<string, number>();
    const byEaters = new Map<string, FittedDish | Unfit>();
    let why: Unfit | undefined;
    sittings.forEach((sitting, k) => {
      if (!dish.fits.includes(sitting.kind)) return;
      const who = sitting.eaters.join(" ");
      const one =
        byEaters.get(who) ??
        fitDish(dish, tables.foods, kitchen.kit, eatersOf(kitchen, sitting), (food) => hadFoods.has(food));
      byEaters.set(who, one);
      if ("reason" in one) {
        why = one;
        return;
      }
      const key = one.makings.map(({ food }) => food).join(" ");
      const at = variants.get(key) ?? fitted.push(one) - 1;
      variants.set(key, at);
      servedAt[k]?.push(at);
    });
    if (variants.size === 0 && why) unfit.push({ dish: dish.id, why });
  }
  return { fitted, servedAt, unfit };
}

function eatersOf(kitchen: Kitchen, sitting: DatedSitting): Eater[] {
  return sitting.eaters.map((id) => kitchen.eaters.find((eater) => eater.id === id) as Eater);
}

function listTrips(kitchen: Kitchen, from: CivilDate, days: number): { shop: number; day: number; date: CivilDate }[] {
  return Array.from({ length: days }, (_, day) => {
    const date = addDays(from, day);
    return kitchen.shops.flatMap((shop, at) =>
      shop.openDays.includes(weekday(date)) ? [{ shop: at, day, date }] : [],
    );
  }).flat();
}

interface PricedPack {
  readonly pack: Pack;
  readonly menu: MenuPack;
}

/** A pack as the planner sees it. What is reduced to clear is there today: on the first trip that its date allows. */
function toMenuPacks(
  pack: Pack,
  food: Food,
  foodAt: ReadonlyMap<string, number>,
  kitchen: Kitchen,
  trips: readonly { shop: number; day: number }[],
  from: CivilDate,
  days: number,
): PricedPack[] {
  const mass = massOfPack(pack, food);
  if (!mass.ok) return [];
  const shop = kitchen.shops.findIndex(({ id }) => id === pack.shop);
  const life = foodLife(food, kitchen.kit.freezerLitres > 0);
  const base = {
    food: foodAt.get(pack.food) as number,
    shop,
    massG: mass.massG,
    priceMinor: pack.priceMinor,
    limit: limitOfPack(pack) ?? NO_LIMIT,
    fromDay: 0,
    toDay: days - 1,
    ...(pack.offer && { offer: { count: pack.offer.count, priceMinor: pack.offer.priceMinor } }),
    ...(pack.loose && { openedDays: life.unopenedDays }),
  };
  if (!pack.reduced) return [{ pack, menu: base }];
  const first = trips.find((trip) => trip.shop === shop)?.day;
  const left = first === undefined ? -1 : daysBetween(from, pack.reduced.until) - first;
  if (first === undefined || left < 0) return [];
  return [{ pack, menu: { ...base, fromDay: first, toDay: first, unopenedDays: Math.min(left, life.unopenedDays) } }];
}

function toMenuFood(food: Food, kitchen: Kitchen, packs: readonly MenuPack[]): MenuFood {
  const life = foodLife(food, kitchen.kit.freezerLitres > 0);
  const perG =
    packs.length > 0 ? Math.min(...packs.map((pack) => pack.priceMinor / pack.massG)) : lotPricePerG(food, kitchen);
  const cold: Place[] = ["fridge", "freezer"];
  return {
    id: food.id,
    openedDays: life.openedDays,
    unopenedDays: life.unopenedDays,
    creditMinorPerG: CREDIT_SHARE.unopened * perG,
    creditOpenedMinorPerG: CREDIT_SHARE.opened * perG,
    wasteMinorPerG: WASTE_SHARE * perG,
    ...(cold.includes(life.place) && {
      cold: { place: life.place as "fridge" | "freezer", litresPerG: litresPerG(food) },
    }),
  };
}

function lotPricePerG(food: Food, kitchen: Kitchen): number {
  const lots = kitchen.stores.filter((lot) => lot.food === food.id && lot.massG > 0);
  return lots.length === 0 ? 0 : Math.min(...lots.map((lot) => lot.costMinor / lot.massG));
}

function toMenuDish(
  one: FittedDish,
  kitchen: Kitchen,
  tables: Tables,
  foodAt: ReadonlyMap<string, number>,
  mains: readonly string[],
  days: number,
): MenuDish {
  const { dish, choose } = one;
  const massOf = new Map<number, number>();
  for (const { food, purchasedG } of one.makings) {
    const at = foodAt.get(food) as number;
    massOf.set(at, (massOf.get(at) ?? 0) + purchasedG.middle);
  }
  const nutrients = nutrientsOfDish(dish, tables.foods, tables.retain, choose);
  const points = kitchen.ratings.find(({ dish: id }) => id === dish.id)?.points ?? UNRATED_POINTS;
  const { kit, authorities } = kitchen;
  const { handsOn, elapsed } = sittingMinutes(dish, { kit, cooks: 1, tables, authority: authorities.safety }, choose);
  return {
    id: dish.id,
    makings: [...massOf].map(([food, massG]) => ({ food, massG })),
    handsOn,
    elapsed,
    keepsDays: dish.keeps.fridgeDays,
    needsHeat: needsHeat(dish),
    servedCold: dish.served.includes("cold"),
    travels: dish.travels,
    main: mains.indexOf(dish.main),
    maxUses: kitchen.limits.usesPerDish * Math.ceil(days / 7),
    dislikeMinor: kitchen.worth.dislikePointMinor * (10 - points),
    energyKj: nutrients.perPortion.energyKj.amount ?? 0,
    components: PLANNED_COMPONENTS.map((name) =>
      name === "vegetablesFruitG" ? nutrients.vegetablesFruitG : (nutrients.perPortion[name].amount ?? 0),
    ),
  };
}

/** Eaters who attend the same sittings form one profile; of their references, per standard portion, the strictest counts. */
function toProfiles(kitchen: Kitchen, tables: Tables, shares: readonly EaterShare[], days: number): MenuProfile[] {
  const groups = new Map<string, EaterShare[]>();
  for (const share of shares) {
    if (share.needKj === undefined || share.sittings.length === 0) continue;
    const key = share.sittings.join(" ");
    groups.set(key, [...(groups.get(key) ?? []), share]);
  }
  return [...groups.values()].map((group) => {
    const { sittings, dayShare } = group[0] as EaterShare;
    const wholeDays = dayShare.reduce((sum, part) => sum + part, 0);
    const bounds = new Map<string, MenuBound>();
    for (const share of group)
      for (const bound of boundsOf(kitchen, tables, share, wholeDays)) keepStricter(bounds, bound);
    const energyKj = Array.from({ length: days }, (_, day) => STANDARD_DAY_KJ * (dayShare[day] ?? 0));
    const floorShare = Math.max(...group.map((share) => share.floorShare ?? 0));
    return {
      eaters: group.length,
      sittings,
      energyKj,
      leastEnergyKj: energyKj.map((wanted) => wanted * floorShare),
      bounds: [...bounds.values()],
    };
  });
}

function boundsOf(kitchen: Kitchen, tables: Tables, share: EaterShare, wholeDays: number): MenuBound[] {
  const found = referencesFor(share.eater, kitchen.authorities.intake, tables.references, share.needKj as number);
  if (found.kind !== "references") return [];
  return found.references.flatMap((reference: ReferenceIntake): MenuBound[] => {
    const component = PLANNED_COMPONENTS.findIndex((name) => name === reference.component);
    if (component < 0 || reference.amountPerDay <= 0) return [];
    return [
      { component, kind: reference.kind, amount: (reference.amountPerDay * wholeDays) / share.portions, hard: false },
    ];
  });
}

function keepStricter(bounds: Map<string, MenuBound>, bound: MenuBound): void {
  const key = `${bound.kind} ${bound.component}`;
  const known = bounds.get(key);
  const stricter = !known || (bound.kind === "at-least" ? bound.amount > known.amount : bound.amount < known.amount);
  if (stricter) bounds.set(key, bound);
}

function toLimits(
  kitchen: Kitchen,
  sittings: readonly DatedSitting[],
  shares: readonly EaterShare[],
  from: CivilDate,
  days: number,
): MenuProblem["limits"] {
  const { limits, kit } = kitchen;
  const weeks = days / 7;
  const handsOn = (day: number): number =>
    Array.isArray(limits.handsOnMinutes)
      ? (limits.handsOnMinutes[weekday(addDays(from, day)) - 1] as number)
      : limits.handsOnMinutes;
  const portionsAt = sittings.map((sitting) =>
    sitting.eaters.reduce((sum, id) => sum + (shares.find(({ eater }) => eater.id === id)?.portions ?? 1), 0),
  );
  const evenings = sittings.filter((sitting) => sitting.kind === "evening").length;
  return {
    ...(limits.budgetMinor !== undefined && { budgetMinor: Math.round(limits.budgetMinor * weeks) }),
    handsOnMinutes: Array.from({ length: days }, (_, day) => handsOn(day)),
    energyTolerance: limits.energyTolerancePct / 100,
    distinct: Math.min(evenings, Math.floor(limits.distinctEvenings * weeks)),
    mainMax: Math.ceil(limits.mainMax * weeks),
    batchPortions: Math.max(kit.potPortions, ...portionsAt),
    maxTrips: Math.ceil(limits.tripsPerWeek * Math.max(1, weeks)),
    ...(kit.fridgeLitres > 0 && { fridgeLitres: kit.fridgeLitres }),
    ...(kit.freezerLitres > 0 && { freezerLitres: kit.freezerLitres }),
  };
}
