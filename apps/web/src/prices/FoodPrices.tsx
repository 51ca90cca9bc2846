import { priceHistory } from "halfloaf/kitchen/record";
import { type ReactNode, useMemo } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { foodPrices } from "./foodPrices.ts";
import { HistoryPlot } from "./HistoryPlot.tsx";
import { HistoryTable } from "./HistoryTable.tsx";
import { NotePrice } from "./NotePrice.tsx";
import { PackPrices } from "./PackPrices.tsx";

const PriceSheets = lazily(() => import("../sheets/PriceSheets.tsx"));

/** What one food costs in its packs, how that has moved, and a place to note what was seen. */
export function FoodPrices({ food }: { readonly food: string }): ReactNode {
  const { further } = useFurther("prices");
  const { session, view } = useKitchen();
  const names = useNames();
  const remove = (pack: string): void =>
    void session.edit((now) => ({ ...now, packs: now.packs.filter(({ id }) => id !== pack) }));
  const { kitchen, edited, state, tables, day } = view;
  const packs = useMemo(() => foodPrices(kitchen, tables.foods, day).get(food) ?? [], [kitchen, tables, day, food]);
  const histories = useMemo(
    () => priceHistory(edited, state, tables.foods, { food }).filter(({ points }) => points.length > 0),
    [edited, state, tables.foods, food],
  );
  const name = names.food(food);
  return (
    <div className="stack">
      <div className="row spread">
        <Link href="/prices" className="way-back">
          {further.prices.all}
        </Link>
        <Undo />
      </div>
      <h1 className="long-title">{name}</h1>
      {packs.length === 0 ? <p>{further.prices.lost}</p> : <PackPrices packs={packs} onRemove={remove} />}
      <section className="stack tight">
        <h2>{further.prices.history}</h2>
        {histories.length === 0 ? (
          <p className="soft">{further.prices.historyNone}</p>
        ) : (
          <>
            <HistoryPlot histories={histories} food={name} until={day} />
            <HistoryTable histories={histories} />
          </>
        )}
      </section>
      {histories.length > 0 && (
        <PrintOrSave>
          <PriceSheets food={food} histories={histories} />
        </PrintOrSave>
      )}
      {packs.length > 0 && (
        <Allowed to="price-seen">
          <NotePrice packs={packs.map(({ pack }) => pack)} />
        </Allowed>
      )}
    </div>
  );
}
