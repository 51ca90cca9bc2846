import { guessPriceList, linesOfList, type SaidMatch, toPriceListMapping } from "@halfloaf/reading";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { Awaited } from "../../loading/Awaited.tsx";
import { ReadFaults } from "../../mapping/ReadFaults.tsx";
import { ReadingProgress } from "../../mapping/ReadingProgress.tsx";
import { type SourceText, TextSource } from "../../source/TextSource.tsx";
import { Undo } from "../../today/Undo.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { ListForm, type ListSaid } from "./ListForm.tsx";
import { PricedLines } from "./PricedLines.tsx";
import { useListReading } from "./useListReading.ts";
import { useSettling } from "./useSettling.ts";

/** Takes the prices of a list: how it is written is guessed and shown, then each row beside what becomes of it. */
export default function ReadPriceList(): ReactNode {
  const { further } = useFurther("prices", "readPrices");
  const [source, setSource] = useState<SourceText>();
  return (
    <div className="stack">
      <div className="row spread">
        <Link href="/prices" className="way-back">
          {further.prices.all}
        </Link>
        {source !== undefined && <Undo />}
      </div>
      <h1>{further.prices.readList}</h1>
      {source === undefined ? (
        <>
          <p className="soft">{further.list.about}</p>
          <TextSource
            label={further.list.text}
            hint={further.list.textHint}
            fileLabel={further.list.file}
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onText={setSource}
          />
        </>
      ) : (
        <Awaited>
          <Rows text={source.text} onAgain={() => setSource(undefined)} />
        </Awaited>
      )}
    </div>
  );
}

const NOTHING_SAID: ListSaid = { csv: {}, columns: {} };

function Rows({ text, onAgain }: { readonly text: string; readonly onAgain: () => void }): ReactNode {
  const { further } = useFurther("mapping", "prices", "readPrices");
  const { view } = useKitchen();
  const { currency, english, shops } = view.kitchen;
  const [said, setSaid] = useState(NOTHING_SAID);
  const [matches, setMatches] = useState<readonly SaidMatch[]>([]);
  const guess = useMemo(() => {
    const found = guessPriceList(text, currency, said.csv);
    const chosen = Object.entries({ ...found.columns, ...said.columns });
    return {
      ...found,
      columns: Object.fromEntries(chosen.filter(([, name]) => name !== "" && found.header.includes(name))),
      dateOrder: said.dateOrder === "" ? undefined : (said.dateOrder ?? found.dateOrder),
    };
  }, [text, currency, said]);
  const shop = said.shop ?? (shops.length === 1 ? shops[0]?.id : undefined);
  const { dateOrder, ...form } = guess;
  const mapping = toPriceListMapping(
    { ...form, ...(dateOrder && { dateOrder }) },
    {
      currency,
      customary: english === "american" ? "us" : "british",
      on: said.on ?? view.day,
      ...(shop !== undefined && { shop }),
    },
  );
  const { reading, stop, relearn } = useListReading(text, mapping);
  const rows = reading.kind === "read" ? reading.rows : undefined;
  const lines = useMemo(() => linesOfList(rows ?? []), [rows]);
  const readLines = useMemo(() => new Set(lines.map(({ line }) => line)), [lines]);
  const settling = useSettling(lines, matches);
  const { list: words } = further;
  return (
    <>
      <ListForm guess={guess} said={said} shop={shop ?? ""} day={said.on ?? view.day} onSaid={setSaid} />
      {mapping === undefined && (
        <p className="caution" role="status">
          {guess.header.length === 0 ? further.mapping.noHeader : words.formOpen}
        </p>
      )}
      {reading.kind === "reading" && <ReadingProgress rows={reading.rows} share={reading.share} onStop={stop} />}
      {reading.kind === "read" && (
        <>
          {reading.isStopped && <p className="caution">{words.stopped}</p>}
          <ReadFaults
            issues={reading.issues}
            issueCount={reading.issueCount}
            columns={guess.header}
            faultWords={words.faultWords}
            readLines={readLines}
          />
          <PricedLines
            lines={lines}
            settling={settling}
            shopOf={({ candidate }) => candidate?.shop}
            onMatch={(line, pack) => {
              const known = [...matches, { text: line.text, pack }];
              setMatches(known);
              relearn(known, line.text);
            }}
          />
        </>
      )}
      <div>
        <button type="button" className="button" onClick={onAgain}>
          {further.source.again}
        </button>
      </div>
    </>
  );
}
