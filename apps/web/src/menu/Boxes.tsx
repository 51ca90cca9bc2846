import type { WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

interface BoxesProps {
  readonly boxes: NonNullable<WeekPlan["boxes"]>;
  readonly currency: string;
}

/** What a menu cooks for later weeks: which portions go into the freezer when, what they cost and how long they keep. */
export default function Boxes({ boxes, currency }: BoxesProps): ReactNode {
  const { further, formats } = useFurther("menu");
  const { view } = useKitchen();
  const names = useNames();
  const { later } = further;
  return (
    <section className="sheet stack tight" aria-label={later.title}>
      <h2>{later.title}</h2>
      <ul className="lines close">
        {boxes.map(({ id, dish, portions, on, keepsUntil, costMinor }) => (
          <li key={id}>
            {later.box(formats.day(on), portions, formats.number(portions), names.dish(dish))}
            <div className="small soft">
              {later.keeps(formats.dayFrom(view.day, keepsUntil), formats.money(costMinor, currency))}
            </div>
          </li>
        ))}
      </ul>
      <p className="small soft">{later.note}</p>
    </section>
  );
}
