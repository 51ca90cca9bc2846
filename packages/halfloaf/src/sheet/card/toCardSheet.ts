import {
  allergensOf,
  type Choose,
  type ChosenFood,
  costingCard,
  type Dish,
  minutesOf,
  nutrientsOfDish,
} from "../../dish/index.ts";
import type { Kitchen, Tables } from "../../kitchen/index.ts";
import { cheapestByFood, latestPrices, type UnitPrice } from "../../price/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { cautionsOf, EU_ALLERGEN_NAMES, US_ALLERGEN_NAMES } from "../../safety/index.ts";
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

/** Who says the cautions that are the dish's own. */
const AUTHOR = "the dish's author";

/**
 * The costing card of a dish at the prices of a kitchen on a day: each making at the cheapest single pack, or at what the
 * stock at hand cost where no pack is sold. Where a making can't be had its first alternative that can stands in; what is
 * optional stays out of all sums.
 */
export function toCardSheet(source: CardSource): CardSheet {
  const { kitchen, tables, dish, names, portions = dish.portions, on = kitchen.startsOn } = source;
  const { foods } = tables;
  const prices = pricesOf(kitchen, tables, on);
  const choose = chooseHad(prices);
  const costing = costingCard(dish, foods, prices, { portions, choose });
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
    allergens: toAllergens(dish, choose, tables),
    keeps: dish.keeps,
    cautions: toCautions(source, choose),
  };
}

/** The cheapest price by food on a day; where no pack has one, what the stock at hand cost. */
function pricesOf({ packs, stores }: Kitchen, { foods }: Tables, on: CivilDate): Map<string, UnitPrice> {
  const prices = new Map(cheapestByFood(latestPrices(packs, [], on).values(), foods, on).prices);
  for (const { food, massG, costMinor } of stores) {
    if (!prices.has(food)) prices.set(food, { minorPerG: costMinor / massG, estimate: false });
  }
  return prices;
}

function chooseHad(prices: ReadonlyMap<string, UnitPrice>): Choose {
  return (making) => {
    if (making.optional) return undefined;
    const options: readonly ChosenFood[] = [making, ...making.alternatives];
    return options.find(({ food }) => prices.has(food)) ?? making;
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
    allergens: (tables.foods.get(food)?.allergens.eu ?? []).map((id) => EU_ALLERGEN_NAMES[id].name),
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

/** Allergens of what is costed, and those that optional makings and alternatives could bring. */
function toAllergens(dish: Dish, choose: Choose, { foods }: Tables): CardSheet["allergens"] {
  const makings = dish.makings.flatMap((making) => {
    const food = choose(making)?.food;
    return food === undefined ? [] : [{ ...making, food, alternatives: [] }];
  });
  const [written, costed] = [allergensOf(dish, foods), allergensOf({ makings }, foods)];
  const split = <Id extends string>(
    sure: readonly Id[],
    all: readonly Id[],
    called: Readonly<Record<Id, { readonly name: string }>>,
  ) => ({
    sure: sure.map((id) => called[id].name),
    possible: all.filter((id) => !sure.includes(id)).map((id) => called[id].name),
  });
  return {
    eu: split(costed.eu.sure, [...written.eu.sure, ...written.eu.possible], EU_ALLERGEN_NAMES),
    us: split(costed.us.sure, [...written.us.sure, ...written.us.possible], US_ALLERGEN_NAMES),
  };
}

/** Cautions that follow from the foods, optional ones too, then the dish's own. */
function toCautions({ kitchen, tables, dish }: CardSource, choose: Choose): SheetCaution[] {
  const all: Choose = (making) => (making.optional ? making : choose(making));
  const general = cautionsOf(dish, tables.foods, tables.safety, kitchen.authorities.safety, all);
  return [
    ...general.filter(({ code }) => code !== "label-first"),
    ...dish.cautions.map((text) => ({ code: "dish", text, authority: AUTHOR })),
  ].map(({ code, text, authority }) => ({ code, text, authority, dishes: [] }));
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
