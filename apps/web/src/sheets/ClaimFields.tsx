import { type Claim, MONEY_CLAIMS } from "halfloaf/sheet";
import { type ReactNode, useState } from "react";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useFurther } from "../words/useFurther.ts";

interface ClaimFieldsProps {
  readonly currency: string;
  readonly onClaims: (claims: readonly Claim[]) => void;
}

const KINDS: readonly Claim["kind"][] = ["plate", "day", "ready", "hands-on", "waste"];

/** What a sheet is to claim; an empty field claims nothing. */
export function ClaimFields({ currency, onClaims }: ClaimFieldsProps): ReactNode {
  const { further } = useFurther("sheets");
  const { sheets } = further;
  const [belows, setBelows] = useState<Partial<Record<Claim["kind"], number | undefined>>>({});
  const change = (kind: Claim["kind"], below: number | undefined): void => {
    const next = { ...belows, [kind]: below };
    setBelows(next);
    const kinds = Object.keys(next) as Claim["kind"][];
    onClaims(
      kinds.flatMap((each) => {
        const bound = next[each];
        return bound !== undefined && bound > 0 ? [{ kind: each, below: bound }] : [];
      }),
    );
  };
  return (
    <fieldset className="fields">
      <legend>{sheets.claims}</legend>
      {KINDS.map((kind) =>
        MONEY_CLAIMS.includes(kind) ? (
          <MoneyField
            key={kind}
            label={sheets.claimOf[kind]}
            value={belows[kind]}
            currency={currency}
            onChange={(below) => change(kind, below)}
          />
        ) : (
          <NumberField
            key={kind}
            label={sheets.claimOf[kind]}
            value={belows[kind]}
            onChange={(below) => change(kind, below)}
            isWhole
          />
        ),
      )}
    </fieldset>
  );
}
