import { type EventBody, stocktake } from "halfloaf/kitchen/record";
import type { LotState } from "halfloaf/stores";
import { type ReactNode, useId, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";

interface TellGramsProps {
  readonly lot: LotState;
  /** Why it was thrown away, where that was said. */
  readonly because: { readonly why?: string };
}

/** So many grams were used, thrown away or found. */
export function TellGrams({ lot, because }: TellGramsProps): ReactNode {
  const { words } = useWords();
  const { session, view } = useKitchen();
  const field = useId();
  const [text, setText] = useState("");
  const massG = Number(text.replace(",", "."));
  const isMass = text.trim() !== "" && massG >= 0;
  const add = (body: EventBody): void => {
    setText("");
    void session.write((pen) => [pen.write(body)]);
  };
  const count = (): void => {
    setText("");
    void session.write((pen) => stocktake(view.state, [{ lot: lot.id, massG }], view.day, pen).events);
  };
  const base = { on: view.day, lot: lot.id };
  const isSome = isMass && massG > 0 && massG <= lot.leftG;
  return (
    <>
      <label className="field" htmlFor={field}>
        {words.stores.grams}
        <input id={field} inputMode="decimal" value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={!isSome}
          onClick={() => add({ kind: "used", ...base, massG })}
        >
          {words.stores.used}
        </button>
        <button
          type="button"
          className="button"
          disabled={!isSome}
          onClick={() => add({ kind: "wasted", ...base, massG, ...because })}
        >
          {words.stores.wasted}
        </button>
        <button type="button" className="button" disabled={!isMass} onClick={count}>
          {words.stores.counted}
        </button>
      </div>
    </>
  );
}
