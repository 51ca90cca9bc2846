import { PLAIN_CSV } from "./csvForm.ts";
import { describeFood, describeMeasure, TITLES, toPublicationDate } from "./describeFood.ts";
import type { FileSource, ReadingWatch } from "./FileSource.ts";
import { quote } from "./IssueLog.ts";
import type { OfficialPortion, TableReading } from "./OfficialTable.ts";
import { RawFigures } from "./RawFigures.ts";
import { readNumber } from "./readNumber.ts";
import { TableBuilder } from "./TableBuilder.ts";
import { type Row, visitRows } from "./visitRows.ts";

/** The files of a CSV download of USDA FoodData Central that are read; the optional ones hold measures and old numbers. */
export interface FoodDataFiles {
  readonly food: FileSource;
  readonly nutrient: FileSource;
  readonly foodNutrient: FileSource;
  readonly foodPortion?: FileSource;
  readonly measureUnit?: FileSource;
  /** `sr_legacy_food.csv` or `foundation_food.csv`. */
  readonly formerNumber?: FileSource;
}

/** A food while its figures come in. */
interface Gathered {
  readonly title: string;
  readonly name: string;
  readonly publishedOn: string | undefined;
  readonly raw: RawFigures;
  readonly portions: OfficialPortion[];
  formerNumber?: string;
}

/** A nutrient of the download: its number in the standard, and the unit its amounts are in. */
interface NutrientRow {
  readonly number: string;
  readonly unitName: string;
}

/**
 * Reads the foods of SR Legacy and Foundation from a CSV download of USDA FoodData Central, row by row: memory grows with
 * the foods kept, not with the files. Rows of other kinds of food (samples, laboratory records, branded goods) are passed
 * over and counted. Amounts are per 100 g edible portion as published; a blank amount is unknown.
 * **Source**: USDA FoodData Central, field descriptions of the download (column names from memory).
 */
export async function readFoodDataCsv(files: FoodDataFiles, watch: ReadingWatch = {}): Promise<TableReading> {
  const reader = new FoodDataReader(watch);
  return reader.read(files);
}

class FoodDataReader {
  private readonly builder = new TableBuilder();
  private readonly watch: ReadingWatch;
  private readonly foods = new Map<string, Gathered>();
  private readonly nutrients = new Map<string, NutrientRow>();
  private readonly measures = new Map<string, string>();

  constructor(watch: ReadingWatch) {
    this.watch = watch;
  }

  async read(files: FoodDataFiles): Promise<TableReading> {
    const steps: [FileSource | undefined, string[], (row: Row, file: string) => void][] = [
      [files.food, ["fdc_id", "data_type", "description"], this.addFood],
      [files.formerNumber, ["fdc_id", "NDB_number"], this.addFormerNumber],
      [files.nutrient, ["id", "unit_name", "nutrient_nbr"], this.addNutrient],
      [files.foodNutrient, ["fdc_id", "nutrient_id", "amount"], this.addFigure],
      [files.measureUnit, ["id", "name"], this.addMeasure],
      [files.foodPortion, ["fdc_id", "amount", "gram_weight"], this.addPortion],
    ];
    for (const [file, needed, add] of steps) {
      if (file === undefined) continue;
      const visit = (row: Row) => add.call(this, row, file.name);
      const outcome = await visitRows(file, PLAIN_CSV, needed, this.builder.log.tell, visit, this.watch);
      if (outcome !== "read") return this.builder.end(outcome === "stopped" ? "stopped" : "failed");
    }
    for (const [id, { title, name, publishedOn, raw, portions, formerNumber }] of this.foods) {
      const source = describeFood(title, id, publishedOn);
      const former = formerNumber === undefined ? {} : { formerNumber };
      this.builder.addFood(title, { id, ...former, name, source, ...raw.compose(source), portions });
    }
    return this.builder.finish();
  }

  private addFood(row: Row, file: string): undefined {
    const title = TITLES.get(cellOf(row, "data_type").toLowerCase());
    if (title === undefined) {
      this.builder.otherRows++;
      return;
    }
    const [id, name, date] = [cellOf(row, "fdc_id"), cellOf(row, "description"), cellOf(row, "publication_date")];
    const publishedOn = toPublicationDate(date);
    if (!/^\d{1,12}$/.test(id)) return this.fault("id", file, row, "fdc_id", "a number of digits");
    if (name === "") return this.fault("name", file, row, "description", "a name");
    if (this.foods.has(id)) return this.fault("unique", file, row, "fdc_id", "a number not used before");
    if (date !== "" && publishedOn === undefined) {
      this.fault("date", file, row, "publication_date", "a day, YYYY-MM-DD");
    }
    this.foods.set(id, { title, name, publishedOn, raw: new RawFigures(), portions: [] });
  }

  private addFormerNumber(row: Row): undefined {
    const food = this.foods.get(cellOf(row, "fdc_id"));
    const number = cellOf(row, "NDB_number");
    if (food === undefined) this.builder.otherRows++;
    else if (number !== "") food.formerNumber = number;
  }

  private addNutrient(row: Row): undefined {
    // Nutrient numbers are written as whole numbers in some downloads and with a decimal in others.
    const number = cellOf(row, "nutrient_nbr").replace(/\.0$/, "");
    this.nutrients.set(cellOf(row, "id"), { number, unitName: cellOf(row, "unit_name") });
  }

  private addFigure(row: Row, file: string): undefined {
    const food = this.foods.get(cellOf(row, "fdc_id"));
    if (food === undefined) {
      this.builder.otherRows++;
      return;
    }
    const nutrient = this.nutrients.get(cellOf(row, "nutrient_id"));
    if (nutrient === undefined) return this.fault("nutrient", file, row, "nutrient_id", "a nutrient of the list");
    const cell = cellOf(row, "amount");
    if (cell === "") return;
    const amount = readNumber(cell, PLAIN_CSV);
    if (amount === undefined) return this.fault("figure", file, row, "amount", "a number not below 0");
    this.builder.addFigure(food.raw, nutrient.number, nutrient.unitName, amount, [file, row.line, "amount"]);
  }

  private addMeasure(row: Row): undefined {
    this.measures.set(cellOf(row, "id"), cellOf(row, "name"));
  }

  private addPortion(row: Row, file: string): undefined {
    const food = this.foods.get(cellOf(row, "fdc_id"));
    if (food === undefined) {
      this.builder.otherRows++;
      return;
    }
    // Some portions are published without an amount, which leaves nothing to measure by.
    if (cellOf(row, "amount") === "") return;
    const amount = readNumber(cellOf(row, "amount"), PLAIN_CSV);
    const massG = readNumber(cellOf(row, "gram_weight"), PLAIN_CSV);
    if (!amount) return this.fault("amount", file, row, "amount", "a number above 0");
    if (!massG) return this.fault("mass", file, row, "gram_weight", "a mass above 0 g");
    const unit = this.measures.get(cellOf(row, "measure_unit_id"));
    food.portions.push({ amount, measure: describeMeasure(unit, cellOf(row, "modifier")), massG });
  }

  private fault(code: string, file: string, row: Row, column: string, expected: string): undefined {
    this.builder.fault(code, [file, row.line, column], expected, quote(cellOf(row, column)));
  }
}

/** The trimmed cell of a column; empty where the file has no such column. */
function cellOf(row: Row, column: string): string {
  return (row.cell(column) ?? "").trim();
}
