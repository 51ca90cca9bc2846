import { Id } from "halfloaf/food";
import { CivilDate, Currency, type Parsed } from "halfloaf/quantity";
import * as v from "valibot";
import { CsvForm } from "../table/csvForm.ts";
import { parseMapping } from "../table/parseMapping.ts";

const text = v.pipe(v.string(), v.nonEmpty());

/**
 * How a price list in CSV is to be read: a file of its own, written once for a kind of list. Columns are named as in the
 * header of the list; columns that are not named are not read.
 */
export const PriceListMapping = v.strictObject({
  /** Where an editor finds the schema; not read here. */
  $schema: v.optional(v.string()),
  format: v.literal("halfloaf-price-list-mapping"),
  version: v.literal(1),
  csv: v.optional(CsvForm, {}),
  currency: Currency,
  columns: v.strictObject({
    label: text,
    price: text,
    /** Holds the shop's id or name. */
    shop: v.optional(text),
    brand: v.optional(text),
    /** Holds "500 g", "6 x 1.5 L", "12 pcs". */
    content: v.optional(text),
    /** Holds the price of 1 kg or 1 L, or of as much as it says ("0.19/100 g"), which is held against price and content. */
    unitPrice: v.optional(text),
    date: v.optional(text),
    gtin: v.optional(text),
    /** Holds "3 for 2.00": so many packs on one bill for so much. */
    offer: v.optional(text),
    section: v.optional(text),
  }),
  /** The shop of every row without one of its own. */
  shop: v.optional(Id),
  /** The day every price without a day of its own was seen. */
  on: v.optional(CivilDate),
  /** Needed where days are written in numbers and month and day could change places. */
  dateOrder: v.optional(v.picklist(["dmy", "mdy", "ymd"])),
  /** Which measure a fluid ounce or a pint is; absent = such contents are told as not understood. */
  customary: v.optional(v.picklist(["us", "british"])),
});
export type PriceListMapping = v.InferOutput<typeof PriceListMapping>;

/** Reads the content of a mapping file; on failure gives all faults at once. */
export function parsePriceListMapping(input: unknown): Parsed<PriceListMapping> {
  return parseMapping(PriceListMapping, input);
}
