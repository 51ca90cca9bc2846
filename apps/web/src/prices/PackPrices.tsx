import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { useFurther } from "../words/useFurther.ts";
import type { PackPrice } from "./foodPrices.ts";

interface PackPricesProps {
  readonly packs: readonly PackPrice[];
  /** Absent where none is to be taken away. */
  readonly onRemove?: (pack: string) => void;
}

/** Packs of one food: what they cost, what a kilogram costs, and how sure that is. */
export function PackPrices({ packs, onRemove }: PackPricesProps): ReactNode {
  const { further } = useFurther("prices");
  return (
    <ul className="lines close">
      {packs.map((price) => (
        <li key={price.pack.id}>
          <PackLine price={price} />
          {onRemove !== undefined && (
            <Allowed to="edited">
              <button type="button" className="button quiet" onClick={() => onRemove(price.pack.id)}>
                {further.prices.removePack}
                <span className="unseen"> {price.pack.label}</span>
              </button>
            </Allowed>
          )}
        </li>
      ))}
    </ul>
  );
}

function PackLine({ price }: { readonly price: PackPrice }): ReactNode {
  const { further, formats } = useFurther("prices");
  const { view } = useKitchen();
  const names = useNames();
  const { pack, perKgMinor } = price;
  const { currency } = view.kitchen;
  return (
    <div className="pack-line">
      <span>{pack.label}</span>
      <b className="figure">{formats.money(pack.priceMinor, currency)}</b>
      <span className="small soft">
        {names.shop(pack.shop)}
        {", "}
        <Sureness price={price} />
        {pack.offer !== undefined &&
          `, ${further.prices.offer(pack.offer.count, formats.money(pack.offer.priceMinor, currency))}`}
        {pack.reduced !== undefined && `, ${further.prices.reduced(formats.day(pack.reduced.until))}`}
      </span>
      <span className="small figure soft">
        {perKgMinor === undefined
          ? further.prices.massUnknown
          : further.prices.perKg(formats.money(Math.round(perKgMinor), currency))}
      </span>
    </div>
  );
}

function Sureness({ price: { pack, sureness } }: { readonly price: PackPrice }): ReactNode {
  const { further, formats } = useFurther("prices");
  const { view } = useKitchen();
  const names = useNames();
  if (pack.seen === undefined || sureness.kind === "estimate") return further.prices.neverSeen;
  const { on, at } = pack.seen;
  const elsewhere = at === names.shop(pack.shop) ? undefined : at;
  return sureness.kind === "aged"
    ? further.prices.agedAt(formats.dayFrom(view.day, on), elsewhere)
    : further.prices.seenAt(formats.dayFrom(view.day, on), elsewhere);
}
