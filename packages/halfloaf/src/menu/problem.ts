/**
 * A week's menu and buying list as one problem: plain numbers, no names of shops or calendars.
 *
 * Days count from 0. Time inside the plan is cut into **periods**, ascending; what a trip brings home can
 * be cooked from its period on, and everything cooked in a period is taken from the stores in it. Money is
 * in minor units, masses are as purchased, a **standard portion** is that of the reference eater: an eater
 * of other energy need eats a multiple of it.
 *
 * The plan minimises, in minor units:
 *
 *     till + trips + waste x its price - carry-over credit + (hands-on + washing-up) minutes x their worth
 *       + dislike + shortfalls + wishes not met + changes - portions put by x their worth
 *
 * where the credit is `creditMinorPerG x (closing - opening)` over unopened and lasting stock, plus
 * `creditOpenedMinorPerG` on what is open and still good on the last day.
 *
 * Indices (`food`, `dish`, `shop`, ...) point into the arrays of the problem.
 */
export interface MenuProblem {
  readonly days: number;
  /** Day of each period. */
  readonly periodDay: readonly number[];
  readonly foods: readonly MenuFood[];
  readonly dishes: readonly MenuDish[];
  /** In order of time; at most one dish each. */
  readonly sittings: readonly MenuSitting[];
  readonly lots: readonly MenuLot[];
  readonly packs: readonly MenuPack[];
  readonly shopCount: number;
  /** Trips that could be made; the plan says which are. */
  readonly trips: readonly MenuTrip[];
  /** Names of the components that the profiles bound, in the order of `MenuDish.components`. */
  readonly components: readonly string[];
  readonly profiles: readonly MenuProfile[];
  readonly limits: MenuLimits;
  readonly worth: MenuWorth;
  /** How often dishes are to be served beyond what `limits` says; absent = as often as it comes. */
  readonly wishes?: readonly MenuWish[];
  /** What is known of dishes cooked at once (see `MenuSitting.together`); absent = nothing. */
  readonly cookings?: readonly MenuCooking[];
  /** True where dishes cooked at once of which no cooking is known take as long as one after the other. */
  readonly isApart?: true;
}

export interface MenuFood {
  readonly id: string;
  /** A pack opened on day o is used on day o + openedDays at the latest. */
  readonly openedDays: number;
  /** A pack bought on day b is used on day b + unopenedDays at the latest, opened or not. */
  readonly unopenedDays: number;
  /** What a gram of lasting or unopened stock is worth after the last day. */
  readonly creditMinorPerG: number;
  /** What a gram of opened, still good stock of a food that does not last is worth after the last day. */
  readonly creditOpenedMinorPerG: number;
  /** What a gram that goes off costs beyond its price. */
  readonly wasteMinorPerG: number;
  /** Room a gram takes, and where it is kept; absent = it needs neither fridge nor freezer. */
  readonly cold?: { readonly place: "fridge" | "freezer"; readonly litresPerG: number };
}

/** Minutes as a function of the standard portions cooked at once: `fixed + perPortion x portions`. */
export interface MenuMinutes {
  readonly fixed: number;
  readonly perPortion: number;
}

export interface MenuDish {
  readonly id: string;
  /** Foods and grams as purchased, per standard portion; each food once. */
  readonly makings: readonly { readonly food: number; readonly massG: number }[];
  readonly handsOn: MenuMinutes;
  /** From the first step to the plate, without what is done ahead. */
  readonly elapsed: MenuMinutes;
  /**
   * Least minutes of `elapsed` for which its cooking takes the whole of each thing that dishes cooked at once must share
   * (hands, rings, ...), in one order for all dishes; absent or shorter = none.
   */
  readonly loads?: readonly MenuMinutes[];
  /** Vessels to wash up after each cooking, plates not counted; absent = none. */
  readonly vessels?: number;
  /** A batch cooked on day c may be served on days c .. c + keepsDays. */
  readonly keepsDays: number;
  readonly needsHeat: boolean;
  /** May be served cold, so a leftover needs no heat. */
  readonly servedCold: boolean;
  readonly travels: boolean;
  /** Dishes with the same number share a main ingredient. */
  readonly main: number;
  /**
   * One dish cooked with one or the other food is several dishes of one family, named by the position of its first: uses,
   * different dishes and changes count by family. Absent = it has none but itself.
   */
  readonly family?: number;
  /** Most sittings of the plan that it may be served at; the same for a whole family. */
  readonly maxUses: number;
  /** Cost of serving it once. */
  readonly dislikeMinor: number;
  readonly energyKj: number;
  /** Amounts per standard portion, in the order of `MenuProblem.components`. */
  readonly components: readonly number[];
  /** What a standard portion put into the freezer is worth after the plan and the room it takes; absent = nothing. */
  readonly putBy?: { readonly creditMinor: number; readonly litres: number };
}

export interface MenuSitting {
  readonly day: number;
  readonly period: number;
  /** Standard portions eaten, the sum over the eaters who sit down. */
  readonly portions: number;
  /** Minutes at hand for cooking, from the first step to the plate. */
  readonly minutes: number;
  /**
   * What is cooked for sittings with the same number is one cooking, begun and served at once: it must be done within the
   * fewest of their minutes at hand and takes no less than the longest of its dishes, than their loads on any one thing
   * together, and than `MenuProblem.cookings` say. Absent = each is cooked for by itself.
   */
  readonly together?: number;
  /** False where nothing can be heated. */
  readonly heat: boolean;
  /** True where the plate is taken along: it must travel and be eaten cold. */
  readonly packed: boolean;
  /** Dishes that fit this kind of sitting and suit all who eat. */
  readonly dishes: readonly number[];
  /** True where distinct dishes and main ingredients are counted (the evening). */
  readonly variety: boolean;
  /** The dish of an earlier plan, and what serving another one costs; absent = anything is as good. */
  readonly keep?: { readonly dish: number; readonly changeMinor: number };
  /** True where nobody sits down and the portions are put into the freezer for later than the plan. */
  readonly putBy?: true;
}

