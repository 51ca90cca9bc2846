import type { CostingLine, Dish } from "halfloaf/dish";
import { costDish, foodPrices } from "halfloaf/kitchen";
import { massOfPack, type Pack } from "halfloaf/price";
import { type ReactNode, useMemo } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { portionCost } from "./dishFacts.ts";
import { tellCost } from "./tellCost.ts";

/** The costing card: which share of which pack goes into these portions, and what that costs. */
export function Costing({ dish, portions }: { readonly dish: Dish; readonly portions: number }): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const names = useNames();
  const { kitchen, tables, day } = view;
  const { currency, packs } = kitchen;
  const prices = useMemo(() => foodPrices(kitchen, tables.foods, day), [kitchen, tables.foods, day]);
  const card = costDish(dish, portions, prices, tables.foods).costing;
  const packOf = (food: string): Pack | undefined => packs.find(({ id }) => id === prices.get(food)?.pack);
  const total = formats.money(card.totalMinor, currency);
  return (
    <section className="stack tight">
      <h2>{further.dishes.costing}</h2>
      <p className="small soft">{further.dishes.costingNote}</p>
      <table className="table flows">
        <tbody>
          {card.lines.map((line) => (
            <tr key={line.at}>
              <th scope="row">
                {names.food(line.food)}, <span className="figure">{formats.mass(line.purchasedG.middle)}</span>
                <PackShare line={line} pack={packOf(line.food)} />
              </th>
              <td className="figure">
                {line.costMinor === undefined ? further.unknown : formats.money(line.costMinor, currency)}
                {line.estimate && <div className="small soft">{further.estimate}</div>}
              </td>
            </tr>
          ))}
          {card.unknown.map(({ at, food }) => (
            <tr key={at}>
              <th scope="row">
                {names.food(food)}
                <div className="small soft">{further.dishes.noAmount}</div>
              </th>
              <td className="figure">{further.unknown}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{further.dishes.total}</th>
            <td className="figure">{card.atLeast ? further.atLeast(total) : total}</td>
          </tr>
        </tfoot>
      </table>
      <p>
        <b>{tellCost(portionCost(card), further, formats, currency)}</b>
      </p>
    </section>
  );
}

function PackShare({ line, pack }: { readonly line: CostingLine; readonly pack: Pack | undefined }): ReactNode {
  const { further, formats } = useFurther("dishes");
  const { view } = useKitchen();
  const food = view.tables.foods.get(line.food);
  if (pack === undefined || food === undefined) return <div className="small soft">{further.dishes.unpriced}</div>;
  const mass = massOfPack(pack, food);
  if (!mass.ok) return null;
  const share = line.purchasedG.middle / mass.massG;
  const { ofPack, packs } = further.dishes;
  return (
    <div className="small soft">
      {share > 1 ? packs(formats.number(share), pack.label) : ofPack(formats.percent(share), pack.label)}
    </div>
  );
}
