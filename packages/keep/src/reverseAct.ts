import type { EditBody, EditLog, EventBody } from "halfloaf/kitchen/record";
import type { Act } from "./acts.ts";

/**
 * The rows that take an act back: what happened is withdrawn, what was set gets the value it had before. A thing that
 * somebody has set since stays as it is.
 */
export function reverseAct(act: Act, edits: EditLog): (EventBody | EditBody)[] {
  const events = act.rows.filter((row) => row.kind !== "edited");
  const first = events[0];
  const withdrawal =
    first === undefined ? [] : [{ kind: "withdrawn" as const, on: first.on, events: events.map(({ id }) => id) }];
  const restored = act.rows.flatMap((row) => {
    if (row.kind !== "edited" || edits.latestOf(row.thing)?.id !== row.id) return [];
    const before = edits.before(row);
    return [
      {
        kind: "edited" as const,
        thing: row.thing,
        undoes: act.id,
        ...(before?.value === undefined ? {} : { value: before.value }),
        ...(before?.at === undefined ? {} : { at: before.at }),
      },
    ];
  });
  return [...withdrawal, ...restored];
}
