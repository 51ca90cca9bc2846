import { type Dish, type NutrientAmount, nutrientsOfDish } from "halfloaf/dish";
import { SALT_PER_SODIUM } from "halfloaf/intake";
import { toKcal } from "halfloaf/quantity";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { FigureSources } from "./FigureSources.tsx";

const SHOWN = [
  "proteinG",
  "fatG",
  "saturatesG",
  "carbohydrateAvailableG",
  "sugarsG",
  "fibreG",
  "ironMg",
  "calciumMg",
  "zincMg",
  "iodineUg",
  "vitaminCMg",
  "vitaminDUg",
  "vitaminB12Ug",
  "folateDfeUg",
] as const;

const UNITS = { G: "g", Mg: "mg", Ug: "µg" } as const;

/** Share of the weight above which a figure counts as known. */
const WHOLE = 0.995;

/** What one portion gives, each figure with how much of the weight it is known for. */
export function DishIntake({ dish }: { readonly dish: Dish }): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const { foods, retain } = view.tables;
  const { perPortion, vegetablesFruitG, retained } = useMemo(
    () => nutrientsOfDish(dish, foods, retain),
    [dish, foods, retain],
  );
  const { nutrients } = further.dishes;
  const unitOf = (name: (typeof SHOWN)[number]): string => UNITS[/[A-Z][a-z]*$/.exec(name)?.[0] as keyof typeof UNITS];
  const energy = (kj: number): string => `${formats.number(kj, 0)} kJ / ${formats.number(toKcal(kj), 0)} kcal`;
  const salt = (sodiumMg: number): string => `${formats.number((sodiumMg * SALT_PER_SODIUM) / 1000, 2)} g`;
  return (
    <section className="stack tight">
      <h2>{further.dishes.intake}</h2>
      <p className="small soft">
        {further.dishes.intakeNote} {!retained && further.dishes.raw}
      </p>
      <table className="table flows">
        <tbody>
          <Line name={nutrients.energy} figure={perPortion.energyKj} write={energy} />
          {SHOWN.map((name) => (
            <Line
              key={name}
              name={nutrients[name]}
              figure={perPortion[name]}
              write={(amount) => `${formats.number(amount, amount < 10 ? 1 : 0)} ${unitOf(name)}`}
            />
          ))}
          <Line name={nutrients.salt} figure={perPortion.sodiumMg} write={salt} />
          <tr>
            <th scope="row">{nutrients.vegetables}</th>
            <td className="figure">{formats.mass(vegetablesFruitG)}</td>
          </tr>
        </tbody>
      </table>
      <FigureSources dish={dish} />
    </section>
  );
}

interface LineProps {
  readonly name: string;
  readonly figure: NutrientAmount;
  readonly write: (amount: number) => string;
}

function Line({ name, figure, write }: LineProps): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { amount, knownShare } = figure;
  const isWhole = knownShare >= WHOLE;
  return (
    <tr>
      <th scope="row">
        {name}
        {amount !== undefined && !isWhole && (
          <div className="small soft">{further.dishes.knownFor(formats.percent(knownShare))}</div>
        )}
      </th>
      <td className="figure">
        {amount === undefined ? further.unknown : isWhole ? write(amount) : further.atLeast(write(amount))}
      </td>
    </tr>
  );
}
