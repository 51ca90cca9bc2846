import { kitchenChanges, type WeekPlan } from "halfloaf/kitchen";
import { weekChanges } from "halfloaf/kitchen/record";
import { useCallback, useState } from "react";
import { useDevice, useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { startThinker } from "../../thinking/startThinker.ts";
import type { WeekAsked } from "./Told.ts";

/**
 * A week with the kitchen to reason about it in. An accepted one, and what was made of it, is reasoned about in the kitchen as
 * it was when it was accepted, with what came out otherwise since; `isThen` says that this is another than now.
 */
export function useWeekAsked(week: WeekPlan): { readonly toAsked: () => Promise<WeekAsked>; readonly isThen: boolean } {
  const { session, view } = useKitchen();
  const { device } = useDevice();
  const [isThen, setThen] = useState(false);
  const { open } = device;
  const toAsked = useCallback(async (): Promise<WeekAsked> => {
    // Whoever asks again has just changed the kitchen, it may be, and is not drawn anew yet.
    const { menu, kitchen: now, state, day } = session.view ?? view;
    const isOfMenu = menu !== undefined && week.from === menu.week.from && week.days === menu.week.days;
    const then = isOfMenu && open !== undefined ? await startThinker().weekKitchen(open, day) : undefined;
    if (then === undefined) return { week, kitchens: [now], known: [] };
    setThen(JSON.stringify(then) !== JSON.stringify(now));
    // A week planned anew for the same days is of the kitchen as it is now.
    const kitchens = week === menu?.week ? [then] : [then, now];
    return { week, kitchens, known: [...weekChanges(state, week, day), ...kitchenChanges(then, now)] };
  }, [session, view, week, open]);
  return { toAsked, isThen };
}