/** Stock at the start. An unopened lot starts its opened life when it is first used. */
export interface MenuLot {
  readonly food: number;
  readonly massG: number;
  readonly opened: boolean;
  /** First period it can be used in; absent = it is there from the start. */
  readonly fromPeriod?: number;
  /** Last day it may be used (opened or not). */
  readonly lastDay: number;
  /** Opened life of an unopened lot where it differs from the food's own, as that of separate pieces does. */
  readonly openedDays?: number;
  /** True where leaving any of it breaks a limit. */
  readonly mustUse: boolean;
}

export interface MenuPack {
  readonly food: number;
  readonly shop: number;
  readonly massG: number;
  readonly priceMinor: number;
  /** Its price where prices come out as high as the budget must stand; absent = `priceMinor` is sure. */
  readonly highMinor?: number;
  /** Most packs of this kind in the plan. */
  readonly limit: number;
  /** Days of trips on which it can be bought. */
  readonly fromDay: number;
  readonly toDay: number;
  /** Shorter unopened life than the food's own (reduced to clear). */
  readonly unopenedDays?: number;
  /** Longer opened life than the food's own (separate pieces, never opened as a whole). */
  readonly openedDays?: number;
  /** `count` packs bought on one trip cost `priceMinor` together, as often as wanted. */
  readonly offer?: { readonly count: number; readonly priceMinor: number; readonly highMinor?: number };
}

export interface MenuTrip {
  readonly shop: number;
  readonly day: number;
  /** First period in which what was bought can be cooked. */
  readonly period: number;
  readonly costMinor: number;
  readonly minutes: number;
  /** Most mass carried home; absent = no limit. */
  readonly carryG?: number;
}

/** Eaters who attend the same sittings, per standard portion. */
export interface MenuProfile {
  readonly eaters: number;
  /** Sittings they attend. */
  readonly sittings: readonly number[];
  /** Energy wanted on each day from the attended sittings; 0 where none is attended. */
  readonly energyKj: readonly number[];
  /** Least energy of each day, where it lies above what the tolerance leaves; absent = the tolerance decides. */
  readonly leastEnergyKj?: readonly number[];
  /** Bounds on sums over the whole plan. */
  readonly bounds: readonly MenuBound[];
}

export interface MenuBound {
  readonly component: number;
  readonly kind: "at-least" | "at-most";
  readonly amount: number;
  /** A hard bound must hold; a soft one costs what it falls short, as a share of `amount`. */
  readonly hard: boolean;
}

export interface MenuLimits {
  /** Most money at the tills over the plan, trips included, with all packs at their high prices; absent = no limit. */
  readonly budgetMinor?: number;
  /** Most hands-on minutes of each day. */
  readonly handsOnMinutes: readonly number[];
  /** Share by which a day's energy may differ from what is wanted. */
  readonly energyTolerance: number;
  /** Fewest different dishes at the sittings that count for variety. */
  readonly distinct: number;
  /** Most sittings, of those that count for variety, with one main ingredient. */
  readonly mainMax: number;
  /** Most standard portions in one batch. */
  readonly batchPortions: number;
  readonly maxTrips: number;
  readonly fridgeLitres?: number;
  readonly freezerLitres?: number;
}

/**
 * How often some dishes are served at some sittings, fresh or left over: a wish ("fish on Friday"), a cap on one manner of
 * cooking, or one of two days running on which a main ingredient may stand.
 */
export interface MenuWish {
  /** Dishes that count, each once. */
  readonly dishes: readonly number[];
  /** Sittings at which they count, each once. */
  readonly sittings: readonly number[];
  /** Fewest servings; absent = none. */
  readonly least?: number;
  /** Most servings; absent = as many as there are sittings. */
  readonly most?: number;
  /** Price of each serving too few or too many, in minor units; absent = the wish must hold. */
  readonly missMinor?: number;
}

/**
 * Dishes cooked at once as their order of work has them. What it says holds for every cooking in which there is at least as
 * much of each of the dishes, whatever else is cooked beside them.
 */
export interface MenuCooking {
  /** Each dish once, and its standard portions. */
  readonly dishes: readonly { readonly dish: number; readonly portions: number }[];
  readonly elapsedMinutes: number;
  /** Hands-on minutes beyond those of each dish by itself: the washing between them. */
  readonly washMinutes: number;
}

export interface MenuWorth {
  readonly minuteMinor: number;
  /** Minutes it takes to serve a leftover. */
  readonly leftoverMinutes: number;
  /**
   * Minutes it takes to wash up one vessel; absent = none. They cost what minutes are worth, yet no limit counts them: they
   * can wait for a day with more time.
   */
  readonly vesselMinutes?: number;
  /** Price of falling short of (or going over) a soft bound by its whole amount, up to the knee and beyond. */
  readonly shortfallFirstMinor: number;
  readonly shortfallRestMinor: number;
  readonly shortfallKnee: number;
}

/** A food that outlasts the plan, opened or not, is bought and used without regard to days. */
export function isLasting(problem: MenuProblem, food: number): boolean {
  const { openedDays, unopenedDays } = problem.foods[food] as MenuFood;
  return openedDays >= problem.days && unopenedDays >= problem.days;
}

/** The family of a dish, as the position of its first member. */
export function familyOf({ dishes }: Pick<MenuProblem, "dishes">, dish: number): number {
  return dishes[dish]?.family ?? dish;
}
