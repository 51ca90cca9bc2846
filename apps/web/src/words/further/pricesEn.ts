import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of Prices in English; the other languages have the same keys. */
export const pricesEn = {
  prices: {
    readReceipt: "Read a receipt in",
    readList: "Read a price list in",
    find: "Find a food or a pack",
    shop: "Shop",
    allShops: "all shops",
    none: "No price fits that.",
    noneYet: "No packs yet. Write one down, or read a receipt or a price list in.",
    writePack: "Write a pack down",
    writePackNote: "A pack of a shop of yours, so that it is planned with and stands on buying lists.",
    packLabel: "What stands on the pack",
    packHolds: "It holds",
    packUnit: "Unit",
    packUnits: { massG: "g", volumeMl: "ml", pieces: "pieces" },
    seenToday: "I saw that price today (else it is an estimate)",
    packLacks: (fields: readonly string[]) => `Still missing: ${fields.join(", ")}.`,
    writeThisPack: "Write it down",
    packWritten: (label: string) => `${label} is written down.`,
    removePack: "Take away",
    perKg: (money: string) => `${money} a kg`,
    seenAt: (day: string, where?: string) => `seen ${day}${where === undefined ? "" : `, ${where}`}`,
    agedAt: (day: string, where?: string) =>
      `seen ${day}${where === undefined ? "" : `, ${where}`}: long ago, look again`,
    neverSeen: "estimate, never seen",
    cheapest: "cheapest by weight",
    massUnknown: "unit price unknown",
    offer: (count: number, money: string) => `${count} for ${money}`,
    reduced: (day: string) => `reduced until ${day}`,
    more: "Show all of them",
    shown: (shown: number, all: number) => `${shown} of ${all} foods; search for the others.`,
    history: "How it moved",
    historyOf: (food: string) => `Prices of ${food} a kg over time`,
    historySays: (food: string, count: number) => {
      const looks = counted(count, { one: "seen once", other: `seen ${count} times` });
      return `Unit prices of ${food} over time, ${looks}; the table below says the same.`;
    },
    historyNone: "No price was seen yet: note one below, and its course begins.",
    day: "Day",
    pack: "Pack",
    price: "Price",
    unitPrice: "A kilogram",
    change: "Change",
    note: "Note a price",
    whichPack: "Pack",
    priceOfOne: "Price of one pack",
    where: "Seen where",
    holds: "It holds now, in grams (if that changed)",
    noteIt: "Note it",
    notMoney: "That is no price.",
    lost: "This kitchen buys no such food.",
    all: "All prices",
  },
};
