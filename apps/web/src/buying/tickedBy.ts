import { deviceOf, type RecordEvent } from "halfloaf/kitchen/record";

/** Who bought a lot where that was not this device: the eater's id, or `undefined` in `by` where nobody is named. */
export function tickedBy(
  events: readonly RecordEvent[],
  lots: readonly string[],
  device: string,
): { readonly by: string | undefined } | undefined {
  const event = events.findLast((each) => each.kind === "bought" && lots.includes(each.lot));
  if (event === undefined || deviceOf(event.id).startsWith(`${device}-`)) return undefined;
  return { by: event.by };
}
