import { observeReceipt, type Receipt, type ReceiptItem, readReceipt } from "@halfloaf/reading";
import { type ReactNode, useId, useMemo, useState } from "react";
import { Link } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";

/** Takes the prices of a receipt that was pasted or chosen as a text file: each line beside the pack it is taken for. */
export default function ReadReceipt(): ReactNode {
  const { further } = useFurther("dishes", "prices");
  const { view } = useKitchen();
  const [field, chooser] = [useId(), useId()];
  const [text, setText] = useState("");
  const [shop, setShop] = useState("");
  const [read, setRead] = useState<Receipt>();
  const { currency, shops, packs } = view.kitchen;
  const start = (content: string): void => {
    const found = readReceipt(content, { currency, shops, packs, ...(shop !== "" && { shop }) });
    setRead({ ...found, date: found.date ?? view.day });
  };
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const content = await file.text();
    setText(content);
    start(content);
  };
  const { receipt } = further;
  return (
    <div className="stack">
      <Link href="/prices" className="way-back">
        {further.prices.all}
      </Link>
      <h1>{receipt.title}</h1>
      {read === undefined ? (
        <>
          <p className="soft">{receipt.about}</p>
          <ChoiceField
            label={further.prices.shop}
            value={shop}
            choices={[["", receipt.shopOnIt], ...shops.map(({ id, name }) => [id, name] as const)]}
            onChange={setShop}
          />
          <label className="field" htmlFor={field}>
            {receipt.text}
            <textarea id={field} rows={8} value={text} onChange={(event) => setText(event.target.value)} />
          </label>
          <div>
            <button type="button" className="button main" disabled={text.trim() === ""} onClick={() => start(text)}>
              {further.reading.read}
            </button>
          </div>
          <label className="field" htmlFor={chooser}>
            {receipt.file}
            <input
              id={chooser}
              className="file"
              type="file"
              accept=".txt,text/plain"
              onChange={(event) => void take(event.target.files?.[0])}
            />
          </label>
        </>
      ) : (
        <Items receipt={read} onAgain={() => setRead(undefined)} />
      )}
    </div>
  );
}

interface ItemsProps {
  readonly receipt: Receipt;
  readonly onAgain: () => void;
}

function Items({ receipt, onAgain }: ItemsProps): ReactNode {
  const { further, formats } = useFurther("dishes", "prices");
  const { session, view } = useKitchen();
  const [chosen, setChosen] = useState<Readonly<Record<number, string>>>({});
  const [shop, setShop] = useState(receipt.shop ?? "");
  const [isKept, setKept] = useState(false);
  const { currency, packs, shops } = view.kitchen;
  const items = receipt.items.map((item): ReceiptItem => {
    const id = chosen[item.line];
    const pack = packs.find((each) => each.id === id);
    return pack === undefined ? item : { ...item, match: { kind: "known", pack, by: "memory" } };
  });
  const wanted = items.filter(({ line }) => chosen[line] !== "out");
  const { observations } = observeReceipt({ ...receipt, items: wanted, ...(shop !== "" && { shop }) }, shops);
  const keep = (): void => {
    void session.write((pen) =>
      observations.map(({ pack, priceMinor, offer, seen }) =>
        pen.write({ kind: "price-seen", ...seen, pack, priceMinor, ...(offer && { offer }) }),
      ),
    );
    setKept(true);
  };
  const { receipt: words } = further;
  return (
    <>
      <p role="status">
        {words.found(receipt.items.length, observations.length, formats.day(receipt.date ?? view.day))}{" "}
        {words.balance[receipt.balance.kind]}
      </p>
      {receipt.shop === undefined && (
        <ChoiceField
          label={further.prices.shop}
          value={shop}
          choices={[["", words.choose], ...shops.map(({ id, name }) => [id, name] as const)]}
          onChange={setShop}
        />
      )}
      <ul className="lines">
        {items.map((item) => (
          <li key={item.line} className="stack tight">
            <div className="row spread">
              <i>{item.name}</i>
              <span className="figure">{formats.money(item.priceMinor + item.discountMinor, currency)}</span>
            </div>
            <PackOf item={item} shop={shop} value={chosen[item.line]} onChoose={choose} />
          </li>
        ))}
      </ul>
      {receipt.unread.length > 0 && (
        <section className="stack tight">
          <h2>{further.reading.unread}</h2>
          <ul className="lines close soft">
            {receipt.unread.map(({ line, text }) => (
              <li key={line}>{text}</li>
            ))}
          </ul>
        </section>
      )}
      {isKept && <p role="status">{further.saved}</p>}
      <div className="row">
        <button type="button" className="button main" disabled={observations.length === 0 || isKept} onClick={keep}>
          {words.keep(observations.length)}
        </button>
        <button type="button" className="button" onClick={onAgain}>
          {further.reading.again}
        </button>
      </div>
    </>
  );

  function choose(line: number, pack: string): void {
    setKept(false);
    setChosen({ ...chosen, [line]: pack });
  }
}

interface PackOfProps {
  readonly item: ReceiptItem;
  readonly shop: string;
  readonly value: string | undefined;
  readonly onChoose: (line: number, pack: string) => void;
}

/** The pack that a line is taken for: the one known, the nearest to choose from, any other of the shop, or none. */
function PackOf({ item, shop, value, onChoose }: PackOfProps): ReactNode {
  const { further } = useFurther("prices");
  const { view } = useKitchen();
  const { packs } = view.kitchen;
  const { match } = item;
  const known = match.kind === "known" ? match.pack.id : "";
  const choices = useMemo(() => {
    const own = packs.filter((pack) => shop === "" || pack.shop === shop);
    return own.map(({ id, label }) => [id, label] as const).sort((a, b) => (a[1] < b[1] ? -1 : 1));
  }, [packs, shop]);
  return (
    <ChoiceField
      label={further.receipt.pack}
      value={value ?? known}
      choices={[["", further.receipt.choose], ["out", further.receipt.leaveOut], ...choices]}
      onChange={(pack) => onChoose(item.line, pack)}
    />
  );
}
