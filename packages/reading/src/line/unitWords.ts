import type { UnitCode } from "halfloaf/quantity";

/**
 * What kind of measure a unit word is: of mass, volume or length; a pack a shop sells; a part of a food that grows or
 * is cut so; what a hand or a spoon takes without measuring.
 */
export type UnitKind = "mass" | "volume" | "length" | "pack" | "part" | "loose";

interface UnitFacts {
  readonly kind: UnitKind;
  /** The words for it, lower case, most usual first. */
  readonly forms: readonly string[];
  /** Which of two tellings of one amount it belongs to; absent where it belongs to either. */
  readonly system?: "metric" | "customary";
  /** The library's unit in recipes of either English; absent where it measures nothing by itself. */
  readonly code?: { readonly british: UnitCode; readonly american: UnitCode };
}

const both = (code: UnitCode) => ({ british: code, american: code });
const mass = (system: "metric" | "customary", code: UnitCode, ...forms: string[]): UnitFacts => ({
  kind: "mass",
  system,
  forms,
  code: both(code),
});
const metricVolume = (code: UnitCode, ...forms: string[]): UnitFacts => ({
  kind: "volume",
  system: "metric",
  forms,
  code: both(code),
});
const vessel = (british: UnitCode, american: UnitCode, ...forms: string[]): UnitFacts => ({
  kind: "volume",
  system: "customary",
  forms,
  code: { british, american },
});
const length = (system: "metric" | "customary", ...forms: string[]): UnitFacts => ({ kind: "length", system, forms });
/** A noun with its regular plural, or with the plurals given. */
const noun = (kind: UnitKind, word: string, ...others: string[]): UnitFacts => ({
  kind,
  forms: [word, others.length > 0 ? others : `${word}s`].flat(),
});

/**
 * Words that count or measure, by a name of our own. Spoons are metric in British recipes and US customary in American
 * ones; a British recipe's cup is taken as the metric cup, since the table of units has no other.
 */
