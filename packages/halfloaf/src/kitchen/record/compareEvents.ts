import type { RecordEvent } from "./event.ts";
import { compareStamps } from "./stamp.ts";

/** What of an event decides its place. */
export type PlacedEvent = Pick<RecordEvent, "id" | "on" | "atMs" | "tick">;

/**
 * The one order in which events count: by the day on which they happened, then by when they were written down, then by id.
 * No two events of different ids are equal in it, so every device has the same. **Source**: decision 0008.
 */
export function compareEvents(a: PlacedEvent, b: PlacedEvent): number {
  if (a.on !== b.on) return a.on < b.on ? -1 : 1;
  return compareWritten(a, b);
}

/** The order in which events were written down, whatever day they tell of: what is read before is written before. */
export function compareWritten(a: Omit<PlacedEvent, "on">, b: Omit<PlacedEvent, "on">): number {
  return compareStamps(a, b) || (a.id === b.id ? 0 : a.id < b.id ? -1 : 1);
}
