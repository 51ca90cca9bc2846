import * as v from "valibot";

const FORM = /^(?:\d{8}|\d{12}|\d{13}|\d{14})$/;

/**
 * The check digit, 0 to 9, that belongs behind the other digits of a trade item number: from the right every other digit,
 * the last one included, counts threefold, and the check digit fills the sum up to a multiple of ten.
 * Throws where `digits` holds anything but digits.
 * **Source**: GS1 General Specifications, section 7.9 (from memory).
 */
export function gtinCheckDigit(digits: string): number {
  if (!/^\d+$/.test(digits)) throw new RangeError(`"${digits}" is no row of digits`);
  const sum = [...digits].reverse().reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

/** True for the digits of a GTIN-8, GTIN-12, GTIN-13 or GTIN-14 whose check digit is right. */
export function isGtin(text: string): boolean {
  return FORM.test(text) && gtinCheckDigit(text.slice(0, -1)) === Number(text.at(-1));
}

/** A GTIN with the zeros in front that make it 14 digits long, so that equal numbers are equal texts; undefined for none. */
export function toGtin14(text: string): string | undefined {
  return isGtin(text) ? text.padStart(14, "0") : undefined;
}

/** The number under the bars of a pack, as text, since leading zeros count. */
export const Gtin = v.pipe(v.string(), v.check(isGtin, "a GTIN of 8, 12, 13 or 14 digits with its check digit"));
