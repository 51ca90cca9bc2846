import { toCounted } from "@halfloaf/words/toCounted";
import type { mappingEn } from "./mappingEn.ts";

const counted = toCounted("de");

/** Texts of how a file with columns is written and what is wrong in it, in German. */
export const mappingDe: typeof mappingEn = {
  mapping: {
    form: "Wie sie geschrieben ist",
    formGuessed: "geraten; sieh es durch",
    noHeader: "Es fand sich keine Zeile, die die Spalten nennt. Setz eine darüber, oder sag, welche es ist.",
    delimiter: "Trennt die Spalten",
    delimiters: { ",": "Komma ,", ";": "Semikolon ;", "\t": "Tabulator", "|": "Strich |" },
    decimal: "Dezimalzeichen",
    decimals: { ".": "Punkt 0.79", ",": "Komma 0,79" },
    thousands: "Trennt die Tausender",
    thousandsOf: {
      "": "nichts",
      ".": "Punkt 1.000",
      ",": "Komma 1,000",
      " ": "Leerzeichen 1 000",
      "'": "Strich 1'000",
    },
    headerLine: "Zeile, die die Spalten nennt",
    notIn: "nicht darin",
    first: (cell) => `zuerst: ${cell}`,
    progress: (rows) => counted(rows, { one: "bisher 1 Zeile", other: `bisher ${rows} Zeilen` }),
    faults: (count) => counted(count, { one: "1 Fehler", other: `${count} Fehler` }),
    faultAt: (line, column) => (column === "" ? `Zeile ${line}` : `Zeile ${line}, ${column}`),
    rowLeftOut: "Die Zeile bleibt draußen.",
    moreFaults: (count) => `und ${count} weitere`,
    faultWords: {
      header: "diese Spalte fehlt",
      cells: "hier sind mehr Zellen als Spalten",
      "text-after-quote": "ein Anführungszeichen steht, wo keines stehen kann",
      "quote-unclosed": "ein Anführungszeichen wird nicht geschlossen",
      "row-too-long": "die Zeile ist zu lang",
      encoding: "manche Zeichen lassen sich nicht lesen",
    },
  },
};
