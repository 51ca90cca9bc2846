import { toCounted } from "@halfloaf/words/toCounted";
import type { readPricesEn } from "./readPricesEn.ts";

const counted = toCounted("de");

/** Texts of reading prices in, from receipts and lists, in German. */
export const readPricesDe: typeof readPricesEn = {
  receipt: {
    about:
      "Füg den Text eines Kassenzettels ein, oder nimm ihn aus einer Textdatei. Er wird auf diesem Gerät gelesen und nirgendwohin geschickt.",
    extras: "Pfand, Rabatt auf alles, Rundung",
    text: "Text des Kassenzettels",
    textHint: "Eine Zeile für jede Sache, der Preis am Ende; darunter die Summe.",
    file: "Textdatei wählen",
    nothing: "Darin fand sich keine Zeile mit einem Preis.",
    balance: {
      equal: "Die Zeilen ergeben die Summe.",
      "tax-added": "Die Zeilen und die Steuer ergeben die Summe.",
      apart: "Die Zeilen ergeben nicht die Summe, darum lässt sich nichts vermerken: such die falsch gelesene Zeile.",
      "no-total": "Eine Summe, an der sie sich messen ließen, steht nicht darauf.",
    },
    foreign: (currency) =>
      `Er nennt Geld in einer anderen Währung, darum lässt sich nichts vermerken: diese Küche rechnet in ${currency}.`,
    change: "Text ändern",
  },
  list: {
    about:
      "Füg eine Tabelle mit Preisen ein, oder nimm sie aus einer CSV-Datei: ihre erste Zeile nennt die Spalten. Gelesen wird auf diesem Gerät, verschickt wird nichts.",
    text: "Die Preisliste",
    textHint: "Zeilen mit denselben Spalten, getrennt durch Kommas, Semikolons, Striche oder Tabulatoren.",
    file: "Datei wählen (.csv, .txt)",
    formOpen: "Sag, in welcher Spalte der Name steht und in welcher der Preis.",
    dateOrder: "Tage stehen als",
    dateOrders: { "": "eindeutig", dmy: "Tag, Monat, Jahr", mdy: "Monat, Tag, Jahr", ymd: "Jahr, Monat, Tag" },
    shop: "Laden, wo eine Zeile keinen nennt",
    day: "Gesehen am, wo eine Zeile keinen Tag nennt",
    columns: {
      label: "Name der Ware",
      price: "Preis",
      shop: "Laden",
      brand: "Marke",
      content: "Inhalt",
      unitPrice: "Preis je Kilogramm oder Liter",
      date: "Tag",
      gtin: "Nummer unter dem Strichcode",
      offer: "Angebot (3 für 2,00)",
      section: "Abteilung des Ladens",
    },
    stopped: "Angehalten: hier steht nur, was bis dahin gelesen war.",
    faultWords: {
      "cell-long": "so lang ist weder ein Name noch ein Preis",
      label: "der Name fehlt",
      price: "das ist kein Preis",
      currency: "das ist Geld einer anderen Währung",
      shop: "einen solchen Laden hat die Küche nicht",
      content: "wie viel darin ist, ist nicht zu verstehen",
      date: "der Tag ist nicht zu verstehen oder könnte zweierlei heißen: sag, wie Tage dastehen",
      gtin: "das ist keine Nummer eines Strichcodes",
      offer: "das Angebot ist nicht zu verstehen",
      "unit-price": "das passt nicht zu Preis und Inhalt",
    },
  },
  priced: {
    counts: (prices, packs, open, idle) =>
      [
        ...(prices === 0 && packs > 0
          ? []
          : [counted(prices, { one: "1 Preis zu vermerken", other: `${prices} Preise zu vermerken` })]),
        ...(packs === 0 ? [] : [counted(packs, { one: "1 neue Packung", other: `${packs} neue Packungen` })]),
        ...(open === 0 ? [] : [`${open} zu klären`]),
        ...(idle === 0 ? [] : [`${idle} ohne Nutzen`]),
      ].join(", "),
    show: "Zeigen",
    shown: { all: "alle Zeilen", noted: "zu vermerken", open: "zu klären", idle: "ohne Nutzen" },
    more: (count) => `${count} weitere zeigen`,
    none: "Es gibt keine solche Zeile.",
    by: { gtin: "nach ihrer Nummer", memory: "wie du einmal gesagt hast", label: "nach der Aufschrift" },
    soFar: (money) => `bisher ${money}`,
    fates: {
      "pack-open": "Welche Packung ist es?",
      "day-unknown": "Kein Preis wird vermerkt: der Tag ist nicht bekannt.",
      "shop-unknown": "Kein Preis wird vermerkt: der Laden ist nicht bekannt.",
      "price-not-whole": "Kein Preis wird vermerkt: der Preis je Packung geht nicht auf.",
      "content-unlike": "Kein Preis wird vermerkt: der Inhalt ist ein anderer als der dieser Packung.",
    },
    same: "schon bekannt",
    offer: (count, money) => `Angebot: ${count} für ${money}`,
    newPack: (food, holds) => `Eine neue Packung ${food}, ${holds}.`,
    leftOut: "weggelassen",
    chooseShop: "Laden wählen",
    shopFirst: "Sag oben, welcher Laden es ist, dann lassen sich seine Packungen wählen.",
    another: "Packung dieses Ladens",
    choose: "Packung wählen",
    makeNew: "Neue Packung",
    food: "Was darin ist",
    nearFoods: "Am ähnlichsten",
    allFoods: "Alle Lebensmittel",
    chooseFood: "Lebensmittel wählen",
    grams: "Inhalt in Gramm",
    make: "Packung anlegen",
    leaveOut: "Weglassen",
    takeIn: "Wieder aufnehmen",
    remembered: "Was du wählst, wird gemerkt und gilt für alle Kassenzettel und Listen dieses Ladens.",
    keep: (prices, packs, names) => {
      if (prices + packs === 0 && names > 0)
        return counted(names, { one: "Namen merken", other: `${names} Namen merken` });
      const noted = counted(prices, { one: "1 Preis", other: `${prices} Preise` });
      const fresh = counted(packs, { one: "1 neue Packung", other: `${packs} neue Packungen` });
      if (prices === 0 && packs > 0) return `${fresh} vermerken`;
      return packs === 0 ? `${noted} vermerken` : `${noted} und ${fresh} vermerken`;
    },
    kept: (prices, packs, matches) =>
      [
        ...(prices === 0 && packs > 0
          ? []
          : [counted(prices, { one: "1 Preis ist vermerkt", other: `${prices} Preise sind vermerkt` })]),
        ...(packs === 0 ? [] : [counted(packs, { one: "1 Packung ist neu", other: `${packs} Packungen sind neu` })]),
        ...(matches === 0
          ? []
          : [counted(matches, { one: "1 Name ist gemerkt", other: `${matches} Namen sind gemerkt` })]),
      ].join(", "),
    notRemembered:
      "Dieses Gerät darf die Packungen der Küche nicht ändern: die Preise sind vermerkt, die Namen nicht gemerkt.",
  },
};
