import { type Issue, type Parsed, parseMoney } from "halfloaf/quantity";
import type { CsvForm } from "../table/csvForm.ts";
import { quote } from "../table/IssueLog.ts";
import { readNumber } from "../table/readNumber.ts";

/** Signs of money by the currencies that are written with them. **Source**: common practice, no source. */
const SIGNS: ReadonlyMap<string, string> = new Map([
  ["€", "EUR"],
  ["£", "GBP EGP GIP FKP SHP SYP LBP SDG"],
  [
    "$",
    "USD CAD AUD NZD SGD HKD MXN TWD CLP COP ARS BBD BMD BND BSD BZD DOP FJD GYD JMD KYD LRD NAD SBD SRD TTD UYU XCD",
  ],
  ["¥", "JPY CNY"],
  ["₹", "INR"],
  ["₨", "PKR NPR LKR MUR SCR"],
  ["₩", "KRW KPW"],
  ["₱", "PHP"],
  ["₦", "NGN"],
  ["₫", "VND"],
  ["₴", "UAH"],
  ["₺", "TRY"],
  ["₽", "RUB"],
  ["₪", "ILS"],
  ["฿", "THB"],
  ["kr", "DKK ISK NOK SEK"],
  ["zł", "PLN"],
  ["kč", "CZK"],
  ["ft", "HUF"],
  ["fr", "CHF XAF XOF XPF"],
  ["r", "ZAR"],
  ["r$", "BRL"],
  ["lei", "RON MDL"],
]);

/** True for a sign or code of money in a currency; false for those of others and for what is none. */
export function isSignOf(sign: string, currency: string): boolean {
  const plain = sign.trim().replace(/\.$/, "").toLowerCase();
  return plain === currency.toLowerCase() || (SIGNS.get(plain)?.split(" ").includes(currency) ?? false);
}

/** An amount in a text with a sign of money that the currency is not written with, such as "£0.85" where it is EUR. */
export function findOtherMoney(text: string, currency: string): string | undefined {
  for (const [amount] of text.matchAll(/\p{Sc}\s?\d[\d.,]*|\d[\d.,]*\s?\p{Sc}/gu)) {
    const sign = /\p{Sc}/u.exec(amount)?.[0] ?? "";
    if (!isSignOf(sign, currency)) return amount;
  }
  return undefined;
}

/**
 * Whole minor units of a price as a list writes it, with or without the sign or code of its currency, before or behind. The
 * sign of another currency, more decimals than the currency has and a negative price are refused.
 */
export function readPrice(
  cell: string,
  currency: string,
  form: Pick<CsvForm, "decimal" | "thousands">,
): Parsed<number> {
  const [, before = "", digits = "", behind = ""] =
    /^(\D*?)([.,]?\d[\d.,' \u00a0\u202f]*)(\D*)$/.exec(cell.trim()) ?? [];
  for (const sign of [before, behind]) {
    if (sign.trim() !== "" && !isSignOf(sign, currency)) return fail("currency", `a price in ${currency}`, cell);
  }
  const number = readNumber(digits, form);
  if (number === undefined) return fail("price", `a price with "${form.decimal}" before its decimals`, cell);
  const money = parseMoney(toPlainDecimal(digits, form), currency);
  return money.ok ? { ok: true, value: money.value.minor } : fail("price", money.issues[0]?.expected ?? "", cell);
}

/** The digits with a point and without marks of thousands; decimals must not pass through a binary fraction. */
function toPlainDecimal(digits: string, { decimal }: Pick<CsvForm, "decimal">): string {
  const [whole = "", decimals] = digits.split(decimal);
  const plain = whole.replace(/\D/g, "") || "0";
  return decimals === undefined ? plain : `${plain}.${decimals.trim()}`;
}

function fail(code: string, expected: string, received: string): { ok: false; issues: Issue[] } {
  return { ok: false, issues: [{ code, path: [], expected, received: quote(received) }] };
}
