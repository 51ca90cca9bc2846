import { type LotToCount, stocktake } from "halfloaf/kitchen/record";
import { type FormEvent, type ReactNode, useState } from "react";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LongList } from "../kitchen/LongList.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { useWords } from "../words/WordsContext.tsx";

/** Lots of which more was used than was there, as when two devices used the last of one: each to be counted. */
export function ToCount(): ReactNode {
  const { words } = useWords();
  const { view } = useKitchen();
  const counts = [...view.state.toCount.values()];
  if (counts.length === 0) return null;
  return (
    <section className="sheet stack tight" aria-labelledby="to-count">
      <h2 id="to-count">{words.today.toCount}</h2>
      <LongList className="lines">
        {counts.map((count) => (
          <li key={count.lot}>
            <CountLot count={count} />
          </li>
        ))}
      </LongList>
    </section>
  );
}

function CountLot({ count: { lot, shortG } }: { readonly count: LotToCount }): ReactNode {
  const { words, formats } = useWords();
  const { session, view } = useKitchen();
  const names = useNames();
  const [massG, setMassG] = useState<number>();
  const known = view.state.lots.get(lot);
  const name = names.food(known?.food ?? known?.cooked?.dish ?? lot);
  const isMass = massG !== undefined && massG >= 0;
  const book = (event: FormEvent): void => {
    event.preventDefault();
    if (isMass) void session.write((pen) => stocktake(view.state, [{ lot, massG }], view.day, pen).events);
  };
  return (
    <form className="stack tight" onSubmit={book}>
      <p>{words.today.short(name, formats.mass(shortG))}</p>
      <Allowed to="counted">
        <div className="row end">
          <NumberField label={words.stores.grams} value={undefined} onChange={setMassG} />
          <button type="submit" className="button main" disabled={!isMass}>
            {words.stores.counted}
          </button>
        </div>
      </Allowed>
    </form>
  );
}
