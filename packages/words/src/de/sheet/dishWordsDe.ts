import type { CardSheet, CardWords, LessonWords } from "halfloaf/sheet";
import { EU_ALLERGEN_NAMES_DE, US_ALLERGEN_NAMES_DE } from "../allergenWordsDe.ts";
import { countedDe, FIGURES_DE, tellPortionsDe } from "./figuresDe.ts";

const ITEMS: Readonly<Record<Parameters<CardWords["item"]>[0], string>> = {
  energy: "Energie",
  fat: "Fett",
  saturates: "gesättigte Fettsäuren",
  carbohydrate: "Kohlenhydrate",
  sugars: "Zucker",
  fibre: "Ballaststoffe",
  protein: "Eiweiß",
  salt: "Salz",
};

/** The costing card in German. */
export const CARD_WORDS_DE: CardWords = {
  title: (dish) => dish,
  forPortions: (kitchen, portions, day) =>
    `Kalkulation von ${kitchen} für ${tellPortionsDe(portions)}, Preise vom ${day}.`,
  makings: "Was es kostet",
  food: "Lebensmittel",
  purchased: "eingekauft",
  refuse: "Abfall",
  edible: "essbar",
  cost: "Kosten",
  from: "Preis von",
  insteadOf: (food) => `statt ${food}`,
  seenAt: (pack, shop, day) => `${pack}, ${shop}${day === undefined ? ", geschätzt" : `, ${day}`}`,
  atHand: "aus den Vorräten, zu dem, was es gekostet hatte",
  noPrice: "unbekannt",
  total: "Zusammen",
  atLeast: (text) => `≥ ${text}`,
  plates: (list) => `Je Portion: ${list}.`,
  yield: (portion, all, factor) =>
    `Ausbeute: ${portion} je Portion, ${all} insgesamt, das ${factor}-Fache der Zutaten.`,
  notCosted: (foods) => `Von unbekannter Masse, in keiner Summe: ${foods}.`,
  optional: (foods) => `Nach Wunsch, in keiner Summe: ${foods}.`,
  estimated: "Einige Preise sind Schätzungen, die niemand gesehen hat.",
  shops: "Eine Portion jetzt und in jedem Laden",
  shop: "Laden",
  portion: "je Portion",
  allPortions: "alle Portionen",
  elsewhere: "von anderswo",
  cheapest: "jeweils das Billigste",
  nothing: "nichts",
  drivers: "Was die Kosten treibt",
  work: "Ablauf",
  minutes: (handsOn, elapsed, ahead) =>
    ended(
      `${handsOn} Arbeit, fertig in ${elapsed}${ahead === undefined ? "" : `; ${ahead} davor, Stunden vorher begonnen`}`,
    ),
  declaration: "Nährwertdeklaration",
  per100G: "je 100 g",
  perPortion: (mass) => `je Portion (${mass})`,
  item: (item) => ITEMS[item],
  ofWhich: (item) => `davon ${ITEMS[item]}`,
  unknown: "unbekannt",
  declarationNote: (isRetained) =>
    `Reihenfolge und Rundung nach Verordnung (EU) 1169/2011, Anhang XV, und dem Leitfaden der Kommission vom Dezember 2012. ${isRetained ? "Kochverluste sind abgezogen." : "Werte der rohen Zutaten."} ≥: mindestens so viel, da ein Teil unbekannt ist. Zutaten nach Geschmack oder Wunsch sind nicht enthalten.`,
  ingredients: "Zutaten, nach Masse beim Zubereiten",
  contains: (allergens) => `enthält ${allergens}`,
  allergens: "Allergene",
  allergenNames: { eu: EU_ALLERGEN_NAMES_DE, us: US_ALLERGEN_NAMES_DE },
  allergensByLaw: (law) => (law === "eu" ? "14er-Liste der EU und des Vereinigten Königreichs" : "9er-Liste der USA"),
  none: "keine laut Tabellen; die Etiketten der Packungen gehen vor",
  possibly: (allergens) => `mit Zutaten nach Wunsch oder im Tausch auch: ${allergens}`,
  keeps: (fridgeDays, freezerDays, authority) =>
    `${fridgeDays === 0 ? "Nur am Tag der Zubereitung gut" : `Hält ${tellDays(fridgeDays)} im Kühlschrank`}${freezerDays === undefined ? "" : `, ${tellDays(freezerDays)} im Gefrierfach`} [${authority}].`,
};

/** The page for teaching in German. */
export const LESSON_WORDS_DE: LessonWords = {
  title: (dish) => dish,
  dayTitle: (kitchen, day) => `Was ein Tag kostet: ${kitchen}, ${day}`,
  intro: (portions, minutes) => `${tellPortionsDe(portions)}, vom ersten Schritt an in ${minutes} auf dem Tisch.`,
  makings: "Zutaten",
  method: "Zubereitung",
  step: (minutes, isHandsFree) => (isHandsFree ? `(${minutes}, von selbst)` : `(${minutes})`),
  ahead: "Stunden vorher",
  sums: "Die Summen, aufgeklappt",
  batchSum: (cost, plates) =>
    `Was hineinkam, kostete ${cost}: ${plates}. Eine aufgeklappte Zeile zeigt, woher das kommt.`,
  plate: (name, cost) => `${name}: ${cost}`,
  portion: (number) => `Portion ${number}`,
  later: "Für spätere Wochen gekocht",
  packSum: "Was alles zusammen jeder Packung entnahm",
  pack: "Packung",
  price: "gesehener Preis",
  taken: "entnommen",
  cost: "Kosten",
  together: "Zusammen",
  ofPack: (mass, cost) => `(von ${mass} für ${cost})`,
};

/** What a dish costs, as plain text for whoever reads it elsewhere: with its day, its kitchen and how sure it is. */
export function tellPublishedCostDe(card: CardSheet): string {
  const { platesMinor, totalMinor, portions, currency, on, kitchen, atLeast, estimate } = card;
  const tell = (minor: number) => `${FIGURES_DE.money(minor, currency)} ${currency}`;
  const all = `${tell(totalMinor)} für ${tellPortionsDe(portions)}`;
  const sure = estimate ? ", zum Teil geschätzt" : "";
  return `${atLeast ? "mindestens " : ""}${tell(platesMinor[0] ?? 0)} je Portion, ${all}, zu Preisen von ${kitchen} am ${on}${sure}`;
}

/** A sentence with its full stop, which a short form at its end, as "5 Min.", has already. */
function ended(sentence: string): string {
  return sentence.endsWith(".") ? sentence : `${sentence}.`;
}

function tellDays(days: number): string {
  return countedDe(days, { one: "1 Tag", other: `${days} Tage` });
}
