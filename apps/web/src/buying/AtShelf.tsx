import type { WeekChange, WeekPlan } from "halfloaf/kitchen";
import { editsBetween, tickPacks } from "halfloaf/kitchen/record";
import type { Pack } from "halfloaf/price";
import type { CivilDate } from "halfloaf/quantity";
import { type ReactNode, useCallback, useEffect, useMemo, useState } from "react";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";
import { useNames } from "../kitchen/useNames.ts";
import { MendedWeek } from "../thinking/MendedWeek.tsx";
import { useMending } from "../thinking/useMending.ts";
import { useFurther } from "../words/useFurther.ts";
import type { TickedLine } from "./linesOf.ts";
import { ShelfSays } from "./ShelfSays.tsx";
import { type ShelfNews, shelfAnswer } from "./shelfAnswer.ts";
import type { NotThere } from "./useNotThere.ts";

const KINDS = ["price", "size", "gone"] as const;
type Kind = (typeof KINDS)[number];

/** While somebody types, the week is planned again only after so long a pause. */
const PAUSE_MS = 250;

interface AtShelfProps {
  readonly tick: TickedLine;
  readonly shop: string;
  /** First day of the week that the list belongs to. */
  readonly week: CivilDate;
  /** What was not there on this trip: remembered whether or not the week is changed for it. */
  readonly notThere: NotThere;
}

/** Another price, another size, or nothing at all at the shelf: whether it is still worth it, and what changes. */
export function AtShelf({ tick, shop, week, notThere }: AtShelfProps): ReactNode {
  const { further } = useFurther("buying", "mended");
  const { session, view } = useKitchen();
  const { line, planned } = tick;
  const { currency, packs } = view.kitchen;
  const [kind, setKind] = useState<Kind>();
  const [priceMinor, setPrice] = useState<number | undefined>(Math.round(line.priceMinor / line.count));
  const [massG, setMass] = useState<number>();
  const { mending, ask, forget } = useMending();
  const news = useNews(kind, priceMinor, massG);
  const sizedPack = useSizedPack(line.pack, news);
  const accepted = view.menu?.week;
  const answer = useMemo(
    () =>
      news && accepted && shelfAnswer(line, news, { week: accepted, lots: planned, packs, foods: view.tables.foods }),
    [news, accepted, line, planned, packs, view.tables.foods],
  );
  const askWeek = useCallback(
    (instead?: WeekPlan): void => {
      if (news === undefined) return;
      void ask([toChange(line.pack, news)], { instead, ...(sizedPack && { pack: sizedPack }) });
    },
    [news, sizedPack, line.pack, ask],
  );
  useEffect(() => {
    forget();
    if (news === undefined) return undefined;
    const timer = setTimeout(askWeek, news.kind === "gone" ? 0 : PAUSE_MS);
    return () => clearTimeout(timer);
  }, [news, askWeek, forget]);
  const buy = (): void => {
    if (news === undefined || news.kind === "gone" || answer?.found === undefined) return;
    const { count } = answer.found;
    const size = news.kind === "size" && { massG: news.massG };
    const ticked = { pack: line.pack, count, planned: planned.slice(0, count), priceMinor: news.priceMinor, ...size };
    void session.write((pen) => {
      const done = { on: view.day, shop, week, lines: [ticked] };
      const written = tickPacks(view.kitchen, view.tables.foods, done, pen);
      return written.ok ? written.value : [];
    });
    setKind(undefined);
  };
  const accept = (mended: WeekPlan): void => {
    const at = view.kitchen.shops.find(({ id }) => id === shop)?.name ?? shop;
    void session.write((pen) => {
      const withPack = sizedPack && { ...view.edited, packs: [...view.edited.packs, sizedPack] };
      const edits = withPack === undefined ? [] : editsBetween(view.edited, withPack);
      const seen = news?.kind === "price" && {
        kind: "price-seen" as const,
        on: view.day,
        pack: line.pack,
        priceMinor: news.priceMinor,
        at,
      };
      return [
        ...edits.map((edit) => pen.write(edit)),
        ...(seen ? [pen.write(seen)] : []),
        pen.write({ kind: "menu-accepted", on: view.day, week: mended }),
      ];
    });
    setKind(undefined);
  };
  return (
    <div className="at-shelf stack tight">
      <fieldset className="choice thirds">
        <legend className="unseen">
          {further.shelf.legend} {line.label}
        </legend>
        {KINDS.map((each) => (
          <button
            key={each}
            type="button"
            className="button quiet"
            aria-pressed={kind === each}
            onClick={() => {
              if (each === "gone") notThere.set(line.pack, true);
              setKind(kind === each ? undefined : each);
            }}
          >
            {further.shelf.kinds[each]}
          </button>
        ))}
      </fieldset>
      {kind !== undefined && (
        <div className="sheet stack tight">
          {kind !== "gone" && (
            <div className="fields">
              <MoneyField label={further.shelf.price} value={priceMinor} currency={currency} onChange={setPrice} />
              {kind === "size" && <NumberField label={further.shelf.mass} value={massG} onChange={setMass} />}
            </div>
          )}
          <div className="stack tight" role="status">
            {answer !== undefined && <ShelfSays answer={answer} />}
            <MendedWeek
              mending={mending}
              same={kind === "gone" ? further.mended.same : further.shelf.worthIt}
              onAccept={accept}
              onAgain={askWeek}
            />
          </div>
          <div className="row">
            {answer?.found !== undefined && (
              <button type="button" className="button" onClick={buy}>
                {further.shelf.buy(answer.found.count)}
              </button>
            )}
            <button type="button" className="button" onClick={() => setKind(undefined)}>
              {further.shelf.leave}
            </button>
          </div>
        </div>
      )}
    </div>
  );
}

