import { toCounted } from "@halfloaf/words/toCounted";
import type { pricesEn } from "./pricesEn.ts";

const counted = toCounted("de");

/** Texts of Prices in German. */
export const pricesDe: typeof pricesEn = {
  prices: {
    readReceipt: "Kassenzettel einlesen",
    readList: "Preisliste einlesen",
    find: "Lebensmittel oder Packung suchen",
    shop: "Laden",
    allShops: "alle Läden",
    none: "Kein Preis passt dazu.",
    noneYet: "Noch keine Packungen. Schreib eine auf, oder lies einen Kassenzettel oder eine Preisliste ein.",
    writePack: "Packung aufschreiben",
    writePackNote: "Eine Packung aus einem deiner Läden; mit ihr wird geplant, und sie steht auf Einkaufslisten.",
    packLabel: "Was auf der Packung steht",
    packHolds: "Sie enthält",
    packUnit: "Einheit",
    packUnits: { massG: "g", volumeMl: "ml", pieces: "Stück" },
    seenToday: "Den Preis habe ich heute gesehen (sonst ist er geschätzt)",
    packLacks: (fields) => `Es fehlt noch: ${fields.join(", ")}.`,
    writeThisPack: "Aufschreiben",
    packWritten: (label) => `${label} ist aufgeschrieben.`,
    removePack: "Wegnehmen",
    perKg: (money: string) => `${money} je kg`,
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
    history: "Wie sich der Preis bewegt hat",
    historyOf: (food: string) => `Kilopreise von ${food} im Lauf der Zeit`,
    historySays: (food, count) => {
      const looks = counted(count, { one: "einmal gesehen", other: `${count}-mal gesehen` });
      return `Grundpreise von ${food} im Lauf der Zeit, ${looks}; die Tabelle darunter sagt dasselbe.`;
    },
    historyNone: "Noch wurde kein Preis gesehen: notiere unten einen, dann beginnt sein Verlauf.",
    day: "Tag",
    pack: "Packung",
    price: "Preis",
    unitPrice: "Preis je kg",
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
};
