import type { AccountLine } from "halfloaf/kitchen/record";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { BARS, barOf } from "./accountBars.ts";

interface AccountsTableProps {
  readonly lines: readonly AccountLine[];
  readonly chosen: string;
  readonly onChoose: (name: string) => void;
}

/** The picture as figures; a stretch that is touched is told in full below. */
export function AccountsTable({ lines, chosen, onChoose }: AccountsTableProps): ReactNode {
  const { further, formats } = useFurther("accounts");
  const { view } = useKitchen();
  const money = (minor: number | undefined): string =>
    minor === undefined ? "–" : formats.money(minor, view.kitchen.currency);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard.
    <section className="wide-table" tabIndex={0} aria-label={further.accounts.picture}>
      <table className="table small accounts-table">
        <thead>
          <tr>
            <th scope="col">{further.accounts.days}</th>
            {BARS.map((bar) => (
              <th key={bar} scope="col" className="figure wraps">
                {further.accounts[bar]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.toReversed().map((line) => (
            <tr key={line.name} className={line.name === chosen ? "chosen" : undefined}>
              <th scope="row">
                <button
                  type="button"
                  className="plain"
                  aria-pressed={line.name === chosen}
                  onClick={() => onChoose(line.name)}
                >
                  {line.from === line.to ? formats.day(line.from) : formats.shortDay(line.from)}
                </button>
              </th>
              {BARS.map((bar) => (
                <td key={bar} className="figure">
                  {money(barOf(line, bar))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
