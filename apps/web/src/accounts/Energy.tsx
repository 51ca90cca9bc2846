import { energyBetween } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { type ReactNode, useMemo } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";

interface EnergyProps {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

/** What the cookings of some days drew from the mains, and what that costs. */
export function Energy({ from, to }: EnergyProps): ReactNode {
  const { further, formats, words } = useFurther("accounts");
  const { view } = useKitchen();
  const { accounts } = further;
  const { state, tables, edited } = view;
  const { energyPrice: price, currency } = edited;
  const drawn = useMemo(
    () => energyBetween(state, tables.dishes, from, to, price?.kwhMinor),
    [state, tables.dishes, from, to, price],
  );
  const { kwh, cookings, unknown, costMinor } = drawn;
  const money = (minor: number): string => formats.money(minor, currency);
  const toKitchen = <Link href="/kitchen">{words.screens.kitchen}</Link>;
  if (cookings === 0)
    return (
      <section className="stack tight">
        <h2>{accounts.energy}</h2>
        <p className="soft">{accounts.energyNone}</p>
      </section>
    );
  return (
    <section className="stack tight">
      <h2>{accounts.energy}</h2>
      <p>
        {accounts.energyOf(formats.number(kwh, 2), cookings)}
        {costMinor !== undefined && price !== undefined && (
          <>
            , <b>{accounts.energyCost(money(costMinor), money(price.kwhMinor))}</b>
          </>
        )}
        .
      </p>
      {price === undefined && (
        <p className="small">
          {accounts.energyUnpriced} {toKitchen}.
        </p>
      )}
      {price?.estimate === true && (
        <p className="small">
          <b>{further.estimate}</b>: {accounts.energyEstimate} {toKitchen}.
        </p>
      )}
      {unknown > 0 && <p className="small">{accounts.energyUnknown(unknown)}</p>}
      <p className="small soft">{accounts.energyNote}</p>
    </section>
  );
}
