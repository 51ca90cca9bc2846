import { accountsBy } from "halfloaf/kitchen/record";
import { accountsCsv, movementsCsv, pricesCsv, storesCsv } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { saveFile } from "./saveFile.ts";
import { useFileName } from "./useFileName.ts";
import { useKeptSource } from "./useKeptSource.ts";

/** Tables of a kitchen that can be saved. */
export type TableKind = "prices" | "stores" | "movements" | "accounts";

/** Saves tables of the kitchen as comma-separated values. */
export default function TableButtons({ tables }: { readonly tables: readonly TableKind[] }): ReactNode {
  const { further } = useFurther("sheets");
  const { view } = useKitchen();
  const source = useKeptSource();
  const nameFile = useFileName();
  const makes: Readonly<Record<TableKind, () => string>> = {
    prices: () => pricesCsv(source),
    stores: () => storesCsv(source, view.day),
    movements: () => movementsCsv(source),
    accounts: () => {
      const [from = view.day, to = view.day] = [view.edited.startsOn, view.day].sort();
      return accountsCsv(view.edited, accountsBy(view.state, "week", from, to));
    },
  };
  return (
    <div className="row">
      {tables.map((table) => (
        <button
          key={table}
          type="button"
          className="button"
          onClick={() => saveFile(`${nameFile(table)}.csv`, makes[table](), "text/csv")}
        >
          {further.sheets.tables[table]}
        </button>
      ))}
    </div>
  );
}
