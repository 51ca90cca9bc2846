import type { Spread } from "./statistics.ts";

/** One line of the table: what is asked, what must and should be reached, and what was. */
export interface TableRow {
  readonly what: string;
  readonly unit: "s" | "%" | "sittings";
  /** Most that the median, and the worst, may be; absent where nothing is asked. */
  readonly must?: number;
  readonly mustWorst?: number;
  readonly aim?: number;
  readonly median: number | null;
  readonly worst: number | null;
  /** Ours over the trial's in this run, as the median over the seeds; null where it was not run. */
  readonly ratioToSketch: number | null;
  /** Whether median and worst are within what must be; absent where they could not be measured. */
  readonly met: boolean | null;
}

type Target = Pick<TableRow, "what" | "unit" | "must" | "mustWorst" | "aim">;

/** What is asked of the planner, by the name of the figure that answers. */
const TARGETS = {
  firstM: { what: "M first plan", unit: "s", must: 0.1, aim: 0.05 },
  qualityM2: { what: "M at 2 s from best known", unit: "%", must: 1, mustWorst: 2.5, aim: 0.3 },
  qualityM10: { what: "M at 10 s from best known", unit: "%", must: 0.2, aim: 0 },
  qualityL2: { what: "L at 2 s from best known", unit: "%", must: 2, mustWorst: 5, aim: 1 },
  gapM2: { what: "M proven gap at 2 s", unit: "%", must: 12, aim: 5 },
  gapM10: { what: "M proven gap at 10 s", unit: "%", must: 7, aim: 2 },
  shortList: { what: "20-dish short list proven in 5 s", unit: "%", must: 3, aim: 1 },
  replanTime: { what: "re-plan M, time", unit: "s", must: 0.25, aim: 0.1 },
  replanDistance: { what: "re-plan M, from a fresh plan", unit: "%", must: 0.5, mustWorst: 2 },
  replanChanges: { what: "re-plan M, sittings changed", unit: "sittings", must: 4 },
  impossible: { what: "reasons: impossible week", unit: "s", must: 0.8, aim: 0.3 },
  limitCosts: { what: "reasons: cost of each limit", unit: "s", must: 0.5, aim: 0.3 },
  firstLong: { what: "28 days, 6 eaters, 400 dishes, first plan", unit: "s", must: 0.5 },
  qualityLong10: { what: "28 days, 6 eaters, 400 dishes at 10 s from best known", unit: "%", must: 3 },
} as const satisfies Record<string, Target>;

export type TargetName = keyof typeof TARGETS;

/** A target beside what was reached of it. */
export function layRow(name: TargetName, { median, worst }: Spread, ratioToSketch: number | null = null): TableRow {
  const target: Target = TARGETS[name];
  const { must, mustWorst = Number.POSITIVE_INFINITY } = target;
  const isWithin = (value: number, most: number): boolean => value <= most;
  const met =
    median === null || must === undefined ? null : isWithin(median, must) && isWithin(worst ?? median, mustWorst);
  return { ...target, median, worst, ratioToSketch, met };
}
