import { type Choose, costingCard, type Dish, minutesOf, nutrientsOfDish } from "../../dish/index.ts";
import {
  allergensCosted,
  type CostedDish,
  cautionsCosted,
  costDish,
  foodPrices,
  type Kitchen,
  type Tables,
} from "../../kitchen/index.ts";
import { cheapestByFood, latestPrices, type UnitPrice } from "../../price/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import type { Named, SheetCaution } from "../day/DaySheet.ts";
import { wholeMinutes } from "../day/toDaySheet.ts";
import type { SheetNames } from "../WeekSource.ts";
import type { CardLine, CardSheet, ShopCost } from "./CardSheet.ts";
import { declareDish } from "./declareDish.ts";

/** What a card is made from. */
export interface CardSource {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly names: SheetNames;
  readonly dish: Dish;
  /** Absent: as the dish is written. */
  readonly portions?: number;
  /** Day of the prices; absent: the kitchen's first day. */
  readonly on?: CivilDate;
}

/**
 * The costing card of a dish at the prices of a kitchen on a day: each making at the cheapest single pack, or at what the
 * stock at hand cost where no pack is sold. Where a making can't be had its first alternative that can stands in; what is
 * optional stays out of all sums.
 */
export function toCardSheet(source: CardSource): CardSheet {
  const { kitchen, tables, dish, names, portions = dish.portions, on = kitchen.startsOn } = source;
  const { foods } = tables;
  const prices = foodPrices(kitchen, foods, on);
  const costed = costDish(dish, portions, prices, foods);
  const { choose, costing } = costed;
  const nutrients = nutrientsOfDish(dish, foods, tables.retain, choose);
  const { handsOn, elapsed, ahead } = minutesOf(dish, portions, { rings: Math.max(1, kitchen.kit.rings), cooks: 1 });
  const named = (id: string): Named => ({ id, name: names.food(id) });
  const lines = costing.lines.map((line) => toLine(source, line, prices, named));
  const edibleG = add(lines.map((line) => line.edibleG));
  return {
    kitchen: kitchen.name,
    currency: kitchen.currency,
    on,
    dish: { id: dish.id, name: names.dish(dish.id) },
    portions,
    lines,
    unknown: costing.unknown.map(({ food }) => named(food)),
    optional: dish.makings.filter(({ optional }) => optional).map(({ food }) => named(food)),
    totalMinor: costing.totalMinor,
    platesMinor: costing.platesMinor,
    atLeast: costing.atLeast,
    estimate: costing.estimate,
    purchasedG: add(lines.map((line) => line.purchasedG)),
    edibleG,
    portionMassG: dish.portionMassG,
    yieldFactor: edibleG > 0 ? (dish.portionMassG * portions) / edibleG : 0,
    shops: kitchen.shops.flatMap((shop) => costAt(source, shop.id, prices, choose, portions, on)),
    minutes: { handsOn: wholeMinutes(handsOn), elapsed: wholeMinutes(elapsed), ahead: wholeMinutes(ahead) },
    declaration: declareDish(nutrients, dish.portionMassG),
    retained: nutrients.retained,
    allergens: allergensCosted(dish, costed, tables.foods),
    keeps: dish.keeps,
    cautions: toCautions(source, costed),
  };
}

function toLine(
  { kitchen, tables, names, dish }: CardSource,
  { at, food, edibleG, purchasedG, costMinor }: ReturnType<typeof costingCard>["lines"][number],
  prices: ReadonlyMap<string, UnitPrice>,
  named: (id: string) => Named,
): CardLine {
  const making = dish.makings[at];
  const pack = kitchen.packs.find(({ id }) => id === prices.get(food)?.pack);
  const seenOn = pack?.seen?.on;
  return {
    food: named(food),
    ...(making?.cut !== undefined && { cut: making.cut }),
    ...(making !== undefined && making.food !== food && { insteadOf: named(making.food) }),
    purchasedG: purchasedG.middle,
    refuseG: Math.max(0, purchasedG.middle - edibleG.middle),
    edibleG: edibleG.middle,
    ...(costMinor !== undefined && { costMinor }),
    ...(pack && {
      pack: {
        label: pack.brand === undefined ? pack.label : `${pack.brand} ${pack.label}`,
        shop: { id: pack.shop, name: names.shop(pack.shop) },
        ...(seenOn !== undefined && { seenOn }),
      },
    }),
    allergens: tables.foods.get(food)?.allergens.eu ?? [],
  };
}

/** What the dish costs with one shop's packs where it sells them; nothing where it sells none of the makings. */
function costAt(
  { kitchen, tables, names, dish }: CardSource,
  shop: string,
  everywhere: ReadonlyMap<string, UnitPrice>,
  choose: Choose,
  portions: number,
  on: CivilDate,
): ShopCost[] {
  const packs = kitchen.packs.filter((pack) => pack.shop === shop);
  const own = cheapestByFood(latestPrices(packs, [], on).values(), tables.foods, on).prices;
  const costing = costingCard(dish, tables.foods, new Map([...everywhere, ...own]), { portions, choose });
  const foods = [...new Set(costing.lines.map(({ food }) => food))];
  const elsewhere = foods.filter((food) => !own.has(food));
  if (elsewhere.length === foods.length) return [];
  return [
    {
      shop: { id: shop, name: names.shop(shop) },
      totalMinor: costing.totalMinor,
      portionMinor: costing.platesMinor[0] ?? 0,
      elsewhere: elsewhere.map((id) => ({ id, name: names.food(id) })),
      estimate: costing.estimate,
    },
  ];
}

/** Cautions without the one that a sheet prints at its foot. */
function toCautions({ kitchen, tables, dish }: CardSource, costed: CostedDish): SheetCaution[] {
  return cautionsCosted(dish, costed, tables, kitchen.authorities.safety)
    .filter(({ code }) => code !== "label-first")
    .map((caution) => ({ ...caution, dishes: [] }));
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
