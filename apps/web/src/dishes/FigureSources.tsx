import type { Dish } from "halfloaf/dish";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { OwnMark } from "../foods/OwnMark.tsx";
import { upper } from "../foods/useFigures.ts";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

/** Where the figures of each food in a dish come from, and which of them are this kitchen's own. */
export function FigureSources({ dish }: { readonly dish: Dish }): ReactNode {
  const { further } = useFurther("foods");
  const { view } = useKitchen();
  const names = useNames();
  const foods = [...new Set(dish.makings.map(({ food }) => food))];
  return (
    <Unfolding className="fold sheet" summary={<h3>{further.foods.sources}</h3>}>
      <ul className="lines fold-body">
        {foods.map((id) => {
          const override = view.edited.overrides.find(({ food }) => food === id);
          return (
            <li key={id}>
              <Link href={`/dishes/foods/${id}`} className="food-line">
                <span>{upper(names.food(id))}</span>
                <span className="small soft">
                  <OwnMark food={id} /> {override?.from ?? view.tables.foods.get(id)?.source ?? further.unknown}
                </span>
              </Link>
            </li>
          );
        })}
      </ul>
    </Unfolding>
  );
}
