import type { Dish } from "halfloaf/dish";
import type { ReactNode } from "react";
import { useLocation } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";

const POINTS = ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10"] as const;

/** How this kitchen likes a dish, and whether it is planned at all. */
export function DishWishes({ dish }: { readonly dish: Dish }): ReactNode {
  const { further } = useFurther("dishes");
  const { session, view } = useKitchen();
  const [, go] = useLocation();
  const { kitchen, day } = view;
  const [mayRate, mayEdit] = [useMayWrite("rated"), useMayWrite("edited")];
  const points = kitchen.ratings.find((rating) => rating.dish === dish.id)?.points;
  const isOwn = kitchen.dishes.some(({ id }) => id === dish.id);
  const rate = (value: string): void => {
    if (value === "") return;
    void session.write((pen) => [pen.write({ kind: "rated", on: day, dish: dish.id, points: Number(value) })]);
  };
  const refuse = (isRefused: boolean): void => {
    void session.edit((edited) => {
      const others = edited.refusedDishes.filter((id) => id !== dish.id);
      return { ...edited, refusedDishes: isRefused ? [...others, dish.id] : others };
    });
  };
  const remove = (): void => {
    go("/dishes");
    void session.edit((edited) => ({
      ...edited,
      dishes: edited.dishes.filter(({ id }) => id !== dish.id),
      ratings: edited.ratings.filter((rating) => rating.dish !== dish.id),
      refusedDishes: edited.refusedDishes.filter((id) => id !== dish.id),
    }));
  };
  return (
    <section className="stack tight">
      <fieldset className="bare fields" disabled={!mayRate}>
        <ChoiceField
          label={further.dishes.rating}
          value={points === undefined ? "" : String(Math.round(points))}
          choices={[
            ...(points === undefined ? [["", further.dishes.notRated] as const] : []),
            ...POINTS.map((each) => [each, each] as const),
          ]}
          onChange={rate}
        />
      </fieldset>
      <fieldset className="bare" disabled={!mayEdit}>
        <TickField
          label={further.dishes.refused}
          isTicked={kitchen.refusedDishes.includes(dish.id)}
          onChange={refuse}
        />
      </fieldset>
      {isOwn && mayEdit && (
        <div>
          <button type="button" className="button" onClick={remove}>
            {further.dishes.removeOwn}
          </button>
        </div>
      )}
    </section>
  );
}
