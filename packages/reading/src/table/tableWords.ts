import { NUTRIENT_NAMES, NUTRIENTS, type Nutrient } from "halfloaf/food";
import { foldText } from "./nearness.ts";
import type { TableMapping } from "./tableMapping.ts";

/** A column of a composition table that holds no figure of a component, by what a mapping calls it. */
export type TableColumn = keyof TableMapping["columns"];

/**
 * Words by which the header of a composition table names its columns, folded, in English and German. **Source**: common
 * practice, no source.
 */
export const TABLE_COLUMN_WORDS: Readonly<Record<TableColumn, readonly string[]>> = {
  id: [
    "id",
    "no",
    "nr",
    "number",
    "food number",
    "food code",
    "food id",
    "code",
    "key",
    "nummer",
    "schlussel",
    "kennung",
  ],
  name: [
    "food",
    "food name",
    "name",
    "description",
    "food description",
    "english name",
    "lebensmittel",
    "bezeichnung",
    "produkt",
    "beschreibung",
  ],
  date: ["as of", "date", "published", "updated", "stand", "datum"],
  formerNumber: ["former number", "old number", "ndb no", "ndb number", "fruhere nummer"],
  densityGPerMl: ["density", "specific gravity", "dichte"],
  portionG: ["portion size", "serving size", "portion mass", "mass of a portion", "portionsgroße", "portionsgrosse"],
};

/** Words by component, beside the tags of INFOODS, folded likewise. **Source**: common practice, no source. */
const WORDS: Readonly<Record<Nutrient, readonly string[]>> = {
  energyKcal: ["energy", "energie", "brennwert", "calories", "kilocalories", "kilokalorien"],
  energyKj: ["energy", "energie", "brennwert", "kilojoules", "kilojoule"],
  waterG: ["water", "moisture", "wasser"],
  proteinG: ["protein", "proteins", "eiweiß", "eiweiss", "protein total"],
  fatG: ["fat", "total fat", "fat total", "lipids", "lipid", "total lipid", "fett", "fett gesamt"],
  saturatesG: [
    "saturates",
    "saturated fat",
    "saturated fatty acids",
    "fatty acids saturated",
    "fat saturated",
    "of which saturates",
    "gesattigte fettsauren",
    "gesattigte",
    "davon gesattigte fettsauren",
  ],
  monounsaturatesG: [
    "monounsaturates",
    "monounsaturated fatty acids",
    "fatty acids monounsaturated",
    "einfach ungesattigte fettsauren",
  ],
  polyunsaturatesG: [
    "polyunsaturates",
    "polyunsaturated fatty acids",
    "fatty acids polyunsaturated",
    "mehrfach ungesattigte fettsauren",
  ],
  carbohydrateByDifferenceG: [
    "carbohydrate by difference",
    "total carbohydrate",
    "carbohydrate total",
    "kohlenhydrate gesamt",
    "kohlenhydrate mit ballaststoffen",
  ],
  carbohydrateAvailableG: [
    "carbohydrate",
    "carbohydrates",
    "available carbohydrate",
    "carbohydrate available",
    "kohlenhydrate",
    "kohlenhydrate verwertbar",
    "verwertbare kohlenhydrate",
  ],
  fibreG: ["fibre", "fiber", "dietary fibre", "dietary fiber", "total dietary fibre", "ballaststoffe", "ballaststoff"],
  sugarsG: ["sugars", "sugar", "total sugars", "of which sugars", "zucker", "davon zucker", "zucker gesamt"],
  freeSugarsG: ["free sugars", "freie zucker"],
  alcoholG: ["alcohol", "ethanol", "alkohol"],
  ashG: ["ash", "asche", "rohasche"],
  sodiumMg: ["sodium", "natrium", "salt", "salz", "salt equivalent", "kochsalz"],
  potassiumMg: ["potassium", "kalium"],
  calciumMg: ["calcium", "kalzium"],
  ironMg: ["iron", "eisen"],
  magnesiumMg: ["magnesium"],
  zincMg: ["zinc", "zink"],
  phosphorusMg: ["phosphorus", "phosphor"],
  seleniumUg: ["selenium", "selen"],
  iodineUg: ["iodine", "jod", "iodid", "jodid"],
  vitaminARaeUg: ["vitamin a", "vitamin a rae", "retinol activity equivalents"],
  retinolUg: ["retinol"],
  betaCaroteneUg: ["beta carotene", "carotene beta", "beta carotin"],
  alphaCaroteneUg: ["alpha carotene", "carotene alpha", "alpha carotin"],
  betaCryptoxanthinUg: ["beta cryptoxanthin", "cryptoxanthin beta"],
  vitaminCMg: ["vitamin c", "ascorbic acid", "ascorbinsaure"],
  vitaminDUg: ["vitamin d"],
  vitaminEMg: ["vitamin e", "alpha tocopherol"],
  vitaminKUg: ["vitamin k", "vitamin k 1", "phylloquinone"],
  thiaminMg: ["thiamin", "thiamine", "vitamin b 1"],
  riboflavinMg: ["riboflavin", "vitamin b 2"],
  niacinMg: ["niacin"],
  vitaminB6Mg: ["vitamin b 6", "pyridoxine", "pyridoxin"],
  folateFoodUg: ["folate food", "food folate", "folate from food"],
  folicAcidUg: ["folic acid", "folsaure"],
  folateDfeUg: ["folate", "folates", "folate dfe", "dietary folate equivalents", "folat", "folat aquivalente"],
  vitaminB12Ug: ["vitamin b 12", "cobalamin"],
  cholineMg: ["choline", "cholin"],
  lysineG: ["lysine", "lysin"],
  alaG: ["alpha linolenic acid", "omega 3 ala", "alpha linolensaure"],
  epaDhaG: ["epa and dha", "epa dha", "epa + dha"],
};

/** Words by which a header names each component. */
export const COMPONENT_WORDS: Readonly<Record<Nutrient, readonly string[]>> = Object.fromEntries(
  NUTRIENT_NAMES.map((name) => [name, [...WORDS[name], foldText(NUTRIENTS[name].tag.replaceAll("_", " "))]]),
) as unknown as Readonly<Record<Nutrient, readonly string[]>>;

/** Words for the salt that sodium is reckoned from. */
export const SALT_WORDS: readonly string[] = ["salt", "salz", "salt equivalent", "kochsalz"];

/**
 * What tables write in place of a figure: a trace, which is next to nothing, and what is not known. **Source**: common
 * practice, no source.
 */
export const CELL_WORDS: TableMapping["words"] = [
  ...["tr", "tr.", "trace", "traces", "Sp.", "Spur", "Spuren"].map((word) => ({ word, means: "zero" as const })),
  ...["-", "–", "—", "*", "n", "nd", "n.d.", "na", "n/a", "n.a.", "k.A.", "k. A.", "unknown", "unbekannt"].map(
    (word) => ({
      word,
      means: "unknown" as const,
    }),
  ),
];

/** Signs that tables put around a figure without changing it. */
export const CELL_MARKS = "()[]*";
