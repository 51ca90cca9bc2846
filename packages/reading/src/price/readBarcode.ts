import { isGtin, type Pack, toGtin14 } from "halfloaf/price";

/** What a shop puts into a number of its own: which digits are the goods and what the others measure. */
export interface RestrictedLayout {
  /** The first two digits of the numbers it is for, such as "21"; each shop or country says its own. */
  readonly prefixes: readonly string[];
  /** Digits behind the prefix that name the goods. */
  readonly itemDigits: number;
  /** Digits at the end, before the check digit, that hold the value; digits between are a check digit of the value. */
  readonly valueDigits: number;
  /** The price in minor units or the mass in g that the value means, times ten to the power of `-decimals`. */
  readonly value: "price-minor" | "mass-g";
  readonly decimals: number;
}

/** What a number under bars is. Every kind but `invalid` carries the number with 14 digits. */
export type Barcode =
  | { readonly kind: "invalid"; readonly digits: string }
  /** A number that means the same goods everywhere. */
  | { readonly kind: "goods"; readonly gtin14: string; readonly packs: readonly Pack[] }
  /** A number that means something only in the shop that gave it. */
  | {
      readonly kind: "restricted";
      readonly gtin14: string;
      /** Packs that carry just this number. */
      readonly packs: readonly Pack[];
      /** Absent where no layout was given for its prefix: then nobody but the shop can tell goods and value apart. */
      readonly embedded?: EmbeddedValue;
    };

/** The parts of a restricted number, read by a layout that the shop or country is assumed to use. */
export interface EmbeddedValue {
  readonly item: string;
  readonly priceMinor?: number;
  readonly massG?: number;
  readonly assumed: RestrictedLayout;
}

/**
 * Reads a number from under bars and looks it up among packs. Spaces and hyphens between digits do not matter; the check
 * digit must be right. Numbers that begin with 02 or 20 to 29 as 13 digits, 04 and the short ones that begin with 0 or 2 are
 * for restricted circulation: what they hold is agreed by country or shop, so it is read only by a layout that is given,
 * and the answer names it as assumed.
 * **Source**: GS1 General Specifications, restricted circulation numbers (from memory).
 */
export function readBarcode(text: string, packs: readonly Pack[], layouts: readonly RestrictedLayout[] = []): Barcode {
  const digits = text.trim().replace(/(?<=\d)[\s-](?=\d)/g, "");
  const gtin14 = isGtin(digits) ? toGtin14(digits) : undefined;
  if (gtin14 === undefined) return { kind: "invalid", digits };
  const known = packs.filter(({ gtin }) => gtin !== undefined && toGtin14(gtin) === gtin14);
  if (!isRestricted(digits)) return { kind: "goods", gtin14, packs: known };
  const embedded = digits.length === 8 ? undefined : readEmbedded(gtin14.slice(1), layouts);
  return { kind: "restricted", gtin14, packs: known, ...(embedded && { embedded }) };
}

function isRestricted(digits: string): boolean {
  if (digits.length === 8) return /^[02]/.test(digits);
  // A number of 14 digits that does not begin with 0 is for a case of packs and has no restricted range.
  return /^0(?:2|02|04)/.test(digits.padStart(14, "0"));
}

function readEmbedded(gtin13: string, layouts: readonly RestrictedLayout[]): EmbeddedValue | undefined {
  const assumed = layouts.find(
    ({ prefixes, itemDigits, valueDigits }) =>
      prefixes.includes(gtin13.slice(0, 2)) && itemDigits + valueDigits <= 10 && itemDigits > 0 && valueDigits > 0,
  );
  if (assumed === undefined) return undefined;
  const item = gtin13.slice(2, 2 + assumed.itemDigits);
  const value = Number(gtin13.slice(12 - assumed.valueDigits, 12)) / 10 ** assumed.decimals;
  return { item, ...(assumed.value === "mass-g" ? { massG: value } : { priceMinor: value }), assumed };
}
