/**
 * Units of mass and volume with their exact size in g and mL.
 *
 * Keys are UCUM codes. US customary and imperial sizes follow from the definitions in NIST Handbook 44
 * (gallon 231 in3, pound 453.59237 g) and the UK Weights and Measures Act 1985 (gallon 4.54609 L).
 * `[cup_m]` is UCUM's 240 mL metric cup. **Source**: UCUM, tables 4 and following; NIST Handbook 44, appendix C.
 */
export const UNITS = {
  mg: { kind: "mass", size: 0.001 },
  g: { kind: "mass", size: 1 },
  kg: { kind: "mass", size: 1000 },
  "[oz_av]": { kind: "mass", size: 28.349523125 },
  "[lb_av]": { kind: "mass", size: 453.59237 },
  mL: { kind: "volume", size: 1 },
  cL: { kind: "volume", size: 10 },
  dL: { kind: "volume", size: 100 },
  L: { kind: "volume", size: 1000 },
  "[tsp_m]": { kind: "volume", size: 5 },
  "[tbs_m]": { kind: "volume", size: 15 },
  "[cup_m]": { kind: "volume", size: 240 },
  "[tsp_us]": { kind: "volume", size: 4.92892159375 },
  "[tbs_us]": { kind: "volume", size: 14.78676478125 },
  "[foz_us]": { kind: "volume", size: 29.5735295625 },
  "[cup_us]": { kind: "volume", size: 236.5882365 },
  "[pt_us]": { kind: "volume", size: 473.176473 },
  "[qt_us]": { kind: "volume", size: 946.352946 },
  "[gal_us]": { kind: "volume", size: 3785.411784 },
  "[foz_br]": { kind: "volume", size: 28.4130625 },
  "[pt_br]": { kind: "volume", size: 568.26125 },
  "[qt_br]": { kind: "volume", size: 1136.5225 },
  "[gal_br]": { kind: "volume", size: 4546.09 },
} as const satisfies Record<string, { kind: "mass" | "volume"; size: number }>;

export type UnitCode = keyof typeof UNITS;
export const UNIT_CODES = Object.keys(UNITS) as [UnitCode, ...UnitCode[]];
