import { readBarcode } from "@halfloaf/reading";
import type { Pack } from "halfloaf/price";
import { type FormEvent, type ReactNode, useState } from "react";
import { Looking } from "../camera/Looking.tsx";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";

interface ScanProps {
  readonly shop: string;
  /** Told the pack whose number was read. */
  readonly onPack: (pack: Pack) => void;
}

/** What the last number came to. */
type Told =
  | { readonly kind: "nothing" | "invalid" }
  | { readonly kind: "found"; readonly label: string }
  | { readonly kind: "unknown"; readonly digits: string };

/** Reads the number under the bars of a pack, through the camera or typed, and finds the pack that has it. */
export default function Scan({ shop, onPack }: ScanProps): ReactNode {
  const { further } = useFurther("buying");
  const { view } = useKitchen();
  const [isLooking, setLooking] = useState(false);
  const [typed, setTyped] = useState("");
  const [told, setTold] = useState<Told>({ kind: "nothing" });
  const hear = (text: string): void => {
    const read = readBarcode(text, view.kitchen.packs);
    const pack = read.kind === "invalid" ? undefined : read.packs.find((each) => each.shop === shop);
    if (read.kind === "invalid") setTold({ kind: "invalid" });
    else setTold(pack ? { kind: "found", label: pack.label } : { kind: "unknown", digits: text.trim() });
    if (read.kind !== "invalid") setLooking(false);
    if (pack !== undefined) onPack(pack);
  };
  const type = (event: FormEvent): void => {
    event.preventDefault();
    hear(typed);
  };
  const { scan } = further;
  const look = (isWanted: boolean): void => {
    setTold({ kind: "nothing" });
    setLooking(isWanted);
  };
  return (
    <section className="sheet stack tight" aria-labelledby="scan">
      <h2 id="scan">{scan.title}</h2>
      <Looking looksFor="goods" words={scan} isLooking={isLooking} onLooking={look} onText={hear}>
        {told.kind === "invalid" && <p className="caution">{scan.invalid}</p>}
        {told.kind === "found" && <p>{scan.found(told.label)}</p>}
        {told.kind === "unknown" && <p>{scan.unknown(told.digits)}</p>}
      </Looking>
      {told.kind === "unknown" && (
        <Allowed to="edited" otherwise={<RoleNote />}>
          <Remember
            digits={told.digits}
            shop={shop}
            onPack={(pack) => {
              setTold({ kind: "found", label: pack.label });
              onPack(pack);
            }}
          />
        </Allowed>
      )}
      <form className="row end" onSubmit={type}>
        <TextField label={scan.typed} value={typed} onChange={setTyped} />
        <button type="submit" className="button" disabled={typed.trim() === ""}>
          {scan.find}
        </button>
      </form>
    </section>
  );
}

interface RememberProps extends ScanProps {
  readonly digits: string;
}

/** Says which pack a number that is not known yet belongs to. */
function Remember({ digits, shop, onPack }: RememberProps): ReactNode {
  const { further } = useFurther("buying");
  const { session, view } = useKitchen();
  const [chosen, setChosen] = useState("");
  const packs = view.kitchen.packs.filter((pack) => pack.shop === shop && pack.gtin === undefined);
  const pack = packs.find(({ id }) => id === chosen);
  const remember = (): void => {
    if (pack === undefined) return;
    void session.edit((edited) => ({
      ...edited,
      packs: edited.packs.map((each) => (each.id === pack.id ? { ...each, gtin: digits } : each)),
    }));
    onPack(pack);
  };
  return (
    <div className="stack tight">
      <ChoiceField
        label={further.scan.whose}
        value={chosen}
        choices={[
          ["", further.scan.choose],
          ...packs.map(({ id, label }) => [id, label] as const).sort((a, b) => (a[1] < b[1] ? -1 : 1)),
        ]}
        onChange={setChosen}
      />
      <div>
        <button type="button" className="button" disabled={pack === undefined} onClick={remember}>
          {further.scan.remember}
        </button>
      </div>
    </div>
  );
}
