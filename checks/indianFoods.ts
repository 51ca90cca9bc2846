import type { Nutrient } from "halfloaf/food";

/** The components compared: our name, the column of the Indian table, and what turns its grams into our unit. */
export const COMPARED = {
  energyKj: { column: "enerc", perUnit: 1 },
  proteinG: { column: "protcnt", perUnit: 1 },
  fatG: { column: "fatce", perUnit: 1 },
  carbohydrateAvailableG: { column: "choavldf", perUnit: 1 },
  fibreG: { column: "fibtg", perUnit: 1 },
  potassiumMg: { column: "k", perUnit: 1000 },
  magnesiumMg: { column: "mg", perUnit: 1000 },
  phosphorusMg: { column: "p", perUnit: 1000 },
  ironMg: { column: "fe", perUnit: 1000 },
  zincMg: { column: "zn", perUnit: 1000 },
  calciumMg: { column: "ca", perUnit: 1000 },
} as const satisfies Partial<Record<Nutrient, { column: string; perUnit: number }>>;

export type Compared = keyof typeof COMPARED;

/**
 * Natural spread: how far two sound tables may lie apart for one raw food, as a factor either way, or as a difference
 * so small that factors say nothing. Wide where soil (minerals), ripeness (sugars) or the method (fibre) decide.
 * Vitamins are left out: they fade with storage, and the Indian B vitamins are printed to one or two digits.
 * **Source**: common practice, no source.
 */
export const NATURAL_SPREAD: Readonly<Record<Compared, { readonly factor: number; readonly difference: number }>> = {
  energyKj: { factor: 1.25, difference: 40 },
  proteinG: { factor: 1.4, difference: 0.6 },
  fatG: { factor: 2, difference: 0.5 },
  carbohydrateAvailableG: { factor: 1.5, difference: 2.5 },
  fibreG: { factor: 2, difference: 1.5 },
  potassiumMg: { factor: 1.5, difference: 20 },
  magnesiumMg: { factor: 2, difference: 10 },
  phosphorusMg: { factor: 1.75, difference: 15 },
  ironMg: { factor: 2.5, difference: 0.5 },
  zincMg: { factor: 2, difference: 0.2 },
  calciumMg: { factor: 2.5, difference: 20 },
};

const SUGAR = "sugars, and energy with them, differ by cultivar and ripeness";
const FIBRE = "the Indian fibre is the higher in most foods, likely by its method";
const FIBRE_ENERGY = "our source counts fibre as carbohydrate, the Indian table gives it no energy";
const REMAINDER = "a small remainder by difference takes up what water, protein, fat and fibre differ";
const SOIL = "minerals of plants follow soil and feeding, and iron the dust that clings";
const DRIER = "the Indian sample holds less water";
const MILLED = "likely milled to another degree";
const DARK_CHICKPEA = "the Indian row is the small dark kind, whose thick coat holds more fibre and minerals";
const MAGNESIUM_LOW = "earlier releases of our source print more than 100 mg (from memory)";
const NO_CARBOHYDRATE = "the Indian table sets carbohydrate of animal foods at 0";
const UNDER_SKIN = "skinless, yet with 9 to 14 g of fat: likely analysed with the fat under the skin";
const LEG_FAULT = "a fault of the Indian table: its own protein and fat give half the energy it prints";
const OIL_FAULT = "a fault of the Indian table: it prints 0 for the energy of every oil";
const NOT_KNOWN = "reason not known";

/** A food of ours, the code of the same food in the Indian table, and what lies outside the natural spread, with why. */
export interface FoodPair {
  readonly food: string;
  readonly code: string;
  readonly apart: Readonly<Partial<Record<Compared, string>>>;
}

function pair(food: string, code: string, apart: FoodPair["apart"] = {}): FoodPair {
  return { food, code, apart };
}

/**
 * Raw foods that both tables hold, paired by hand: same kind, same part, same state. Our chicken leg alone has its skin
 * on where the Indian one is skinless; it stays as a witness to the fault of that row.
 * **Source** of the codes: Longvah et al., Indian Food Composition Tables 2017, National Institute of Nutrition.
 */
