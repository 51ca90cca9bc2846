import type { EventBody } from "halfloaf/kitchen/record";
import { isGoneOff, type LotState } from "halfloaf/stores";
import { type ReactNode, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { placesFor } from "./placesFor.ts";
import { TellGrams } from "./TellGrams.tsx";
import { whysFor } from "./wasteWhy.ts";

interface LotActsProps {
  readonly lot: LotState;
  /** True where a part of it can be told of as well. */
  readonly inGrams?: boolean;
}

/** What can be told of a lot: used up, thrown away and why, put elsewhere. */
export default function LotActs({ lot, inGrams = false }: LotActsProps): ReactNode {
  const { words, further } = useFurther("stores");
  const { session, view } = useKitchen();
  const mayTell = useMayWrite("used");
  const { keeps } = lot;
  const ended = keeps?.ok && isGoneOff(keeps, view.day) ? keeps.because : undefined;
  const [why, setWhy] = useState<string>(ended ?? "");
  const tell = (body: EventBody): void => {
    void session.write((pen) => [pen.write(body)]);
  };
  const base = { on: view.day, lot: lot.id };
  const because = why === "" ? {} : { why };
  const elsewhere = placesFor(view.kitchen.kit).filter((place) => place !== lot.place);
  if (!mayTell) return null;
  return (
    <>
      <div className="row">
        <button type="button" className="button" onClick={() => tell({ kind: "used", ...base, massG: lot.leftG })}>
          {further.lot.usedUp}
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
      <div className="row end">
        <ChoiceField label={further.whyWasted.why} value={why} choices={whysFor(ended, further)} onChange={setWhy} />
        <button
          type="button"
          className="button"
          onClick={() => tell({ kind: "wasted", ...base, massG: lot.leftG, ...because })}
        >
          {words.stores.allWasted}
        </button>
      </div>
      {inGrams && <TellGrams lot={lot} because={because} />}
    </>
  );
}
