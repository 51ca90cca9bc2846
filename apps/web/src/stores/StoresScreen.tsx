import { PLACES } from "halfloaf/food";
import { firstExpiredFirstOut, type LotState } from "halfloaf/stores";
import { type ReactNode, useMemo, useRef, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { LongList } from "../kitchen/LongList.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import "../kitchen/fields/fields.css";
import { Allowed } from "../sharing/Allowed.tsx";
import { Stocktake } from "./Stocktake.tsx";
import { StoredLot } from "./StoredLot.tsx";
import { ToCount } from "./ToCount.tsx";

const Found = lazily(() => import("./Found.tsx"));
const TableButtons = lazily(() => import("../sheets/TableButtons.tsx"));

/** What is here, where, until when. */
export default function StoresScreen(): ReactNode {
  const { words, further, formats } = useFurther("stores");
  const { view } = useKitchen();
  const [isFound, setFound] = useState(false);
  const begin = useRef<HTMLButtonElement>(null);
  const lots = useMemo(
    () => firstExpiredFirstOut(view.state.lots.values()).filter(({ since }) => since <= view.day),
    [view.state, view.day],
  );
  const worth = lots.reduce((sum, { leftMinor }) => sum + leftMinor, 0);
  return (
    <div className="stack broad-page">
      <div className="row spread">
        <h1>{words.screens.stores}</h1>
        <Undo />
      </div>
      <p className="soft">{words.stores.worth(formats.money(worth, view.kitchen.currency))}</p>
      <ToCount />
      <Allowed to="stocked">
        <div>
          <button
            ref={begin}
            type="button"
            className="button"
            aria-expanded={isFound}
            onClick={() => setFound(!isFound)}
          >
            {further.foundHere.begin}
          </button>
        </div>
        {isFound && (
          <Awaited>
            <Found
              onDone={() => {
                setFound(false);
                begin.current?.focus();
              }}
            />
          </Awaited>
        )}
      </Allowed>
      <div className="stack beside">
        {PLACES.map((place) => (
          <Place key={place} name={words.stores.places[place]} lots={lots.filter((lot) => lot.place === place)} />
        ))}
      </div>
      <PrintOrSave>
        <TableButtons tables={["stores", "movements"]} />
      </PrintOrSave>
    </div>
  );
}

function Place({ name, lots }: { readonly name: string; readonly lots: readonly LotState[] }): ReactNode {
  const { words, further } = useFurther("stores");
  const [isCounting, setCounting] = useState(false);
  return (
    <section className="stack tight">
      <div className="row spread">
        <h2>{name}</h2>
        {lots.length > 0 && !isCounting && (
          <Allowed to="counted">
            <button type="button" className="button" onClick={() => setCounting(true)}>
              {further.stocktake.begin}
            </button>
          </Allowed>
        )}
      </div>
      {lots.length === 0 && <p className="soft">{words.stores.empty}</p>}
      {isCounting ? (
        <Stocktake lots={lots} onDone={() => setCounting(false)} />
      ) : (
        <LongList className="lines">
          {lots.map((lot) => (
            <li key={lot.id}>
              <StoredLot lot={lot} />
            </li>
          ))}
        </LongList>
      )}
    </section>
  );
}
