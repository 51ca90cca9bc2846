import {
  type Kitchen,
  type KitchenProblem,
  type Tables,
  toMenuProblem,
  toWeekPlan,
  type WeekPlan,
  withOwnDishes,
} from "halfloaf/kitchen";
import type { MenuPlan, MenuProblem } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import type { CivilDate } from "halfloaf/quantity";
import { loadStarter } from "../kitchen/loadStarter.ts";

/** Days of a kitchen stated as a problem; `id` is what to name it by afterwards. */
export interface StatedDays {
  readonly id: number;
  readonly problem: MenuProblem;
  readonly sittings: number;
  readonly dishes: number;
  readonly packs: number;
}

/** The longer thoughts of the app, away from the thread that answers touches. */
export class Thinker {
  readonly #stated = new Map<
    number,
    { readonly kitchen: Kitchen; readonly tables: Tables; readonly problem: KitchenProblem }
  >();
  #last = 0;

  /** States days of a kitchen as a problem for the planner; the one stated before is forgotten. */
  async state(kitchen: Kitchen, from: CivilDate, days: number): Promise<StatedDays> {
    const tables = await tablesOf(kitchen);
    const stated = toMenuProblem(kitchen, tables, from, days);
    this.#stated.clear();
    this.#stated.set(++this.#last, { kitchen, tables, problem: stated });
    const { problem, sittings, packs } = stated;
    return { id: this.#last, problem, sittings: sittings.length, dishes: problem.dishes.length, packs: packs.length };
  }

  /** A plan of the planner as a week with names, dates and sums; undefined where the judge finds fault with it. */
  write(id: number, plan: MenuPlan, search: WeekPlan["search"]): WeekPlan | undefined {
    const stated = this.#stated.get(id);
    if (stated === undefined || checkPlan(stated.problem.problem, plan).faults.length > 0) return undefined;
    return toWeekPlan(stated.kitchen, stated.tables, stated.problem, plan, search);
  }
}

async function tablesOf(kitchen: Kitchen): Promise<Tables> {
  return withOwnDishes((await loadStarter()).tables, kitchen);
}
