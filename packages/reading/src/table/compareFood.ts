import {
  type Composition,
  type Contradiction,
  componentsDerivedFrom,
  deriveComponents,
  type Food,
  type FoodOverride,
  findContradictions,
  NUTRIENT_NAMES,
  type Nutrient,
  overrideFigures,
} from "halfloaf/food";
import type { CivilDate } from "halfloaf/quantity";
import { type OfficialFood, sourceOfFigure } from "./OfficialTable.ts";

/** A figure per 100 g edible portion, in the unit of its component's name, and where it comes from. */
export interface SourcedFigure {
  readonly figure: number;
  readonly source: string;
}

/** What taking the official figures would do to one component; one that neither knows is not listed. */
export interface ComponentChange {
  readonly component: Nutrient;
  /**
   * Both know it and agree, both know it and differ, only the official table knows it, or only the table at hand does:
   * that is kept unless it is asked to be forgotten.
   */
  readonly kind: "same" | "changed" | "gained" | "kept";
  readonly now?: SourcedFigure;
  readonly official?: SourcedFigure;
  /** Official less now; absent unless both know it. */
  readonly difference?: number;
}

/** A food of the table at hand beside one of an official table; nothing is taken yet. */
export interface FoodComparison {
  readonly food: Food;
  readonly official: OfficialFood;
  /** In the order of the table's columns. */
  readonly changes: readonly ComponentChange[];
}

/** Lays the figures of an official food beside those of a food, so that the choice is seen before it is made. */
export function compareFood(food: Food, official: OfficialFood): FoodComparison {
  const changes = NUTRIENT_NAMES.flatMap((component) => {
    const now = sourced(food.composition[component], food.figureSources[component] ?? food.source);
    const theirs = sourced(official.composition[component], sourceOfFigure(official, component));
    const change = compare(component, now, theirs);
    return change === undefined ? [] : [change];
  });
  return { food, official, changes };
}

function sourced(figure: number | undefined, source: string | undefined): SourcedFigure | undefined {
  return figure === undefined || source === undefined ? undefined : { figure, source };
}

function compare(
  component: Nutrient,
  now: SourcedFigure | undefined,
  official: SourcedFigure | undefined,
): ComponentChange | undefined {
  if (now === undefined) return official && { component, kind: "gained", official };
  if (official === undefined) return { component, kind: "kept", now };
  const difference = official.figure - now.figure;
  return { component, kind: difference === 0 ? "same" : "changed", now, official, difference };
}

/** Which figures are taken over. */
export interface ReplacingChoice {
  /** Components to take; absent = all that the official table knows. */
  readonly components?: readonly Nutrient[];
  /** True to count as unknown, too, what only the table at hand knows, of the components to take. */
  readonly forgetUnknown?: boolean;
  readonly chosenOn?: CivilDate;
}

/** The override that a choice makes, and what its figures contradict together with those that stay. */
export interface Replacing {
  readonly override: FoodOverride;
  readonly contradictions: readonly Contradiction[];
}

/**
 * Makes of a comparison the override that takes the official figures; the food itself stays as it is. What follows from a
 * figure taken over, such as available carbohydrate from carbohydrate by difference, is reckoned anew where the official
 * table does not know it, so that no figure of the old source goes on beside what it was reckoned from.
 */
export function replaceFigures({ food, official, changes }: FoodComparison, choice: ReplacingChoice = {}): Replacing {
  const chosen = changes.filter(({ component }) => choice.components?.includes(component) ?? true);
  const taken = chosen.filter(({ kind }) => kind === "changed" || kind === "gained" || kind === "same");
  const figures: Partial<Record<Nutrient, number>> = {};
  const sources: Partial<Record<Nutrient, string>> = {};
  for (const { component, official: theirs } of taken) {
    figures[component] = (theirs as SourcedFigure).figure;
    sources[component] = (theirs as SourcedFigure).source;
  }
  const kept = chosen.filter(({ kind }) => kind === "kept").map(({ component }) => component);
  const unknown = choice.forgetUnknown ? kept : [];
  for (const [component, figure, how] of reckonAnew(food.composition, figures, unknown)) {
    figures[component] = figure;
    sources[component] = `reckoned from the figures taken over: ${how}`;
  }
  const left = unknown.filter((component) => figures[component] === undefined);
  const from = `${official.source}: ${official.name}`;
  const on = choice.chosenOn === undefined ? {} : { chosenOn: choice.chosenOn };
  const override: FoodOverride = { food: food.id, from, ...on, figures, sources, unknown: left };
  return { override, contradictions: findContradictions(overrideFigures(food, override).composition) };
}

/** What follows from figures taken over together with those kept, of components that are themselves not taken over. */
function reckonAnew(
  now: Composition,
  figures: Readonly<Partial<Record<Nutrient, number>>>,
  unknown: readonly Nutrient[],
): [Nutrient, number, string][] {
  const taken = Object.keys(figures) as Nutrient[];
  const stale = new Set(taken.flatMap(componentsDerivedFrom).filter((component) => figures[component] === undefined));
  const merged = Object.entries({ ...now, ...figures }) as [Nutrient, number][];
  const given = Object.fromEntries(merged.filter(([name]) => !stale.has(name) && !unknown.includes(name)));
  const { composition, derived } = deriveComponents(given);
  return [...stale].flatMap((component): [Nutrient, number, string][] => {
    const [figure, how] = [composition[component], derived[component]];
    return figure === undefined || how === undefined ? [] : [[component, figure, how]];
  });
}
