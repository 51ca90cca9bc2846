import type { Choose, Dish, KitPart, Step } from "../../dish/index.ts";
import type { AuthorityChoice } from "../../safety/index.ts";
import type { WorkProblem } from "../../work/problem.ts";
import type { Kitchen } from "../kitchen.ts";
import type { Tables } from "../tables.ts";
import type { Pace } from "./pace.ts";

/** A dish to be cooked, and how much of it; its makings as written unless `choose` takes others. */
export interface DishToCook {
  readonly dish: Dish;
  readonly portions: number;
  readonly choose?: Choose;
}

/** What is to be cooked at once, with what, by how many, and whose figures for safety hold. */
export interface CookingWish {
  readonly dishes: readonly DishToCook[];
  readonly kit: Kitchen["kit"];
  readonly cooks: 1 | 2;
  readonly tables: Pick<Tables, "foods" | "safety">;
  readonly authority: AuthorityChoice;
  /** Absent = every step takes as long as the dish says. */
  readonly pace?: Pace;
}

/** What a dish is cooked with: all that its minutes depend on besides the dish. */
export type SittingKitchen = Omit<CookingWish, "dishes">;

/** A step of the problem: the dish by its place in the wish, and the step of its method. */
export interface CookingStep {
  readonly dish: number;
  /** Absent for the moment a dish is on the table, which is no work. */
  readonly step?: Step;
}

/** A step that is done hours before: whole minutes, and how long before it must have begun. */
export interface AheadStep {
  readonly dish: number;
  readonly step: Step;
  readonly minutes: number;
  /** Steps done ahead that wait for this one, by place in the list. */
  readonly leadsToAhead: readonly number[];
  /** Steps of the problem that wait for this one. */
  readonly leadsToSteps: readonly number[];
}

/** One cooking as a problem for `work/`, and the way back: each list goes by the indices of the problem. */
export interface Cooking {
  readonly wish: CookingWish;
  readonly problem: WorkProblem;
  readonly steps: readonly CookingStep[];
  readonly parts: readonly KitPart[];
  readonly ahead: readonly AheadStep[];
}

/** The cooking, or the part of the kit that a dish lacks. */
export type StatedCooking =
  | { readonly ok: true; readonly cooking: Cooking }
  | { readonly ok: false; readonly dish: number; readonly kit: string };
