import type { PlateAgainst } from "halfloaf/kitchen";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { PlatesAgainst } from "./PlatesAgainst.tsx";
import { usePlatesAgainst } from "./WeekBehind.tsx";

interface DishesAgainstProps {
  /** Ids of the dishes that are to be cooked. */
  readonly dishes: readonly string[];
  /** True where the room is for the step: the next plate alone is named, and what to go by was said before. */
  readonly isBrief?: boolean;
}

/**
 * That a dish to be cooked is not for somebody who is to eat it by the menu of today; nothing where it is for all of them, or
 * the menu does not have it, as then nobody knows who eats it.
 */
export default function DishesAgainst({ dishes, isBrief = false }: DishesAgainstProps): ReactNode {
  const { view } = useKitchen();
  const all = usePlatesAgainst(view.menu?.week);
  const against = useMemo(() => all.filter(({ dish }) => dishes.includes(dish)), [all, dishes]);
  return against.length === 0 ? null : <Told against={against} isBrief={isBrief} />;
}

interface ToldProps {
  readonly against: readonly PlateAgainst[];
  readonly isBrief: boolean;
}

function Told({ against, isBrief }: ToldProps): ReactNode {
  const { behind } = useFurther("mended").further.mended;
  return (
    <div className="caution stack tight dishes-against">
      <p>
        <b>{behind.against.title}</b>
      </p>
      <PlatesAgainst against={against} named={isBrief ? 1 : undefined} />
      {!isBrief && <p className="small">{behind.against.about}</p>}
    </div>
  );
}
