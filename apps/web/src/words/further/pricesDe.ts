import { toCounted } from "../toCounted.ts";
import type { pricesEn } from "./pricesEn.ts";

const counted = toCounted("de");

/** Texts of Prices in German. */
export const pricesDe: typeof pricesEn = {
  prices: {
    find: "Lebensmittel oder Packung suchen",
    shop: "Laden",
    allShops: "alle Läden",
    none: "Kein Preis passt dazu.",
    noneYet: "Noch keine Packungen. Hol eine Küche mit Packungen herein, oder beginne mit einer Probeküche.",
    perKg: (money: string) => `${money} das kg`,
    seenAt: (day: string, where?: string) => `gesehen ${day}${where === undefined ? "" : `, ${where}`}`,
    agedAt: (day: string, where?: string) =>
      `gesehen ${day}${where === undefined ? "" : `, ${where}`}: lange her, sieh noch einmal nach`,
    neverSeen: "geschätzt, nie gesehen",
    cheapest: "nach Gewicht am billigsten",
    massUnknown: "Grundpreis unbekannt",
    offer: (count: number, money: string) => `${count} für ${money}`,
    reduced: (day: string) => `herabgesetzt bis ${day}`,
    more: "Alle zeigen",
    shown: (shown: number, all: number) => `${shown} von ${all} Lebensmitteln; die anderen findet die Suche.`,
    history: "Wie er sich bewegt hat",
    historyOf: (food: string) => `Kilopreise von ${food} im Lauf der Zeit`,
    historySays: (food, count) => {
      const looks = counted(count, { one: "einmal gesehen", other: `${count}-mal gesehen` });
      return `Grundpreise von ${food} im Lauf der Zeit, ${looks}; die Tabelle darunter sagt dasselbe.`;
    },
    historyNone: "Noch wurde kein Preis gesehen: notiere unten einen, dann beginnt sein Verlauf.",
    day: "Tag",
    pack: "Packung",
    price: "Preis",
    unitPrice: "Das Kilogramm",
    change: "Änderung",
    note: "Preis notieren",
    whichPack: "Packung",
    priceOfOne: "Preis einer Packung",
    where: "Wo gesehen",
    holds: "Inhalt jetzt, in Gramm (falls geändert)",
    noteIt: "Notieren",
    notMoney: "Das ist kein Preis.",
    lost: "Dieses Lebensmittel kauft die Küche nicht.",
    all: "Alle Preise",
  },
  receipt: {
    title: "Kassenzettel einlesen",
    about:
      "Füg den Text eines Kassenzettels ein, oder wähl eine Textdatei. Er wird auf diesem Gerät gelesen und nirgendwohin geschickt.",
    shopOnIt: "wie darauf steht",
    text: "Text des Kassenzettels",
    file: "Oder eine Textdatei wählen",
    found: (items, prices, day) => {
      const lines = counted(items, { one: "1 Zeile gelesen", other: `${items} Zeilen gelesen` });
      const known = counted(prices, {
        one: "1 Preis einer bekannten Packung",
        other: `${prices} Preise bekannter Packungen`,
      });
      return `${lines}, ${known}, gesehen am ${day}.`;
    },
    balance: {
      equal: "Die Zeilen ergeben die Summe.",
      "tax-added": "Die Zeilen und die Steuer ergeben die Summe.",
      apart: "Die Zeilen ergeben nicht die Summe: sieh sie an.",
      "no-total": "Eine Summe, an der sie sich messen ließen, steht nicht darauf.",
    },
    pack: "Packung",
    choose: "wählen",
    leaveOut: "weglassen",
    keep: (count) => counted(count, { one: "1 Preis vermerken", other: `${count} Preise vermerken` }),
  },
};
