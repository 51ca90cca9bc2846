/**
 * The components of the food table, in the order of its columns.
 *
 * Every figure is per 100 g of edible portion, in the unit the name ends with (kJ, kcal, g, mg, ug).
 * `tag` is the INFOODS component identifier (FAO/INFOODS tagnames), `sr` the nutrient number of the
 * USDA National Nutrient Database for Standard Reference, Release 28, where there is one.
 *
 * `carbohydrateByDifferenceG` includes fibre; `carbohydrateAvailableG` does not. They are never mixed.
 */
export const NUTRIENTS = {
  energyKcal: { unit: "kcal", tag: "ENERC_KCAL", sr: "208" },
  energyKj: { unit: "kJ", tag: "ENERC", sr: "268" },
  waterG: { unit: "g", tag: "WATER", sr: "255" },
  proteinG: { unit: "g", tag: "PROCNT", sr: "203" },
  fatG: { unit: "g", tag: "FAT", sr: "204" },
  saturatesG: { unit: "g", tag: "FASAT", sr: "606" },
  monounsaturatesG: { unit: "g", tag: "FAMS", sr: "645" },
  polyunsaturatesG: { unit: "g", tag: "FAPU", sr: "646" },
  carbohydrateByDifferenceG: { unit: "g", tag: "CHOCDF", sr: "205" },
  carbohydrateAvailableG: { unit: "g", tag: "CHOAVLDF", sr: null },
  fibreG: { unit: "g", tag: "FIBTG", sr: "291" },
  sugarsG: { unit: "g", tag: "SUGAR", sr: "269" },
  freeSugarsG: { unit: "g", tag: "SUGFREE", sr: null },
  alcoholG: { unit: "g", tag: "ALC", sr: "221" },
  ashG: { unit: "g", tag: "ASH", sr: "207" },
  sodiumMg: { unit: "mg", tag: "NA", sr: "307" },
  potassiumMg: { unit: "mg", tag: "K", sr: "306" },
  calciumMg: { unit: "mg", tag: "CA", sr: "301" },
  ironMg: { unit: "mg", tag: "FE", sr: "303" },
  magnesiumMg: { unit: "mg", tag: "MG", sr: "304" },
  zincMg: { unit: "mg", tag: "ZN", sr: "309" },
  phosphorusMg: { unit: "mg", tag: "P", sr: "305" },
  seleniumUg: { unit: "ug", tag: "SE", sr: "317" },
  iodineUg: { unit: "ug", tag: "ID", sr: null },
  vitaminARaeUg: { unit: "ug", tag: "VITA_RAE", sr: "320" },
  retinolUg: { unit: "ug", tag: "RETOL", sr: "319" },
  betaCaroteneUg: { unit: "ug", tag: "CARTB", sr: "321" },
  alphaCaroteneUg: { unit: "ug", tag: "CARTA", sr: "322" },
  betaCryptoxanthinUg: { unit: "ug", tag: "CRYPX", sr: "334" },
  vitaminCMg: { unit: "mg", tag: "VITC", sr: "401" },
  vitaminDUg: { unit: "ug", tag: "VITD", sr: "328" },
  vitaminEMg: { unit: "mg", tag: "TOCPHA", sr: "323" },
  vitaminKUg: { unit: "ug", tag: "VITK1", sr: "430" },
  thiaminMg: { unit: "mg", tag: "THIA", sr: "404" },
  riboflavinMg: { unit: "mg", tag: "RIBF", sr: "405" },
  niacinMg: { unit: "mg", tag: "NIA", sr: "406" },
  vitaminB6Mg: { unit: "mg", tag: "VITB6A", sr: "415" },
  folateFoodUg: { unit: "ug", tag: "FOLFD", sr: "432" },
  folicAcidUg: { unit: "ug", tag: "FOLAC", sr: "431" },
  folateDfeUg: { unit: "ug", tag: "FOLDFE", sr: "435" },
  vitaminB12Ug: { unit: "ug", tag: "VITB12", sr: "418" },
  cholineMg: { unit: "mg", tag: "CHOLN", sr: "421" },
  lysineG: { unit: "g", tag: "LYS", sr: "505" },
  alaG: { unit: "g", tag: "F18D3N3", sr: "851" },
  epaDhaG: { unit: "g", tag: "F20D5+F22D6", sr: null },
} as const;

/** The name of a component of the food table; it ends with its unit. */
export type Nutrient = keyof typeof NUTRIENTS;

/** All component names, in the column order of the composition tables. */
export const NUTRIENT_NAMES = Object.keys(NUTRIENTS) as readonly Nutrient[];

/** Amounts of components; an absent key is an unknown amount, never zero. */
export type Composition = Readonly<Partial<Record<Nutrient, number>>>;
