import { type ChangedSince, changedSince } from "halfloaf/kitchen/record";
import { useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";

/** What was edited of the kitchen since the week of today was accepted; undefined where no week rules the day. */
export function useBehind(): ChangedSince | undefined {
  const { session, view } = useKitchen();
  const { menu, edited } = view;
  return useMemo(() => {
    const { events, edits } = session.kept;
    return menu && changedSince(menu, { events: events.events, edits: edits.all() }, edited);
  }, [session, menu, edited]);
}
