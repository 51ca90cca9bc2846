import type { CsvForm } from "@halfloaf/reading";
import type { ReactNode } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useFurther } from "../words/useFurther.ts";

interface CsvFieldsProps {
  /** As it was guessed, with what was said. */
  readonly csv: CsvForm;
  readonly said: Partial<CsvForm>;
  readonly onSaid: (said: Partial<CsvForm>) => void;
  /** Further fields of the same kind. */
  readonly children?: ReactNode;
}

/** How a file in CSV is written: its marks, and the line that names the columns. */
export function CsvFields({ csv, said, onSaid, children }: CsvFieldsProps): ReactNode {
  const { further } = useFurther("mapping");
  const { mapping: words } = further;
  return (
    <div className="fields">
      <ChoiceField
        label={words.delimiter}
        value={csv.delimiter}
        choices={choicesOf(words.delimiters)}
        onChange={(delimiter) => onSaid({ ...said, delimiter })}
      />
      <ChoiceField
        label={words.decimal}
        value={csv.decimal}
        choices={choicesOf(words.decimals)}
        onChange={(decimal) => onSaid({ ...said, decimal })}
      />
      <ChoiceField
        label={words.thousands}
        value={csv.thousands ?? ""}
        choices={choicesOf(words.thousandsOf)}
        onChange={(thousands) => {
          const { thousands: _, ...rest } = said;
          onSaid(thousands === "" ? rest : { ...rest, thousands });
        }}
      />
      {children}
      <NumberField
        key={csv.headerLine}
        label={words.headerLine}
        value={csv.headerLine}
        onChange={(line) => line !== undefined && line >= 1 && onSaid({ ...said, headerLine: Math.floor(line) })}
        isWhole
      />
    </div>
  );
}

/** The keys of texts as choices. */
export function choicesOf<Key extends string>(names: Readonly<Record<Key, string>>): (readonly [Key, string])[] {
  return Object.entries(names) as [Key, string][];
}
