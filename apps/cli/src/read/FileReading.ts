import type { SaidMatch } from "@halfloaf/reading";
import type { Dish } from "halfloaf/dish";
import type { FoodOverride, OwnFood } from "halfloaf/food";
import type { Observation, Pack } from "halfloaf/price";
import type { Fault } from "../words/Fault.ts";
import type { ReadPart } from "./ReadReport.ts";

/** What of a reading can be kept. */
export interface Findings {
  readonly dishes: readonly Dish[];
  readonly observations: readonly Observation[];
  readonly newPacks: readonly Pack[];
  readonly matches: readonly SaidMatch[];
  readonly foods: readonly OwnFood[];
  readonly overrides: readonly FoodOverride[];
}

/** Findings of a file that holds none. */
export const NO_FINDINGS: Findings = {
  dishes: [],
  observations: [],
  newPacks: [],
  matches: [],
  foods: [],
  overrides: [],
};

/** A file as it was read: what is shown, what can be kept, and what must be settled before. */
export interface FileReading {
  readonly part: ReadPart;
  readonly findings: Findings;
  readonly open: readonly Fault[];
}
