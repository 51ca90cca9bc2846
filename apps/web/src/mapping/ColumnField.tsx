import type { ReactNode } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useFurther } from "../words/useFurther.ts";

interface ColumnFieldProps {
  /** What the column holds. */
  readonly label: string;
  /** The column's name; "" where the file has none such. */
  readonly column: string;
  readonly guess: { readonly header: readonly string[]; readonly sample: readonly (readonly string[])[] };
  readonly onColumn: (column: string) => void;
}

/** Which column of a file holds something, with what stands first in it. */
export function ColumnField({ label, column, guess, onColumn }: ColumnFieldProps): ReactNode {
  const { further } = useFurther("mapping");
  const { mapping: words } = further;
  const { header, sample } = guess;
  const cell = sample[0]?.[header.indexOf(column)]?.trim() ?? "";
  const names = [...new Set(header)].filter((name) => name !== "");
  return (
    <div>
      <ChoiceField
        label={label}
        value={column}
        choices={[["", words.notIn], ...names.map((name) => [name, name] as const)]}
        onChange={onColumn}
      />
      {cell !== "" && <div className="small soft">{words.first(cell)}</div>}
    </div>
  );
}
