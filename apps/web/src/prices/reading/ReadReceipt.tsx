import {
  ENGLISH_RECEIPT,
  GERMAN_RECEIPT,
  linesOfReceipt,
  readReceipt,
  rememberMatch,
  type SaidMatch,
} from "@halfloaf/reading";
import { type ReactNode, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { DayField } from "../../kitchen/fields/DayField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { TextSource } from "../../source/TextSource.tsx";
import { Undo } from "../../today/Undo.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { PricedLines } from "./PricedLines.tsx";
import { useSettling } from "./useSettling.ts";

const WORDS = { en: ENGLISH_RECEIPT, de: GERMAN_RECEIPT };

/** Takes the prices of a receipt that was pasted or comes from a text file: each line beside what becomes of it. */
export default function ReadReceipt(): ReactNode {
  const { further } = useFurther("prices", "readPrices");
  const [text, setText] = useState("");
  const [isRead, setRead] = useState(false);
  return (
    <div className="stack">
      <div className="row spread">
        <Link href="/prices" className="way-back">
          {further.prices.all}
        </Link>
        {isRead && <Undo />}
      </div>
      <h1>{further.prices.readReceipt}</h1>
      {isRead ? (
        <Items
          text={text}
          onChange={() => setRead(false)}
          onAgain={() => {
            setText("");
            setRead(false);
          }}
        />
      ) : (
        <>
          <p className="soft">{further.receipt.about}</p>
          <TextSource
            label={further.receipt.text}
            hint={further.receipt.textHint}
            initial={text}
            fileLabel={further.receipt.file}
            accept=".txt,text/plain"
            onText={(source) => {
              setText(source.text);
              setRead(true);
            }}
          />
        </>
      )}
    </div>
  );
}

interface ItemsProps {
  readonly text: string;
  readonly onChange: () => void;
  readonly onAgain: () => void;
}

function Items({ text, onChange, onAgain }: ItemsProps): ReactNode {
  const { further, formats, language } = useFurther("prices", "readPrices");
  const { view } = useKitchen();
  const [day, setDay] = useState<string>();
  const [matches, setMatches] = useState<readonly SaidMatch[]>([]);
  const { currency, shops, packs } = view.kitchen;
  const [said, setShop] = useState<string>();
  const shop = said ?? (shops.length === 1 ? shops[0]?.id : undefined) ?? "";
  const receipt = useMemo(() => {
    const known = matches.reduce(rememberMatch, [...packs]);
    const read = readReceipt(text, {
      currency,
      shops,
      packs: known,
      words: WORDS[language],
      ...(shop !== "" && { shop }),
    });
    return { ...read, date: day ?? read.date ?? view.day };
  }, [text, currency, shops, packs, matches, shop, day, language, view.day]);
  const lines = useMemo(() => linesOfReceipt(receipt, shops), [receipt, shops]);
  const settling = useSettling(lines, matches);
  const { receipt: words } = further;
  const isForeign = receipt.issues.some(({ code }) => code === "currency");
  const refused = isForeign
    ? words.foreign(currency)
    : receipt.balance.kind === "apart"
      ? words.balance.apart
      : undefined;
  return (
    <>
      <p role="status">{lines.length === 0 ? words.nothing : words.balance[receipt.balance.kind]}</p>
      <div className="fields">
        <ChoiceField
          label={further.prices.shop}
          value={receipt.shop ?? ""}
          choices={[["", further.priced.chooseShop], ...shops.map(({ id, name }) => [id, name] as const)]}
          onChange={setShop}
        />
        <DayField label={further.prices.day} value={receipt.date} onChange={setDay} />
      </div>
      <PricedLines
        lines={lines}
        settling={settling}
        shopOf={() => receipt.shop}
        onMatch={(line, pack) => setMatches([...matches, { text: line.text, pack }])}
        refused={refused}
      />
      {receipt.unread.length > 0 && (
        <section className="stack tight">
          <h2>{further.source.unread}</h2>
          <ul className="lines close soft">
            {receipt.unread.map(({ line, text: left }) => (
              <li key={line}>{left}</li>
            ))}
          </ul>
        </section>
      )}
      {receipt.extras.length > 0 && (
        <section className="stack tight">
          <h2>{words.extras}</h2>
          <ul className="lines close soft">
            {receipt.extras.map(({ line, name, amountMinor }) => (
              <li key={line} className="row spread">
                <span>{name}</span>
                <span className="figure">{formats.money(amountMinor, currency)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <div className="row">
        <button type="button" className="button" onClick={onChange}>
          {words.change}
        </button>
        <button type="button" className="button" onClick={onAgain}>
          {further.source.again}
        </button>
      </div>
    </>
  );
}
