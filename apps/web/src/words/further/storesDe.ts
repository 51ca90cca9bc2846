import type { storesEn } from "./storesEn.ts";

/** Texts of Stores behind its lots in German. */
export const storesDe: typeof storesEn = {
  lot: {
    usedUp: "Aufgebraucht",
    moveTo: {
      "dry-store": "In den Vorratsschrank",
      fridge: "In den Kühlschrank",
      freezer: "Ins Gefrierfach",
    },
  },
  stocktake: {
    begin: "Zählen",
    about: "Wie viel da ist, in Gramm; 0 = nichts. Was leer bleibt, bleibt, wie es ist.",
    line: (what, mass) => `${what} (vermerkt: ${mass})`,
    book: (count) => `${count} richtigstellen`,
  },
};
