import { isFound, toSearchText } from "halfloaf/food";
import { tickPacks } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { type ReactNode, useMemo } from "react";
import { useDevice, useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Awaited } from "../loading/Awaited.tsx";
import { tellContent } from "../prices/reading/tellContent.ts";
import { useShared } from "../sharing/shared.ts";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { PackDate } from "../stores/PackDate.tsx";
import { useFurther } from "../words/useFurther.ts";
import { AtShelf } from "./AtShelf.tsx";
import type { TickedLine } from "./linesOf.ts";
import { tickedBy } from "./tickedBy.ts";
import { untick } from "./untick.ts";
import type { NotThere } from "./useNotThere.ts";

interface BuyingLineProps {
  readonly tick: TickedLine;
  readonly shop: string;
  /** What the way to the shop costs and is not noted yet, in minor units. */
  readonly fareMinor: number;
  /** First day of the week that the list belongs to. */
  readonly week: CivilDate;
  /** What was not there on this trip. */
  readonly notThere: NotThere;
  /** True for the line whose number was scanned last. */
  readonly isFound: boolean;
}

/** One line of the list: a tick as big as a thumb, and what may stand at the shelf instead. */
export function BuyingLine({ tick, shop, fareMinor, week, notThere, isFound }: BuyingLineProps): ReactNode {
  const { words, further, formats, language } = useFurther("buying", "sharing");
  const names = useNames();
  const { session, view } = useKitchen();
  const { line, planned, paidMinor } = tick;
  const { device } = useDevice();
  const shared = useShared(device.open);
  const mayBuy = useMayWrite("bought");
  const other = useOtherHand(tick, shared !== undefined);
  const pack = view.kitchen.packs.find(({ id }) => id === line.pack);
  const isBought = paidMinor !== undefined;
  const mayTurn = isBought ? session.mayWrite({ kind: "withdrawn", events: other?.rows ?? [] }) : mayBuy;
  const home = tick.lots.flatMap((id) => view.state.lots.get(id) ?? []).filter(({ leftG }) => leftG > 0);
  const isMissing = !isBought && notThere.packs.has(line.pack);
  const name = names.food(line.food);
  const isNamed = language === "en" || tellsFood(line.label, name);
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
          disabled={!mayTurn}
          onChange={() => (isBought ? void untick(session, tick.lots, view.day) : buy())}
        />
        <span className="tick-words">
          <span>
            {line.count > 1 && <b className="figure">{line.count} × </b>}
            {line.label}
          </span>
          <span className="small soft">
            {!isNamed && `${name}, `}
            {pack === undefined ? formats.mass(line.massG) : tellContent(pack.content, formats)}
            {line.estimate && !isBought && `, ${words.buying.estimate}`}
            {other !== undefined && `, ${further.sharing.tickedBy(other.name)}`}
          </span>
        </span>
        <span className="figure">{formats.money(paidMinor ?? line.priceMinor, view.kitchen.currency)}</span>
      </label>
      {isMissing && (
        <p className="row small">
          <b>{further.shelf.notThere}</b>
          {mayBuy && (
            <button type="button" className="plain" onClick={() => notThere.set(line.pack, false)}>
              {further.shelf.isThere}
              <span className="unseen"> {line.label}</span>
            </button>
          )}
        </p>
      )}
      {home.length > 0 && (
        <div className="at-shelf">
          <Awaited isQuiet>
            <PackDate lots={home} label={line.label} />
          </Awaited>
        </div>
      )}
      {!isBought && mayBuy && <AtShelf tick={tick} shop={shop} week={week} notThere={notThere} />}
    </div>
  );
}

/** The rows by which somebody else ticked the line in a shared kitchen, and what to call them; undefined where nobody did. */
function useOtherHand(
  { lots }: TickedLine,
  isShared: boolean,
): { readonly name: string; readonly rows: readonly string[] } | undefined {
  const { further } = useFurther("sharing");
  const { session, view } = useKitchen();
  const found = useMemo(
    () =>
      isShared && lots.length > 0
        ? tickedBy(session.kept.events.events, lots, (id) => session.kept.isOwn(id))
        : undefined,
    [session, isShared, lots],
  );
  if (found === undefined) return undefined;
  const name = view.edited.eaters.find(({ id }) => id === found.by)?.name ?? further.sharing.otherDevice;
  return { name, rows: [found.id] };
}

/** True where a label says what is in the pack; it is the kitchen's own, and may be in another language than the screens. */
function tellsFood(label: string, name: string): boolean {
  return isFound(toSearchText(label), name);
}
