import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import "./foods.css";

/** That a food is this kitchen's own, or that its figures come from elsewhere; nothing for a food of the table as it is. */
export function OwnMark({ food }: { readonly food: string }): ReactNode {
  const { further } = useFurther("foods");
  const { view } = useKitchen();
  const { foods, overrides } = view.edited;
  const isOwn = foods.some(({ id }) => id === food);
  const isChanged = overrides.some((override) => override.food === food);
  return (
    <>
      {isOwn && <span className="own-mark">{further.foods.own}</span>}
      {isOwn && isChanged && " "}
      {isChanged && <span className="own-mark">{further.foods.changed}</span>}
    </>
  );
}
