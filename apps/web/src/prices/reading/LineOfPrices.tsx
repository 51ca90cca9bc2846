import type { PricedLine } from "@halfloaf/reading";
import { type ReactNode, useMemo, useState } from "react";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import { NewPack } from "./NewPack.tsx";
import { tellContent } from "./tellContent.ts";
import type { Settling } from "./useSettling.ts";

interface LineProps {
  readonly line: PricedLine;
  readonly settling: Settling;
  readonly shop: string | undefined;
  readonly onMatch: (line: PricedLine, pack: string) => void;
}

/** A line as it is written, what becomes of it, and what can be said of it. */
export function LineOfPrices({ line, settling, shop, onMatch }: LineProps): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const { view } = useKitchen();
  const [isOpen, setOpen] = useState(false);
  const { currency } = view.kitchen;
  const standing = settling.standingOf(line);
  const isAsking = standing === "open" || isOpen;
  return (
    <div className="stack tight">
      <div className="row spread">
        <i>{line.text}</i>
        <span className="figure">
          {formats.money(line.priceMinor, currency)}
          {line.discountMinor !== undefined && ` ${formats.money(line.discountMinor, currency)}`}
        </span>
      </div>
      <div className="line-with-ways">
        <Fate line={line} settling={settling} />
        {standing === "left-out" ? (
          <button type="button" className="plain" onClick={() => settling.setLeftOut(line.line, false)}>
            {further.priced.takeIn}
            <span className="unseen"> {line.text}</span>
          </button>
        ) : (
          standing !== "open" && (
            <button type="button" className="plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {further.edit}
              <span className="unseen"> {line.text}</span>
            </button>
          )
        )}
      </div>
      {isAsking && standing !== "left-out" && (
        <Saying
          line={line}
          settling={settling}
          shop={shop}
          onMatch={(pack) => {
            setOpen(false);
            onMatch(line, pack);
          }}
          onDone={() => setOpen(false)}
        />
      )}
    </div>
  );
}

/** What becomes of a line, in words. */
function Fate({ line, settling }: Pick<LineProps, "line" | "settling">): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const { view } = useKitchen();
  const names = useNames();
  const { priced: words } = further;
  const { currency } = view.kitchen;
  const standing = settling.standingOf(line);
  const made = settling.newPacks.get(line.line);
  if (standing === "left-out") return <span className="soft">{words.leftOut}</span>;
  if (made !== undefined)
    return <span>{words.newPack(names.food(made.food), tellContent(made.content, formats))}</span>;
  const { match, fate, observation } = line;
  if (match.kind === "open" || fate === "pack-open")
    return <span className="gone-off">{words.fates["pack-open"]}</span>;
  const told = [
    `${match.pack.label} (${words.by[match.by]})`,
    ...(observation === undefined ? [] : [words.soFar(formats.money(match.pack.priceMinor, currency))]),
    ...(observation !== undefined && observation.priceMinor !== line.priceMinor
      ? [formats.money(observation.priceMinor, currency)]
      : []),
    ...(observation?.offer === undefined
      ? []
      : [words.offer(observation.offer.count, formats.money(observation.offer.priceMinor, currency))]),
    ...(standing === "same" ? [words.same] : []),
  ].join(", ");
  return (
    <span>
      {told}
      {fate !== "price" && <b className="gone-off"> {words.fates[fate]}</b>}
    </span>
  );
}

interface SayingProps extends Pick<LineProps, "line" | "settling" | "shop"> {
  readonly onMatch: (pack: string) => void;
  readonly onDone: () => void;
}

/** What a person can say of a line: which pack it is, that it is a new one, or that it is left out. */
function Saying({ line, settling, shop, onMatch, onDone }: SayingProps): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const { view } = useKitchen();
  const [isNew, setNew] = useState(false);
  const { packs } = view.kitchen;
  const { priced: words } = further;
  const choices = useMemo(
    () =>
      packs
        .filter((pack) => pack.shop === shop)
        .map(({ id, label }) => [id, label] as const)
        .sort((a, b) => formats.compare(a[1], b[1])),
    [packs, shop, formats],
  );
  const near = line.match.kind === "open" ? line.match.nearest.filter(({ pack }) => pack.shop === shop) : [];
  // What its number says is never another pack.
  const isNumbered = line.match.kind === "known" && line.match.by === "gtin";
  return (
    <div className="stack tight telling">
      {shop === undefined ? (
        <p className="small soft">{words.shopFirst}</p>
      ) : (
        !isNumbered && (
          <>
            {near.length > 0 && (
              <div className="row">
                {near.map(({ pack }) => (
                  <button key={pack.id} type="button" className="button" onClick={() => onMatch(pack.id)}>
                    {pack.label}
                    <span className="unseen">: {line.text}</span>
                  </button>
                ))}
              </div>
            )}
            <ChoiceField
              label={words.another}
              value=""
              choices={[["", words.choose], ...choices]}
              onChange={(pack) => pack !== "" && onMatch(pack)}
            />
          </>
        )
      )}
      <div className="row">
        {shop !== undefined && line.candidate !== undefined && !isNumbered && (
          <button type="button" className="button" aria-expanded={isNew} onClick={() => setNew(!isNew)}>
            {words.makeNew}
            <span className="unseen">: {line.text}</span>
          </button>
        )}
        <button
          type="button"
          className="button"
          onClick={() => {
            settling.setLeftOut(line.line, true);
            onDone();
          }}
        >
          {words.leaveOut}
          <span className="unseen">: {line.text}</span>
        </button>
      </div>
      {isNew && <NewPack line={line} settling={settling} onMade={onDone} />}
    </div>
  );
}