export const PAIRS: readonly FoodPair[] = [
  pair("rice-brown", "A013", { fatG: MILLED }),
  pair("rice-white-long", "A015", { fibreG: FIBRE, calciumMg: SOIL }),
  pair("rice-parboiled", "A014", { fibreG: FIBRE, calciumMg: SOIL }),
  pair("flour-plain", "A018"),
  pair("flour-wholemeal", "A019"),
  pair("bulgur", "A021"),
  pair("quinoa", "A009", { fibreG: FIBRE, phosphorusMg: SOIL, calciumMg: SOIL }),
  pair("pearl-barley", "A004"),
  pair("semolina", "A022", { fibreG: MILLED, potassiumMg: MILLED, zincMg: MILLED }),
  pair("chickpeas-dried", "B002", {
    energyKj: FIBRE_ENERGY,
    fibreG: DARK_CHICKPEA,
    magnesiumMg: DARK_CHICKPEA,
    calciumMg: DARK_CHICKPEA,
  }),
  pair("chana-dal", "B001"),
  pair("urad-dal-dried", "B004"),
  pair("black-eyed-beans-dried", "B006"),
  pair("mung-beans-dried", "B011"),
  pair("lentils-brown-dried", "B014", { magnesiumMg: MAGNESIUM_LOW }),
  pair("lentils-red-dried", "B013", { fatG: NOT_KNOWN }),
  pair("split-peas-green", "B017", { magnesiumMg: MAGNESIUM_LOW }),
  pair("kidney-beans-dried", "B020"),
  pair("pigeon-peas-dried", "B022", { energyKj: FIBRE_ENERGY }),
  pair("soya-beans-dried", "B025", { carbohydrateAvailableG: FIBRE, fibreG: FIBRE }),
  pair("brussels-sprouts", "C012", { potassiumMg: SOIL }),
  pair("cabbage-white", "C015"),
  pair("cabbage-red", "C016", { ironMg: SOIL }),
  pair("spinach", "C033"),
  pair("parsley", "C028", { energyKj: DRIER, proteinG: DRIER, carbohydrateAvailableG: DRIER }),
  pair("lettuce-round", "C025", { magnesiumMg: SOIL, zincMg: SOIL }),
  pair("cabbage-spring-greens", "C014", { phosphorusMg: SOIL, ironMg: SOIL }),
  pair("chinese-leaf", "C013"),
  pair("pak-choi", "C027", { magnesiumMg: SOIL, ironMg: SOIL }),
  pair("aubergine", "D031"),
  pair("pepper-green", "D033"),
  pair("pepper-red", "D034", { energyKj: SUGAR }),
  pair("pepper-yellow", "D035", { carbohydrateAvailableG: SUGAR, phosphorusMg: SOIL }),
  pair("cauliflower", "D036"),
  pair("celery", "D037", { phosphorusMg: SOIL, ironMg: SOIL }),
  pair("cucumber", "D043", { fibreG: FIBRE }),
  pair("green-beans", "D050", { potassiumMg: SOIL }),
  pair("okra", "D056"),
  pair("spring-onion", "D058", { fibreG: FIBRE, magnesiumMg: SOIL, zincMg: SOIL }),
  pair("peas-fresh", "D061", { phosphorusMg: SOIL }),
  pair("pumpkin-squash", "D066", { fibreG: FIBRE, phosphorusMg: SOIL, zincMg: SOIL }),
  pair("tomato", "D075"),
  pair("courgette", "D077", { phosphorusMg: SOIL }),
  pair("kohlrabi", "D053", { energyKj: FIBRE_ENERGY }),
  pair("apple", "E001"),
  pair("avocado", "E007", { proteinG: NOT_KNOWN }),
  pair("banana", "E012"),
  pair("cherries", "E014"),
  pair("dates", "E017", { ironMg: SOIL, zincMg: SOIL }),
  pair("fig-fresh", "E020", { proteinG: NOT_KNOWN }),
  pair("grapes", "E026", { energyKj: SUGAR }),
  pair("guava", "E028", {
    energyKj: SUGAR,
    proteinG: NOT_KNOWN,
    fatG: NOT_KNOWN,
    carbohydrateAvailableG: SUGAR,
  }),
  pair("mango", "E036", { energyKj: SUGAR, carbohydrateAvailableG: SUGAR }),
  pair("melon", "E045", { energyKj: SUGAR, carbohydrateAvailableG: SUGAR }),
  pair("orange", "E047", { energyKj: FIBRE_ENERGY, ironMg: SOIL }),
  pair("papaya", "E049", { energyKj: SUGAR, carbohydrateAvailableG: SUGAR }),
  pair("peach", "E050"),
  pair("pear", "E051", { energyKj: SUGAR }),
  pair("pineapple", "E053", { fibreG: FIBRE }),
  pair("plum", "E054"),
  pair("pomegranate", "E055", { energyKj: SUGAR, fatG: NOT_KNOWN }),
  pair("strawberries", "E063"),
  pair("watermelon", "E065", { energyKj: SUGAR, carbohydrateAvailableG: SUGAR }),
  pair("raisins", "E057", { ironMg: SOIL }),
  pair("beetroot", "F001"),
  pair("carrot", "F002"),
  pair("potato", "F006"),
  pair("radish", "F011", { energyKj: DRIER, carbohydrateAvailableG: DRIER, magnesiumMg: DRIER }),
  pair("mooli", "F010", { energyKj: DRIER, carbohydrateAvailableG: DRIER }),
  pair("sweet-potato", "F014", { energyKj: DRIER }),
  pair("chili-green-fresh", "G008", { fatG: NOT_KNOWN, fibreG: FIBRE }),
  pair("coriander-leaf", "G009", { proteinG: DRIER, magnesiumMg: SOIL, ironMg: SOIL }),
  pair("garlic", "G011", { fibreG: FIBRE, calciumMg: SOIL }),
  pair("ginger", "G014", { energyKj: FIBRE_ENERGY, carbohydrateAvailableG: FIBRE, fibreG: FIBRE, ironMg: SOIL }),
  pair("mint", "G016", { proteinG: NOT_KNOWN }),
  pair("onion", "G017"),
  pair("coriander-seed", "G024"),
  pair("cumin-seed", "G025", { fibreG: FIBRE, ironMg: SOIL }),
  pair("black-pepper", "G031"),
  pair("turmeric", "G033"),
  pair("almonds", "H001", { carbohydrateAvailableG: REMAINDER }),
  pair("cashews", "H005"),
  pair("desiccated-coconut", "H006"),
  pair("sesame-seeds", "H011"),
  pair("peanuts-raw", "H012", { carbohydrateAvailableG: REMAINDER }),
  pair("mustard-seed", "H013"),
  pair("linseed", "H014", { carbohydrateAvailableG: REMAINDER }),
  pair("sunflower-seeds", "H020", { carbohydrateAvailableG: REMAINDER }),
  pair("walnuts", "H021"),
  pair("mushroom-white", "J001", { fibreG: FIBRE, zincMg: SOIL }),
  pair("milk-whole", "L002"),
  pair("egg", "M001"),
  pair("egg-white", "M002"),
  pair("egg-yolk", "M003", { carbohydrateAvailableG: NO_CARBOHYDRATE }),
  pair("chicken-thigh-boned", "N002", { energyKj: UNDER_SKIN, fatG: UNDER_SKIN }),
  pair("chicken-breast", "N003", { energyKj: UNDER_SKIN, fatG: UNDER_SKIN }),
  pair("chicken-leg", "N001", { energyKj: LEG_FAULT }),
  pair("chicken-liver", "N005"),
  pair("beef-liver", "O032", { carbohydrateAvailableG: NO_CARBOHYDRATE, ironMg: NOT_KNOWN }),
  pair("pork-shoulder", "O048"),
  pair("pork-liver", "O053"),
  pair("salmon-fillet", "P068", { ironMg: NOT_KNOWN }),
  pair("tilapia-fillet", "P083", {
    ironMg: NOT_KNOWN,
    zincMg: NOT_KNOWN,
    calciumMg: "likely analysed with its small bones",
  }),
  pair("prawns-frozen", "Q008"),
  pair("coconut-oil", "T001", { energyKj: OIL_FAULT }),
  pair("sunflower-oil", "T012", { energyKj: OIL_FAULT }),
];
