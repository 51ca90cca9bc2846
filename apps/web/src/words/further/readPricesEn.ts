import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of reading prices in, from receipts and lists, in English; the other languages have the same keys. */
export const readPricesEn = {
  receipt: {
    about: "Paste the text of a receipt, or take it from a text file. It is read on this device and sent nowhere.",
    extras: "Deposits, discounts of the whole, rounding",
    text: "Text of the receipt",
    textHint: "A line for each thing, with its price at the end; the total below.",
    file: "Choose a text file",
    nothing: "No line with a price was found in it.",
    balance: {
      equal: "The lines add up to the total.",
      "tax-added": "The lines and the tax add up to the total.",
      apart: "The lines do not add up to the total, so nothing can be noted: look for a line that was misread.",
      "no-total": "It names no total to hold the lines against.",
    },
    foreign: (currency: string) =>
      `It tells money of another currency, so nothing can be noted: this kitchen reckons in ${currency}.`,
    change: "Change the text",
  },
  list: {
    about:
      "Paste a table of prices, or take it from a file in CSV: its first line names the columns. It is read on this device and sent nowhere.",
    text: "The price list",
    textHint: "Rows with the same columns, parted by commas, semicolons, bars or tabs.",
    file: "Choose a file (.csv, .txt)",
    formOpen: "Say which column holds the name and which the price.",
    dateOrder: "Days are written",
    dateOrders: { "": "plainly", dmy: "day, month, year", mdy: "month, day, year", ymd: "year, month, day" },
    shop: "Shop, where a row names none",
    day: "Seen on, where a row names no day",
    columns: {
      label: "Name of the goods",
      price: "Price",
      shop: "Shop",
      brand: "Brand",
      content: "How much it holds",
      unitPrice: "Price of a kilogram or litre",
      date: "Day",
      gtin: "Number under the bars",
      offer: "Offer (3 for 2.00)",
      section: "Section of the shop",
    },
    stopped: "Stopped: only what was read so far stands here.",
    faultWords: {
      "cell-long": "so long a cell is no label and no price",
      label: "the name is missing",
      price: "this is no price",
      currency: "this is money of another currency",
      shop: "the kitchen has no such shop",
      content: "how much it holds is not understood",
      date: "the day is not understood, or could be two days: say how days are written",
      gtin: "this is no number from under bars",
      offer: "the offer is not understood",
      "unit-price": "this does not fit price and content",
    } as Record<string, string>,
  },
  priced: {
    counts: (prices: number, packs: number, open: number, idle: number) =>
      [
        ...(prices === 0 && packs > 0
          ? []
          : [counted(prices, { one: "1 price to note", other: `${prices} prices to note` })]),
        ...(packs === 0 ? [] : [counted(packs, { one: "1 new pack", other: `${packs} new packs` })]),
        ...(open === 0 ? [] : [`${open} to settle`]),
        ...(idle === 0 ? [] : [`${idle} without use`]),
      ].join(", "),
    show: "Show",
    shown: { all: "all lines", noted: "to note", open: "to settle", idle: "without use" },
    more: (count: number) => `Show ${count} more`,
    none: "No line is such.",
    by: { gtin: "by its number", memory: "as you said once", label: "by its label" },
    soFar: (money: string) => `${money} so far`,
    fates: {
      "pack-open": "Which pack is it?",
      "day-unknown": "No price is noted: its day is not known.",
      "shop-unknown": "No price is noted: its shop is not known.",
      "price-not-whole": "No price is noted: the price of one is no whole amount.",
      "content-unlike": "No price is noted: it holds another amount than the pack did.",
    },
    same: "known already",
    offer: (count: number, money: string) => `offer: ${count} for ${money}`,
    newPack: (food: string, holds: string) => `A new pack of ${food}, ${holds}.`,
    leftOut: "left out",
    chooseShop: "choose a shop",
    shopFirst: "Say above which shop it is, then its packs can be chosen.",
    another: "Pack of this shop",
    choose: "choose a pack",
    makeNew: "A new pack",
    food: "What is in it",
    nearFoods: "Most like it",
    allFoods: "All foods",
    chooseFood: "choose a food",
    grams: "It holds, in grams",
    make: "Make the pack",
    leaveOut: "Leave out",
    takeIn: "Take in again",
    remembered: "What you choose is remembered and holds for every receipt and list of that shop.",
    keep: (prices: number, packs: number, names: number) => {
      if (prices + packs === 0 && names > 0)
        return counted(names, { one: "Remember the name", other: "Remember the names" });
      if (prices === 0 && packs > 0)
        return counted(packs, { one: "Note 1 new pack", other: `Note ${packs} new packs` });
      const noted = counted(prices, { one: "Note 1 price", other: `Note ${prices} prices` });
      return packs === 0
        ? noted
        : `${noted} ${counted(packs, { one: "and 1 new pack", other: `and ${packs} new packs` })}`;
    },
    kept: (prices: number, packs: number, matches: number) =>
      [
        ...(prices === 0 && packs > 0
          ? []
          : [counted(prices, { one: "1 price is noted", other: `${prices} prices are noted` })]),
        ...(packs === 0 ? [] : [counted(packs, { one: "1 pack is new", other: `${packs} packs are new` })]),
        ...(matches === 0
          ? []
          : [counted(matches, { one: "1 name is remembered", other: `${matches} names are remembered` })]),
      ].join(", "),
    notRemembered:
      "This device may not change the packs of the kitchen: the prices are noted, the names are not remembered.",
  },
};
