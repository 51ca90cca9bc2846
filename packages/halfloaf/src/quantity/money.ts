import * as v from "valibot";
import { type Issue, type Parsed, parseWith } from "./issue.ts";

/** Codes of ISO 4217 by the number of decimals of their minor unit. */
const CODES_BY_EXPONENT = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF",
  2:
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE " +
    "CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR " +
    "KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB " +
    "PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY " +
    "TTD TWD TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW",
  3: "BHD IQD JOD KWD LYD OMR TND",
} as const;

/** Decimals of the minor unit by currency code. **Source**: ISO 4217, list one (from memory). */
export const CURRENCY_EXPONENTS: ReadonlyMap<string, number> = new Map(
  Object.entries(CODES_BY_EXPONENT).flatMap(([exponent, codes]) =>
    codes.split(" ").map((code) => [code, Number(exponent)] as const),
  ),
);

/** A currency code whose exponent is known. */
export const Currency = v.picklist([...CURRENCY_EXPONENTS.keys()]);

/** An amount of money in whole minor units (cents, pence, yen) of one currency. */
export const Money = v.strictObject({ minor: v.pipe(v.number(), v.safeInteger()), currency: Currency });
export type Money = v.InferOutput<typeof Money>;

const DECIMAL = /^(-?)(\d+)(?:[.,](\d+))?$/;

/**
 * Reads a decimal text ("2.49", "2,49", "-3") as money. There is no grouping of thousands, so a point or comma always
 * starts the decimals; more decimals than the currency has are refused, fewer are filled up.
 */
export function parseMoney(text: unknown, currency: string): Parsed<Money> {
  const exponent = CURRENCY_EXPONENTS.get(currency);
  if (exponent === undefined) return fail("currency", "a currency code of ISO 4217", currency);
  const match = typeof text === "string" ? DECIMAL.exec(text.trim()) : null;
  const [, sign, whole, decimals = ""] = match ?? [];
  if (whole === undefined || decimals.length > exponent) {
    return fail("money", `a decimal number with at most ${exponent} decimals`, tell(text));
  }
  const magnitude = Number(whole + decimals.padEnd(exponent, "0"));
  return checkRange({ minor: sign === "-" && magnitude !== 0 ? -magnitude : magnitude, currency });
}

/** The amount as a decimal text with all its decimals and a point, without the currency: "2.49", "-0.05", "300". */
export function toDecimalText(money: Money): string {
  const exponent = exponentOf(money.currency);
  const digits = String(Math.abs(money.minor)).padStart(exponent + 1, "0");
  const cut = digits.length - exponent;
  const sign = money.minor < 0 ? "-" : "";
  return exponent === 0 ? sign + digits : `${sign}${digits.slice(0, cut)}.${digits.slice(cut)}`;
}

/** The amount with its currency code: "2.49 EUR". */
export function formatMoney(money: Money): string {
  return `${toDecimalText(money)} ${money.currency}`;
}

/** The sum of two amounts; amounts of different currencies are refused. */
export function addMoney(a: Money, b: Money): Parsed<Money> {
  if (a.currency !== b.currency) return fail("currency", a.currency, b.currency);
  return checkRange({ minor: a.minor + b.minor, currency: a.currency });
}

/** The sum of amounts, all in `currency`; nothing adds up to zero. Every amount of another currency is an issue. */
export function sumMoney(amounts: readonly Money[], currency: string): Parsed<Money> {
  const issues = amounts.flatMap((each, at) =>
    each.currency === currency ? [] : [issueAt("currency", currency, each.currency, [at, "currency"])],
  );
  if (issues.length > 0) return { ok: false, issues };
  return checkRange({ minor: amounts.reduce((sum, { minor }) => sum + minor, 0), currency });
}

function exponentOf(currency: string): number {
  const exponent = CURRENCY_EXPONENTS.get(currency);
  if (exponent === undefined) throw new RangeError(`"${currency}" is no currency code of ISO 4217`);
  return exponent;
}

function checkRange(money: Money): Parsed<Money> {
  return parseWith(Money, money);
}

function issueAt(code: string, expected: string, received: string, path: Issue["path"] = []): Issue {
  return { code, path, expected, received };
}

function fail(code: string, expected: string, received: string): Parsed<never> {
  return { ok: false, issues: [issueAt(code, expected, received)] };
}

function tell(value: unknown): string {
  return typeof value === "string" ? `"${value}"` : typeof value;
}
