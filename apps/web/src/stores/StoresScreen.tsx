import { PLACES } from "halfloaf/food";
import { firstExpiredFirstOut, type LotState } from "halfloaf/stores";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Undo } from "../today/Undo.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { StoredLot } from "./StoredLot.tsx";

/** What is here, where, until when. */
export default function StoresScreen(): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const lots = firstExpiredFirstOut(view.state.lots.values()).filter(({ since }) => since <= view.day);
  const worth = lots.reduce((sum, { leftMinor }) => sum + leftMinor, 0);
  return (
    <div className="stack">
      <div className="row spread">
        <h1>{words.screens.stores}</h1>
        <Undo />
      </div>
      <p className="soft">{words.stores.worth(formats.money(worth, view.kitchen.currency))}</p>
      {PLACES.map((place) => (
        <Place key={place} name={words.stores.places[place]} lots={lots.filter((lot) => lot.place === place)} />
      ))}
    </div>
  );
}

function Place({ name, lots }: { readonly name: string; readonly lots: readonly LotState[] }): ReactNode {
  const { words } = useWords();
  return (
    <section className="stack tight">
      <h2>{name}</h2>
      {lots.length === 0 && <p className="soft">{words.stores.empty}</p>}
      <ul className="lines">
        {lots.map((lot) => (
          <li key={lot.id}>
            <StoredLot lot={lot} />
          </li>
        ))}
      </ul>
    </section>
  );
}
