import {
  allergensOf,
  type Choose,
  type ChosenFood,
  costingCard,
  type Dish,
  dietOf,
  minutesOf,
  nutrientsOfDish,
} from "halfloaf/dish";
import { type Food, NUTRIENT_NAMES, type Nutrient } from "halfloaf/food";
import { fitDish, type Kitchen, type Tables, takesFood } from "halfloaf/kitchen";
import { cheapestByFood, type UnitPrice } from "halfloaf/price";
import { cautionsOf } from "halfloaf/safety";
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
  const prices = pricesOf(kitchen, tables);
  const choose = chooseHad(prices);
  const costing = costingCard(dish, foods, prices, { portions, choose });
  const named = (food: string) => nameFood(food, source);
  const nutrients = nutrientsOfDish(dish, foods, tables.retain, choose);
  const { handsOn, elapsed, ahead, vessels } = minutesOf(dish, portions, {
    rings: Math.max(1, kitchen.kit.rings),
    cooks: 1,
  });
  const fitted = fitDish(dish, foods, kitchen.kit, [], () => true);
  const chosen = costedDish(dish, choose);
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
    allergens: toAllergens(dish, chosen, tables),
    diet: diet as CardData["diet"],
    notFor: findWhoLeavesIt(chosen, source),
    ...("reason" in fitted && fitted.reason === "kit-missing" && { missingKit: fitted.kit }),
    keeps: dish.keeps,
    travels: dish.travels,
    served: dish.served,
    cautions: toCautions(source, choose),
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
  return { food, name: tables.foods.get(food)?.names[kitchen.english][0] ?? food };
}

function known({ amount, knownShare }: { readonly amount: number | undefined; readonly knownShare: number }) {
  return { ...(amount !== undefined && { amount }), knownShare: Math.min(1, knownShare) };
}

/** The cheapest price by food on the kitchen's first day; where no pack has one, what the stock at hand cost. */
function pricesOf({ packs, stores, startsOn }: Kitchen, { foods }: Tables): Map<string, UnitPrice> {
  const priced = packs.map((pack) => ({ pack, estimate: pack.estimate === true }));
  const prices = new Map(cheapestByFood(priced, foods, startsOn).prices);
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

/** The dish with what was chosen for each making, and nothing else. */
function costedDish(dish: Dish, choose: Choose): Pick<Dish, "makings"> {
  const makings = dish.makings.flatMap((making) => {
    const food = choose(making)?.food;
    return food === undefined ? [] : [{ ...making, food, alternatives: [] }];
  });
  return { makings };
}

function toMaking(
  line: ReturnType<typeof costingCard>["lines"][number],
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

/** Allergens of what is costed, and those that optional makings and alternatives could bring. */
function toAllergens(dish: Dish, chosen: Pick<Dish, "makings">, { foods }: Tables): CardData["allergens"] {
  const [written, costed] = [allergensOf(dish, foods), allergensOf(chosen, foods)];
  const split = <Allergen>(sure: readonly Allergen[], all: readonly Allergen[]) => ({
    sure: [...sure],
    possible: all.filter((allergen) => !sure.includes(allergen)),
  });
  return {
    eu: split(costed.eu.sure, [...written.eu.sure, ...written.eu.possible]),
    us: split(costed.us.sure, [...written.us.sure, ...written.us.possible]),
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

/** Cautions that follow from the foods, optional ones too, then the dish's own. */
function toCautions({ kitchen, tables, dish }: CardSource, choose: Choose): CardData["cautions"] {
  const all: Choose = (making) => (making.optional ? making : choose(making));
  const general = cautionsOf(dish, tables.foods, tables.safety, kitchen.authorities.safety, all);
  return [
    ...general.map(({ code, text, authority }) => ({ code, text, authority })),
    ...dish.cautions.map((text) => ({ code: "dish", text, authority: "the dish's author" })),
  ];
}
