import type { DateOrder, PriceColumn, PriceListGuess, PriceListMapping } from "@halfloaf/reading";
import type { CivilDate } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { DayField } from "../../kitchen/fields/DayField.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { ColumnField } from "../../mapping/ColumnField.tsx";
import { CsvFields, choicesOf } from "../../mapping/CsvFields.tsx";
import { MappingForm } from "../../mapping/MappingForm.tsx";
import { useFurther } from "../../words/useFurther.ts";

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
  const { csv, columns, dateOrder } = guess;
  const isWhole = columns.label !== undefined && columns.price !== undefined;
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
      <MappingForm isWhole={isWhole}>
        <CsvFields csv={csv} said={said.csv} onSaid={(changed) => onSaid({ ...said, csv: changed })}>
          <ChoiceField
            label={words.dateOrder}
            value={dateOrder ?? ""}
            choices={choicesOf(words.dateOrders)}
            onChange={(order) => onSaid({ ...said, dateOrder: order })}
          />
        </CsvFields>
        <div className="fields">
          {(Object.keys(words.columns) as PriceColumn[]).map((column) => (
            <ColumnField
              key={column}
              label={words.columns[column]}
              column={columns[column] ?? ""}
              guess={guess}
              onColumn={(chosen) => onSaid({ ...said, columns: { ...said.columns, [column]: chosen } })}
            />
          ))}
        </div>
      </MappingForm>
    </>
  );
}
