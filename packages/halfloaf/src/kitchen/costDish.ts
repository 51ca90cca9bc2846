import { allergensOf, type Choose, type ChosenFood, type CostingCard, costingCard, type Dish } from "../dish/index.ts";
import type { FoodTable } from "../food/index.ts";
import { cheapestByFood, latestPrices, type UnitPrice } from "../price/index.ts";
import type { CivilDate } from "../quantity/index.ts";
import { type Caution, cautionsOf } from "../safety/index.ts";
import type { Kitchen } from "./kitchen.ts";
import type { Tables } from "./tables.ts";

/** Who says the cautions that are a dish's own. */
const AUTHOR = "the dish's author";

/** A caution of a dish as it is costed; code "dish" = the dish's own. */
interface CostedCaution {
  readonly code: Caution["code"] | "dish";
  readonly text: string;
  readonly authority: string;
}

/** A dish as it is costed: which food each making is, and what follows from that. */
export interface CostedDish {
  readonly prices: ReadonlyMap<string, UnitPrice>;
  readonly choose: Choose;
  readonly costing: CostingCard;
  /** The makings with what was chosen for each and no alternatives; optional ones are not among them. */
  readonly makings: Dish["makings"];
}

/**
 * The cheapest price by food on a day, in minor units for a gram as purchased: each at the cheapest single pack by its latest
 * price, or at what the stock at hand cost where no pack is sold. A food that neither is sold nor at hand is missing.
 */
export function foodPrices(
  { packs, stores }: Pick<Kitchen, "packs" | "stores">,
  foods: FoodTable,
  on: CivilDate,
): Map<string, UnitPrice> {
  const prices = new Map(cheapestByFood(latestPrices(packs, [], on).values(), foods, on).prices);
  for (const { food, massG, costMinor } of stores) {
    if (!prices.has(food)) prices.set(food, { minorPerG: costMinor / massG, estimate: false });
  }
  return prices;
}

/** Chooses for a making that can't be had its first alternative that can; what is optional stays out, as in a plan. */
function chooseHad(prices: ReadonlyMap<string, UnitPrice>): Choose {
  return (making) => {
    if (making.optional) return undefined;
    const options: readonly ChosenFood[] = [making, ...making.alternatives];
    return options.find(({ food }) => prices.has(food)) ?? making;
  };
}

/** Costs a dish for so many standard portions at the prices of `foodPrices`. */
export function costDish(
  dish: Dish,
  portions: number,
  prices: ReadonlyMap<string, UnitPrice>,
  foods: FoodTable,
): CostedDish {
  const choose = chooseHad(prices);
  const makings = dish.makings.flatMap((making) => {
    const food = choose(making)?.food;
    return food === undefined ? [] : [{ ...making, food, alternatives: [] }];
  });
  return { prices, choose, costing: costingCard(dish, foods, prices, { portions, choose }), makings };
}

/** Allergens of a dish as it is costed, by both lists: those surely in, and those optional makings and alternatives could bring. */
export function allergensCosted(dish: Dish, { makings }: Pick<CostedDish, "makings">, foods: FoodTable) {
  const [written, costed] = [allergensOf(dish, foods), allergensOf({ makings }, foods)];
  return {
    eu: split(costed.eu.sure, [...written.eu.sure, ...written.eu.possible]),
    us: split(costed.us.sure, [...written.us.sure, ...written.us.possible]),
  };
}

function split<Id>(sure: readonly Id[], all: readonly Id[]) {
  return { sure: [...sure], possible: all.filter((id) => !sure.includes(id)) };
}

/** Cautions that follow from the foods of a dish as it is costed, optional ones too, then the dish's own. */
export function cautionsCosted(
  dish: Dish,
  { choose }: Pick<CostedDish, "choose">,
  { foods, safety }: Tables,
  authority: Kitchen["authorities"]["safety"],
): CostedCaution[] {
  const all: Choose = (making) => (making.optional ? making : choose(making));
  const own = dish.cautions.map((text): CostedCaution => ({ code: "dish", text, authority: AUTHOR }));
  const general = cautionsOf(dish, foods, safety, authority, all);
  return [...general.map(({ code, text, authority: by }) => ({ code, text, authority: by })), ...own];
}
