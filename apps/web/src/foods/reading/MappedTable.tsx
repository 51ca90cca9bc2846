import { guessTable } from "@halfloaf/reading";
import { type ReactNode, useMemo, useState } from "react";
import { useFurther } from "../../words/useFurther.ts";
import type { TableSource } from "./TableDesk.ts";
import { TableForm } from "./TableForm.tsx";
import { TableReading } from "./TableReading.tsx";
import { type TableSaid, toTableForm } from "./TableSaid.ts";

interface MappedTableProps {
  readonly text: string;
  /** What the file was called; "" where it was pasted. */
  readonly name: string;
}

/** Any composition table in CSV: how it is written is guessed and shown, then it is read so. */
export function MappedTable({ text, name }: MappedTableProps): ReactNode {
  const { further } = useFurther("foods", "mapping");
  const [said, setSaid] = useState<TableSaid>({
    csv: {},
    columns: {},
    figures: {},
    title: name,
    asOf: "",
    per: "100g",
    below: "half",
  });
  const guess = useMemo(() => guessTable(text, said.csv), [text, said.csv]);
  const form = toTableForm(guess, said);
  const key = form.mapping && JSON.stringify(form.mapping);
  const source = useMemo(
    (): TableSource | undefined =>
      key === undefined ? undefined : { kind: "mapped", name: "table", text, mapping: JSON.parse(key) },
    [key, text],
  );
  return (
    <>
      <TableForm form={form} said={said} onSaid={setSaid} />
      {source === undefined ? (
        <p className="caution" role="status">
          {form.header.length === 0 ? further.mapping.noHeader : further.foodRead.formOpen}
        </p>
      ) : (
        <TableReading source={source} columns={form.header} />
      )}
    </>
  );
}
