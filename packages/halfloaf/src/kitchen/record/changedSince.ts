import { limitChanges } from "../changeWeek/limitRest.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { compareWritten } from "./compareEvents.ts";
import { EditLog } from "./EditLog.ts";
import type { RecordRows } from "./kitchenOfMenu.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import type { AcceptedMenu } from "./recordState.ts";

/** Parts of a kitchen that a week under way does not follow: they count from the next week that is planned afresh. */
export type LaterPart = "eaters" | "kit" | "sittings" | "variety" | "rise";

/** What was edited of a kitchen after a week was accepted. */
export interface ChangedSince {
  /** The limits that what is left of the week can follow; empty where they are as they were. */
  readonly limits: readonly WeekChange[];
  /** What else was edited that a plan goes by; it waits for the next week. */
  readonly later: readonly LaterPart[];
}

const NOTHING: ChangedSince = { limits: [], later: [] };

/**
 * What was edited of a kitchen after a week was accepted. It looks at edits alone, so that it may be asked for at every sight of a
 * screen.
 */
export function changedSince(
  menu: Pick<AcceptedMenu, "event">,
  { events, edits }: RecordRows,
  now: EditedKitchen,
): ChangedSince {
  const accepted = events.find(({ id }) => id === menu.event);
  if (accepted === undefined) return NOTHING;
  const log = new EditLog();
  log.add(edits.filter((edit) => compareWritten(edit, accepted) < 0));
  const read = log.kitchen();
  if (!read.ok) return NOTHING;
  const then = read.value.kitchen;
  const [before, after] = [partsOf(then), partsOf(now)];
  const later = LATER_PARTS.filter((part) => before[part] !== after[part]);
  return { limits: limitChanges(then, now), later };
}

const LATER_PARTS: readonly LaterPart[] = ["eaters", "kit", "sittings", "variety", "rise"];

function partsOf({ eaters, kit, sittings, limits }: EditedKitchen): Record<LaterPart, string> {
  return {
    eaters: JSON.stringify(eaters),
    kit: JSON.stringify(kit),
    sittings: JSON.stringify(sittings.map(({ minutes: _, ...seats }) => seats)),
    variety: JSON.stringify(limits.variety),
    rise: JSON.stringify(limits.standRisePct),
  };
}
