import type { CivilDate } from "../../quantity/index.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";
import { weekChanges } from "./weekChanges.ts";

type Batch = WeekPlan["batches"][number];

/** A lot of which an accepted week still cooks something when it can't be eaten any more, by what the record knows. */
export interface LotInDanger {
  /** Its id in the record; absent where it never came home. */
  readonly lot?: string;
  readonly food: string;
  /** Last day on which it may be used; absent where it is not there at all. */
  readonly lastDate?: CivilDate;
  /** What is to be cooked of it after that day, in the order of the week. */
  readonly batches: readonly Batch[];
}

/** A change that is news: what was done, and a kitchen that somebody edited, are none. */
export type WeekNews = Exclude<WeekChange, { kind: "bought" | "want" | "went" | "kitchen" }>;

/**
 * Of `weekChanges` what an accepted week takes no account of yet, so that it is worth planning again: what is done as planned is
 * none, before its day or on it, nor is a trip besides, nor is a pack that was not there and that no trip to come is to bring, nor a lot that never came or ends early and that
 * nothing is to be cooked of by then.
 */
export function weekNews(state: RecordState, week: WeekPlan, today: CivilDate): WeekNews[] {
  return weekChanges(state, week, today).filter((change): change is WeekNews => {
    if (change.kind === "bought" || change.kind === "want" || change.kind === "went") return false;
    if (change.kind === "came") return change.planned === undefined;
    if (change.kind === "gone") return isToBuy(change.pack, state, week, today);
    return change.kind !== "off" || change.massG !== undefined || cookedOf(change, week, today).length > 0;
  });
}

/** The lots that never came or that their label ends before all is cooked that an accepted week is to cook of them. */
export function lotsInDanger(state: RecordState, week: WeekPlan, today: CivilDate): LotInDanger[] {
  return weekChanges(state, week, today).flatMap((change): LotInDanger[] => {
    if (change.kind !== "off" || change.massG !== undefined) return [];
    const batches = cookedOf(change, week, today);
    const food = week.lots.find(({ id }) => id === change.lot)?.food;
    if (batches.length === 0 || food === undefined) return [];
    const { lastDate } = change;
    const there = state.planned.get(keyOfPlanned(week.from, change.lot)) ?? change.lot;
    const lot = state.lots.has(there) ? there : undefined;
    return [{ food, batches, ...(lot !== undefined && { lot }), ...(lastDate !== undefined && { lastDate }) }];
  });
}

/** True where a trip to come is to bring such a pack that is not home yet. */
function isToBuy(pack: string, { planned }: RecordState, week: WeekPlan, today: CivilDate): boolean {
  const lines = week.trips
    .filter(({ date }) => date >= today)
    .flatMap(({ date, lines: each }) => each.map((line) => ({ line, date })));
  return lines.some(
    ({ line, date }) =>
      line.pack === pack && !lotsOfLine(week, date, line).every((lot) => planned.has(keyOfPlanned(week.from, lot))),
  );
}

/** What is still to be cooked of a lot of the week when it is not there any more. */
function cookedOf(
  { lot, lastDate = "" }: Pick<Extract<WeekChange, { kind: "off" }>, "lot" | "lastDate">,
  { batches }: WeekPlan,
  today: CivilDate,
): Batch[] {
  return batches.filter(({ date, uses }) => date >= today && date > lastDate && uses.some((use) => use.lot === lot));
}
