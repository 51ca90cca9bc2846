import { type CostingCard, type Diet, type Dish, dietOf, minutesOf, needsHeat } from "halfloaf/dish";
import { type FoodTable, namesOf, toSearchText } from "halfloaf/food";
import { costDish, foodPrices, type Kitchen } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";

/** What the list of dishes says of one and sifts by. */
export interface DishFacts {
  /** Title and all names of the makings, to search in (`isFound`). */
  readonly words: string;
  /** From the first step to the plate, for one portion each. */
  readonly minutes: number;
  /** The strictest way of eating that it can be made for; absent where a food is not in the table. */
  readonly diet?: Diet;
  readonly hasHeat: boolean;
  readonly freezes: boolean;
  readonly isOwn: boolean;
  readonly cost: PortionCost;
}

/** What a portion costs at the cheapest prices known; absent where no making has a price. */
export interface PortionCost {
  readonly minor?: number;
  readonly atLeast: boolean;
  readonly estimate: boolean;
}

export function portionCost({ lines, totalMinor, portions, atLeast, estimate }: CostingCard): PortionCost {
  const isPriced = lines.some(({ costMinor }) => costMinor !== undefined);
  return { ...(isPriced && { minor: Math.round(totalMinor / portions) }), atLeast, estimate };
}

/** What gives the facts of a dish for all at table; they are worked out once, when they are first asked for. */
export function dishFacts(kitchen: Kitchen, foods: FoodTable, day: CivilDate): (dish: Dish) => DishFacts {
  const prices = foodPrices(kitchen, foods, day);
  const portions = kitchen.eaters.length;
  const hands = { rings: Math.max(1, kitchen.kit.rings), cooks: 1 };
  const own = new Set(kitchen.dishes.map(({ id }) => id));
  const known = new Map<Dish, DishFacts>();
  const words = new Map<string, string>();
  const wordsOf = (id: string): string => {
    const food = foods.get(id);
    const said = words.get(id) ?? toSearchText(food === undefined ? id : namesOf(food).join(" "));
    words.set(id, said);
    return said;
  };
  const find = (dish: Dish): DishFacts => {
    const diet = dietOf(dish, foods).reachable;
    return {
      words: [toSearchText(dish.title), ...dish.makings.map(({ food }) => wordsOf(food))].join(" "),
      minutes: minutesOf(dish, portions, hands).elapsed,
      ...(diet !== undefined && { diet }),
      hasHeat: needsHeat(dish),
      freezes: dish.keeps.freezerDays !== undefined,
      isOwn: own.has(dish.id),
      cost: portionCost(costDish(dish, portions, prices, foods).costing),
    };
  };
  return (dish) => {
    const facts = known.get(dish) ?? find(dish);
    known.set(dish, facts);
    return facts;
  };
}
