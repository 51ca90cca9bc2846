import { isGtin, type Observation, type Offer, type Pack, type Seen, type Shop } from "halfloaf/price";
import { type CivilDate, CURRENCY_EXPONENTS, type Issue } from "halfloaf/quantity";
import type { FileSource, ReadingWatch } from "../table/FileSource.ts";
import { IssueLog, plain, quote } from "../table/IssueLog.ts";
import { foldText } from "../table/nearness.ts";
import { type Row, visitRows } from "../table/visitRows.ts";
import { findShop } from "./findShop.ts";
import { type PackCandidate, toObservation } from "./PackCandidate.ts";
import type { PackIndex, PackMatch } from "./PackIndex.ts";
import { isSameContent, parseContent } from "./parseContent.ts";
import type { PriceListMapping } from "./priceListMapping.ts";
import type { PriceColumn } from "./priceListWords.ts";
import { readDay } from "./readDay.ts";
import { readPrice } from "./readPrice.ts";

/** One row of a price list: what it offers, which known pack that is, and the look at the price where all is known. */
export interface PriceRow {
  readonly line: number;
  readonly candidate: PackCandidate;
  readonly match: PackMatch;
  /** True where the content is another than that of the pack matched: the pack may have been made smaller. */
  readonly isOtherContent: boolean;
  /** Absent where no pack is known for sure, where the content is another, or where day or shop is not known. */
  readonly observation?: Observation;
}

/** What a price list gave; faulty rows are left out and told. */
export interface PriceListReading {
  readonly outcome: "read" | "stopped" | "failed";
  readonly rows: readonly PriceRow[];
  /** The first faults in full; paths lead by file, line and column. */
  readonly issues: readonly Issue[];
  readonly issueCount: number;
}

/** What a price list is read with. */
export interface PriceListContext {
  readonly mapping: PriceListMapping;
  readonly shops: readonly Pick<Shop, "id" | "name">[];
  readonly index: PackIndex;
}

/**
 * Reads a price list row by row. A row without a label or a sound price is left out; any other part that is not understood
 * is told and left open, so that nothing is guessed: without its day a price is no observation.
 */
export async function readPriceList(
  source: FileSource,
  context: PriceListContext,
  watch: ReadingWatch = {},
): Promise<PriceListReading> {
  const reader = new PriceListReader(source.name, context);
  const { mapping } = context;
  const needed = [...new Set(Object.values(mapping.columns))];
  const { log, rows } = reader;
  const outcome = await visitRows(source, mapping.csv, needed, log.tell, (row) => reader.addRow(row), watch);
  return {
    outcome: outcome === "columns-missing" ? "failed" : outcome,
    rows,
    issues: log.issues,
    issueCount: log.count,
  };
}

/** The rows whose goods are called so, matched anew: after a person has said which pack they are. */
export function rematch(rows: readonly PriceRow[], text: string, index: PackIndex): PriceRow[] {
  const folded = foldText(text);
  return rows.map((row) =>
    foldText(row.candidate.label) === folded ? toPriceRow(row.line, row.candidate, index) : row,
  );
}

function toPriceRow(line: number, candidate: PackCandidate, index: PackIndex): PriceRow {
  const { label: text, brand, shop, gtin, content } = candidate;
  const match = index.match({ text, brand, shop, gtin });
  const isOtherContent = match.kind === "known" && content !== undefined && isOther(content, match.pack.content);
  const isSure = match.kind === "known" && match.pack.shop === shop && !isOtherContent;
  const observation = isSure ? toObservation(match.pack, candidate) : undefined;
  return { line, candidate, match, isOtherContent, ...(observation && { observation }) };
}

/** What a cell holds is taken apart in ways that cost more than its length; no label is as long as this. */
const MOST_CELL = 500;
/** A unit price printed may be rounded; beyond this share it is another. */
const UNIT_PRICE_SHARE = 0.02;

/** "5.45/kg", "0.19 per 100 g"; without a unit it is for 1 kg or 1 L. */
const UNIT_PRICE = /^(.+?)\s*(?:\/|per|pro|je)\s*([1-9]\d{0,3})?\s*(kg|g|ltr?|l|cl|ml)\.?$/i;
/** Grams or millilitres of the units that prices are told for. */
const BASE_OF: ReadonlyMap<string, number> = new Map([
  ["kg", 1000],
  ["g", 1],
  ["l", 1000],
  ["lt", 1000],
  ["ltr", 1000],
  ["cl", 10],
  ["ml", 1],
]);

class PriceListReader {
  readonly log = new IssueLog();
  readonly rows: PriceRow[] = [];
  private readonly file: string;
  private readonly context: PriceListContext;

  constructor(file: string, context: PriceListContext) {
    this.file = file;
    this.context = context;
  }

