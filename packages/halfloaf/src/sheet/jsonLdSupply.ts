import { type Making, scaleAmount } from "../dish/index.ts";
import { type English, type FoodTable, foodName } from "../food/index.ts";
import { UNITS_IN_TRADE } from "./commonCodes.ts";
import { type JsonLd, ownProperty } from "./ownProperty.ts";

type Chosen = Pick<Making, "food" | "amount" | "as">;

/** In what a making is told: English of a kind, or German. */
export interface MakingSpeech {
  readonly english: English;
  /** BCP 47; absent = English. */
  readonly language?: string;
}

const PHRASES = {
  en: { or: "or", toTaste: "to taste", optional: "optional" },
  de: { or: "oder", toTaste: "nach Geschmack", optional: "nach Wunsch" },
} as const;

/** A making as a line to be read: amount, so many times as written, food, how it is made ready, what may stand in for it. */
export function toIngredient(making: Making, foods: FoodTable, speech: MakingSpeech, times = 1): string {
  const phrases = PHRASES[isGerman(speech) ? "de" : "en"];
  const phrase = (chosen: Chosen): string =>
    toPhrase({ ...chosen, amount: scaleAmount(chosen.amount, times) }, foods, speech);
  const others = making.alternatives.map((each) => `${phrases.or} ${phrase(each)}`);
  return [
    [phrase(making), ...others].join(" "),
    ...(making.cut === undefined ? [] : [making.cut]),
    ...(making.amount === "to-taste" ? [phrases.toTaste] : []),
    ...(making.optional ? [phrases.optional] : []),
  ].join(", ");
}

/** A making for programs, as schema.org's HowToSupply; how it is handled stands in `additionalProperty`. */
export function jsonLdSupply(making: Making, foods: FoodTable, speech: MakingSpeech): JsonLd {
  return {
    "@type": "HowToSupply",
    name: nameOf(making.food, foods, speech),
    ...quantity("requiredQuantity", making.amount),
    additionalProperty: [
      ownProperty("food", making.food),
      ...(making.as === undefined ? [] : [ownProperty("as", making.as)]),
      ...(making.cut === undefined ? [] : [ownProperty("cut", making.cut)]),
      ...(making.retention === undefined ? [] : [ownProperty("retention", making.retention)]),
      ...(making.optional ? [ownProperty("optional", true)] : []),
      ...making.alternatives.map((each) =>
        ownProperty("alternative", each.food, {
          name: nameOf(each.food, foods, speech),
          ...quantity("valueReference", each.amount),
          ...(each.as === undefined ? {} : { additionalProperty: [ownProperty("as", each.as)] }),
        }),
      ),
    ],
  };
}

function toPhrase({ food, amount }: Chosen, foods: FoodTable, speech: MakingSpeech): string {
  const name = nameOf(food, foods, speech);
  if (amount === "to-taste") return name;
  const figures = "value" in amount ? `${amount.value}` : `${amount.from}-${amount.to}`;
  const value = tellFigures(figures, speech);
  const unit = UNITS_IN_TRADE[amount.unit];
  const word =
    amount.unit === "piece" ? (amount.size ?? "") : ((isGerman(speech) ? unit.german : undefined) ?? unit.word);
  return [value, word, name].filter((part) => part !== "").join(" ");
}

function nameOf(food: string, foods: FoodTable, { english, language }: MakingSpeech): string {
  return foodName(foods.get(food), english, language) ?? food;
}

/** Figures with the decimal sign of the language. */
export function tellFigures(figures: string, speech: Pick<MakingSpeech, "language">): string {
  return isGerman(speech) ? figures.replaceAll(".", ",") : figures;
}

function isGerman({ language = "en" }: Pick<MakingSpeech, "language">): boolean {
  return /^de\b/i.test(language);
}

/** The amount with its UCUM code as the text of the unit, since codes of trade don't tell one spoon from another. */
function quantity(key: string, amount: Making["amount"]): JsonLd {
  if (amount === "to-taste") return {};
  const size: JsonLd =
    "size" in amount && amount.size !== undefined ? { additionalProperty: [ownProperty("size", amount.size)] } : {};
  return {
    [key]: {
      "@type": "QuantitativeValue",
      ...("value" in amount ? { value: amount.value } : { minValue: amount.from, maxValue: amount.to }),
      unitCode: UNITS_IN_TRADE[amount.unit].code,
      unitText: amount.unit,
      ...size,
    },
  };
}
