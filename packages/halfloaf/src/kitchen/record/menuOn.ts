import { addDays, type CivilDate } from "../../quantity/index.ts";
import type { AcceptedMenu, RecordState } from "./recordState.ts";

/**
 * The accepted week that rules a day: of those that hold the day the last accepted by then, or else the first accepted
 * later, since a week may be accepted in the middle. Undefined where no week holds it.
 */
export function menuOn({ menus }: Pick<RecordState, "menus">, day: CivilDate): AcceptedMenu | undefined {
  const holding = menus.filter(({ week }) => week.from <= day && day <= addDays(week.from, week.days - 1));
  return holding.findLast(({ on }) => on <= day) ?? holding[0];
}

/** The accepted week that begins next after a day, as it rules its first day; undefined where none does. */
export function menuToCome(state: Pick<RecordState, "menus">, day: CivilDate): AcceptedMenu | undefined {
  const [next] = state.menus.flatMap(({ week }) => (week.from > day ? [week.from] : [])).sort();
  return next === undefined ? undefined : menuOn(state, next);
}
