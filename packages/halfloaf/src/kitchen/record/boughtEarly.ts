import type { CivilDate } from "../../quantity/index.ts";
import { lotsOfLine } from "../lotsOfLine.ts";
import type { WeekPlan } from "../weekPlan.ts";
import { keyOfPlanned, type RecordState } from "./recordState.ts";

/**
 * The lots that an accepted week has on trips after a day although they are home: by its own names the lots that they became,
 * where all packs of a line are.
 */
export function boughtEarly(
  { planned }: Pick<RecordState, "planned">,
  week: Pick<WeekPlan, "from" | "trips">,
  today: CivilDate,
): ReadonlyMap<string, string> {
  const lines = week.trips.flatMap(({ date, lines }) =>
    date > today ? lines.map((line) => lotsOfLine(week, date, line)) : [],
  );
  const homes = lines.map((names) => names.map((name) => [name, planned.get(keyOfPlanned(week.from, name))] as const));
  const isHome = (pair: readonly [string, string | undefined]): pair is readonly [string, string] =>
    pair[1] !== undefined;
  return new Map(homes.flatMap((pairs) => (pairs.every(isHome) ? pairs.filter(isHome) : [])));
}
