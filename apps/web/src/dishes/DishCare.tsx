import { allergensOf, type Dish } from "halfloaf/dish";
import { cautionsOf } from "halfloaf/safety";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { CautionText } from "../work/CautionText.tsx";

/** What can hurt: allergens, cautions with who says so, and how long it keeps. */
export function DishCare({ dish }: { readonly dish: Dish }): ReactNode {
  const { further } = useFurther("dishes");
  const { view } = useKitchen();
  const { tables, kitchen } = view;
  const cautions = cautionsOf(dish, tables.foods, tables.safety, kitchen.authorities.safety);
  const { fridgeDays, freezerDays, authority } = dish.keeps;
  const { dishes } = further;
  return (
    <>
      <Allergens dish={dish} />
      <section className="stack tight">
        <h2>{dishes.cautions}</h2>
        <ul className="lines">
          {cautions.map((caution) => (
            <li key={`${caution.code} ${caution.foods.join(" ")} ${caution.text}`}>
              <div className="caution">
                <CautionText caution={caution} />
              </div>
            </li>
          ))}
          {dish.cautions.map((text) => (
            <li key={text}>
              <div className="caution">{text}</div>
            </li>
          ))}
        </ul>
        <h3>{dishes.keeping}</h3>
        <p>
          {dishes.fridgeDays(fridgeDays)},{" "}
          {freezerDays === undefined ? dishes.notFrozen : dishes.freezerDays(freezerDays)}.{" "}
          <span className="small soft">{authority}</span>
        </p>
        {dish.note !== undefined && <p className="soft">{dish.note}</p>}
      </section>
    </>
  );
}

function Allergens({ dish }: { readonly dish: Dish }): ReactNode {
  const { further } = useFurther("dishes");
  const { view } = useKitchen();
  const names = useNames();
  const { eu, unknownFoods } = allergensOf(dish, view.tables.foods);
  const { dishes, allergens } = further;
  const list = (codes: readonly (keyof typeof allergens)[]): string => codes.map((each) => allergens[each]).join(", ");
  return (
    <section className="stack tight">
      <h2>{dishes.allergens}</h2>
      {eu.sure.length + eu.possible.length === 0 && <p>{dishes.allergensNone}</p>}
      {eu.sure.length > 0 && (
        <p>
          {dishes.allergensSure}: <b>{list(eu.sure)}</b>
        </p>
      )}
      {eu.possible.length > 0 && (
        <p>
          {dishes.allergensPossible}: {list(eu.possible)}
        </p>
      )}
      {unknownFoods.length > 0 && (
        <p>
          {further.unknown}: {unknownFoods.map((food) => names.food(food)).join(", ")}
        </p>
      )}
      <p className="small soft">{dishes.labelFirst}</p>
    </section>
  );
}
