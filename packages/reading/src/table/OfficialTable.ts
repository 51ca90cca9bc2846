import { type Composition, type Contradiction, findContradictions, type Nutrient } from "halfloaf/food";
import type { Issue } from "halfloaf/quantity";

/** A household measure of an official food, with the mass the table gives it. */
export interface OfficialPortion {
  readonly amount: number;
  /** What is measured, in the table's words: "cup", "slice". */
  readonly measure: string;
  readonly massG: number;
}

/** One food of an official table. Figures are per 100 g edible portion; what is absent is unknown. */
export interface OfficialFood {
  /** As the table numbers it; unique within the table. */
  readonly id: string;
  /** The number of the food in older printings of the table; absent where none is given. */
  readonly formerNumber?: string;
  /** In the table's words. */
  readonly name: string;
  /** Table, number and date: where every figure comes from that has no source of its own. */
  readonly source: string;
  readonly composition: Composition;
  /** Sources of the figures that are not plainly the table's: stand-ins and what was reckoned. */
  readonly figureSources: Readonly<Partial<Record<Nutrient, string>>>;
  readonly portions: readonly OfficialPortion[];
  /** Figures that contradict each other, which the table's authors may yet have measured so. */
  readonly contradictions: readonly Contradiction[];
}

/** A composition table as published by others; never mixed with the starter table. */
export interface OfficialTable {
  readonly title: string;
  /** By id, in the order of the table. */
  readonly foods: ReadonlyMap<string, OfficialFood>;
}

/**
 * What the reading of an official table gave. Faulty rows are left out and told; the others are there. Stopped means that
 * the reading was told to stop, failed that there is no table to be had from these files.
 */
export type TableReading =
  | ({ readonly outcome: "read"; readonly table: OfficialTable; readonly counts: TableCounts } & Faults)
  | ({ readonly outcome: "stopped" | "failed" } & Faults);

interface Faults {
  /** The first faults in full; paths lead by file, line and column. */
  readonly issues: readonly Issue[];
  /** All faults, those that are not in `issues` included. */
  readonly issueCount: number;
}

/** How much of a table was read and how much was passed over, none of which is a fault. */
export interface TableCounts {
  readonly foods: number;
  readonly figures: number;
  /** Figures of components that the food table does not hold. */
  readonly otherComponents: number;
  /** Rows of the files that belong to no food of the table, such as samples and laboratory records. */
  readonly otherRows: number;
}

/** Completes an official food by what its figures say of each other. */
export function makeOfficialFood(food: Omit<OfficialFood, "contradictions">): OfficialFood {
  return { ...food, contradictions: findContradictions(food.composition) };
}

/** Where a figure of an official food comes from; undefined where it is unknown. */
export function sourceOfFigure(
  food: Pick<OfficialFood, "composition" | "figureSources" | "source">,
  component: Nutrient,
): string | undefined {
  return food.composition[component] === undefined ? undefined : (food.figureSources[component] ?? food.source);
}
