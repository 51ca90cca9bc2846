import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of how a file with columns is written and what is wrong in it, in English; the other languages have the same keys. */
export const mappingEn = {
  mapping: {
    form: "How it is written",
    formGuessed: "guessed; look it over",
    noHeader: "No line was found that names the columns. Put one above the rows, or say which line it is.",
    delimiter: "Parts the columns",
    delimiters: { ",": "comma ,", ";": "semicolon ;", "\t": "tab", "|": "bar |" },
    decimal: "Decimal sign",
    decimals: { ".": "point 0.79", ",": "comma 0,79" },
    thousands: "Parts thousands",
    thousandsOf: { "": "nothing", ".": "point 1.000", ",": "comma 1,000", " ": "space 1 000", "'": "apostrophe 1'000" },
    headerLine: "Line that names the columns",
    notIn: "not in it",
    first: (cell: string) => `first: ${cell}`,
    progress: (rows: number) => counted(rows, { one: "1 row so far", other: `${rows} rows so far` }),
    faults: (count: number) => counted(count, { one: "1 fault", other: `${count} faults` }),
    faultAt: (line: number, column: string) => (column === "" ? `Line ${line}` : `Line ${line}, ${column}`),
    rowLeftOut: "The row is left out.",
    moreFaults: (count: number) => `and ${count} more`,
    faultWords: {
      header: "this column is missing",
      cells: "there are more cells than columns",
      "text-after-quote": "a quotation mark stands where none can",
      "quote-unclosed": "a quotation is not closed",
      "row-too-long": "the row is too long",
      encoding: "some characters can't be read",
    } as Record<string, string>,
  },
};
