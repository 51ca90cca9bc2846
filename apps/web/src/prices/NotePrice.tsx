import type { Pack } from "halfloaf/price";
import { type FormEvent, type ReactNode, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

/** A price as it was seen today. */
export function NotePrice({ packs }: { readonly packs: readonly Pack[] }): ReactNode {
  const { further } = useFurther("prices");
  const { session, view } = useKitchen();
  const names = useNames();
  const [packId, setPackId] = useState(packs[0]?.id ?? "");
  const pack = packs.find(({ id }) => id === packId);
  const [minor, setMinor] = useState<number>();
  const [massG, setMassG] = useState<number>();
  const [at, setAt] = useState<string>();
  const [turn, setTurn] = useState(0);
  if (pack === undefined) return null;
  const where = at ?? names.shop(pack.shop);
  const isSound = minor !== undefined && Number.isSafeInteger(minor) && where.trim() !== "";
  const isMass = massG === undefined || massG > 0;
  const note = (event: FormEvent): void => {
    event.preventDefault();
    if (!isSound || !isMass) return;
    void session.write((pen) => [
      pen.write({
        kind: "price-seen",
        on: view.day,
        pack: pack.id,
        priceMinor: minor,
        at: where.trim(),
        ...(massG !== undefined && { massG }),
      }),
    ]);
    setMinor(undefined);
    setMassG(undefined);
    setTurn(turn + 1);
  };
  const { prices } = further;
  return (
    <form className="sheet stack tight" onSubmit={note}>
      <h2>{prices.note}</h2>
      <div className="fields" key={turn}>
        <ChoiceField
          label={prices.whichPack}
          value={packId}
          choices={packs.map(({ id, label, shop }) => [id, `${label}, ${names.shop(shop)}`] as const)}
          onChange={setPackId}
        />
        <MoneyField label={prices.priceOfOne} value={undefined} currency={view.kitchen.currency} onChange={setMinor} />
        <TextField label={prices.where} value={where} onChange={setAt} />
        <NumberField label={prices.holds} value={undefined} onChange={setMassG} />
      </div>
      <div>
        <button type="submit" className="button main" disabled={!isSound || !isMass}>
          {prices.noteIt}
        </button>
      </div>
    </form>
  );
}
