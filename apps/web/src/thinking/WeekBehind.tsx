import { platesAgainst } from "halfloaf/kitchen";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useBehind } from "./useBehind.ts";

const BehindTold = lazily(() => import("./BehindTold.tsx"));

/** So many plates are named where there is more to be seen than them. */
const NEAREST = 3;

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
  const { menu, kitchen, tables, state, day } = view;
  const against = useMemo(
    () => (menu === undefined ? [] : platesAgainst(menu.week, kitchen, tables, day, state.plates)),
    [menu, kitchen, tables, day, state],
  );
  if (against.length + (isUrgentOnly ? 0 : followed.length) === 0) return null;
  return (
    <Awaited isQuiet>
      <BehindTold against={against} named={isUrgentOnly ? NEAREST : against.length} told={JSON.stringify(followed)} />
    </Awaited>
  );
}
