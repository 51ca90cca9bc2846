import { isFound, namesOf, toSearchText } from "halfloaf/food";
import { tickPacks } from "halfloaf/kitchen/record";
import type { Pack } from "halfloaf/price";
import { type ReactNode, useMemo, useState } from "react";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNamedFoods } from "../kitchen/useNamedFoods.ts";
import { useNames } from "../kitchen/useNames.ts";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { tickedBy } from "./tickedBy.ts";
import { untick } from "./untick.ts";

interface BesidesProps {
  readonly shop: string;
  /** What the way to the shop costs and is not noted yet, in minor units. */
  readonly fareMinor: number;
  /** A pack that was scanned and does not stand on the list. */
  readonly scanned: Pack | undefined;
}

/** So many packs are offered at once. */
const OFFERED = 6;

/** What was bought today besides the list, and a place to note more. */
export function Besides({ shop, fareMinor, scanned }: BesidesProps): ReactNode {
  const { further, formats } = useFurther("buying");
  const { session, view } = useKitchen();
  const foods = useNamedFoods();
  const names = useNames();
  const [text, setText] = useState("");
  const [count, setCount] = useState<number | undefined>(1);
  const { kitchen, state, day } = view;
  const bought = useMemo(() => {
    const planned = new Set(state.planned.values());
    const packs = new Map(kitchen.packs.map((pack) => [pack.id, pack.shop]));
    return [...state.lots.values()].filter(
      ({ id, boughtOn, pack }) =>
        boughtOn === day && pack !== undefined && packs.get(pack) === shop && !planned.has(id),
    );
  }, [state, kitchen.packs, day, shop]);
  const asked = text.trim();
  const found = kitchen.packs.filter((pack) => {
    if (pack.shop !== shop || asked.length < 2) return false;
    const food = foods.get(pack.food);
    const words = [pack.label, ...(food === undefined ? [pack.food] : namesOf(food))];
    return isFound(toSearchText(words.join(" ")), asked);
  });
  const offered = asked === "" && scanned !== undefined ? [scanned] : found.slice(0, OFFERED);
  const mayBuy = useMayWrite("bought");
  const isCount = count !== undefined && Number.isSafeInteger(count) && count >= 1;
  const mayRemove = (lot: string): boolean => {
    const other = tickedBy(session.kept.events.events, [lot], (id) => session.kept.isOwn(id));
    return session.mayWrite({ kind: "withdrawn", events: other === undefined ? [] : [other.id] });
  };
  const buy = (pack: Pack): void => {
    if (!isCount) return;
    setText("");
    void session.write((pen) => {
      const done = { on: day, shop, lines: [{ pack: pack.id, count }], fareMinor };
      const written = tickPacks(kitchen, view.tables.foods, done, pen);
      return written.ok ? written.value : [];
    });
  };
  if (!mayBuy && bought.length === 0) return null;
  return (
    <section className="stack tight" aria-labelledby="besides">
      <h2 id="besides">{further.besides.title}</h2>
      <ul className="lines">
        {bought.map((lot) => (
          <li key={lot.id} className="row spread">
            <span>{kitchen.packs.find(({ id }) => id === lot.pack)?.label ?? names.food(lot.food ?? "")}</span>
            <span className="figure">{formats.money(lot.broughtMinor, kitchen.currency)}</span>
            {mayRemove(lot.id) && (
              <button type="button" className="button" onClick={() => void untick(session, [lot.id], day)}>
                {further.remove}
              </button>
            )}
          </li>
        ))}
      </ul>
      {mayBuy && (
        <div className="fields">
          <TextField label={further.besides.find} type="search" value={text} onChange={setText} />
          <NumberField label={further.besides.count} value={1} onChange={setCount} isWhole />
        </div>
      )}
      <ul className="lines">
        {mayBuy &&
          offered.map((pack) => (
            <li key={pack.id} className="row spread">
              <span>{pack.label}</span>
              <span className="figure">{formats.money(pack.priceMinor, kitchen.currency)}</span>
              <button type="button" className="button" disabled={!isCount} onClick={() => buy(pack)}>
                {further.besides.bought}
              </button>
            </li>
          ))}
      </ul>
    </section>
  );
}
