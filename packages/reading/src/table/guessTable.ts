import { NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "halfloaf/food";
import { type ComponentUnit, convertComponent, toComponentUnit } from "./convertComponent.ts";
import type { CsvForm } from "./csvForm.ts";
import { guessCsv, namedness, usableColumns } from "./guessCsv.ts";
import { foldText } from "./nearness.ts";
import type { FigureColumn, TableMapping } from "./tableMapping.ts";
import {
  CELL_MARKS,
  CELL_WORDS,
  COMPONENT_WORDS,
  SALT_WORDS,
  TABLE_COLUMN_WORDS,
  type TableColumn,
} from "./tableWords.ts";

/** How a composition table seems to be written, for a person to look at before it is read so. */
export interface TableGuess {
  readonly csv: CsvForm;
  /** The names of its columns, in their order; none where no header was found. */
  readonly header: readonly string[];
  readonly columns: Partial<Record<TableColumn, string>>;
  /** The column of each component that one was found for, with the unit that its header tells, else the component's own. */
  readonly figures: readonly FigureColumn[];
  /** The cells of the first rows behind the header, as they stand. */
  readonly sample: readonly (readonly string[])[];
}

const SAMPLE = 3;
/** A gram of salt holds so many grams of sodium. **Source**: Regulation (EU) 1169/2011, Annex I: salt = sodium x 2.5. */
export const SODIUM_PER_SALT = 0.4;

/**
 * Guesses how a composition table in CSV is written: its form, the columns of number and name, and the column of each
 * component by its name and unit. An energy whose unit is not told stays open, since kilojoules are no kilocalories. What is stated
 * goes before what would be guessed.
 */
export function guessTable(text: string, stated: Partial<CsvForm> = {}): TableGuess {
  const { csv, header, body } = guessCsv(text, stated);
  const usable = usableColumns(header);
  const columns: Partial<Record<TableColumn, string>> = {};
  for (const column of Object.keys(TABLE_COLUMN_WORDS) as TableColumn[]) {
    const free = usable.filter((name) => !Object.values(columns).includes(name));
    const best = strongest(free, (name) => namedness(bareName(name), TABLE_COLUMN_WORDS[column]));
    if (best !== undefined) columns[column] = best;
  }
  // A table without numbers has its names to tell foods by.
  if (columns.id === undefined && columns.name !== undefined) columns.id = columns.name;
  const taken = new Set(Object.values(columns));
  const figures = guessFigures(usable.filter((name) => !taken.has(name)));
  return { csv, header, columns, figures, sample: body.slice(0, SAMPLE) };
}

/** A header taken apart once, to be held against every component. */
interface Named {
  readonly column: string;
  readonly bare: string;
  readonly units: readonly ComponentUnit[];
}

/** Each component with the column that names it best; a column holds one component. */
function guessFigures(names: readonly string[]): FigureColumn[] {
  const columns = names.map((column): Named => ({ column, bare: foldText(bareName(column)), units: unitsIn(column) }));
  const pairs = NUTRIENT_NAMES.flatMap((component) =>
    columns.flatMap((named) => {
      const weight = fitOf(named, component);
      return weight === 0 ? [] : [{ component, column: named.column, weight }];
    }),
  ).sort((a, b) => b.weight - a.weight);
  const found = new Map<Nutrient, string>();
  const used = new Set<string>();
  for (const { component, column } of pairs) {
    if (found.has(component) || used.has(column)) continue;
    found.set(component, column);
    used.add(column);
  }
  return NUTRIENT_NAMES.flatMap((component) => {
    const column = found.get(component);
    return column === undefined ? [] : [figureColumn(component, column)];
  });
}

/** The column of a component as its header tells it: its unit, and of salt the share that is sodium. */
export function figureColumn(component: Nutrient, column: string): FigureColumn {
  const unit = fittingUnit(unitsIn(column), component) ?? NUTRIENTS[component].unit;
  const isSalt = component === "sodiumMg" && namedness(bareName(column), SALT_WORDS) > 0;
  return { column, component, unit, ...(isSalt && { factor: SODIUM_PER_SALT }) };
}

/** What a name weighs that is nothing but the component's. */
const WHOLE = 1000;

/** 0 = not its column; higher where the name is nothing but the component's, or the words that tell it are longer. */
function fitOf({ bare, units }: Named, component: Nutrient): number {
  const isEnergy = component === "energyKcal" || component === "energyKj";
  if (units.length > 0 && fittingUnit(units, component) === undefined) return 0;
  if (isEnergy && units.length === 0) return 0;
  // "kJ" alone names energy.
  if (isEnergy && bare === "") return WHOLE;
  const words = COMPONENT_WORDS[component];
  if (words.includes(bare)) return WHOLE;
  return Math.max(0, ...words.filter((word) => ` ${bare} `.includes(` ${word} `)).map(({ length }) => length));
}

/** The unit that this component can be measured in; undefined where there is none such. */
function fittingUnit(units: readonly ComponentUnit[], component: Nutrient): ComponentUnit | undefined {
  return units.find((unit) => convertComponent(1, unit, NUTRIENTS[component].unit) !== undefined);
}

/** "100 g" and "100 mL" tell what figures are for and not their unit. */
const BASIS = /(?:\bper|\bje|\bpro|\/)?\s*100\s*(?:g|ml)\b/giu;
const UNIT = /(?<![\p{L}\d])(?:kcal|kJ|mg|mcg|[uµμ]g|g)(?!\p{L})/giu;

function unitsIn(column: string): ComponentUnit[] {
  return [...column.replace(BASIS, " ").matchAll(UNIT)].flatMap(([unit]) => toComponentUnit(unit) ?? []);
}

/** What of a header is left without its unit, which stands last, and what it is for: of "MG (mg)" the tag. */
function bareName(column: string): string {
  const name = column.replace(BASIS, " ");
  const last = [...name.matchAll(UNIT)].at(-1);
  return (last === undefined ? name : `${name.slice(0, last.index)} ${name.slice(last.index + last[0].length)}`).trim();
}

function strongest(names: readonly string[], weigh: (name: string) => number): string | undefined {
  const weighed = names.map((name) => ({ name, weight: weigh(name) })).filter(({ weight }) => weight > 0);
  return weighed.length === 0 ? undefined : weighed.reduce((a, b) => (b.weight > a.weight ? b : a)).name;
}

/** What a guess and what a person says make a mapping of; undefined while what is needed is not known. */
export function toTableMapping(
  { csv, columns, figures }: Pick<TableGuess, "csv" | "columns" | "figures">,
  said: Pick<TableMapping, "title" | "basis" | "below"> & { readonly asOf?: string | undefined },
): TableMapping | undefined {
  const { id, name, ...others } = columns;
  if (id === undefined || name === undefined || figures.length === 0 || said.title.trim() === "") return undefined;
  const { asOf, ...rest } = said;
  return {
    format: "halfloaf-table-mapping",
    version: 1,
    ...rest,
    ...(asOf !== undefined && asOf.trim() !== "" && { asOf: asOf.trim() }),
    csv,
    columns: { id, name, ...others },
    figures: [...figures],
    words: CELL_WORDS,
    marks: CELL_MARKS,
  };
}
