import { budgetOf } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";

/** What is left of the money of this week. */
export function MoneyLeft(): ReactNode {
  const { further, formats } = useFurther("accounts");
  const { view } = useKitchen();
  const { spentMinor, budgetMinor, leftMinor } = budgetOf(view.edited, view.state, view.day);
  const money = (minor: number): string => formats.money(minor, view.kitchen.currency);
  if (budgetMinor === undefined || leftMinor === undefined)
    return <p className="sheet">{further.accounts.noBudget(money(spentMinor))}</p>;
  return (
    <div className="sheet stack tight">
      <p>
        <b>{leftMinor < 0 ? further.accounts.over(money(-leftMinor)) : further.accounts.left(money(leftMinor))}</b>
      </p>
      <meter
        className="money-meter"
        min={0}
        max={Math.max(budgetMinor, spentMinor, 1)}
        value={spentMinor}
        aria-label={further.accounts.budget(money(spentMinor), money(budgetMinor))}
      />
      <p className="small soft">{further.accounts.budget(money(spentMinor), money(budgetMinor))}</p>
    </div>
  );
}
