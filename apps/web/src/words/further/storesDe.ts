import { toCounted } from "@halfloaf/words/toCounted";
import { toSentence } from "../toSentence.ts";
import type { storesEn } from "./storesEn.ts";

const counted = toCounted("de");

/** Texts of Stores behind its lots in German. */
export const storesDe: typeof storesEn = {
  lot: {
    portions: (count, told) => counted(count, { one: `${told} Portion`, other: `${told} Portionen` }),
    cooked: (day) => toSentence(`Gekocht am ${day}`),
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
  whyWasted: {
    why: "Falls weggeworfen: warum",
    unsaid: "nicht gesagt",
    reasons: {
      spoilt: "verdorben",
      "too-much": "zu viel davon",
      "not-liked": "mochte niemand",
      mishap: "gefallen, verbrannt oder nass geworden",
      "unopened-life": "zu lange gelagert",
      "opened-life": "zu lange offen",
      "use-by": "Verbrauchsdatum vorbei",
      "best-before": "Mindesthaltbarkeit vorbei",
      thawed: "zu lange aufgetaut",
      missing: "fehlte beim Zählen",
    },
  },
  packDate: {
    tell: "Datum auf der Packung",
    of: (what) => `von ${what}`,
    date: "Datum",
    note: "Vermerken",
    none: "Kein Datum darauf",
    danger: (food, day) => `Zu verbrauchen bis ${day}: ${food}. Danach braucht der Plan noch davon für:`,
    cooking: (day, sitting, dish) => `${day}, ${sitting}: ${dish}`,
    mustGo: (day) => toSentence(`Zu verbrauchen bis ${day}`),
    atItsBest: (day) => toSentence(`Mindestens haltbar bis ${day}`),
  },
  foundHere: {
    begin: "Etwas gefunden",
    title: "Schon da gefunden",
    about: "Was hier ist und nicht nach der Liste gekauft wurde: übrig von früher, geschenkt oder vergessen.",
    find: "Was ist es?",
    other: "Etwas anderes",
    noneFound: "Kein Lebensmittel heißt so. Eigene kommen unter Gerichte hinzu.",
    grams: "Wie viel, in Gramm",
    place: "Wo es ist",
    since: "Gekauft oder gemacht etwa am",
    sinceNote: "Wie lange es hält, zählt ab diesem Tag. Das Datum auf der Packung und die eigene Nase gehen vor.",
    isOpen: "Es ist offen",
    openedOn: "Geöffnet etwa am",
    date: "Datum auf der Packung, falls eins da ist",
    dateKind: "Welches Datum das ist",
    dateKinds: { useBy: "Zu verbrauchen bis", bestBefore: "Mindestens haltbar bis" },
    cost: "Was es kostete, falls bekannt",
    costNote: "Bleibt das leer, bleiben die Kosten unbekannt; bei Tellern davon steht dann „mindestens“ vor der Summe.",
    costUnknown: "Was es kostete, ist nicht bekannt.",
    put: "In die Vorräte legen",
  },
};
