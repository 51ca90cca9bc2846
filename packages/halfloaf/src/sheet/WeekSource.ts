import type { Kitchen, Tables, WeekPlan } from "../kitchen/index.ts";

/** What things are called on a sheet, by their id; an id that leads nowhere is shown itself. */
export interface SheetNames {
  readonly dish: (id: string) => string;
  readonly food: (id: string) => string;
  readonly eater: (id: string) => string;
  readonly shop: (id: string) => string;
}

/** What the sheets of a week are made from: the week, the kitchen it was planned for, and its tables. */
export interface WeekSource {
  readonly week: WeekPlan;
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly names: SheetNames;
}
