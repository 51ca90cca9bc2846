import {
  type CsvForm,
  type FigureColumn,
  figureColumn,
  SODIUM_PER_SALT,
  type TableColumn,
  type TableGuess,
  type TableMapping,
  toTableMapping,
} from "@halfloaf/reading";
import { NUTRIENT_NAMES, type Nutrient } from "halfloaf/food";

/** What a person says of how a table is written, before what is guessed; "" for a column = it is not in it. */
export interface TableSaid {
  readonly csv: Partial<CsvForm>;
  readonly columns: Partial<Record<TableColumn, string>>;
  readonly figures: Partial<Record<Nutrient, FigureSaid>>;
  readonly title: string;
  readonly asOf: string;
  readonly per: TableMapping["basis"]["per"];
  readonly densityGPerMl?: number | undefined;
  readonly portionG?: number | undefined;
  readonly below: TableMapping["below"];
}

/** What is said of the column of a component; what is absent stays as it was guessed. */
export interface FigureSaid {
  readonly column?: string;
  readonly unit?: FigureColumn["unit"];
  /** That the column holds salt, or that it does not. */
  readonly isSalt?: boolean;
}

/** How a table is written, as guessed and said. */
export interface TableForm extends Pick<TableGuess, "csv" | "header" | "sample" | "columns" | "figures"> {
  readonly mapping: TableMapping | undefined;
}

/** Puts what is said over what was guessed. */
export function toTableForm(guess: TableGuess, said: TableSaid): TableForm {
  const { csv, header, sample } = guess;
  const isThere = (column: string | undefined): column is string =>
    column !== undefined && column !== "" && header.includes(column);
  const columns = Object.fromEntries(
    Object.entries({ ...guess.columns, ...said.columns }).filter(([, column]) => isThere(column)),
  );
  const figures = NUTRIENT_NAMES.flatMap((component): FigureColumn[] => {
    const guessed = guess.figures.find((each) => each.component === component);
    const { column, unit, isSalt } = said.figures[component] ?? {};
    const name = column ?? guessed?.column;
    if (!isThere(name)) return [];
    const { factor, ...told } = figureColumn(component, name);
    const isOfSalt = component === "sodiumMg" && (isSalt ?? factor !== undefined);
    return [{ ...told, ...(unit && { unit }), ...(isOfSalt && { factor: SODIUM_PER_SALT }) }];
  });
  const basis: TableMapping["basis"] =
    said.per === "100mL"
      ? { per: said.per, ...(isPositive(said.densityGPerMl) && { densityGPerMl: said.densityGPerMl }) }
      : said.per === "portion"
        ? { per: said.per, ...(isPositive(said.portionG) && { portionG: said.portionG }) }
        : { per: said.per };
  const { title, asOf, below } = said;
  const mapping = toTableMapping({ csv, columns, figures }, { title: title.trim(), asOf, basis, below });
  return { csv, header, sample, columns, figures, mapping };
}

function isPositive(figure: number | undefined): figure is number {
  return figure !== undefined && Number.isFinite(figure) && figure > 0;
}
