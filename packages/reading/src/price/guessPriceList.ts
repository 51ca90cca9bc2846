import { isGtin } from "halfloaf/price";
import type { CsvForm } from "../table/csvForm.ts";
import { guessCsv, namedness, usableColumns } from "../table/guessCsv.ts";
import { parseContent } from "./parseContent.ts";
import type { PriceListMapping } from "./priceListMapping.ts";
import { COLUMN_WORDS, type PriceColumn } from "./priceListWords.ts";
import { type DateOrder, readDay } from "./readDay.ts";
import { readPrice } from "./readPrice.ts";

/** How a price list seems to be written, for a person to look at before it is read so. */
export interface PriceListGuess {
  readonly csv: CsvForm;
  /** The names of its columns, in their order; none where no header was found. */
  readonly header: readonly string[];
  /** The column of each thing, where one was found. */
  readonly columns: Partial<Record<PriceColumn, string>>;
  /** Absent where days are not told in numbers that could change places, or nothing tells. */
  readonly dateOrder?: DateOrder;
  /** The cells of the first rows behind the header, as they stand. */
  readonly sample: readonly (readonly string[])[];
}

const SAMPLE = 3;

/**
 * Guesses how a price list in CSV is written: the delimiter that gives the most rows of one width, the decimal sign that
 * its amounts have, the line that names the columns, and the columns by their names, else by what stands in them. It looks
 * at the beginning alone. What is stated goes before what would be guessed. Throws for a currency that is none.
 */
export function guessPriceList(text: string, currency: string, stated: Partial<CsvForm> = {}): PriceListGuess {
  const { csv, header, body } = guessCsv(text, stated);
  const columns = guessColumns(header, body, currency, csv);
  const days =
    columns.date === undefined ? [] : body.map((cells) => cells[header.indexOf(columns.date as string)] ?? "");
  const dateOrder = guessDateOrder(days);
  return { csv, header, columns, ...(dateOrder && { dateOrder }), sample: body.slice(0, SAMPLE) };
}

/** What most cells of a column must be so that it is taken for that column without its name saying so. */
const MOST_SHARE = 0.6;

function guessColumns(
  header: readonly string[],
  body: readonly (readonly string[])[],
  currency: string,
  csv: CsvForm,
): PriceListGuess["columns"] {
  const found = new Map<PriceColumn, string>();
  const usable = usableColumns(header);
  const free = (): string[] => usable.filter((name) => ![...found.values()].includes(name));
  const shareOf = (name: string, isSuch: (cell: string) => boolean): number => {
    const cells = body.map((row) => (row[header.indexOf(name)] ?? "").trim()).filter((cell) => cell !== "");
    return cells.length === 0 ? 0 : cells.filter(isSuch).length / cells.length;
  };
  const isPrice = (cell: string): boolean => readPrice(cell, currency, csv).ok;
  const looks: Partial<Record<PriceColumn, (cell: string) => boolean>> = {
    gtin: (cell) => isGtin(cell.replace(/[\s-]/g, "")),
    date: (cell) => readDay(cell) !== undefined,
    content: (cell) => /[a-z]/i.test(cell) && parseContent(cell, "us") !== undefined,
    price: (cell) => isPrice(cell) && !isGtin(cell),
    label: (cell) => /\p{L}{3}/u.test(cell),
  };
  for (const column of Object.keys(COLUMN_WORDS) as PriceColumn[]) {
    const words = COLUMN_WORDS[column];
    const look = looks[column];
    const named = free()
      .map((name) => ({ name, weight: namedness(name, words) }))
      .filter(({ name, weight }) => weight > 0 && (look === undefined || body.length === 0 || shareOf(name, look) > 0));
    if (named.length > 0) found.set(column, named.reduce((a, b) => (b.weight > a.weight ? b : a)).name);
  }
  for (const [column, look] of Object.entries(looks) as [PriceColumn, (cell: string) => boolean][]) {
    if (found.has(column)) continue;
    const likely = free().find((name) => shareOf(name, look) > MOST_SHARE);
    if (likely !== undefined) found.set(column, likely);
  }
  return Object.fromEntries(found);
}

/** The order that days in numbers have, where one of them can be in that order alone. */
function guessDateOrder(cells: readonly string[]): DateOrder | undefined {
  const orders = cells.flatMap((cell): DateOrder[] => {
    const [, first, second] = /^\s*(\d{1,2})[-/](\d{1,2})[-/]\d{2,4}/.exec(cell) ?? [];
    if (first === undefined || second === undefined) return [];
    if (Number(first) > 12) return ["dmy"];
    return Number(second) > 12 ? ["mdy"] : [];
  });
  const [only] = new Set(orders);
  return new Set(orders).size === 1 ? only : undefined;
}

/** What a guess and what a person says make a mapping of; undefined while a column that is needed is not known. */
export function toPriceListMapping(
  { csv, columns, dateOrder }: Pick<PriceListGuess, "csv" | "columns" | "dateOrder">,
  said: Pick<PriceListMapping, "currency" | "shop" | "on" | "customary">,
): PriceListMapping | undefined {
  const { label, price, ...others } = columns;
  if (label === undefined || price === undefined) return undefined;
  return {
    format: "halfloaf-price-list-mapping",
    version: 1,
    csv,
    columns: { label, price, ...others },
    ...(dateOrder && { dateOrder }),
    ...said,
  };
}
