import type { DishChoices, DishDraft } from "@halfloaf/reading";
import type { Dish } from "halfloaf/dish";
import {
  type Happening,
  type Kitchen,
  type KitchenProblem,
  type ObservedStep,
  observeSteps,
  retime,
  settleTogether,
  sittingKitchen,
  solveCooking,
  stopAfter,
  type Tables,
  type TimedCooking,
  toWeekPlan,
  toWorkProblem,
  toWorkSheet,
  type WeekPlan,
  type WorkSheet,
  withOwnFoodsAndDishes,
} from "halfloaf/kitchen";
import type { MenuPlan, MenuProblem } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate, Parsed } from "halfloaf/quantity";
import { loadTables, loadTablesIn } from "../kitchen/loadStarter.ts";
import { loadSurely } from "../loading/loadSurely.ts";
import { type DaysAsked, stateAsked } from "./stateAsked.ts";
import { type MendQuestion, type WeekMended, WeekMender } from "./WeekMender.ts";

/** Days of a kitchen stated as a problem; `id` is what to name it by afterwards. */
export interface StatedDays {
  readonly id: number;
  readonly problem: MenuProblem;
  readonly sittings: number;
  readonly dishes: number;
  readonly packs: number;
}

/** A dish to cook, and how many portions of it. */
export interface DishWanted {
  readonly dish: string;
  readonly portions: number;
}

/** A step as the cook tells of it, in minutes since the cooking began. */
export interface StepTold {
  /** Place of the dish, and id of its step. */
  readonly dish: number;
  readonly step: string;
  readonly begunMinutes: number;
  readonly doneMinutes?: number;
}

/** An order of work as a sheet, or why there is none. */
export type OrderTold =
  | { readonly kind: "sheet"; readonly sheet: WorkSheet }
  | { readonly kind: "kit-missing"; readonly dish: string; readonly kit: string }
  | { readonly kind: "none" };

/** What a dish is read from: a text as pasted, a page of HTML, or JSON. */
export interface DishSource {
  readonly form: "text" | "page" | "json";
  readonly content: string;
}

/** How many cook together. */
export type Cooks = 1 | 2;

/** So many questions of the search are answered before the best order found is taken. */
const MOST_QUESTIONS = 4_000;
const QUESTIONS_OF_REST = 200;

/** The longer thoughts of the app, away from the thread that answers touches. */
export class Thinker {
  readonly #stated = new Map<
    number,
    { readonly kitchen: Kitchen; readonly tables: Tables; readonly problem: KitchenProblem }
  >();
  readonly #mender = new WeekMender();
  #last = 0;
  #timed: TimedCooking | undefined;

