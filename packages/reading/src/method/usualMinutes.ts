import type { Step } from "halfloaf/dish";
import type { StepKind } from "./workWords.ts";

/**
 * How long a step of each kind usually takes, where the text doesn't say.
 *
 * **Source**: medians over the 653 steps of the 134 starter dishes in `data/dishes`, by kind; for bake, grill,
 * microwave and blend, of which there are too few, and for soak and chill, which the starter dishes do overnight, common practice, no source.
 */
const USUAL: Readonly<Record<StepKind, readonly [fixed: number, perPortion: number]>> = {
  wash: [2, 0.5],
  cut: [3, 1],
  grate: [2, 1],
  mix: [2, 0],
  knead: [8, 0],
  soak: [30, 0],
  rest: [5, 0],
  chill: [60, 0],
  "heat-water": [4, 0],
  boil: [10, 0],
  simmer: [10, 0],
  steam: [5, 0],
  fry: [5, 0],
  bake: [30, 0],
  grill: [8, 0],
  microwave: [3, 0],
  blend: [2, 0],
  drain: [1, 0],
  assemble: [1, 0.5],
  serve: [1, 0],
};

/** Minutes to heat an oven or a grill before anything goes in. Common practice, no source. */
const PREHEAT_MINUTES = 12;
/** Minutes of a step in which something is only added to what cooks already. Common practice, no source. */
const ADDING_MINUTES = 1;

/** Minutes until what is in a pot boils. Common practice, no source. */
const BOIL_UP_MINUTES = 5;

/** How a step is cooked that takes less or more than its kind usually does. */
export type StepManner = "whole" | "preheat" | "adding" | "boil-up";

/** How long a step of this kind usually takes. */
export function usualMinutes(kind: StepKind, how: StepManner = "whole"): Step["minutes"] {
  if (how === "boil-up") return { fixed: BOIL_UP_MINUTES, perPortion: 0 };
  if (how === "preheat") return { fixed: PREHEAT_MINUTES, perPortion: 0 };
  if (how === "adding") return { fixed: ADDING_MINUTES, perPortion: 0 };
  const [fixed, perPortion] = USUAL[kind];
  return { fixed, perPortion };
}