const FACTS = {
  milligram: mass("metric", "mg", "mg", "milligram", "milligrams"),
  gram: mass("metric", "g", "g", "gram", "grams", "gr", "gm", "gms", "gramme", "grammes"),
  kilogram: mass("metric", "kg", "kg", "kilogram", "kilograms", "kgs", "kilo", "kilos", "kilogramme", "kilogrammes"),
  ounce: mass("customary", "[oz_av]", "oz", "ounce", "ounces", "ozs"),
  pound: mass("customary", "[lb_av]", "lb", "pound", "pounds", "lbs"),
  millilitre: metricVolume("mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "mls", "cc"),
  centilitre: metricVolume("cL", "cl", "centilitre", "centilitres", "centiliter", "centiliters"),
  decilitre: metricVolume("dL", "dl", "decilitre", "decilitres", "deciliter", "deciliters"),
  litre: metricVolume("L", "l", "litre", "litres", "liter", "liters", "ltr", "ltrs"),
  teaspoon: vessel(
    "[tsp_m]",
    "[tsp_us]",
    "tsp",
    "teaspoon",
    "teaspoons",
    "tsps",
    "teaspoonful",
    "teaspoonfuls",
    "ts",
    "tl",
    "teelöffel",
  ),
  tablespoon: vessel(
    "[tbs_m]",
    "[tbs_us]",
    ..."tbsp tablespoon tablespoons tbsps tbs tbl tbls tablespoonful tablespoonfuls tblsp tblspn el esslöffel".split(
      " ",
    ),
  ),
  cup: vessel("[cup_m]", "[cup_us]", "cup", "cups", "cupful", "cupfuls"),
  fluidOunce: vessel("[foz_br]", "[foz_us]", "floz", "fl-oz"),
  pint: vessel("[pt_br]", "[pt_us]", "pint", "pints", "pt", "pts"),
  quart: vessel("[qt_br]", "[qt_us]", "quart", "quarts", "qt", "qts"),
  gallon: vessel("[gal_br]", "[gal_us]", "gallon", "gallons", "gal", "gals"),
  millimetre: length("metric", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
  centimetre: length("metric", "cm", "centimetre", "centimetres", "centimeter", "centimeters", "cms"),
  inch: length("customary", "inch", "inches", '"'),
  tin: noun("pack", "tin", "tins", "dose", "dosen"),
  can: noun("pack", "can"),
  jar: noun("pack", "jar"),
  bottle: noun("pack", "bottle"),
  packet: noun("pack", "packet", "packets", "pkt", "pkts"),
  package: noun("pack", "package", "packages", "pkg", "pkgs"),
  pack: noun("pack", "pack"),
  sachet: noun("pack", "sachet"),
  envelope: noun("pack", "envelope"),
  bag: noun("pack", "bag"),
  box: noun("pack", "box", "boxes"),
  carton: noun("pack", "carton"),
  container: noun("pack", "container"),
  tub: noun("pack", "tub"),
  tube: noun("pack", "tube"),
  pot: noun("pack", "pot"),
  punnet: noun("pack", "punnet"),
  tray: noun("pack", "tray"),
  pouch: noun("pack", "pouch", "pouches"),
  fifth: noun("pack", "fifth"),
  case: noun("pack", "case"),
  bar: noun("part", "bar"),
  block: noun("part", "block"),
  ball: noun("part", "ball"),
  cube: noun("part", "cube"),
  stick: noun("part", "stick"),
  pat: noun("part", "pat"),
  slab: noun("part", "slab"),
  slice: noun("part", "slice", "slices", "scheibe", "scheiben"),
  rasher: noun("part", "rasher"),
  strip: noun("part", "strip"),
  piece: noun("part", "piece", "pieces", "pc", "pcs", "stück"),
  chunk: noun("part", "chunk"),
  lump: noun("part", "lump"),
  wedge: noun("part", "wedge"),
  fillet: noun("part", "fillet", "fillets", "filet", "filets"),
  sheet: noun("part", "sheet"),
  square: noun("part", "square"),
  round: noun("part", "round"),
  loaf: noun("part", "loaf", "loaves"),
  nest: noun("part", "nest"),
  rack: noun("part", "rack"),
  link: noun("part", "link"),
  clove: noun("part", "clove", "cloves", "zehe", "zehen"),
  bulb: noun("part", "bulb"),
  head: noun("part", "head"),
  heart: noun("part", "heart"),
  ear: noun("part", "ear"),
  sprig: noun("part", "sprig"),
  stalk: noun("part", "stalk"),
  stem: noun("part", "stem"),
  branch: noun("part", "branch", "branches"),
  rib: noun("part", "rib"),
  spear: noun("part", "spear"),
  floret: noun("part", "floret"),
  leaf: noun("part", "leaf", "leaves"),
  bunch: noun("part", "bunch", "bunches", "bund"),
  segment: noun("part", "segment"),
  strand: noun("part", "strand"),
  scoop: noun("loose", "scoop"),
  handful: noun("loose", "handful", "handfuls", "handsful"),
  fistful: noun("loose", "fistful"),
  knob: noun("loose", "knob"),
  thumb: noun("loose", "thumb"),
  pinch: noun("loose", "pinch", "pinches", "prise", "prisen"),
  dash: noun("loose", "dash", "dashes"),
  splash: noun("loose", "splash", "splashes"),
  drop: noun("loose", "drop"),
  drizzle: noun("loose", "drizzle"),
  dollop: noun("loose", "dollop"),
  glug: noun("loose", "glug"),
  squeeze: noun("loose", "squeeze"),
  squirt: noun("loose", "squirt"),
  grating: noun("loose", "grating"),
  grind: noun("loose", "grind", "grinds", "grinding", "grindings"),
  twist: noun("loose", "twist"),
  sprinkle: noun("loose", "sprinkle", "sprinkling", "sprinklings"),
  dusting: noun("loose", "dusting"),
  shake: noun("loose", "shake"),
  shot: noun("loose", "shot"),
  jigger: noun("loose", "jigger"),
  glass: noun("loose", "glass", "glasses", "glassful"),
  mug: noun("loose", "mug", "mugs", "mugful"),
  bowl: noun("loose", "bowl", "bowlful"),
  ladle: noun("loose", "ladle", "ladles", "ladleful"),
  spoonful: noun("loose", "spoonful", "spoonfuls", "spoon", "spoons"),
  serving: noun("loose", "serving"),
  portion: noun("loose", "portion"),
  measure: noun("loose", "measure"),
  share: noun("loose", "part"),
  batch: noun("loose", "batch", "batches"),
} as const satisfies Record<string, UnitFacts>;

/** A word that counts or measures, by a name of our own. */
export type UnitWord = keyof typeof FACTS;

/** The facts of every unit word. */
export const UNIT_WORDS: Readonly<Record<UnitWord, UnitFacts>> = FACTS;

const BY_FORM: ReadonlyMap<string, UnitWord> = new Map(
  (Object.keys(FACTS) as UnitWord[]).flatMap((unit) => UNIT_WORDS[unit].forms.map((form) => [form, unit] as const)),
);

/** The unit that a word in lower case names; undefined where it names none. */
export function findUnitWord(lower: string): UnitWord | undefined {
  return BY_FORM.get(lower);
}
