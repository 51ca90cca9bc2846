import type { DateOrder, PriceColumn, PriceListGuess, PriceListMapping } from "@halfloaf/reading";
import type { CivilDate } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { DayField } from "./DayField.tsx";

type Csv = PriceListMapping["csv"];

/** What a person says of how a list is written, before what is guessed; "" for a column = it is not in it. */
export interface ListSaid {
  readonly csv: Partial<Csv>;
  readonly columns: Partial<Record<PriceColumn, string>>;
  readonly dateOrder?: DateOrder | "";
  readonly shop?: string;
  readonly on?: CivilDate;
}

interface ListFormProps {
  readonly guess: Omit<PriceListGuess, "dateOrder"> & { readonly dateOrder?: DateOrder | undefined };
  readonly said: ListSaid;
  readonly shop: string;
  readonly day: CivilDate;
  readonly onSaid: (said: ListSaid) => void;
}

/** How a list is written, as it was guessed, to be put right: marks, header, columns, and what rows leave unsaid. */
export function ListForm({ guess, said, shop, day, onSaid }: ListFormProps): ReactNode {
  const { further } = useFurther("readPrices");
  const { view } = useKitchen();
  const { list: words } = further;
  const { csv, header, columns, dateOrder } = guess;
  const isWhole = columns.label !== undefined && columns.price !== undefined;
  const setCsv = (changed: Partial<Csv>): void => onSaid({ ...said, csv: { ...said.csv, ...changed } });
  return (
    <>
      <div className="fields">
        <ChoiceField
          label={words.shop}
          value={shop}
          choices={[["", further.priced.chooseShop], ...view.kitchen.shops.map(({ id, name }) => [id, name] as const)]}
          onChange={(id) => {
            const { shop: _, ...rest } = said;
            onSaid(id === "" ? rest : { ...rest, shop: id });
          }}
        />
        <DayField label={words.day} value={day} onChange={(on) => onSaid({ ...said, on })} />
      </div>
      <details className="fold sheet" open={!isWhole}>
        <summary>
          <h2>{words.form}</h2>
          <span className="small soft">{words.formGuessed}</span>
        </summary>
        <div className="stack fold-body">
          <div className="fields">
            <ChoiceField
              label={words.delimiter}
              value={csv.delimiter}
              choices={choicesOf(words.delimiters)}
              onChange={(delimiter) => setCsv({ delimiter })}
            />
            <ChoiceField
              label={words.decimal}
              value={csv.decimal}
              choices={choicesOf(words.decimals)}
              onChange={(decimal) => setCsv({ decimal })}
            />
            <ChoiceField
              label={words.thousands}
              value={csv.thousands ?? ""}
              choices={choicesOf(words.thousandsOf)}
              onChange={(thousands) => {
                const { thousands: _, ...rest } = said.csv;
                onSaid({ ...said, csv: thousands === "" ? rest : { ...rest, thousands } });
              }}
            />
            <ChoiceField
              label={words.dateOrder}
              value={dateOrder ?? ""}
              choices={choicesOf(words.dateOrders)}
              onChange={(order) => onSaid({ ...said, dateOrder: order })}
            />
            <NumberField
              key={csv.headerLine}
              label={words.headerLine}
              value={csv.headerLine}
              onChange={(line) => line !== undefined && line >= 1 && setCsv({ headerLine: Math.floor(line) })}
              isWhole
            />
          </div>
          <div className="fields">
            {(Object.keys(words.columns) as PriceColumn[]).map((column) => {
              const name = columns[column] ?? "";
              const cell = guess.sample[0]?.[header.indexOf(name)]?.trim() ?? "";
              return (
                <div key={column}>
                  <ChoiceField
                    label={words.columns[column]}
                    value={name}
                    choices={[["", words.notIn], ...namesOf(header).map((each) => [each, each] as const)]}
                    onChange={(chosen) => onSaid({ ...said, columns: { ...said.columns, [column]: chosen } })}
                  />
                  {cell !== "" && <div className="small soft">{words.first(cell)}</div>}
                </div>
              );
            })}
          </div>
        </div>
      </details>
    </>
  );
}

/** The columns that have a name of their own. */
function namesOf(header: readonly string[]): string[] {
  return [...new Set(header)].filter((name) => name !== "");
}

function choicesOf<Key extends string>(names: Readonly<Record<Key, string>>): (readonly [Key, string])[] {
  return Object.entries(names) as [Key, string][];
}
