import type { Issue } from "../../quantity/index.ts";
import { compareWritten } from "./compareEvents.ts";
import type { EventOf, RecordEvent } from "./event.ts";
import type { EventId } from "./eventId.ts";
import type { EventFault } from "./recordState.ts";

/** The events that are withdrawn, and withdrawals of what is not there or was not there yet. */
export interface Withdrawals {
  readonly withdrawn: ReadonlySet<EventId>;
  readonly faults: readonly EventFault[];
}

/**
 * What withdrawals come to. One counts unless a later one that counts withdraws it, and only for events written before
 * it: so they are judged from the latest to the earliest, and no two can withdraw each other.
 */
export function resolveWithdrawals(
  withdrawals: Iterable<EventOf<"withdrawn">>,
  events: ReadonlyMap<EventId, RecordEvent>,
): Withdrawals {
  const withdrawn = new Set<EventId>();
  const faults: EventFault[][] = [];
  for (const each of [...withdrawals].sort((a, b) => compareWritten(b, a))) {
    if (withdrawn.has(each.id)) continue;
    const unknown: EventFault[] = [];
    for (const [at, id] of each.events.entries()) {
      const named = events.get(id);
      if (named !== undefined && compareWritten(named, each) < 0) withdrawn.add(id);
      else unknown.push({ event: each.id, issue: unknownEvent(at, id) });
    }
    faults.push(unknown);
  }
  return { withdrawn, faults: faults.reverse().flat() };
}

function unknownEvent(at: number, received: string): Issue {
  return { code: "event-unknown", path: ["events", at], expected: "an event written before", received };
}
