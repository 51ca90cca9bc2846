import type { RecordEvent } from "halfloaf/kitchen/record";

/** The row by which another device bought a lot, with the id of the eater who did where one is named; undefined where we did. */
export function tickedBy(
  events: readonly RecordEvent[],
  lots: readonly string[],
  isOwn: (id: string) => boolean,
): { readonly id: string; readonly by: string | undefined } | undefined {
  const event = events.findLast((each) => each.kind === "bought" && lots.includes(each.lot));
  if (event === undefined || isOwn(event.id)) return undefined;
  return { id: event.id, by: event.by };
}
