import ucum from "@lhncbc/ucum-lhc";
import { KJ_PER_KCAL, toCelsius, toMassG, toVolumeMl, UNIT_CODES, UNITS } from "halfloaf/quantity";
import { describe, expect, test } from "vitest";

const library = ucum.UcumLhcUtils.getInstance();

/** A value in one UCUM unit as the reference library gives it in another. */
function convert(value: number, from: string, to: string): number {
  const { status, toVal, msg } = library.convertUnitTo(from, value, to);
  if (status !== "succeeded" || toVal === null) throw new Error(`${value} ${from} in ${to}: ${msg.join("; ")}`);
  return toVal;
}

/** The reference library reckons in binary fractions, so its last digit or two are noise. */
const NOISE = 1e-13;

/** **Source**: UCUM, as run by the package @lhncbc/ucum-lhc 7.1.10 of the US National Library of Medicine. */
describe("units against UCUM", () => {
  test.each(UNIT_CODES)("%s has UCUM's size", (code) => {
    const { kind, size } = UNITS[code];
    expect(Math.abs(convert(1, code, kind === "mass" ? "g" : "mL") / size - 1)).toBeLessThan(NOISE);
  });

  test("a code that UCUM does not know is refused by the reference, so agreement means something", () => {
    expect(() => convert(1, "[cup_uk]", "mL")).toThrow("[cup_uk]");
    expect(() => convert(1, "[lb_av]", "mL")).toThrow();
  });
});

describe("printed values", () => {
  // Source: NIST Handbook 44, appendix C (US customary and avoirdupois units, exact); UK Weights and Measures Act 1985,
  // schedule 1 (gallon of 4.54609 L, so a pint of an eighth).
  test.each([
    ["US cup", toVolumeMl(1, "[cup_us]"), 236.5882365],
    ["US tablespoon", toVolumeMl(1, "[tbs_us]"), 14.78676478125],
    ["US pint", toVolumeMl(1, "[pt_us]"), 473.176473],
    ["UK pint", toVolumeMl(1, "[pt_br]"), 568.26125],
    ["pound", toMassG(1, "[lb_av]"), 453.59237],
    ["ounce", toMassG(1, "[oz_av]"), 28.349523125],
  ])("%s", (_, ours, printed) => {
    expect(ours).toBe(printed);
  });

  test("sixteen US tablespoons are a US cup; sixteen metric ones are UCUM's metric cup of 240 mL, not 250", () => {
    expect(toVolumeMl(16, "[tbs_us]")).toBe(toVolumeMl(1, "[cup_us]"));
    expect(toVolumeMl(16, "[tbs_m]")).toBe(240);
    expect(toVolumeMl(1, "[cup_m]")).toBe(240);
  });

  test("165 F is 73.889 C", () => {
    // Source: NIST Special Publication 811, appendix B.8; cooking rules print it rounded, as 74 C.
    expect(toCelsius(165)).toBeCloseTo(73.889, 3);
    expect(toCelsius(165)).toBeCloseTo(convert(165, "[degF]", "Cel"), 9);
  });

  test("a kilocalorie is 4.184 kJ", () => {
    expect(convert(1, "kcal", "kJ")).toBeCloseTo(KJ_PER_KCAL, 12);
  });
});
