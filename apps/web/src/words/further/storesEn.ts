/** Texts of Stores behind its lots in English; the other languages have the same keys. */
export const storesEn = {
  lot: {
    usedUp: "Used it up",
    moveTo: { "dry-store": "Into the dry store", fridge: "Into the fridge", freezer: "Into the freezer" },
  },
  stocktake: {
    begin: "Count",
    about: "How much is there, in grams; 0 = nothing. What you leave empty stays as it is.",
    line: (what: string, mass: string) => `${what} (${mass} by the record)`,
    book: (count: number) => `Set ${count} right`,
  },
};
