import { type CivilDate, daysBetween, toDecimalText, toKcal } from "halfloaf/quantity";
import type { FigureWords } from "halfloaf/sheet";
import { toCounted } from "../../toCounted.ts";
import { SITTING_NAMES_DE } from "../nameWordsDe.ts";

const LOCALE = "de";
const DAY_MS = 86_400_000;
const UNITS: Readonly<Record<string, string>> = { G: "g", Mg: "mg", Ug: "µg", Kj: "kJ", Kcal: "kcal" };

const COMPONENTS: Readonly<Record<string, string>> = {
  energyKcal: "Energie",
  energyKj: "Energie",
  waterG: "Wasser",
  proteinG: "Eiweiß",
  fatG: "Fett",
  saturatesG: "gesättigte Fettsäuren",
  monounsaturatesG: "einfach ungesättigte Fettsäuren",
  polyunsaturatesG: "mehrfach ungesättigte Fettsäuren",
  carbohydrateByDifferenceG: "Kohlenhydrate mit Ballaststoffen",
  carbohydrateAvailableG: "Kohlenhydrate",
  fibreG: "Ballaststoffe",
  sugarsG: "Zucker",
  freeSugarsG: "freie Zucker",
  alcoholG: "Alkohol",
  ashG: "Asche",
  sodiumMg: "Natrium",
  potassiumMg: "Kalium",
  calciumMg: "Calcium",
  ironMg: "Eisen",
  magnesiumMg: "Magnesium",
  zincMg: "Zink",
  phosphorusMg: "Phosphor",
  seleniumUg: "Selen",
  iodineUg: "Jod",
  vitaminARaeUg: "Vitamin A (RAE)",
  retinolUg: "Retinol",
  betaCaroteneUg: "Beta-Carotin",
  alphaCaroteneUg: "Alpha-Carotin",
  betaCryptoxanthinUg: "Beta-Cryptoxanthin",
  vitaminCMg: "Vitamin C",
  vitaminDUg: "Vitamin D",
  vitaminEMg: "Vitamin E",
  vitaminKUg: "Vitamin K",
  thiaminMg: "Thiamin",
  riboflavinMg: "Riboflavin",
  niacinMg: "Niacin",
  vitaminB6Mg: "Vitamin B6",
  folateFoodUg: "Folat aus Lebensmitteln",
  folicAcidUg: "Folsäure",
  folateDfeUg: "Folat (DFE)",
  vitaminB12Ug: "Vitamin B12",
  cholineMg: "Cholin",
  lysineG: "Lysin",
  alaG: "Omega-3 ALA",
  epaDhaG: "Omega-3 EPA + DHA",
  vegetablesFruitG: "Gemüse und Obst",
};

/** How sheets in German write figures. */
export const FIGURES_DE: FigureWords = {
  money: (minor, currency) => toDecimalText({ minor, currency }).replace(".", ","),
  mass: (massG) => (massG < 999.5 ? `${tellNumberDe(massG)} g` : `${tellNumberDe(massG / 1000, 3)} kg`),
  minutes: tellMinutesDe,
  percent: tellPercent,
  count: (value) => tellNumberDe(value),
  energy: (energyKj) => `${tens(energyKj)}\u00a0kJ (${tens(toKcal(energyKj))}\u00a0kcal)`,
  declared: (text) => text.replace(".", ","),
  component: (component) => COMPONENTS[component] ?? component,
  amountOf: (component, amount) => `${tellNumberDe(amount)}${unitOf(component)}`,
  day: (date) => tellDate(date, { weekday: "long", day: "numeric", month: "long", year: "numeric" }),
  // A day and its month stay on a line.
  dayShort: (date) =>
    tellDate(date, { weekday: "short", day: "numeric", month: "short" }).replace(/ (?=\S+$)/, "\u00a0"),
  sitting: (kind) => SITTING_NAMES_DE[kind],
};

/** A number with as many significant digits as a reader can use; integers stay whole. */
export function tellNumberDe(value: number, digits = 2): string {
  const whole = Math.abs(value) >= 10 ** (digits - 1) * 2;
  const options = whole ? { maximumFractionDigits: 0 } : { maximumSignificantDigits: digits };
  return new Intl.NumberFormat(LOCALE, { ...options, useGrouping: false }).format(value);
}

/** The form of a German text that goes with a number as `tellNumberDe` writes it, which from 1 on has one decimal at most. */
export const countedDe = toCounted(LOCALE);

/** Portions of a dish: "1 Portion", "2,5 Portionen". */
export function tellPortionsDe(portions: number): string {
  return `${tellNumberDe(portions)} ${countedDe(portions, { one: "Portion", other: "Portionen" })}`;
}

/** "12 Min.", from two hours on "2 Std. 30 Min.". */
export function tellMinutesDe(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 120) return `${whole} Min.`;
  const rest = whole % 60;
  return `${Math.floor(whole / 60)} Std.${rest === 0 ? "" : ` ${rest} Min.`}`;
}

/** Never 100 % where something is missing, never 0 % where something is there. */
function tellPercent(share: number): string {
  const percent = Math.round(share * 100);
  if (percent === 100 && share < 1 - 1e-9) return "99 %";
  return `${percent === 0 && share > 1e-9 ? 1 : percent} %`;
}

function tens(value: number): number {
  return Math.round(value / 10) * 10;
}

function unitOf(component: string): string {
  const unit = /(G|Mg|Ug|Kj|Kcal)$/.exec(component)?.[1];
  return unit === undefined ? "" : ` ${UNITS[unit]}`;
}

function tellDate(date: CivilDate, options: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat(LOCALE, { ...options, timeZone: "UTC" }).format(
    DAY_MS * daysBetween("1970-01-01", date),
  );
}
