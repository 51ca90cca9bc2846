import type { Pack } from "halfloaf/price";
import { type FormEvent, type ReactNode, useState } from "react";
import { Link } from "wouter";
import { WriteFood } from "../foods/WriteFood.tsx";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";
import { useNames } from "../kitchen/useNames.ts";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { ChooseFood } from "./ChooseFood.tsx";

const UNITS = ["massG", "volumeMl", "pieces"] as const;
type Unit = (typeof UNITS)[number];

/** Where in a shop nobody said that a pack stands. */
const SECTION = "other";

/** A pack that is written down by hand: what it is called, holds and costs, and where. */
export default function WritePack(): ReactNode {
  const { further } = useFurther("prices");
  const [turn, setTurn] = useState(0);
  const [shop, setShop] = useState<string>();
  const [written, setWritten] = useState<string>();
  return (
    <div className="stack">
      <div className="row spread">
        <Link href="/prices" className="way-back">
          {further.prices.all}
        </Link>
        <Undo />
      </div>
      <h1>{further.prices.writePack}</h1>
      <PackForm
        key={turn}
        firstShop={shop}
        onWritten={(pack) => {
          setShop(pack.shop);
          setWritten(pack.label);
          setTurn(turn + 1);
        }}
      />
      <p role="status">{written !== undefined && further.prices.packWritten(written)}</p>
    </div>
  );
}

interface PackFormProps {
  /** The shop of the pack before; undefined for the first. */
  readonly firstShop: string | undefined;
  readonly onWritten: (pack: Pack) => void;
}

function PackForm({ firstShop, onWritten }: PackFormProps): ReactNode {
  const { further } = useFurther("prices", "readPrices");
  const { session, view } = useKitchen();
  const names = useNames();
  const mayEdit = useMayWrite("edited");
  const { shops, currency, packs } = view.kitchen;
  const [label, setLabel] = useState("");
  const [food, setFood] = useState("");
  const [shop, setShop] = useState(firstShop ?? shops[0]?.id ?? "");
  const [unit, setUnit] = useState<Unit>("massG");
  const [amount, setAmount] = useState<number>();
  const [priceMinor, setPrice] = useState<number>();
  const [isSeen, setSeen] = useState(true);
  const { prices } = further;
  const isAmount = amount !== undefined && amount > 0 && (unit !== "pieces" || Number.isSafeInteger(amount));
  const isPrice = priceMinor !== undefined && Number.isSafeInteger(priceMinor) && priceMinor >= 0;
  const lacks = [
    ...(label.trim() === "" ? [prices.packLabel] : []),
    ...(food === "" ? [further.priced.food] : []),
    ...(isAmount ? [] : [prices.packHolds]),
    ...(isPrice ? [] : [prices.priceOfOne]),
  ];
  const write = (event: FormEvent): void => {
    event.preventDefault();
    if (lacks.length > 0 || !mayEdit) return;
    const ids = packs.map(({ id }) => id);
    const pack = {
      id: newId(`${label} ${names.shop(shop)}`, ids, "pack"),
      shop,
      food,
      label: label.trim(),
      content: { [unit]: amount },
      priceMinor,
      section: packs.find((each) => each.shop === shop && each.food === food)?.section ?? SECTION,
      ...(isSeen ? { seen: { on: view.day, at: names.shop(shop) } } : { estimate: true }),
    } as Pack;
    void session.edit((edited) => ({ ...edited, packs: [...edited.packs, pack] }));
    onWritten(pack);
  };
  return (
    <form className="stack tight" onSubmit={write}>
      <p className="small soft">{prices.writePackNote}</p>
      <fieldset className="bare stack tight" disabled={!mayEdit}>
        <div className="fields">
          <TextField label={prices.packLabel} value={label} onChange={setLabel} />
          <ChooseFood text={label} value={food} onChange={setFood} />
          <NumberField label={prices.packHolds} value={undefined} onChange={setAmount} />
          <ChoiceField
            label={prices.packUnit}
            value={unit}
            choices={UNITS.map((each) => [each, prices.packUnits[each]] as const)}
            onChange={setUnit}
          />
          <MoneyField label={prices.priceOfOne} value={undefined} currency={currency} onChange={setPrice} />
          <ChoiceField
            label={prices.shop}
            value={shop}
            choices={shops.map(({ id, name }) => [id, name] as const)}
            onChange={setShop}
          />
        </div>
        <TickField label={prices.seenToday} isTicked={isSeen} onChange={setSeen} />
      </fieldset>
      <WriteFood />
      {!mayEdit && <RoleNote />}
      {lacks.length > 0 && <p className="small soft">{prices.packLacks(lacks)}</p>}
      <div>
        <button type="submit" className="button main" disabled={lacks.length > 0 || !mayEdit}>
          {prices.writeThisPack}
        </button>
      </div>
    </form>
  );
}
