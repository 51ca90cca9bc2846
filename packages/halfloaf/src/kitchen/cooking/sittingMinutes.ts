import {
  asWritten,
  type Choose,
  type Dish,
  type DishMinutes,
  type KitPart,
  type LinearMinutes,
  linearMinutes,
  markAhead,
  orderSteps,
  type Step,
  vesselsOf,
} from "../../dish/index.ts";
import type { Food, FoodTable } from "../../food/index.ts";
import { isRice } from "../../safety/index.ts";
import type { SittingKitchen } from "./Cooking.ts";
import { fixSequence, type Sequence, sequenceMinutes } from "./fixSequence.ts";
import { type Pace, paceFactor, stepMinutes } from "./pace.ts";
import type { TimedCooking } from "./solveCooking.ts";
import { timeAlone } from "./timeAlone.ts";

/** Whole portions that the straight lines hold for. */
const PORTIONS = [1, 2, 3, 4, 5, 6, 7, 8];

/** Minutes of a dish as straight lines over its portions, for planning, and what it leaves to wash up. */
export interface SittingMinutes {
  readonly handsOn: LinearMinutes;
  readonly elapsed: LinearMinutes;
  /** Least minutes for which it takes all hands, all rings, all pans, all pots; what is done ahead is not in them. */
  readonly loads: readonly LinearMinutes[];
  /** Minutes of `handsOn` for washing the board and kit between its steps. */
  readonly washMinutes: number;
  readonly vessels: DishMinutes["vessels"];
  /** `scheduled` = by an order of work; `listed` = by a simple list, where there is none. */
  readonly basis: "scheduled" | "listed";
}

/** Minutes that were reckoned before: a planner asks for the same dishes and kit again and again. */
const known = new WeakMap<FoodTable, WeakMap<Dish, Map<string, SittingMinutes>>>();

/**
 * The minutes of a dish cooked by itself in a kitchen. The order of work is solved for the portions it is written for;
 * the same sequence is then timed for 1 to 8 portions, and of the straight lines that lie nowhere below these the one
 * that is lowest in the middle is taken. Hands-on is exact, washes of board and kit included.
 * Where the kit does not suffice, or the search finds nothing in its counted work, a simple list stands in for it.
 */
export function sittingMinutes(dish: Dish, kitchen: SittingKitchen, choose: Choose = asWritten): SittingMinutes {
  const of = known.get(kitchen.tables.foods)?.get(dish) ?? new Map<string, SittingMinutes>();
  const ofFoods = known.get(kitchen.tables.foods) ?? new WeakMap<Dish, Map<string, SittingMinutes>>();
  known.set(kitchen.tables.foods, ofFoods.set(dish, of));
  const { kit, cooks, authority, pace } = kitchen;
  const { foods } = kitchen.tables;
  const key = JSON.stringify([
    kit,
    cooks,
    authority,
    pace,
    dish.makings.map((making) => kindOf(foods.get(choose(making)?.food ?? ""))),
  ]);
  const minutes = of.get(key) ?? reckonMinutes(dish, kitchen, choose);
  of.set(key, minutes);
  return minutes;
}

/** All of a food that an order of work asks for: whether it is raw meat, fish or egg, and whether it is rice. */
function kindOf(food: Food | undefined): string {
  return food === undefined ? "none" : `${food.hygiene}${isRice(food) ? " rice" : ""}`;
}

function reckonMinutes(dish: Dish, kitchen: SittingKitchen, choose: Choose): SittingMinutes {
  const vessels = vesselsOf(dish);
  const loads = loadLines(dish, kitchen);
  const timed = timeAlone(dish, kitchen, choose);
  if (timed === undefined) {
    const lines = linearMinutes(dish, { rings: Math.max(1, kitchen.kit.rings), cooks: kitchen.cooks });
    return { ...lines, loads, washMinutes: 0, vessels, basis: "listed" };
  }
  const washMinutes = sumWashes(timed);
  const { fixed, perPortion } = sumLines(dish.method, kitchen.pace, ({ hands }) => HANDS[hands]);
  const handsOn = { fixed: fixed + washMinutes, perPortion };
  return { handsOn, elapsed: lineAbove(fixSequence(timed)), loads, washMinutes, vessels, basis: "scheduled" };
}