  addRow(row: Row): undefined {
    const columns = Object.keys(this.context.mapping.columns) as PriceColumn[];
    const long = columns.find((column) => this.cell(row, column).length > MOST_CELL);
    if (long !== undefined) return this.fault("cell-long", row, long, `a cell of at most ${MOST_CELL} characters`);
    const label = this.cell(row, "label");
    if (label === "") return this.fault("label", row, "label", "a label");
    const priceMinor = this.readMoney(row, "price", this.cell(row, "price"));
    if (priceMinor === undefined) return;
    const shop = this.readShop(row);
    const content = this.readContent(row);
    const day = this.readDate(row);
    const gtin = this.readGtin(row);
    const offer = this.readOffer(row, priceMinor);
    const [brand, section] = [this.cell(row, "brand"), this.cell(row, "section")];
    const seen: Seen | undefined = shop && day ? { on: day, at: shop.name } : undefined;
    const candidate: PackCandidate = {
      label,
      ...(brand !== "" && { brand }),
      ...(shop && { shop: shop.id }),
      ...(content && { content }),
      priceMinor,
      ...(offer && { offer }),
      ...(gtin && { gtin }),
      ...(section !== "" && { section }),
      ...(seen && { seen }),
    };
    this.checkUnitPrice(row, candidate);
    this.rows.push(toPriceRow(row.line, candidate, this.context.index));
  }

  private readMoney(row: Row, column: PriceColumn, text: string): number | undefined {
    const { mapping } = this.context;
    const price = readPrice(text, mapping.currency, mapping.csv);
    if (price.ok) return price.value;
    for (const { code, expected } of price.issues) this.fault(code, row, column, expected);
    return undefined;
  }

  private readShop(row: Row): Pick<Shop, "id" | "name"> | undefined {
    const { mapping, shops } = this.context;
    const cell = this.cell(row, "shop");
    if (cell === "") return shops.find(({ id }) => id === mapping.shop);
    const shop = findShop(cell, shops);
    if (shop === undefined) this.fault("shop", row, "shop", "a shop of the kitchen");
    return shop;
  }

  private readContent(row: Row): Pack["content"] | undefined {
    const cell = this.cell(row, "content");
    if (cell === "") return undefined;
    const read = parseContent(cell, this.context.mapping.customary);
    if (read === undefined) this.fault("content", row, "content", "a content such as 500 g, 6 x 1.5 L or 12 pcs");
    return read?.content;
  }

  private readDate(row: Row): CivilDate | undefined {
    const { mapping } = this.context;
    const cell = this.cell(row, "date");
    if (cell === "") return mapping.on;
    const read = readDay(cell, mapping.dateOrder);
    if (read?.kind === "day") return read.day;
    const expected = read === undefined ? "a day of the calendar" : `one of ${read.days.join(" and ")}, by dateOrder`;
    this.fault("date", row, "date", expected);
    return undefined;
  }

  private readGtin(row: Row): string | undefined {
    const cell = this.cell(row, "gtin");
    if (cell === "") return undefined;
    const digits = cell.replace(/[\s-]/g, "");
    if (isGtin(digits)) return digits;
    this.fault("gtin", row, "gtin", "a GTIN of 8, 12, 13 or 14 digits with its check digit");
    return undefined;
  }

  private readOffer(row: Row, single: number): Offer | undefined {
    const cell = this.cell(row, "offer");
    if (cell === "") return undefined;
    const [, count = "", price = ""] = /^(\d{1,3})\s*(?:for|für|fuer|x|à|@|\/)\s*(\S.*)$/i.exec(cell) ?? [];
    const exponent = CURRENCY_EXPONENTS.get(this.context.mapping.currency) as number;
    // "3 for 2" may mean three at the price of two, so money must show its decimals here.
    const isMoney = exponent === 0 ? /\D\d|\d\D/.test(price) : new RegExp(`[.,]\\d{${exponent}}(?!\\d)`).test(price);
    if (Number(count) < 2 || !isMoney) {
      this.fault("offer", row, "offer", "an offer such as 3 for 2.00");
      return undefined;
    }
    const priceMinor = this.readMoney(row, "offer", price);
    if (priceMinor === undefined) return undefined;
    if (priceMinor <= Number(count) * single) return { kind: "several", count: Number(count), priceMinor };
    this.fault("offer", row, "offer", "no more than the packs cost one by one");
    return undefined;
  }

  private checkUnitPrice(row: Row, { priceMinor, content }: PackCandidate): void {
    const cell = this.cell(row, "unitPrice");
    if (cell === "" || content === undefined || "pieces" in content) return;
    const [, price = cell, size = "1", unit = "kg"] = UNIT_PRICE.exec(cell) ?? [];
    const minor = this.readMoney(row, "unitPrice", price);
    if (minor === undefined) return;
    const unitMinor = (minor * 1000) / (Number(size) * (BASE_OF.get(unit.toLowerCase()) as number));
    const measure = "massG" in content ? content.massG : content.volumeMl;
    const expected = (priceMinor * 1000) / measure;
    if (Math.abs(unitMinor - expected) <= Math.max(1, expected * UNIT_PRICE_SHARE)) return;
    this.fault("unit-price", row, "unitPrice", `about ${Math.round(expected)} minor units by price and content`);
  }

  private cell(row: Row, column: PriceColumn): string {
    const name = this.context.mapping.columns[column];
    return name === undefined ? "" : (row.cell(name) ?? "").trim();
  }

  private fault(code: string, row: Row, column: PriceColumn, expected: string): undefined {
    const path = [this.file, row.line, this.context.mapping.columns[column] as string];
    this.log.tell({ code, path, expected: plain(expected), received: quote(this.cell(row, column)) });
  }
}

/** True where both are measured alike and differ; a mass beside a volume may be the same goods. */
function isOther(a: Pack["content"], b: Pack["content"]): boolean {
  const isAlike =
    ("massG" in a && "massG" in b) || ("volumeMl" in a && "volumeMl" in b) || ("pieces" in a && "pieces" in b);
  return isAlike && !isSameContent(a, b);
}
