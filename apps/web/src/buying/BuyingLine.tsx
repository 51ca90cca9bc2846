import { tickPacks } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useWords } from "../words/WordsContext.tsx";
import { AtShelf } from "./AtShelf.tsx";
import type { TickedLine } from "./linesOf.ts";
import { untick } from "./untick.ts";

interface BuyingLineProps {
  readonly tick: TickedLine;
  readonly shop: string;
  /** What the way to the shop costs and is not noted yet, in minor units. */
  readonly fareMinor: number;
  /** First day of the week that the list belongs to. */
  readonly week: CivilDate;
  /** True for the line whose number was scanned last. */
  readonly isFound: boolean;
}

/** One line of the list: a tick as big as a thumb, and what may stand at the shelf instead. */
export function BuyingLine({ tick, shop, fareMinor, week, isFound }: BuyingLineProps): ReactNode {
  const { words, formats } = useWords();
  const { session, view } = useKitchen();
  const { line, planned, paidMinor } = tick;
  const isBought = paidMinor !== undefined;
  const buy = (): void => {
    void session.write((pen) => {
      const lines = [{ pack: line.pack, count: line.count, planned }];
      const done = { on: view.day, shop, week, lines, fareMinor };
      const written = tickPacks(view.kitchen, view.tables.foods, done, pen);
      return written.ok ? written.value : [];
    });
  };
  return (
    <div className={isFound ? "buying-line found" : "buying-line"} id={`line-${line.pack}`}>
      <label className="tick">
        <input
          type="checkbox"
          checked={isBought}
          onChange={() => (isBought ? void untick(session, tick.lots, view.day) : buy())}
        />
        <span className="tick-words">
          <span>
            {line.count > 1 && <b className="figure">{line.count} × </b>}
            {line.label}
          </span>
          <span className="small soft">
            {formats.mass(line.massG)}
            {line.estimate && !isBought && `, ${words.buying.estimate}`}
          </span>
        </span>
        <span className="figure">{formats.money(paidMinor ?? line.priceMinor, view.kitchen.currency)}</span>
      </label>
      {!isBought && <AtShelf tick={tick} shop={shop} week={week} />}
    </div>
  );
}
