import { NUTRIENTS, type Nutrient } from "halfloaf/food";
import { convertComponent } from "./convertComponent.ts";
import type { FileSource, ReadingWatch } from "./FileSource.ts";
import { quote } from "./IssueLog.ts";
import type { TableReading } from "./OfficialTable.ts";
import { composeDerived } from "./RawFigures.ts";
import { readNumber } from "./readNumber.ts";
import { TableBuilder } from "./TableBuilder.ts";
import type { FigureColumn, TableMapping } from "./tableMapping.ts";
import { type Row, visitRows } from "./visitRows.ts";

/** What a cell holds: a figure, with what was taken for it where it was no plain number, or nothing that is known. */
type Cell = { readonly figure: number; readonly told?: string } | "unknown" | "faulty";

/**
 * Reads any composition table in CSV as its mapping says. Figures become per 100 g in the units of the food table; a food
 * whose density or portion is needed and not known keeps its name and no figure, and is told.
 */
export async function readMappedTable(
  source: FileSource,
  mapping: TableMapping,
  watch: ReadingWatch = {},
): Promise<TableReading> {
  const reader = new MappedReader(source.name, mapping);
  const { tell } = reader.builder.log;
  const needed = [...Object.values(mapping.columns), ...mapping.figures.map(({ column }) => column)];
  const visit = (row: Row) => reader.addRow(row);
  const outcome = await visitRows(source, mapping.csv, [...new Set(needed)], tell, visit, watch);
  if (outcome === "read") return reader.builder.finish();
  return reader.builder.end(outcome === "stopped" ? "stopped" : "failed");
}

class MappedReader {
  readonly builder = new TableBuilder();
  private readonly file: string;
  private readonly mapping: TableMapping;
  private readonly words: ReadonlyMap<string, "unknown" | "zero">;

  constructor(file: string, mapping: TableMapping) {
    this.file = file;
    this.mapping = mapping;
    this.words = new Map(mapping.words.map(({ word, means }) => [word.toLowerCase(), means]));
  }

  addRow(row: Row): undefined {
    const { columns, title, asOf } = this.mapping;
    const [id, name] = [this.cellOf(row, columns.id), this.cellOf(row, columns.name)];
    if (id === "") return this.fault("id", row, columns.id, "an id", id);
    if (name === "") return this.fault("name", row, columns.name, "a name", name);
    if (this.builder.foods.has(id)) return this.fault("unique", row, columns.id, "an id not used before", id);
    const date = this.cellOf(row, columns.date) || asOf;
    const source = `${title}, ${id}, ${date === undefined ? "without a date" : `as of ${date}`}`;
    const former = this.cellOf(row, columns.formerNumber);
    const names = { id, ...(former === "" ? {} : { formerNumber: former }), name, source };
    this.builder.addFood(title, { ...names, ...this.readFigures(row, source), portions: [] });
  }

  private readFigures(row: Row, source: string): ReturnType<typeof composeDerived> {
    const given: Partial<Record<Nutrient, number>> = {};
    const told: Record<string, string> = {};
    const shareOf100G = this.shareOf100G(row);
    for (const each of shareOf100G === undefined ? [] : this.mapping.figures) {
      const { component, column } = each;
      const cell = this.readCell(this.cellOf(row, column));
      if (cell === "unknown") continue;
      if (cell === "faulty") this.fault("figure", row, column, "a number not below 0 or a word of the mapping");
      else {
        const figure = this.toFigure(cell.figure, each) * (shareOf100G as number);
        if (!this.builder.isInRange(figure, NUTRIENTS[component].unit, [this.file, row.line, column])) continue;
        given[component] = figure;
        if (cell.told !== undefined) told[component] = `${source}: ${cell.told}`;
      }
    }
    this.builder.countFigures(given);
    return composeDerived(given, source, told);
  }

  private toFigure(figure: number, { component, unit, factor }: FigureColumn): number {
    return (convertComponent(figure, unit, NUTRIENTS[component].unit) as number) * (factor ?? 1);
  }

  /** What the figures of a row are multiplied with so that they are per 100 g; undefined, and told, where it is unknown. */
  private shareOf100G(row: Row): number | undefined {
    const { basis, columns } = this.mapping;
    if (basis.per === "100g") return 1;
    const [column, stated] =
      basis.per === "100mL" ? [columns.densityGPerMl, basis.densityGPerMl] : [columns.portionG, basis.portionG];
    const cell = this.cellOf(row, column);
    const measure = cell === "" ? stated : readNumber(cell, this.mapping.csv);
    if (!measure) {
      const expected = basis.per === "100mL" ? "a density in g/mL" : "the mass of the portion in g";
      this.fault("basis", row, column ?? columns.name, expected, cell);
      return undefined;
    }
    return basis.per === "100mL" ? 1 / measure : 100 / measure;
  }

  private readCell(cell: string): Cell {
    const { csv, marks, below } = this.mapping;
    if (cell === "") return "unknown";
    const means = this.words.get(cell.toLowerCase());
    if (means !== undefined) return means === "zero" ? { figure: 0, told: `${quote(cell)} taken as 0` } : means;
    const bare = [...cell]
      .filter((character) => !marks.includes(character))
      .join("")
      .trim();
    const isBelow = bare.startsWith("<");
    const number = readNumber(isBelow ? bare.slice(1) : bare, csv);
    if (number === undefined) return "faulty";
    if (!isBelow) return { figure: number };
    if (below === "unknown") return below;
    const figure = below === "half" ? number / 2 : 0;
    return { figure, told: `${quote(cell)} taken as ${figure}` };
  }

  private cellOf(row: Row, column: string | undefined): string {
    return column === undefined ? "" : (row.cell(column) ?? "").trim();
  }

  private fault(code: string, row: Row, column: string, expected: string, cell = this.cellOf(row, column)): undefined {
    this.builder.fault(code, [this.file, row.line, column], expected, quote(cell));
  }
}
