import type { PriceHistory } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

/** Every look at a price, the latest first. */
export function HistoryTable({ histories }: { readonly histories: readonly PriceHistory[] }): ReactNode {
  const { further, formats } = useFurther("prices");
  const { view } = useKitchen();
  const names = useNames();
  const { currency } = view.kitchen;
  const looks = histories
    .flatMap(({ pack, label, shop, points }) => points.map((point, at) => ({ pack, label, shop, point, at })))
    .sort((a, b) => (a.point.on < b.point.on ? 1 : a.point.on > b.point.on ? -1 : b.at - a.at));
  const { prices } = further;
  return (
    <table className="table small flows">
      <thead>
        <tr>
          <th scope="col">{prices.day}</th>
          <th scope="col">{prices.pack}</th>
          <th scope="col" className="figure">
            {prices.price}
          </th>
          <th scope="col" className="figure">
            {prices.unitPrice}
          </th>
        </tr>
      </thead>
      <tbody>
        {looks.map(({ pack, label, shop, point, at }) => (
          <tr key={`${pack} ${at}`}>
            <td>{formats.dayFrom(view.day, point.on)}</td>
            <td>
              {label} <span className="soft">{names.shop(shop)}</span>
            </td>
            <td className="figure">{formats.money(point.priceMinor, currency)}</td>
            <td className="figure">
              {point.perKgMinor === undefined ? further.unknown : formats.money(Math.round(point.perKgMinor), currency)}
              {point.changePct !== undefined && Math.abs(point.changePct) >= 0.5 && (
                <div className="soft">
                  {point.changePct > 0 ? "+" : "−"}
                  {formats.percent(Math.abs(point.changePct) / 100)}
                </div>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
