import type { LinearModel, LinearRow } from "../linear/LinearModel.ts";
import type { MenuProblem } from "../problem.ts";
import { addFoods } from "./addFoods.ts";
import { addIntake } from "./addIntake.ts";
import { addServings } from "./addServings.ts";
import { addTrips } from "./addTrips.ts";
import { addVariety } from "./addVariety.ts";
import { addWishes } from "./addWishes.ts";
import { CountCuts } from "./CountCuts.ts";
import { HullCuts } from "./HullCuts.ts";
import { LevelCuts, type ViolatedCut } from "./LevelCuts.ts";
import { listMeasures } from "./listMeasures.ts";
import { ModelBuilder } from "./ModelBuilder.ts";
import { gatherWeeklyFacts } from "./WeeklyFacts.ts";

/** A relaxation of the menu problem: no plan costs less than `offsetMinor` plus the optimum of the model. */
export interface WeeklyModel {
  readonly model: LinearModel;
  /** Rows that hold for all whole-number points of the model, for solvers that relax it to fractions. */
  readonly lazyRows: readonly LinearRow[];
  /** Finds more such rows at a point. */
  readonly findCuts: (point: (column: string) => number) => ViolatedCut[];
  /** Finds rows that the others miss, at more expense. */
  readonly findDeepCuts: (point: (column: string) => number) => ViolatedCut[];
  readonly offsetMinor: number;
}

/**
 * The menu problem with all days forgotten: only counts of servings, batches and packs remain.
 *
 * Every plan that keeps the limits gives a point of the model that costs no more than the plan, so that the optimum of
 * the model, of its relaxation to fractions, or of any model with more allowed, is a lower bound on all plans. Days are
 * alike but for their number, so that a fraction of each day says little more than a count of days does.
 *
 * `dishes` narrows the menu to those dishes; the bound then holds for plans of those dishes.
 */
export function buildWeeklyModel(problem: MenuProblem, dishes?: ReadonlySet<number>): WeeklyModel {
  const facts = gatherWeeklyFacts(problem, dishes);
  const builder = new ModelBuilder();
  addServings(builder, facts);
  addFoods(builder, facts);
  addTrips(builder, facts);
  addIntake(builder, facts);
  addVariety(builder, facts);
  addWishes(builder, facts);
  const measures = listMeasures(facts);
  const levels = new LevelCuts(facts, measures);
  const counts = new CountCuts(facts, measures);
  const hulls = new HullCuts(facts, measures);
  return {
    model: builder.build(),
    lazyRows: builder.lazyRows,
    findCuts: (point) => [...levels.separate(point), ...counts.separate(point)],
    findDeepCuts: (point) => hulls.separate(point),
    offsetMinor: facts.constantMinor,
  };
}
