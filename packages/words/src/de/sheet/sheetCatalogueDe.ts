import type { StepLine, TimelineBar, TimelineRow, WorkSheet } from "halfloaf/kitchen";
import { type CalendarWords, letterOf, type SheetWords, type TimelineWords } from "halfloaf/sheet";
import { tellMoment } from "../../clockWords.ts";
import type { SheetCatalogue } from "../../SheetCatalogue.ts";
import { CAUTION_WORDS_DE } from "../cautionWordsDe.ts";
import { ROW_NAMES_DE } from "../nameWordsDe.ts";
import { STEP_KIND_WORDS_DE } from "../stepKindWordsDe.ts";
import { DAY_WORDS_DE } from "./dayWordsDe.ts";
import { CARD_WORDS_DE, LESSON_WORDS_DE, tellPublishedCostDe } from "./dishWordsDe.ts";
import { countedDe, FIGURES_DE, tellMinutesDe, tellNumberDe } from "./figuresDe.ts";

const BEGIN = { thaw: "auftauen", soak: "einweichen", ahead: "beginnen" } as const;

const CALENDAR_WORDS_DE: CalendarWords = {
  name: (kitchen) => `${kitchen}: Kochen und Einkaufen`,
  cook: (dishes) => `Kochen: ${dishes}`,
  // A server fills in the number as a text, so no form of a word may hang on it.
  cookDish: (dish, portions, minutes) => `${dish} (Portionen: ${portions}), fertig in ${minutes}`,
  trip: (shop) => `Einkaufen: ${shop}`,
  tripLine: (count, label, price) => `${count} x ${label}, ${price}`,
  tripTill: (till) => `Kasse ${till}`,
  begin: (kind, what, dish) => `${what} ${BEGIN[kind]} für ${dish}`,
  useUp: (food, mass) => `Letzter Tag: ${food}, ${mass}`,
  useUpNote: "Das Etikett der Packung geht vor.",
};

const SHEET_WORDS_DE: SheetWords = {
  language: "de",
  direction: "ltr",
  figures: FIGURES_DE,
  day: DAY_WORDS_DE,
  card: CARD_WORDS_DE,
  lesson: LESSON_WORDS_DE,
  calendar: CALENDAR_WORDS_DE,
  cautions: CAUTION_WORDS_DE,
  pictures: { driversTitle: (dish) => `Was die Kosten treibt: ${dish}` },
  careFirst:
    "Was auf der Packung steht, örtliche Vorschriften und der Rat aus Arztpraxis oder Ernährungsberatung gehen allem vor, was hier steht.",
  calculated:
    "Alle Zahlen sind in einer Haushaltsküche aus Tabellen von Lebensmitteln, Preisen und Zeiten berechnet; keine wurde analysiert.",
};

const AGAINST = {
  minutes: { other: "Minuten Arbeit und Wege", tell: tellMinutesDe },
  variety: { other: "verschiedene Gerichte am Abend", tell: (value: number) => tellNumberDe(value) },
  intake: { other: "Wert dessen, was den Referenzwerten fehlt", tell: (value: number) => tellNumberDe(value) },
} as const;

/** All that sheets, pictures and published dishes say in German. */
export const SHEET_CATALOGUE_DE: SheetCatalogue = {
  sheet: SHEET_WORDS_DE,
  ribbons: (kitchen, from, { packs, finished, wasted }) => ({
    title: `Packungsbänder: ${kitchen}, Woche vom ${FIGURES_DE.dayShort(from)}`,
    description: `${countedDe(packs, { one: "Ein Band für die eine Packung", other: `Ein Band für jede von ${packs} Packungen` })}, vom Tag, an dem sie kommt, bis zum Teller, der sie aufbraucht; ${finished} ${countedDe(finished, { one: "wird", other: "werden" })} aufgebraucht, von ${wasted} wird etwas weggeworfen. Das Band ist so dick, wie viel noch da ist; ein Ring ist ein Kochen, das davon nimmt.`,
    end: (end, rest) => (end === "wasted" ? `${rest} weggeworfen` : `${rest} übrig`),
    kind: {
      dry: "Trockenes",
      fresh: "Gemüse und Obst",
      dairy: "Milchprodukte",
      protein: "Eiweißreiches",
      fat: "Fett",
      other: "anderes",
    },
  }),
  timeline: timelineWords,
  accounts: (kitchen, currency, lines) => {
    const money = (minor: number) => FIGURES_DE.money(minor, currency);
    const told = lines.map(
      ({ name, tillMinor, platesMinor, wasteMinor }) =>
        `${name}: ausgegeben ${money(tillMinor)}, gegessen ${money(platesMinor)}, weggeworfen ${money(wasteMinor)}`,
    );
    return {
      title: `Abrechnung von ${kitchen}`,
      description: `${told.join("; ")}.`,
      money: currency,
      days: "Tage",
      bar: { planned: "geplant", spent: "ausgegeben", eaten: "gegessen", wasted: "weggeworfen" },
    };
  },
  prices: (kitchen, currency, told, line) => ({
    title: `Gesehene Preise, ${kitchen}`,
    description: told.length === 0 ? "Kein Preis mit bekannter Masse wurde gesehen." : `${told.join("; ")}.`,
    perKg: `${currency} je kg`,
    day: "gesehen am",
    line,
  }),
  frontier: (kitchen, against, plans) => ({
    title: `${kitchen}: Geld gegen ${AGAINST[against].other}`,
    description: `Pläne, die kein anderer in beidem schlägt: ${plans.join("; ")}.`,
    money: "Geld",
    other: AGAINST[against].other,
    tellOther: AGAINST[against].tell,
  }),
  tellAgainst: (against, value) => AGAINST[against].tell(value),
  publishedCost: tellPublishedCostDe,
};

function timelineWords(sheet: WorkSheet): TimelineWords {
  const dishes = sheet.dishes.map(({ title }, at) => `${letterOf(at)} ${title}`).join("; ");
  const steps = sheet.lines.flatMap((line) =>
    line.kind === "step" ? [`${tellMoment(sheet, line.startMinutes)} ${letterOf(line.dish)} ${nameStep(line)}`] : [],
  );
  return {
    title: `Ablauf: ${dishes}`,
    description: `${tellMinutesDe(sheet.serveMinutes)} vom ersten Schritt bis zum Teller. ${steps.join(", ")}, ${tellMoment(sheet, sheet.serveMinutes)} auftragen.`,
    rowName: nameRow,
    barName: (bar) => nameBar(bar, sheet),
    tick: (minutes) => tellMoment(sheet, minutes),
    legend: {
      full: "beide Hände",
      eye: "ein Auge darauf",
      held: "belegt",
      wash: "Abwasch",
      warming: "Ofen heizt",
      waiting: "wartet",
    },
  };
}

/** The ids of steps, which stand on the bars, are English. */
function nameBar({ dish, label, fill }: TimelineBar, { lines }: WorkSheet): string {
  const step = lines.find(
    (line): line is StepLine => line.kind === "step" && line.dish === dish && line.step === label,
  );
  return step === undefined ? (fill === "wash" ? "Abwasch" : label) : nameStep(step);
}

function nameStep({ stepKind }: StepLine): string {
  return STEP_KIND_WORDS_DE[stepKind];
}

function nameRow({ kind, number }: TimelineRow): string {
  if (kind === "waiting") return `${letterOf((number ?? 1) - 1)} wartet`;
  return number === undefined ? ROW_NAMES_DE[kind] : `${ROW_NAMES_DE[kind]} ${number}`;
}
