import type { FigureColumn, TableColumn } from "@halfloaf/reading";
import { NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "halfloaf/food";
import type { ReactNode } from "react";
import { ChoiceField } from "../../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../../kitchen/fields/NumberField.tsx";
import { TextField } from "../../kitchen/fields/TextField.tsx";
import { TickField } from "../../kitchen/fields/TickField.tsx";
import { Unfolding } from "../../kitchen/Unfolding.tsx";
import { ColumnField } from "../../mapping/ColumnField.tsx";
import { CsvFields, choicesOf } from "../../mapping/CsvFields.tsx";
import { MappingForm } from "../../mapping/MappingForm.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { upper, useFigures } from "../useFigures.ts";
import type { FigureSaid, TableForm as Form, TableSaid } from "./TableSaid.ts";

interface TableFormProps {
  readonly form: Form;
  readonly said: TableSaid;
  readonly onSaid: (said: TableSaid) => void;
}

/** How a composition table is written, as it was guessed, to be put right. */
export function TableForm({ form, said, onSaid }: TableFormProps): ReactNode {
  const { further } = useFurther("foods");
  const { foodRead: words } = further;
  const { csv, columns, figures } = form;
  const isWhole = columns.id !== undefined && columns.name !== undefined && figures.length > 0;
  const found = figures.map(({ component }) => component);
  const others = NUTRIENT_NAMES.filter((name) => !found.includes(name));
  const field = (component: Nutrient): ReactNode => (
    <FigureField key={component} component={component} form={form} said={said} onSaid={onSaid} />
  );
  return (
    <>
      <div className="fields">
        <TextField label={words.tableTitle} value={said.title} onChange={(title) => onSaid({ ...said, title })} />
        <TextField label={words.asOf} value={said.asOf} onChange={(asOf) => onSaid({ ...said, asOf })} />
      </div>
      <MappingForm isWhole={isWhole}>
        <CsvFields csv={csv} said={said.csv} onSaid={(changed) => onSaid({ ...said, csv: changed })} />
        <Basis form={form} said={said} onSaid={onSaid} />
        <div className="fields">
          {(Object.keys(words.columns) as TableColumn[]).map((column) => (
            <ColumnField
              key={column}
              label={words.columns[column]}
              column={columns[column] ?? ""}
              guess={form}
              onColumn={(chosen) => onSaid({ ...said, columns: { ...said.columns, [column]: chosen } })}
            />
          ))}
        </div>
        <div className="fields">{found.map(field)}</div>
        <Unfolding className="fold" summary={<h3>{words.further}</h3>}>
          <div className="fields fold-body">{others.map(field)}</div>
        </Unfolding>
        <p className="small soft">{words.traces}</p>
      </MappingForm>
    </>
  );
}

/** What figures are for, and what a bound counts as. */
function Basis({ form, said, onSaid }: TableFormProps): ReactNode {
  const { further } = useFurther("foods");
  const { foodRead: words } = further;
  return (
    <div className="fields">
      <ChoiceField
        label={words.basis}
        value={said.per}
        choices={choicesOf(words.bases)}
        onChange={(per) => onSaid({ ...said, per })}
      />
      {said.per === "100mL" && form.columns.densityGPerMl === undefined && (
        <NumberField
          label={words.density}
          value={said.densityGPerMl}
          onChange={(densityGPerMl) => onSaid({ ...said, densityGPerMl })}
        />
      )}
      {said.per === "portion" && form.columns.portionG === undefined && (
        <NumberField
          label={words.portion}
          value={said.portionG}
          onChange={(portionG) => onSaid({ ...said, portionG })}
        />
      )}
      <ChoiceField
        label={words.below}
        value={said.below}
        choices={choicesOf(words.belows)}
        onChange={(below) => onSaid({ ...said, below })}
      />
    </div>
  );
}

const MASS_UNITS: readonly FigureColumn["unit"][] = ["g", "mg", "ug"];

/** The column of one component, with its unit; of sodium whether it is salt. */
function FigureField({ component, form, said, onSaid }: TableFormProps & { readonly component: Nutrient }): ReactNode {
  const { further } = useFurther("foods");
  const { name, title } = useFigures();
  const figure = form.figures.find((each) => each.component === component);
  const { unit } = NUTRIENTS[component];
  const isEnergy = unit === "kJ" || unit === "kcal";
  const { foodRead: words } = further;
  const set = (changed: FigureSaid): void =>
    onSaid({ ...said, figures: { ...said.figures, [component]: { ...said.figures[component], ...changed } } });
  return (
    <div className="stack tight">
      <ColumnField
        label={isEnergy ? title(component) : upper(name(component))}
        column={figure?.column ?? ""}
        guess={form}
        onColumn={(column) => onSaid({ ...said, figures: { ...said.figures, [component]: { column } } })}
      />
      {figure !== undefined && !isEnergy && (
        <ChoiceField
          label={words.unit(name(component))}
          value={figure.unit}
          choices={MASS_UNITS.map((each) => [each, each === "ug" ? "µg" : each] as const)}
          onChange={(chosen) => set({ unit: chosen })}
        />
      )}
      {figure !== undefined && component === "sodiumMg" && (
        <TickField label={words.salt} isTicked={figure.factor !== undefined} onChange={(isSalt) => set({ isSalt })} />
      )}
    </div>
  );
}
