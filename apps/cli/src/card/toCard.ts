import { type Choose, type CostingCard, type Dish, dietOf, minutesOf, nutrientsOfDish } from "halfloaf/dish";
import { type Food, foodName, NUTRIENT_NAMES, type Nutrient } from "halfloaf/food";
import {
  allergensCosted,
  cautionsCosted,
  costDish,
  fitDish,
  foodPrices,
  type Kitchen,
  type Tables,
  takesFood,
} from "halfloaf/kitchen";
import type { UnitPrice } from "halfloaf/price";
import type { CardData } from "./CardData.ts";

/** What a card is made from. */
export interface CardSource {
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly dish: Dish;
  readonly portions: number;
}

/**
 * The costing card of a dish at the prices of a kitchen on its first day: each making at the cheapest single pack, or at
 * what the stock at hand cost where no pack is sold. For a making that can't be had its first alternative that can stands
 * in; optional makings stay out of all sums, as in a plan.
 */
export function toCard(source: CardSource): CardData {
  const { kitchen, tables, dish, portions } = source;
  const { foods } = tables;
  const prices = foodPrices(kitchen, foods, kitchen.startsOn);
  const chosen = costDish(dish, portions, prices, foods);
  const { choose, costing } = chosen;
  const named = (food: string) => nameFood(food, source);
  const nutrients = nutrientsOfDish(dish, foods, tables.retain, choose);
  const { handsOn, elapsed, ahead, vessels } = minutesOf(dish, portions, {
    rings: Math.max(1, kitchen.kit.rings),
    cooks: 1,
  });
  const fitted = fitDish(dish, foods, kitchen.kit, [], () => true);
  const alternatives = toAlternatives(source, prices, choose);
  const diet = { asCosted: dietOf(chosen, foods).asWritten, reachable: dietOf(dish, foods).reachable };
  return {
    format: "halfloaf-card",
    version: 1,
    dish: dish.id,
    title: dish.title,
    kitchen: kitchen.name,
    currency: kitchen.currency,
    portions,
    portionMassG: dish.portionMassG,
    makings: costing.lines.map((line) => toMaking(line, dish, prices, named)),
    unknown: costing.unknown.map(({ food, reason }) => ({ ...named(food), reason })),
    ...(alternatives.length > 0 && { alternatives }),
    optional: dish.makings.filter(({ optional }) => optional).map(({ food }) => named(food)),
    totalMinor: costing.totalMinor,
    platesMinor: [...costing.platesMinor],
    atLeast: costing.atLeast,
    estimate: costing.estimate,
    minutes: { handsOn, elapsed, ahead },
    vessels: vessels.map(({ vessel, count }) => ({ vessel, count })),
    intake: [
      ...NUTRIENT_NAMES.map((component) => ({ component, ...known(nutrients.perPortion[component]) })),
      { component: "vegetablesFruitG" as const, ...known({ amount: nutrients.vegetablesFruitG, knownShare: 1 }) },
    ],
    sources: toSources(chosen, source),
    retained: nutrients.retained,
    allergens: allergensCosted(dish, chosen, foods),
    diet: diet as CardData["diet"],
    notFor: findWhoLeavesIt(chosen, source),
    ...("reason" in fitted && fitted.reason === "kit-missing" && { missingKit: fitted.kit }),
    keeps: dish.keeps,
    travels: dish.travels,
    served: dish.served,
    cautions: cautionsCosted(dish, chosen, tables, kitchen.authorities.safety),
  };
}

/** Where the figures of each food come from: its own source, and those of single components. */
function toSources({ makings }: Pick<Dish, "makings">, source: CardSource): CardData["sources"] {
  return [...new Set(makings.map(({ food }) => food))].flatMap((id) => {
    const food = source.tables.foods.get(id);
    if (food === undefined) return [];
    const others = new Map<string, Nutrient[]>();
    for (const component of NUTRIENT_NAMES) {
      const from = food.composition[component] === undefined ? undefined : food.figureSources[component];
      if (from !== undefined) others.set(from, [...(others.get(from) ?? []), component]);
    }
    const listed = [...others].map(([from, components]) => ({ source: from, components }));
    return [{ ...nameFood(id, source), source: food.source, others: listed }];
  });
}

type NamedFood = CardData["optional"][number];

function nameFood(food: string, { kitchen, tables }: CardSource): NamedFood {
  return { food, name: foodName(tables.foods.get(food), kitchen.english) ?? food };
}

function known({ amount, knownShare }: { readonly amount: number | undefined; readonly knownShare: number }) {
  return { ...(amount !== undefined && { amount }), knownShare: Math.min(1, knownShare) };
}

/** The other foods that each making may be, of those that the kitchen can have. */
function toAlternatives(
  source: CardSource,
  prices: ReadonlyMap<string, UnitPrice>,
  choose: Choose,
): NonNullable<CardData["alternatives"]> {
  return source.dish.makings.flatMap((making) => {
    const chosen = choose(making)?.food;
    if (chosen === undefined) return [];
    const others = [making, ...making.alternatives].filter(({ food }) => food !== chosen && prices.has(food));
    return others.map(({ food }) => ({ ...nameFood(food, source), insteadOf: nameFood(chosen, source) }));
  });
}

function toMaking(
  line: CostingCard["lines"][number],
  dish: Dish,
  prices: ReadonlyMap<string, UnitPrice>,
  named: (food: string) => NamedFood,
): CardData["makings"][number] {
  const { at, food, purchasedG, refuseG, edibleG, costMinor, estimate } = line;
  const making = dish.makings[at];
  const pack = prices.get(food)?.pack;
  return {
    ...named(food),
    ...(making?.cut !== undefined && { cut: making.cut }),
    ...(making !== undefined && making.food !== food && { insteadOf: named(making.food) }),
    purchasedG,
    refuseG: Math.max(0, refuseG),
    edibleG,
    ...(costMinor !== undefined && { costMinor }),
    ...(estimate !== undefined && { estimate }),
    ...(pack !== undefined && { pack }),
  };
}

function findWhoLeavesIt(chosen: Pick<Dish, "makings">, source: CardSource): CardData["notFor"] {
  const { kitchen, tables } = source;
  return kitchen.eaters.flatMap((eater) => {
    const foods = chosen.makings
      .map(({ food }) => food)
      .filter((food) => !takesFood(eater, tables.foods.get(food) as Food));
    return foods.length === 0
      ? []
      : [{ eater: eater.id, name: eater.name, foods: [...new Set(foods)].map((food) => nameFood(food, source)) }];
  });
}
