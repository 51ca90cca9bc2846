import { lotsInDanger } from "halfloaf/kitchen/record";
import type { LotState } from "halfloaf/stores";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";

const LetFollow = lazily(() => import("../thinking/LetFollow.tsx"));

/** What the plan still wants to cook of these lots when their label says that they are over, and the way to plan again. */
export function InDanger({ lots }: { readonly lots: readonly LotState[] }): ReactNode {
  const { further, formats, words } = useFurther("stores");
  const { view } = useKitchen();
  const names = useNames();
  const { state, menu, day } = view;
  const all = useMemo(() => (menu === undefined ? [] : lotsInDanger(state, menu.week, day)), [state, menu, day]);
  const dangers = all.filter(({ lot }) => lots.some(({ id }) => id === lot));
  const [first] = dangers;
  if (first?.lastDate === undefined) return null;
  const batches = [...new Set(dangers.flatMap((danger) => danger.batches))];
  return (
    <div className="in-danger sheet stack tight">
      <p className="caution">{further.packDate.danger(names.food(first.food), formats.day(first.lastDate))}</p>
      <ul className="lines close">
        {batches.map(({ date, kind, dish }) => (
          <li key={`${date} ${kind} ${dish}`}>
            {further.packDate.cooking(formats.day(date), words.sittings[kind], names.dish(dish))}
          </li>
        ))}
      </ul>
      <Awaited>
        <LetFollow told={JSON.stringify(dangers)} />
      </Awaited>
    </div>
  );
}
