import type { ChosenFood, Dish, Making } from "../dish/index.ts";
import type { Food, FoodTable } from "../food/index.ts";
import type { MenuDish, MenuFood, MenuLot } from "../menu/index.ts";
import { addDays, type CivilDate, daysBetween } from "../quantity/index.ts";
import type { Lot } from "../stores/index.ts";
import type { DatedSitting } from "./datedSittings.ts";
import { type FittedDish, takesFood, weighChosen } from "./fitDish.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import type { PutBy } from "./putBy.ts";
import type { Tables } from "./tables.ts";

/** Hands-on minutes of warming what is cooked. Common practice, no source. */
const HANDS_ON_MINUTES = 2;
/** Minutes until a portion is hot all through. Common practice, no source. */
const HEAT_MINUTES = { fridge: 10, freezer: 15 };
/** **Source**: UK Food Standards Agency, on freezing and reheating (from memory). */
export const PUT_BY_CAUTION = {
  code: "put-by",
  text: "Thaw what was frozen in the fridge and eat it within a day, or heat it from frozen. Heat until steaming hot all through, once; never freeze again.",
  authority: "UK Food Standards Agency (from memory)",
};

/** Longer than any plan. */
const LASTS_DAYS = 3650;
/** Litres of a gram cooked: that of water and a quarter more for the box. Common practice, no source. */
export const LITRES_PER_G = 0.00125;

/**
 * Portions put by as the planner sees them: a dish that is made of nothing but the cooked portions, which are a food of
 * their own, in grams as served.
 */
export interface StatedPutBy {
  readonly dish: FittedDish;
  readonly food: Food;
  readonly menuFood: MenuFood;
  readonly lots: readonly { readonly lot: Lot; readonly lastDay: number; readonly menu: Omit<MenuLot, "food"> }[];
  /** Sittings whose eaters can have it. */
  readonly sittings: readonly number[];
}

/** Last day that portions put by are good, by what is known of them or the dish; undefined where it is not kept there. */
function putByKeepsUntil(
  { place, cookedOn, keepsUntil }: PutBy,
  { keeps }: Pick<Dish, "keeps">,
): CivilDate | undefined {
  if (keepsUntil !== undefined) return keepsUntil;
  const days = place === "fridge" ? keeps.fridgeDays : keeps.freezerDays;
  return days === undefined ? undefined : addDays(cookedOn, days);
}

/** Everything that is put by, those alike in one; what has gone off is there with a last day before the first. */
export function statePutBy(
  kitchen: Kitchen,
  tables: Tables,
  sittings: readonly DatedSitting[],
  from: CivilDate,
): StatedPutBy[] {
  const groups = new Map<string, PutBy[]>();
  for (const one of kitchen.putBy) {
    const key = [one.dish, one.place, ...[...one.foods].sort()].join(" ");
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].flatMap((group): StatedPutBy[] => {
    const [first] = group as [PutBy, ...PutBy[]];
    const dish = tables.dishes.find(({ id }) => id === first.dish);
    if (dish === undefined) return [];
    const fitted = weighChosen(dish, tables.foods, chooseCooked(dish, first));
    if ("reason" in fitted) return [];
    const massG = group.reduce((sum, { portions }) => sum + portions * dish.portionMassG, 0);
    const costMinor = group.reduce((sum, one) => sum + one.costMinor, 0);
    const menuFood = toFood(first, costMinor / massG);
    return [
      {
        dish: { ...fitted, putBy: first.place },
        food: nameFood(dish, tables.foods),
        menuFood,
        lots: group.map((one) => toLot(one, dish, kitchen, from)),
        sittings: sittings.flatMap((sitting, k) => (canHave(sitting, first, dish, kitchen, tables) ? [k] : [])),
      },
    ];
  });
}

/** The dish as the planner serves it: nothing is cooked, a portion is warmed and eaten. */
export function toMenuPutBy(cooked: MenuDish, { dish: { dish }, menuFood }: StatedPutBy, food: number): MenuDish {
  const heatMinutes = dish.served.includes("cold") ? HANDS_ON_MINUTES : HEAT_MINUTES[menuFood.cold?.place ?? "fridge"];
  return {
    ...cooked,
    makings: [{ food, massG: dish.portionMassG }],
    handsOn: { fixed: HANDS_ON_MINUTES, perPortion: 0 },
    elapsed: { fixed: heatMinutes, perPortion: 0 },
    vessels: dish.served.includes("cold") ? 0 : 1,
    // What was thawed or warmed is eaten then and there.
    keepsDays: 0,
    needsHeat: !dish.served.includes("cold"),
  };
}

function chooseCooked(dish: Dish, { foods }: PutBy): Map<Making, ChosenFood> {
  const chosen = new Map<Making, ChosenFood>();
  for (const making of dish.makings) {
    const named = [making, ...making.alternatives].find(({ food }) => foods.includes(food));
    if (named !== undefined || !making.optional) chosen.set(making, named ?? making);
  }
  return chosen;
}

/** What may be in it: all that is named, and of each other making the food written, unless it is known to be left out. */
export function foodsWithin({ makings }: Dish, { foods }: Pick<PutBy, "foods">): string[] {
  const written = makings.flatMap((making) => {
    const named = [making, ...making.alternatives].find(({ food }) => foods.includes(food));
    return named === undefined && making.optional && foods.length > 0 ? [] : [(named ?? making).food];
  });
  return [...written, ...foods];
}

function toFood({ dish: id, place }: PutBy, minorPerG: number): MenuFood {
  return {
    id,
    openedDays: LASTS_DAYS,
    unopenedDays: LASTS_DAYS,
    creditMinorPerG: minorPerG,
    creditOpenedMinorPerG: minorPerG,
    wasteMinorPerG: 0,
    cold: { place, litresPerG: LITRES_PER_G },
  };
}

/** The cooked portions as a food: it has a name and no figures of its own. */
function nameFood(dish: Dish, foods: FoodTable): Food {
  const main = foods.get(dish.main) as Food;
  return { ...main, id: dish.id, names: { british: [dish.title], american: [dish.title] }, refusePct: 0, pieces: [] };
}

function toLot(one: PutBy, dish: Dish, kitchen: Kitchen, from: CivilDate): StatedPutBy["lots"][number] {
  const { id, place, cookedOn, costMinor, portions } = one;
  const massG = portions * dish.portionMassG;
  const until = putByKeepsUntil(one, dish);
  const lastDay = until === undefined ? -1 : daysBetween(from, until);
  return {
    lot: { id, food: dish.id, place, boughtOn: cookedOn, massG, costMinor },
    lastDay,
    menu: { massG, opened: true, lastDay, mustUse: kitchen.useUp.includes(id) },
  };
}

/** True where a dish is eaten warm: it is served so, and it can be heated where it is eaten. */
export function isWarmed(
  { served }: Pick<Dish, "served">,
  { heat, packed }: Pick<DatedSitting, "heat" | "packed">,
): boolean {
  return served.includes("hot") && heat && !packed;
}

/** A sitting of the right kind whose eaters take all that may be in it. */
function canHave(
  { kind, eaters: ids, putBy: isBox }: DatedSitting,
  one: PutBy,
  dish: Dish,
  kitchen: Kitchen,
  { foods }: Tables,
): boolean {
  if (isBox || !dish.fits.includes(kind) || kitchen.refusedDishes.includes(dish.id)) return false;
  const within = foodsWithin(dish, one).map((id) => foods.get(id));
  const eaters = ids.map((id) => kitchen.eaters.find((eater) => eater.id === id) as Eater);
  return within.every((food) => food !== undefined && eaters.every((eater) => takesFood(eater, food)));
}
