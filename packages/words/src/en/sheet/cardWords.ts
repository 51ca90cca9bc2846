import { type AllergenName, EU_ALLERGEN_NAMES, US_ALLERGEN_NAMES } from "halfloaf/safety";
import type { CardWords } from "halfloaf/sheet";
import { tellCount, tellPortions } from "../amountWords.ts";

const ITEMS: Readonly<Record<Parameters<CardWords["item"]>[0], string>> = {
  energy: "Energy",
  fat: "Fat",
  saturates: "saturates",
  carbohydrate: "Carbohydrate",
  sugars: "sugars",
  fibre: "Fibre",
  protein: "Protein",
  salt: "Salt",
};

/** The costing card in English. */
export const CARD_WORDS: CardWords = {
  title: (dish) => dish,
  forPortions: (kitchen, portions, day) =>
    `Costing card of ${kitchen} for ${tellPortions(portions)}, prices of ${day}.`,
  makings: "What it costs",
  food: "food",
  purchased: "as purchased",
  refuse: "refuse",
  edible: "edible",
  cost: "cost",
  from: "price from",
  insteadOf: (food) => `in place of ${food}`,
  seenAt: (pack, shop, day) => `${pack}, ${shop}${day === undefined ? ", estimate" : `, ${day}`}`,
  atHand: "the stores, at what it had cost",
  noPrice: "unknown",
  total: "Together",
  atLeast: (text) => `≥ ${text}`,
  plates: (list) => `A portion each: ${list}.`,
  yield: (portion, all, factor) => `Yield: ${portion} a portion, ${all} in all, ${factor} times what goes in.`,
  notCosted: (foods) => `Of unknown mass, in no sum: ${foods}.`,
  optional: (foods) => `Optional, in no sum: ${foods}.`,
  estimated: "Some of these prices are estimates that nobody has seen.",
  shops: "A portion now and at each shop",
  shop: "shop",
  portion: "a portion",
  allPortions: "all portions",
  elsewhere: "from elsewhere",
  cheapest: "cheapest of each",
  nothing: "nothing",
  drivers: "What drives the cost",
  work: "Order of work",
  minutes: (handsOn, elapsed, ahead) =>
    `${handsOn} hands-on, ready in ${elapsed}${ahead === undefined ? "" : `; ${ahead} ahead of that, begun hours before`}.`,
  declaration: "Nutrition declaration",
  per100G: "per 100 g",
  perPortion: (mass) => `per portion (${mass})`,
  item: (item) => ITEMS[item],
  ofWhich: (item) => `of which ${ITEMS[item]}`,
  unknown: "unknown",
  declarationNote: (isRetained) =>
    `Order and rounding by Regulation (EU) 1169/2011, Annex XV, and the Commission's guidance of December 2012. ${isRetained ? "Losses of cooking are taken off." : "Figures of the raw makings."} ≥: at least this, since a part is not known. What is to taste or optional is not in it.`,
  ingredients: "Ingredients, by mass when they go in",
  contains: (allergens) => `contains ${allergens}`,
  allergens: "Allergens",
  allergenNames: { eu: namesOf(EU_ALLERGEN_NAMES), us: namesOf(US_ALLERGEN_NAMES) },
  allergensByLaw: (law) => (law === "eu" ? "EU and UK list of 14" : "US list of 9"),
  none: "none by the tables; the labels of the packs come first",
  possibly: (allergens) => `with what is optional or may stand in also: ${allergens}`,
  keeps: (fridgeDays, freezerDays, authority) =>
    `Keeps ${fridgeDays === 0 ? "no longer than the day it is made" : `${tellCount(fridgeDays, "day")} in the fridge`}${freezerDays === undefined ? "" : `, ${tellCount(freezerDays, "day")} in the freezer`} [${authority}].`,
};

function namesOf<Allergen extends string>(list: Readonly<Record<Allergen, AllergenName>>): Record<Allergen, string> {
  const names = Object.entries<AllergenName>(list).map(([allergen, { name }]) => [allergen, name]);
  return Object.fromEntries(names) as Record<Allergen, string>;
}
