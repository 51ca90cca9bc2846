import type { UnitCode } from "../quantity/index.ts";

interface UnitInTrade {
  /** Code of UN/CEFACT Recommendation 20. */
  readonly code: string;
  /** The unit in a line of makings, in either English. */
  readonly word: string;
  /** The same in German, where it is another word. */
  readonly german?: string;
}

/**
 * Units as documents of trade and lines of makings write them.
 *
 * Recommendation 20 knows one cup, spoon and tablespoon without a size; which one is meant stands beside it as the UCUM code.
 * **Source**: UN/CEFACT Recommendation 20, from memory but for G21, which the example of schema.org/Recipe uses.
 */
export const UNITS_IN_TRADE: Readonly<Record<UnitCode | "piece", UnitInTrade>> = {
  mg: { code: "MGM", word: "mg" },
  g: { code: "GRM", word: "g" },
  kg: { code: "KGM", word: "kg" },
  "[oz_av]": { code: "ONZ", word: "oz" },
  "[lb_av]": { code: "LBR", word: "lb" },
  mL: { code: "MLT", word: "ml" },
  cL: { code: "CLT", word: "cl" },
  dL: { code: "DLT", word: "dl" },
  L: { code: "LTR", word: "litres", german: "l" },
  "[tsp_m]": { code: "G25", word: "tsp", german: "TL" },
  "[tbs_m]": { code: "G24", word: "tbsp", german: "EL" },
  "[cup_m]": { code: "G21", word: "cups", german: "Becher (240 ml)" },
  "[tsp_us]": { code: "G25", word: "tsp", german: "US-TL" },
  "[tbs_us]": { code: "G24", word: "tbsp", german: "US-EL" },
  "[foz_us]": { code: "OZA", word: "fl oz" },
  "[cup_us]": { code: "G21", word: "cups", german: "US-Becher" },
  "[pt_us]": { code: "PTL", word: "pints" },
  "[qt_us]": { code: "QTL", word: "quarts" },
  "[gal_us]": { code: "GLL", word: "gallons", german: "Gallonen" },
  "[foz_br]": { code: "OZI", word: "fl oz" },
  "[pt_br]": { code: "PTI", word: "pints" },
  "[qt_br]": { code: "QTI", word: "quarts" },
  "[gal_br]": { code: "GLI", word: "gallons", german: "Gallonen" },
  piece: { code: "C62", word: "" },
};

/** The word for a unit given by its code of Recommendation 20; undefined for a code that is no unit of makings. */
export function unitWordOfCommonCode(code: string): string | undefined {
  const wanted = code.trim().toUpperCase();
  return Object.values(UNITS_IN_TRADE).find((unit) => unit.code === wanted)?.word;
}
