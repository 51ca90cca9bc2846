import { EU_ALLERGEN_NAMES_DE, US_ALLERGEN_NAMES_DE } from "@halfloaf/words/de";
import type { commonEn } from "./commonEn.ts";

/** Words that most further screens say in German. */
export const commonDe: typeof commonEn = {
  unknown: "unbekannt",
  writeFood: "Nicht dabei? Ein Lebensmittel aufschreiben",
  atLeast: (what: string) => `mindestens ${what}`,
  estimate: "geschätzt",
  save: "Speichern",
  cancel: "Abbrechen",
  add: "Hinzufügen",
  edit: "Ändern",
  remove: "Entfernen",
  back: "Zurück",
  next: "Weiter",
  saved: "Gespeichert.",
  asTable: "Dasselbe als Tabelle",
  none: "keine",
  diets: { vegan: "vegan", vegetarian: "vegetarisch", fish: "mit Fisch", meat: "mit Fleisch" },
  weekdays: ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"],
  weekdaysShort: ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"],
  allergens: {
    ...EU_ALLERGEN_NAMES_DE,
    "crustacean-shellfish": `${US_ALLERGEN_NAMES_DE["crustacean-shellfish"]} (USA)`,
    "tree-nuts": `${US_ALLERGEN_NAMES_DE["tree-nuts"]} (USA)`,
    wheat: `${US_ALLERGEN_NAMES_DE.wheat} (USA)`,
  },
  source: {
    read: "Lesen",
    busy: "Wird gelesen …",
    stop: "Anhalten",
    failed: "Die Datei ließ sich nicht lesen.",
    large: "Die Datei ist größer als 32 MB. Teil sie oder nimm eine kleinere.",
    again: "Noch eines einlesen",
    unread: "Gefunden und nicht verwendet",
  },
  refused: {
    title: (count) =>
      count === 1
        ? "Nichts wurde übernommen: in der Datei ist 1 Stelle falsch."
        : `Nichts wurde übernommen: in der Datei sind ${count} Stellen falsch.`,
  },
  issues: {
    title: "Noch nicht gespeichert:",
    number: (field: string) => `${field}: hier gehört eine Zahl hin.`,
    missing: (field: string) => `${field}: hier fehlt etwas.`,
    least: (field: string, bound: string) => `${field}: ${bound} oder mehr.`,
    most: (field: string, bound: string) => `${field}: ${bound} oder weniger.`,
    above: (field: string, bound: string) => `${field}: mehr als ${bound}.`,
    whole: (field: string) => `${field}: hier gehört eine ganze Zahl hin.`,
    other: (field: string, expected: string) => `${field}: erwartet wird ${expected}.`,
    eaterTwice: (name: string, sitting: string) => `${name} sitzt bei zwei Mahlzeiten zugleich: ${sitting}.`,
  },
};
