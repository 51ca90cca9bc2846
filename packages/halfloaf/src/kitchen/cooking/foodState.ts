import { type Choose, type Dish, type KitPart, orderSteps, type Step } from "../../dish/index.ts";
import { type CautionFood, isRice } from "../../safety/index.ts";

/** Kinds of step that cook what they hold; water heated by itself is no food. */
const COOKING: ReadonlySet<Step["kind"]> = new Set<Step["kind"]>([
  "boil",
  "simmer",
  "steam",
  "fry",
  "bake",
  "grill",
  "microwave",
]);

/** What food is cooked in from one step to the next. */
const VESSELS: readonly KitPart[] = ["pan", "pot", "tray"];

/** What a step does to the food, by place in the method. */
export interface FoodState {
  /** The foods that go in, by id: of what the step names, what the dish is really made with. */
  readonly foods: readonly string[];
  /** All that is in the vessel: what goes in, and what was in it before. */
  readonly holds: readonly string[];
  /** What of that was in the same vessel before, so that no hand touches it. */
  readonly carried: readonly string[];
  /** Those that go in and are raw meat, fish or egg while the step goes on. */
  readonly raw: readonly string[];
  /** True where the step cooks. */
  readonly cooks: boolean;
  /** True where hot food comes out of it. */
  readonly isHot: boolean;
  /** True where rice that was boiled is in it, hot or not. */
  readonly hasRice: boolean;
}

/**
 * Follows the food of a dish through its method. Raw meat, fish and egg count as cooked once a step that cooks held them
 * and none still to come does; until then, browned or not, they are raw. What stands hot stays so until it is chilled.
 */
export function followFood(
  dish: Pick<Dish, "method" | "makings">,
  table: ReadonlyMap<string, CautionFood>,
  choose: Choose,
): FoodState[] {
  const { method } = dish;
  const { precedes, sequence } = orderSteps(method);
  const names = chosenNames(dish, choose);
  const foods = method.map((step) => [...new Set(step.foods.flatMap((id) => names.get(id) ?? []))]);
  const { holds, carried } = carryOn(method, sequence, foods);
  const cooks = method.map(({ kind }, at) => COOKING.has(kind) && (holds[at]?.length ?? 0) > 0);
  const isCookedIn = (at: number, food: string) => cooks[at] === true && holds[at]?.includes(food) === true;
  const isRaw = (at: number, food: string): boolean => {
    if (!table.get(food)?.hygiene.startsWith("raw-")) return false;
    const isBefore = method.some((_, other) => isCookedIn(other, food) && precedes[other]?.[at]);
    const isAfter = method.some((_, other) => isCookedIn(other, food) && precedes[at]?.[other]);
    return !isBefore || isAfter;
  };
  const hot: boolean[] = [];
  const rice: boolean[] = [];
  for (const at of sequence) {
    const before = placesBefore(method, at);
    hot[at] = cooks[at] === true || (method[at]?.kind !== "chill" && before.some((other) => hot[other]));
    const ownRice = (foods[at] ?? []).some((food) => isRiceOf(table.get(food)));
    rice[at] = (cooks[at] === true && ownRice) || before.some((other) => rice[other]);
  }
  return method.map((_, at) => ({
    foods: foods[at] as string[],
    holds: holds[at] as string[],
    carried: carried[at] as string[],
    raw: (foods[at] as string[]).filter((food) => isRaw(at, food)),
    cooks: cooks[at] as boolean,
    isHot: hot[at] as boolean,
    hasRice: rice[at] as boolean,
  }));
}

function placesBefore(method: Dish["method"], at: number): number[] {
  return (method[at] as Step).after.map((id) => method.findIndex((step) => step.id === id));
}

/**
 * Food goes on into a step that shares a vessel with the one before or that names no food of its own, and into one that
 * cooks also out of a bowl or off the board.
 */
function carryOn(method: Dish["method"], sequence: readonly number[], foods: readonly string[][]) {
  const holds: string[][] = [];
  const carried: string[][] = [];
  for (const at of sequence) {
    const { kit, kind } = method[at] as Step;
    const own = foods[at] as string[];
    const before = placesBefore(method, at);
    const inIt = before.filter((other) => {
      const isShared = VESSELS.some((part) => kit.includes(part) && method[other]?.kit.includes(part));
      return isShared || own.length === 0;
    });
    const contentsOf = (places: readonly number[]) => places.flatMap((other) => holds[other] ?? []);
    carried[at] = [...new Set(contentsOf(inIt))];
    holds[at] = [...new Set([...contentsOf(COOKING.has(kind) ? before : inIt), ...own])];
  }
  return { holds, carried };
}

function isRiceOf(food: CautionFood | undefined): boolean {
  return food !== undefined && isRice(food);
}

/** What stands for each name that a step may use: the food of the making that is cooked, whichever of its choices is named. */
function chosenNames(dish: Pick<Dish, "makings">, choose: Choose): Map<string, string[]> {
  const names = new Map<string, string[]>();
  for (const making of dish.makings) {
    const chosen = choose(making)?.food;
    for (const { food } of [making, ...making.alternatives]) {
      const known = names.get(food) ?? [];
      names.set(food, chosen === undefined ? known : [...known, chosen]);
    }
  }
  return names;
}
