import { kitchenChanges, type LaterPart, listLater } from "../changeWeek/kitchenChanges.ts";
import type { WeekChange } from "../changeWeek/WeekChange.ts";
import { compareWritten } from "./compareEvents.ts";
import { EditLog } from "./EditLog.ts";
import type { RecordRows } from "./kitchenOfMenu.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import type { AcceptedMenu } from "./recordState.ts";

/** What was edited of a kitchen after a week was accepted. */
export interface ChangedSince {
  /** What of it the rest of the week can follow; empty where that is as it was. */
  readonly followed: readonly WeekChange[];
  /** What else was edited that a plan goes by; it waits for the next week. */
  readonly later: readonly LaterPart[];
}

const NOTHING: ChangedSince = { followed: [], later: [] };

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
  return { followed: kitchenChanges(then, now), later: listLater(then, now) };
}