  /** States days of a kitchen as a problem for the planner; the one stated before is forgotten. */
  async state(kitchen: Kitchen, asked: DaysAsked): Promise<StatedDays> {
    const tables = await tablesOf(kitchen);
    const stated = stateAsked(kitchen, tables, asked);
    this.#stated.clear();
    this.#stated.set(++this.#last, { kitchen, tables, problem: stated });
    const { problem, sittings, packs } = stated;
    return { id: this.#last, problem, sittings: sittings.length, dishes: problem.dishes.length, packs: packs.length };
  }

  /**
   * A plan of the planner, or the nearest one in which all that is cooked at once is done in time, as a week with names,
   * dates and sums; undefined where the judge finds fault with it.
   */
  write(id: number, found: MenuPlan, search: WeekPlan["search"]): WeekPlan | undefined {
    const task = this.#stated.get(id);
    if (task === undefined || checkPlan(task.problem.problem, found).faults.length > 0) return undefined;
    const { kitchen, tables, problem: given } = task;
    const week = { problem: given.problem, plan: found, today: 0, losses: [], isCheaper: false, skippedShare: 0 };
    const { stated, outcome } = settleTogether({ stated: given, kitchen, tables }, week, { judge: checkPlan });
    if (outcome.kind === "none") return undefined;
    const { plan, moneyMinor } = outcome;
    return toWeekPlan(kitchen, tables, stated, plan, { ...search, moneyMinor });
  }

  /** Gets the accepted week of a day ready to be planned again, in the kitchen of that database. */
  prepareWeek(kitchen: string, day: CivilDate): Promise<void> {
    return this.#mender.prepare(kitchen, day);
  }

  /** The kitchen that the accepted week of a day was planned with; undefined where there is none that it fits. */
  weekKitchen(kitchen: string, day: CivilDate): Promise<Kitchen | undefined> {
    return this.#mender.kitchenThen(kitchen, day);
  }

  /** Plans the accepted week of a day again after what came out otherwise. */
  mendWeek(question: MendQuestion): Promise<WeekMended> {
    return this.#mender.mend(question);
  }

  /** The order of work of dishes cooked together, by one cook or two. */
  async order(kitchen: Kitchen, wanted: readonly DishWanted[], cooks: Cooks): Promise<OrderTold> {
    this.#timed = undefined;
    const tables = await tablesOf(kitchen);
    const dishes = wanted.flatMap(({ dish: id, portions }) => {
      const dish = tables.dishes.find((each) => each.id === id);
      return dish === undefined ? [] : [{ dish, portions }];
    });
    const stated = toWorkProblem({ ...sittingKitchen(kitchen, tables), cooks, dishes });
    if (!stated.ok) return { kind: "kit-missing", dish: dishes[stated.dish]?.dish.id ?? "", kit: stated.kit };
    const outcome = solveCooking(stated.cooking, { shouldStop: stopAfter(MOST_QUESTIONS) });
    if (outcome.kind !== "timed") return { kind: "none" };
    this.#timed = outcome.timed;
    return { kind: "sheet", sheet: toWorkSheet(outcome.timed) };
  }

  /** The order of work of these dishes, timed anew from what has happened up to now. */
  async retime(
    kitchen: Kitchen,
    wanted: readonly DishWanted[],
    cooks: Cooks,
    told: readonly StepTold[],
    nowMinutes: number,
  ): Promise<OrderTold> {
    const planned = await this.#timedFor(kitchen, wanted, cooks);
    if (planned === undefined) return { kind: "none" };
    const { timed } = retime(planned, toHappenings(planned, told), nowMinutes, stopAfter(QUESTIONS_OF_REST));
    return { kind: "sheet", sheet: toWorkSheet(timed) };
  }

  /** How long the steps of each dish took, for the pace of its one cook. */
  async seen(
    kitchen: Kitchen,
    wanted: readonly DishWanted[],
    told: readonly StepTold[],
  ): Promise<readonly (readonly ObservedStep[])[]> {
    const planned = await this.#timedFor(kitchen, wanted, 1);
    return wanted.map((_, dish) =>
      planned === undefined
        ? []
        : observeSteps(
            planned,
            toHappenings(
              planned,
              told.filter((each) => each.dish === dish),
            ),
          ),
    );
  }

  /** After the page was loaded again the order is found again: the same dishes have the same one. */
  async #timedFor(kitchen: Kitchen, wanted: readonly DishWanted[], cooks: Cooks): Promise<TimedCooking | undefined> {
    const known = this.#timed?.cooking.wish;
    const isSame =
      known?.cooks === cooks &&
      JSON.stringify(known.dishes.map(({ dish, portions }) => [dish.id, portions])) ===
        JSON.stringify(wanted.map(({ dish, portions }) => [dish, portions]));
    if (!isSame) await this.order(kitchen, wanted, cooks);
    return this.#timed;
  }

  /** The dishes that a text or a page tells, as far as they are understood; none where it tells none. */
  async read(kitchen: Kitchen, { form, content }: DishSource): Promise<readonly DishDraft[]> {
    // Texts name foods in any language.
    const [starter, { draftDish, FoodIndex, readDishTexts }] = await Promise.all([loadTablesIn("de"), loadReader()]);
    const { foods } = withOwnFoodsAndDishes(starter, kitchen);
    const options = { foods, index: new FoodIndex(foods.values()), english: kitchen.english };
    const { dishes } = readDishTexts(content, form === "text" ? "dish" : "page");
    return dishes.map((text) => draftDish(text, options));
  }

  /** The dish of a draft with what was settled, or all that is still in doubt. */
  async settle(kitchen: Kitchen, draft: DishDraft, choices: DishChoices): Promise<Parsed<Dish>> {
    const [{ foods }, { toDish }] = await Promise.all([tablesOf(kitchen), loadReader()]);
    return toDish(draft, choices, { foods, english: kitchen.english });
  }
}

function toHappenings({ cooking }: TimedCooking, told: readonly StepTold[]): Happening[] {
  return told.flatMap(({ dish, step, ...when }): Happening[] => {
    const at = cooking.steps.findIndex((each) => each.dish === dish && each.step?.id === step);
    return at < 0 ? [] : [{ kind: "step", step: at, ...when }];
  });
}

/** The reader is half of what this worker weighs, and few thoughts need it. */
function loadReader(): Promise<typeof import("@halfloaf/reading")> {
  return loadSurely(() => import("@halfloaf/reading"));
}

async function tablesOf(kitchen: Kitchen): Promise<Tables> {
  return withOwnFoodsAndDishes(await loadTables(), kitchen);
}
