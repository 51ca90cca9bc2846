import type { EventId, RecordEvent } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { KitchenSession } from "../kitchen/KitchenSession.ts";

/**
 * Takes back the acts that brought these lots, with the prices they noted; the way to the shop stays noted as long as
 * something else was bought there that day.
 */
export async function untick(session: KitchenSession, lots: readonly string[], day: CivilDate): Promise<void> {
  const { events, state } = session.kept.events;
  const standing = events.filter(({ id }) => !state.withdrawn.has(id));
  const gone = new Set(lots);
  const bought = standing.filter((event) => event.kind === "bought" && gone.has(event.lot));
  const acts = new Set(bought.map((event) => actOf(event)));
  const others = standing.filter((event) => event.kind === "bought" && !acts.has(actOf(event)));
  const isLast = (trip: Extract<RecordEvent, { kind: "trip" }>): boolean =>
    !others.some((event) => event.kind === "bought" && event.on === trip.on && event.shop === trip.shop);
  const ids = standing
    .filter((event) => acts.has(actOf(event)) && (event.kind !== "trip" || isLast(event)))
    .map(({ id }) => id);
  if (ids.length > 0) await session.write((pen) => [pen.write({ kind: "withdrawn", on: day, events: ids })]);
}

function actOf({ act, id }: RecordEvent): EventId {
  return act ?? id;
}
