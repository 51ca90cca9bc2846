import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import { makeDish, makeFood, makeMaking, makeTable } from "../../dish/dish.testing.ts";
import type { Dish, Step } from "../../dish/index.ts";
import { readSafetyTables } from "../../safety/safetyTables.testing.ts";
import { parseKitchen } from "../checkKitchen.ts";
import type { Kitchen } from "../kitchen.ts";
import { parseTables, type Tables } from "../tables.ts";
import type { Cooking, CookingWish, DishToCook } from "./Cooking.ts";
import { solveCooking, type TimedCooking } from "./solveCooking.ts";
import { toWorkProblem } from "./toWorkProblem.ts";

/** The tables that come with the project. */
export function readStarterTables(): Tables {
  const parsed = parseTables(loadStarterTables());
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return parsed.value;
}

/** The demo kitchens. */
export function readDemoKitchens(): Kitchen[] {
  return loadDemoKitchens().map(({ content }) => {
    const parsed = parseKitchen(content);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
    return parsed.value;
  });
}

/** A kit of one of each, two rings and two pots, with what is given put in its place. */
export function makeKit(over: Partial<Kitchen["kit"]> = {}): Kitchen["kit"] {
  return {
    rings: 2,
    pans: 1,
    pots: 2,
    potPortions: 6,
    oven: true,
    microwave: true,
    kettle: true,
    blender: true,
    boards: 1,
    fridgeLitres: 50,
    freezerLitres: 10,
    ...over,
  };
}

const FOODS = makeTable(
  makeFood("chicken", {
    group: "poultry",
    hygiene: "raw-meat",
    names: { british: ["chicken thigh"], american: ["chicken thigh"] },
    keeping: { unopened: { fridge: 1, freezer: 90 }, opened: { fridge: 1 }, authority: "common practice, no source" },
  }),
  makeFood("fish-frozen", {
    group: "fish",
    hygiene: "raw-fish",
    names: { british: ["white fish, frozen"], american: ["white fish, frozen"] },
  }),
  makeFood("rice", { group: "grain", names: { british: ["long-grain rice"], american: ["long-grain rice"] } }),
  makeFood("carrot", { hygiene: "unwashed-root" }),
  makeFood("lettuce"),
  makeFood("barley", { group: "grain" }),
);

/** A dish of these steps; its makings are the foods they name. */
export function dishOf(id: string, method: readonly Step[], over: Partial<Dish> = {}): Dish {
  const foods = [...new Set(method.flatMap((step) => step.foods))];
  const makings = (foods.length > 0 ? foods : ["barley"]).map((food) => makeMaking(food, 100));
  return makeDish({ id, title: id, main: makings[0]?.food ?? "barley", makings, method: [...method], ...over });
}

/** A wish for these dishes, two portions of each, with a kit of one cook. */
export function wishFor(dishes: readonly (Dish | DishToCook)[], over: Partial<CookingWish> = {}): CookingWish {
  return {
    dishes: dishes.map((each) => ("method" in each ? { dish: each, portions: 2 } : each)),
    kit: makeKit(),
    cooks: 1,
    tables: { foods: FOODS, safety: readSafetyTables() },
    authority: "strictest",
    ...over,
  };
}

/** The cooking of a wish; throws where the kit does not suffice. */
export function stateWork(wish: CookingWish): Cooking {
  const stated = toWorkProblem(wish);
  if (!stated.ok) throw new Error(`no ${stated.kit}`);
  return stated.cooking;
}

/** Its order of work; throws where there is none. */
export function timeWork(wish: CookingWish): TimedCooking {
  const outcome = solveCooking(stateWork(wish), { shouldStop: () => false });
  if (outcome.kind !== "timed") throw new Error(outcome.kind);
  return outcome.timed;
}

/** Start and end of a step, by the place of its dish and its id. */
export function timesOf({ cooking, plan }: TimedCooking, dish: number, id: string): { start: number; end: number } {
  const index = cooking.steps.findIndex((each) => each.dish === dish && each.step?.id === id);
  const start = plan.starts[index];
  const minutes = cooking.problem.steps[index]?.minutes;
  if (start === undefined || minutes === undefined) throw new Error(`no step ${id}`);
  return { start, end: start + minutes };
}