/** Both hands count one minute, an eye kept on it half; the minutes ahead count too, as they are work of that day. */
const HANDS = { full: 1, eye: 0.5, none: 0 } as const;

/** Minutes that both hands wash the board, and kit for its next use. */
export function sumWashes({ cooking: { problem }, plan }: TimedCooking): number {
  const kitMinutes = plan.kitWashes.map(({ use }) => problem.kit[problem.uses[use]?.kind as number]?.washMinutes ?? 0);
  const boardMinutes = plan.boardWashes.length * (problem.board?.washMinutes ?? 0);
  return kitMinutes.reduce((sum, minutes) => sum + minutes, boardMinutes);
}

/** No order of work can do with less of hands, rings, pans and pots: each is taken up while a step that needs it goes on. */
function loadLines({ method }: Dish, { kit, cooks, pace }: SittingKitchen): LinearMinutes[] {
  const isAhead = markAhead(method, orderSteps(method));
  const steps = method
    .filter((_, at) => !isAhead[at])
    .map((step) => (isFixed(step) ? inWholeMinutes(step, pace) : step));
  const ofKit = ([part, count]: readonly [KitPart, number]): LinearMinutes =>
    sumLines(steps, pace, (step) => step.kit.filter((each) => each === part).length / Math.max(1, count));
  const counts = [
    ["ring", kit.rings],
    ["pan", kit.pans],
    ["pot", kit.pots],
  ] as const;
  return [sumLines(steps, pace, ({ hands }) => HANDS[hands] / cooks), ...counts.map(ofKit)];
}

function isFixed({ minutes }: Step): boolean {
  return minutes.perPortion === 0;
}

/** A step of the same minutes for any portions, with those that an order of work gives it. */
function inWholeMinutes(step: Step, pace: Pace = {}): Step {
  const fixed = stepMinutes(step, 1, pace) / paceFactor(step.kind, pace);
  return { ...step, minutes: { fixed, perPortion: 0 } };
}

/** The minutes of steps at the cook's pace, each as often as it counts. */
function sumLines(steps: readonly Step[], pace: Pace | undefined, weigh: (step: Step) => number): LinearMinutes {
  const add = (key: "fixed" | "perPortion") =>
    steps.reduce((sum, step) => sum + step.minutes[key] * weigh(step) * paceFactor(step.kind, pace ?? {}), 0);
  return { fixed: add("fixed"), perPortion: add("perPortion") };
}

/** The line above all minutes that is lowest in the middle: one of the sides of their upper hull. */
function lineAbove(sequence: Sequence): LinearMinutes {
  const points = PORTIONS.map((portions) => ({
    portions,
    minutes: sequenceMinutes(sequence, sequence.minutesAt(portions)),
  }));
  const hull: Point[] = [];
  for (const point of points) {
    while (hull.length > 1 && !turnsDown(hull.at(-2) as Point, hull.at(-1) as Point, point)) hull.pop();
    hull.push(point);
  }
  const middle = ((PORTIONS[0] as number) + (PORTIONS.at(-1) as number)) / 2;
  const right = hull.findIndex(({ portions }) => portions >= middle);
  const [a, b] = [hull[right - 1] as Point, hull[right] as Point];
  const perPortion = (b.minutes - a.minutes) / (b.portions - a.portions);
  const fixed = a.minutes - perPortion * a.portions;
  if (fixed >= 0) return { fixed, perPortion };
  return { fixed: 0, perPortion: Math.max(...points.map(({ portions, minutes }) => minutes / portions)) };
}

interface Point {
  readonly portions: number;
  readonly minutes: number;
}

function turnsDown(a: Point, b: Point, c: Point): boolean {
  return (b.minutes - a.minutes) * (c.portions - b.portions) > (c.minutes - b.minutes) * (b.portions - a.portions);
}
