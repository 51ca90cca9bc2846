import { type ChosenFood, type Dish, isKnown, type Making, makingsOf } from "../dish/index.ts";
import type { Food, FoodTable } from "../food/index.ts";
import { massOfPack } from "../price/index.ts";
import { type ChosenFoods, listTaken, type Unfit } from "./fitDish.ts";
import { foodLife, placesOf } from "./foodLife.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** What speaks for a food before it is known how it will be used. */
export interface FoodMerits {
  /** 0 for stock that must be used up, 1 for other stock that is open, 2 for other stock, 3 for what must be bought. */
  readonly stockRank: (food: string) => number;
  /** Least money for a gram as purchased, offers taken (minor units); Infinity where it is not sold by mass. */
  readonly leastMinorPerG: (food: string) => number;
  /** Dishes that are made with it as their author first says. */
  readonly sharedBy: (food: string) => number;
  /** True for a food whose opened pack does not last these days: only with such a food does it matter who shares the pack. */
  readonly isFleeting: (food: string) => boolean;
}

/** Most ways in which one dish is offered to the same eaters. */
const MOST_VARIANTS = 6;

const NOT_IN_STOCK = 3;

/** Weighs the foods of a kitchen for so many days. */
export function weighFoods(
  kitchen: Pick<Kitchen, "kit" | "packs" | "stores" | "useUp">,
  { foods, dishes }: Pick<Tables, "foods" | "dishes">,
  days: number,
): FoodMerits {
  const stock = new Map<string, number>();
  for (const { id, food, openedOn, loose } of kitchen.stores) {
    const rank = kitchen.useUp.includes(id) ? 0 : openedOn !== undefined || loose ? 1 : 2;
    stock.set(food, Math.min(rank, stock.get(food) ?? rank));
  }
  const prices = new Map<string, number>();
  for (const pack of kitchen.packs) {
    const facts = foods.get(pack.food);
    const mass = facts && massOfPack(pack, facts);
    if (!mass?.ok) continue;
    const eachMinor = Math.min(
      pack.priceMinor,
      pack.offer ? pack.offer.priceMinor / pack.offer.count : pack.priceMinor,
    );
    prices.set(pack.food, Math.min(eachMinor / mass.massG, prices.get(pack.food) ?? Number.POSITIVE_INFINITY));
  }
  const shared = new Map<string, number>();
  for (const { makings } of dishes)
    for (const food of new Set(makings.map((making) => making.food))) shared.set(food, (shared.get(food) ?? 0) + 1);
  const places = placesOf(kitchen.kit);
  return {
    stockRank: (food) => stock.get(food) ?? NOT_IN_STOCK,
    leastMinorPerG: (food) => prices.get(food) ?? Number.POSITIVE_INFINITY,
    sharedBy: (food) => shared.get(food) ?? 0,
    isFleeting: (food) => foodLife(foods.get(food) as Food, places).openedDays < days,
  };
}

/** One food that a making can be cooked with. */
interface Option {
  readonly chosen: ChosenFood;
  readonly priceMinor: number;
}

/**
 * The ways in which a dish is worth cooking for some eaters, at most six: as its author first says, with what is in the
 * stores, with the cheapest foods, with those that most other dishes share; then the second of these with one fleeting food
 * changed at a time. Only foods that can be had and that all the eaters take; or why a making has none. Optional makings
 * have none.
 */
export function chooseVariants(
  dish: Dish,
  foods: FoodTable,
  eaters: readonly Eater[],
  isToBeHad: (food: string) => boolean,
  merits: FoodMerits,
): readonly ChosenFoods[] | Unfit {
  const options = new Map<Making, readonly Option[]>();
  for (const making of dish.makings) {
    if (making.optional) continue;
    const taken = listTaken(making, foods, eaters, isToBeHad);
    if ("reason" in taken) return taken;
    options.set(making, weighOptions(dish, making, taken, foods, merits));
  }
  return combine(options, merits);
}

/** The options with what each costs a portion; one whose amount is not known stands only where it is the first. */
function weighOptions(
  { portions }: Dish,
  making: Making,
  taken: readonly ChosenFood[],
  foods: FoodTable,
  { leastMinorPerG }: FoodMerits,
): Option[] {
  return taken.flatMap((chosen, at): Option[] => {
    const [amount] = makingsOf({ makings: [making], portions }, foods, () => chosen);
    const isWeighed = amount !== undefined && isKnown(amount);
    if (!isWeighed && at > 0) return [];
    const priceMinor = isWeighed ? leastMinorPerG(chosen.food) * amount.purchasedG.middle : Number.POSITIVE_INFINITY;
    return [{ chosen, priceMinor }];
  });
}

function combine(options: ReadonlyMap<Making, readonly Option[]>, merits: FoodMerits): ChosenFoods[] {
  const stockOf = ({ chosen }: Option): number => merits.stockRank(chosen.food);
  const pick = (isBefore: (a: Option, b: Option) => number): Map<Making, ChosenFood> =>
    new Map([...options].map(([making, own]) => [making, ([...own].sort(isBefore)[0] as Option).chosen]));
  const byPrice = (a: Option, b: Option): number => compareNumbers(a.priceMinor, b.priceMinor);
  const first = pick(() => 0);
  const thrifty = pick((a, b) => stockOf(a) - stockOf(b) || byPrice(a, b));
  const shared = pick((a, b) => merits.sharedBy(b.chosen.food) - merits.sharedBy(a.chosen.food) || byPrice(a, b));
  const variants = new Map<string, ChosenFoods>();
  const add = (variant: ChosenFoods): void => {
    const key = [...variant.values()].map(({ food }) => food).join(" ");
    if (!variants.has(key)) variants.set(key, variant);
  };
  for (const variant of [first, thrifty, pick(byPrice), shared]) add(variant);
  for (const { making, chosen } of listChanges(options, merits)) {
    if (variants.size >= MOST_VARIANTS) break;
    if (thrifty.get(making)?.food !== chosen.food) add(new Map(thrifty).set(making, chosen));
  }
  return [...variants.values()];
}

/** The other options of fleeting foods: stock first, then what most dishes share. */
function listChanges(
  options: ReadonlyMap<Making, readonly Option[]>,
  { stockRank, sharedBy, isFleeting }: FoodMerits,
): readonly { readonly making: Making; readonly chosen: ChosenFood }[] {
  const changes = [...options].flatMap(([making, own]) =>
    own.length < 2 ? [] : own.flatMap(({ chosen }) => (isFleeting(chosen.food) ? [{ making, chosen }] : [])),
  );
  const rankOf = ({ chosen: { food } }: (typeof changes)[number]): number => stockRank(food);
  return changes.sort((a, b) => rankOf(a) - rankOf(b) || sharedBy(b.chosen.food) - sharedBy(a.chosen.food));
}

/** Ascending, Infinity equal to itself. */
function compareNumbers(a: number, b: number): number {
  return a === b ? 0 : a - b;
}
