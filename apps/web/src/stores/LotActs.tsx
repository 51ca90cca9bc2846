import { PLACES } from "halfloaf/food";
import type { EventBody } from "halfloaf/kitchen/record";
import type { LotState } from "halfloaf/stores";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";

/** What can be told of a whole lot by one touch: used up, thrown away, put elsewhere. */
export function LotActs({ lot }: { readonly lot: LotState }): ReactNode {
  const { words, further } = useFurther("stores");
  const { session, view } = useKitchen();
  const mayTell = useMayWrite("used");
  const tell = (body: EventBody): void => {
    void session.write((pen) => [pen.write(body)]);
  };
  const base = { on: view.day, lot: lot.id };
  const { kit } = view.kitchen;
  const isThere = (place: (typeof PLACES)[number]): boolean =>
    place === "dry-store" || (place === "fridge" ? kit.fridgeLitres > 0 : kit.freezerLitres > 0);
  const elsewhere = PLACES.filter((place) => place !== lot.place && isThere(place));
  if (!mayTell) return null;
  return (
    <div className="row">
      <button type="button" className="button" onClick={() => tell({ kind: "used", ...base, massG: lot.leftG })}>
        {further.lot.usedUp}
      </button>
      <button type="button" className="button" onClick={() => tell({ kind: "wasted", ...base, massG: lot.leftG })}>
        {words.stores.allWasted}
      </button>
      {elsewhere.map((place) => (
        <button
          key={place}
          type="button"
          className="button"
          onClick={() => tell({ kind: "moved", ...base, to: place })}
        >
          {further.lot.moveTo[place]}
        </button>
      ))}
    </div>
  );
}
