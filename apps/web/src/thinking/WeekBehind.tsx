import { type PlateAgainst, platesAgainst, type WeekPlan } from "halfloaf/kitchen";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useBehind } from "./useBehind.ts";

const BehindTold = lazily(() => import("./BehindTold.tsx"));

interface WeekBehindProps {
  /** True where it is shown only if there are plates that are not for those who are to eat them, and only the next of these are named. */
  readonly isUrgentOnly?: boolean;
}

/**
 * Where the kitchen was changed after the week of today was accepted, lets what is left of it follow, and names the plates that are
 * not for those who are to eat them; nothing where the week goes by the kitchen as it is.
 */
export default function WeekBehind({ isUrgentOnly = false }: WeekBehindProps): ReactNode {
  const { view } = useKitchen();
  const followed = useBehind()?.followed ?? [];
  const against = usePlatesAgainst(view.menu?.week);
  if (against.length + (isUrgentOnly ? 0 : followed.length) === 0) return null;
  return (
    <Awaited isQuiet>
      <BehindTold against={against} named={isUrgentOnly ? undefined : against.length} told={JSON.stringify(followed)} />
    </Awaited>
  );
}

const NONE: readonly PlateAgainst[] = [];

/**
 * Plates to come of a week that are not for those who are to eat them, as the kitchen says now; none where there is no week. It is
 * here since Today, which has no room for a script more, loads both.
 */
export function usePlatesAgainst(week: WeekPlan | undefined): readonly PlateAgainst[] {
  const { view } = useKitchen();
  const { kitchen, tables, state, day } = view;
  return useMemo(
    () => (week === undefined ? NONE : platesAgainst(week, kitchen, tables, day, state.plates)),
    [week, kitchen, tables, day, state],
  );
}
