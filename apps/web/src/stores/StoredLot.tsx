import { type EventBody, stocktake } from "halfloaf/kitchen/record";
import { daysBetween } from "halfloaf/quantity";
import type { LotState } from "halfloaf/stores";
import { type ReactNode, useId, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { LotActs } from "./LotActs.tsx";

/** One lot with what is left of it, and what can be told of it. */
export function StoredLot({ lot }: { readonly lot: LotState }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  const names = useNames();
  const { keeps, food, cooked } = lot;
  const daysLeft = keeps?.ok ? daysBetween(view.day, keeps.on) : undefined;
  return (
    <Unfolding
      className="lot"
      summaryClassName="row spread"
      summary={
        <>
          <span>{food === undefined ? names.dish(cooked?.dish ?? lot.id) : names.food(food)}</span>
          <span className="figure">{formats.mass(lot.leftG)}</span>
          <span className={daysLeft !== undefined && daysLeft < 0 ? "figure small gone-off" : "figure small soft"}>
            {keeps?.ok ? words.stores.until(formats.dayFrom(view.day, keeps.on)) : words.stores.untilUnknown}
          </span>
        </>
      }
    >
      <Telling lot={lot} />
    </Unfolding>
  );
}

function Telling({ lot }: { readonly lot: LotState }): ReactNode {
  const { words, formats } = useWords();
  const { view } = useKitchen();
  return (
    <div className="stack tight telling">
      <p className="small soft">
        {words.stores.bought(formats.dayFrom(view.day, lot.boughtOn))}
        {lot.openedOn !== undefined && ` ${words.stores.opened(formats.day(lot.openedOn))}`}{" "}
        {words.stores.left(formats.money(lot.leftMinor, view.kitchen.currency))}
      </p>
      <LotActs lot={lot} />
      <Allowed to="used">
        <TellGrams lot={lot} />
      </Allowed>
    </div>
  );
}

/** So many grams were used, thrown away or found. */
function TellGrams({ lot }: { readonly lot: LotState }): ReactNode {
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
          onClick={() => add({ kind: "wasted", ...base, massG })}
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
