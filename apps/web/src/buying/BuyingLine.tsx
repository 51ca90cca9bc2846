import { tickPacks } from "halfloaf/kitchen/record";
import { type CivilDate, parseMoney, toDecimalText } from "halfloaf/quantity";
import { type ReactNode, useId, useState } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";
import type { TickedLine } from "./linesOf.ts";

interface BuyingLineProps {
  readonly tick: TickedLine;
  readonly shop: string;
  /** First day of the week that the list belongs to. */
  readonly week: CivilDate;
}

/** One line of the list: a tick as big as a thumb, and the price where it differs at the shelf. */
export function BuyingLine({ tick, shop, week }: BuyingLineProps): ReactNode {
  const { words, formats } = useWords();
  const { session, view } = useKitchen();
  const { line, planned, paidMinor } = tick;
  const { currency } = view.kitchen;
  const isBought = paidMinor !== undefined;
  const buy = (priceMinor?: number): void => {
    void session.write((pen) => {
      const ticked = {
        pack: line.pack,
        count: line.count,
        planned,
        ...(priceMinor !== undefined && { priceMinor }),
      };
      const written = tickPacks(view.kitchen, view.tables.foods, { on: view.day, shop, week, lines: [ticked] }, pen);
      return written.ok ? written.value : [];
    });
  };
  return (
    <div className="buying-line">
      <label className="tick">
        <input
          type="checkbox"
          checked={isBought}
          onChange={() => (isBought ? void session.takeBack(tick.lots) : buy())}
        />
        <span className="tick-words">
          <span>
            {line.count > 1 && <b className="figure">{line.count} × </b>}
            {line.label}
          </span>
          <span className="small soft">
            {formats.mass(line.massG)}
            {line.estimate && `, ${words.buying.estimate}`}
          </span>
        </span>
        <span className="figure">{formats.money(paidMinor ?? line.priceMinor, currency)}</span>
      </label>
      {!isBought && <OtherPrice line={line} currency={currency} onPrice={buy} />}
    </div>
  );
}

interface OtherPriceProps {
  readonly line: TickedLine["line"];
  readonly currency: string;
  readonly onPrice: (priceMinor: number) => void;
}

/** The price of one pack as it stands at the shelf. */
function OtherPrice({ line, currency, onPrice }: OtherPriceProps): ReactNode {
  const { words } = useWords();
  const field = useId();
  const single = Math.round(line.priceMinor / line.count);
  const [text, setText] = useState(() => toDecimalText({ minor: single, currency }));
  const read = parseMoney(text, currency);
  const isPrice = read.ok && read.value.minor >= 0;
  return (
    <details className="other-price small">
      <summary>{words.buying.otherPrice}</summary>
      <div className="row">
        <label className="field" htmlFor={field}>
          {words.buying.onePack}
          <input
            id={field}
            inputMode="decimal"
            value={text}
            aria-invalid={!isPrice}
            onChange={(event) => setText(event.target.value)}
          />
        </label>
        <button
          type="button"
          className="button"
          disabled={!isPrice}
          onClick={() => isPrice && onPrice(read.value.minor)}
        >
          {words.buying.buyAt}
        </button>
      </div>
    </details>
  );
}
