import type { Nutrient } from "halfloaf/food";
import { tellNumber } from "./amountWords.ts";

const NAMES: Readonly<Record<Nutrient | "vegetablesFruitG", string>> = {
  energyKcal: "energy",
  energyKj: "energy",
  waterG: "water",
  proteinG: "protein",
  fatG: "fat",
  saturatesG: "saturates",
  monounsaturatesG: "monounsaturates",
  polyunsaturatesG: "polyunsaturates",
  carbohydrateByDifferenceG: "carbohydrate, fibre included",
  carbohydrateAvailableG: "carbohydrate",
  fibreG: "fibre",
  sugarsG: "sugars",
  freeSugarsG: "free sugars",
  alcoholG: "alcohol",
  ashG: "ash",
  sodiumMg: "sodium",
  potassiumMg: "potassium",
  calciumMg: "calcium",
  ironMg: "iron",
  magnesiumMg: "magnesium",
  zincMg: "zinc",
  phosphorusMg: "phosphorus",
  seleniumUg: "selenium",
  iodineUg: "iodine",
  vitaminARaeUg: "vitamin A (RAE)",
  retinolUg: "retinol",
  betaCaroteneUg: "beta-carotene",
  alphaCaroteneUg: "alpha-carotene",
  betaCryptoxanthinUg: "beta-cryptoxanthin",
  vitaminCMg: "vitamin C",
  vitaminDUg: "vitamin D",
  vitaminEMg: "vitamin E",
  vitaminKUg: "vitamin K",
  thiaminMg: "thiamin",
  riboflavinMg: "riboflavin",
  niacinMg: "niacin",
  vitaminB6Mg: "vitamin B6",
  folateFoodUg: "folate from food",
  folicAcidUg: "folic acid",
  folateDfeUg: "folate (DFE)",
  vitaminB12Ug: "vitamin B12",
  cholineMg: "choline",
  lysineG: "lysine",
  alaG: "omega-3 ALA",
  epaDhaG: "omega-3 EPA + DHA",
  vegetablesFruitG: "vegetables and fruit",
};

const UNITS: Readonly<Record<string, string>> = { G: "g", Mg: "mg", Ug: "µg", Kj: "kJ", Kcal: "kcal" };

/** What a component is called; one that is not known by its own name. */
export function tellComponent(component: string): string {
  return NAMES[component as Nutrient] ?? component;
}

/** An amount of a component with the unit its name ends with: "8.3 mg". */
export function tellAmountOf(component: string, amount: number): string {
  return `${tellNumber(amount)}${unitOf(component)}`;
}

/** A figure as its table prints it, so that two that differ never look alike: to four digits, with the unit. */
export function tellFigureOf(component: string, figure: number): string {
  return `${Number(figure.toPrecision(4))}${unitOf(component)}`;
}

function unitOf(component: string): string {
  const unit = /(G|Mg|Ug|Kj|Kcal)$/.exec(component)?.[1];
  return unit === undefined ? "" : ` ${UNITS[unit]}`;
}
