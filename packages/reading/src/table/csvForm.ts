import * as v from "valibot";
import { ENCODINGS } from "./TextDecoding.ts";

/** How a CSV file is written. */
export const CsvForm = v.strictObject({
  /** Absent = UTF-8, unless a byte order mark says otherwise. */
  encoding: v.optional(v.picklist(ENCODINGS)),
  delimiter: v.optional(v.picklist([",", ";", "\t", "|"]), ","),
  /** What parts whole numbers from decimals. */
  decimal: v.optional(v.picklist([".", ","]), "."),
  /** What parts thousands; absent = nothing does, so that such a mark is a fault. */
  thousands: v.optional(v.picklist([".", ",", " ", "'"])),
  /** The line that names the columns, counted from 1; what stands before it is not read. */
  headerLine: v.optional(v.pipe(v.number(), v.safeInteger(), v.minValue(1)), 1),
});
export type CsvForm = v.InferOutput<typeof CsvForm>;

/** The form of the published CSV tables: UTF-8, commas, points, the columns named in the first line. */
export const PLAIN_CSV: CsvForm = { delimiter: ",", decimal: ".", headerLine: 1 };
