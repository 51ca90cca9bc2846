import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of Stores behind its lots in English; the other languages have the same keys. */
export const storesEn = {
  lot: {
    portions: (count: number, told: string) => counted(count, { one: `${told} portion`, other: `${told} portions` }),
    cooked: (day: string) => `Cooked ${day}.`,
    usedUp: "Used it up",
    moveTo: { "dry-store": "Into the dry store", fridge: "Into the fridge", freezer: "Into the freezer" },
  },
  stocktake: {
    begin: "Count",
    about: "How much is there, in grams; 0 = nothing. What you leave empty stays as it is.",
    line: (what: string, mass: string) => `${what} (${mass} by the record)`,
    book: (count: number) => `Set ${count} right`,
  },
  whyWasted: {
    why: "If thrown away: why",
    unsaid: "not said",
    reasons: {
      spoilt: "went bad",
      "too-much": "too much of it",
      "not-liked": "nobody liked it",
      mishap: "fell, burnt or got wet",
      "unopened-life": "kept past its time",
      "opened-life": "open past its time",
      "use-by": "past the use-by date",
      "best-before": "past the best-before date",
      thawed: "thawed past its time",
      missing: "found missing",
    },
  },
  packDate: {
    tell: "Date on the pack",
    of: (what: string) => `of ${what}`,
    date: "Date",
    note: "Note it",
    none: "No date on it",
    danger: (food: string, day: string) => `The ${food} must be used by ${day}, and later the plan still wants it for:`,
    cooking: (day: string, sitting: string, dish: string) => `${day}, ${sitting}: ${dish}`,
    mustGo: (day: string) => `Use by ${day}.`,
    atItsBest: (day: string) => `Best before ${day}.`,
  },
  foundHere: {
    begin: "Found something",
    title: "Found at hand",
    about: "What is here and was not bought by the list: left from before, given, or forgotten.",
    find: "What is it?",
    other: "Something else",
    noneFound: "No food is called so. Foods of your own are added under Dishes.",
    grams: "How much, in grams",
    place: "Where it is",
    since: "Bought or made on, about",
    sinceNote: "How long it keeps is reckoned from that day. The date on the pack and your own nose come first.",
    isOpen: "It is open",
    openedOn: "Opened on, about",
    date: "Date on the pack, if there is one",
    dateKind: "Which date that is",
    dateKinds: { useBy: "Use by", bestBefore: "Best before" },
    cost: "What it cost, if known",
    costNote: 'Left empty, its cost stays unknown; the sums of plates from it then say "at least".',
    costUnknown: "What it cost is not known.",
    put: "Put it into the stores",
  },
};
