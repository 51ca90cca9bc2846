import type { AccountLine } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";

/** One stretch in full: where the value came from and where it went. */
export function AccountSums({ line }: { readonly line: AccountLine }): ReactNode {
  const { further, formats } = useFurther("accounts");
  const { view } = useKitchen();
  const { accounts } = further;
  const rows: readonly (readonly [string, number, boolean])[] = [
    [accounts.opening, line.openingMinor, true],
    [accounts.entered, line.enteredMinor, line.enteredMinor !== 0],
    [accounts.spent, line.tillMinor, true],
    [accounts.eaten, -line.platesMinor, true],
    [accounts.wasted, -line.wasteMinor, true],
    [accounts.carryOver, line.carryOverMinor, true],
    [accounts.fares, line.faresMinor, line.faresMinor !== 0],
    [accounts.ateOut, line.ateOutMinor, line.ateOutMinor !== 0],
  ];
  return (
    <section className="stack tight">
      <h2>{accounts.stretches(formats.day(line.from), formats.day(line.to))}</h2>
      <p className="small soft">{accounts.sums}</p>
      <table className="table flows">
        <tbody>
          {rows.map(
            ([name, minor, isShown]) =>
              isShown && (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td className="figure">{formats.money(minor === 0 ? 0 : minor, view.kitchen.currency)}</td>
                </tr>
              ),
          )}
        </tbody>
      </table>
    </section>
  );
}