/** What was told, as far as it is sound; the same object for the same news. */
function useNews(kind: Kind | undefined, priceMinor: number | undefined, massG: number | undefined) {
  const isPrice = priceMinor !== undefined && Number.isSafeInteger(priceMinor);
  const isMass = massG !== undefined && massG > 0;
  return useMemo((): ShelfNews | undefined => {
    if (kind === "gone") return { kind };
    if (kind === undefined || !isPrice) return undefined;
    if (kind === "price") return { kind, priceMinor };
    return isMass ? { kind, priceMinor, massG } : undefined;
  }, [kind, isPrice, isMass, priceMinor, massG]);
}

/** A pack of another size as a pack of its own, seen today; undefined for other news. */
function useSizedPack(id: string, news: ShelfNews | undefined): Pack | undefined {
  const { formats } = useFurther();
  const { view } = useKitchen();
  const names = useNames();
  const { kitchen, day } = view;
  return useMemo(() => {
    const pack = kitchen.packs.find((each) => each.id === id);
    if (news?.kind !== "size" || pack === undefined) return undefined;
    const { offer: _offer, estimate: _guess, gtin: _number, reduced: _reduced, ...rest } = pack;
    const at = kitchen.shops.find((each) => each.id === pack.shop)?.name ?? pack.shop;
    return {
      ...rest,
      id: newId(
        `${pack.food} ${Math.round(news.massG)}g ${pack.shop}`,
        kitchen.packs.map((each) => each.id),
        "pack",
      ),
      label: `${names.food(pack.food)}, ${formats.mass(news.massG)}`,
      content: { massG: news.massG },
      priceMinor: news.priceMinor,
      seen: { on: day, at },
    };
  }, [id, news, kitchen, day, names, formats]);
}

/** The news as a change of the week; a pack of another size stands in for the one that is not there. */
function toChange(pack: string, news: ShelfNews): WeekChange {
  return news.kind === "price" ? { kind: "price", pack, priceMinor: news.priceMinor } : { kind: "gone", pack };
}
