import type { Food, FoodOverride, Nutrient } from "halfloaf/food";
import type { ComponentChange, FoodComparison, SourcedFigure } from "./compareFood.ts";

/** What taking figures from elsewhere does to one component of a food. */
export interface FigureChange {
  readonly component: Nutrient;
  readonly kind: ComponentChange["kind"] | "forgotten";
  readonly now?: SourcedFigure;
  readonly taken?: SourcedFigure;
}

/** A comparison as changes, with what the override made of it reckons anew put in. */
export function changesOf({ changes }: FoodComparison, override: FoodOverride): FigureChange[] {
  return changes.map(({ component, kind, now, official }) => {
    const taken = official ?? takenBy(override, component);
    const isReckoned = kind === "kept" && taken !== undefined;
    return { component, kind: isReckoned ? "changed" : kind, ...(now && { now }), ...(taken && { taken }) };
  });
}

/** What an override that comes from a file changes of a food; without the food all of it is new. */
export function changesByOverride(before: Food | undefined, override: FoodOverride): FigureChange[] {
  const nowOf = (component: Nutrient): SourcedFigure | undefined => {
    const figure = before?.composition[component];
    return figure === undefined
      ? undefined
      : { figure, source: before?.figureSources[component] ?? before?.source ?? "" };
  };
  const taken = (Object.keys(override.figures) as Nutrient[]).map((component): FigureChange => {
    const now = nowOf(component);
    const theirs = takenBy(override, component) as SourcedFigure;
    const kind = now === undefined ? "gained" : now.figure === theirs.figure ? "same" : "changed";
    return { component, kind, ...(now && { now }), taken: theirs };
  });
  const forgotten = override.unknown.map((component): FigureChange => {
    const now = nowOf(component);
    return { component, kind: "forgotten", ...(now && { now }) };
  });
  return [...taken, ...forgotten];
}

function takenBy({ figures, sources }: FoodOverride, component: Nutrient): SourcedFigure | undefined {
  const [figure, source] = [figures[component], sources[component]];
  return figure === undefined ? undefined : { figure, source: source ?? "" };
}
