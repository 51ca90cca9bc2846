import { CURRENCY_EXPONENTS, type UnitCode } from "halfloaf/quantity";
import { isSignOf } from "./readPrice.ts";

/** How many of something, or how much of it, at which price. */
export type Measured =
  | { readonly kind: "count"; readonly count: number; readonly eachMinor?: number }
  | {
      readonly kind: "mass";
      readonly value: number;
      readonly unit: UnitCode;
      readonly rateMinor: number;
      readonly per: Rate;
    };

/** The unit that a price by mass is for. */
export type Rate = { readonly value: number; readonly unit: UnitCode };

/** One line of a receipt taken apart. */
export interface LexedLine {
  /** Counted from 1. */
  readonly line: number;
  /** The line as it stands, without what does not show. */
  readonly text: string;
  /** What is left when amount and measure are taken off; empty on a line that holds only these. */
  readonly name: string;
  /** What the line adds to the sum; absent where it ends in no money. */
  readonly amountMinor?: number;
  readonly measured?: Measured;
}

const MOST_CHARACTERS = 400;
const TIMES = /^(?:.*\d)?[x×*@]$/i;
const MASS_UNITS: ReadonlyMap<string, UnitCode> = new Map([
  ["kg", "kg"],
  ["g", "g"],
  ["lb", "[lb_av]"],
  ["lbs", "[lb_av]"],
  ["oz", "[oz_av]"],
]);

/** Takes the lines of a receipt apart: amounts of one currency with point or comma, counts, masses. */
export class ReceiptLexer {
  private readonly currency: string;
  private readonly exponent: number;
  /** Where a currency has no decimals, a bare number is money only if no line shows a sign of money. */
  private readonly needsSign: boolean;

  /** Throws for a currency that is none; `text` is the whole receipt. */
  constructor(text: string, currency: string) {
    const exponent = CURRENCY_EXPONENTS.get(currency);
    if (exponent === undefined) throw new RangeError(`"${currency}" is no currency code of ISO 4217`);
    this.currency = currency;
    this.exponent = exponent;
    this.needsSign = exponent === 0 && text.split(/\s+|(?=\d)|(?<=\d)/).some((word) => isSignOf(word, currency));
  }

  /** Takes one line apart; undefined for one that shows nothing or only rules it off. */
  lex(raw: string, line: number): LexedLine | undefined {
    const text = toVisible(raw);
    if (!/[\p{L}\p{N}]/u.test(text)) return undefined;
    const words = text.split(" ");
    const amountMinor = this.takeAmount(words);
    const { name, measured } = this.takeMeasure(words.join(" "));
    return { line, text, name, ...(amountMinor !== undefined && { amountMinor }), ...(measured && { measured }) };
  }

  /** Takes the money at the end of a line off its words. */
  private takeAmount(words: string[]): number | undefined {
    const left = [...words];
    if (left.length > 1 && isTaxMark(left.at(-1) as string) && !this.isSign(left.at(-1))) left.pop();
    let isSigned = this.isSign(left.at(-1)) && left.length > 1;
    if (isSigned) left.pop();
    let isNegative = /^[-−]$/.test(left.at(-1) ?? "") && left.length > 1;
    if (isNegative) left.pop();
    const last = left.pop();
    const number = last === undefined ? undefined : this.readAmount(last);
    // Behind a sign of multiplication stands the price of one, which is no amount of the line.
    if (number === undefined || TIMES.test(left.at(-1) ?? "")) return undefined;
    while (left.length > 0 && (this.isSign(left.at(-1)) || /^[-−]$/.test(left.at(-1) as string))) {
      if (/^[-−]$/.test(left.at(-1) as string)) isNegative = true;
      else isSigned = true;
      left.pop();
    }
    if (this.needsSign && !isSigned && !number.isSigned) return undefined;
    words.splice(0, words.length, ...left);
    return isNegative ? -Math.abs(number.minor) : number.minor;
  }

  /** One word as money: "1.99", "-0,50", "0.50-", "(0.50)", "€1.99", "1.234,56", "1.99B". */
  private readAmount(word: string): { minor: number; isSigned: boolean } | undefined {
    const match = /^(\()?([-−+]?)([^\d.,+−()-]{0,4})([-−]?)(\d[\d.,'’]*)([^\d.,+−()-]{0,4})([-−]?)(\))?$/u.exec(word);
    if (match === null) return undefined;
    const [, open, plus, before = "", inner, digits = "", behind = "", trail, close] = match;
    if ((open === undefined) !== (close === undefined)) return undefined;
    if (before !== "" && !this.isSign(before)) return undefined;
    if (behind !== "" && !this.isSign(behind) && !isTaxMark(behind)) return undefined;
    const minor = this.toMinor(digits);
    if (minor === undefined) return undefined;
    const isNegative = open !== undefined || [plus, inner, trail].some((sign) => sign === "-" || sign === "−");
    return { minor: isNegative && minor !== 0 ? -minor : minor, isSigned: this.isSign(before) || this.isSign(behind) };
  }

  /** Digits with exactly the decimals of the currency, thousands parted by the other mark or not at all. */
  private toMinor(digits: string): number | undefined {
    const { exponent } = this;
    const form = exponent === 0 ? /^(\d{1,3}(?:[.,'’]\d{3})+|\d+)$/ : /^(\d{1,3}(?:([.,'’])\d{3})+|\d+)([.,])(\d+)$/;
    const [, whole = "", thousands, mark, decimals = ""] = form.exec(digits) ?? [];
    if (whole === "" || decimals.length !== exponent || (mark !== undefined && mark === thousands)) return undefined;
    const minor = Number(whole.replace(/\D/g, "") + decimals);
    return Number.isSafeInteger(minor) && minor <= 1e12 ? minor : undefined;
  }

  private isSign(word: string | undefined): boolean {
    return word !== undefined && word !== "" && isSignOf(word, this.currency);
  }

  private takeMeasure(text: string): { name: string; measured?: Measured } {
    const mass =
      /(?:^|\s)(\d{1,4}[.,]\d{1,3}|\d{1,5})\s?(kg|g|lbs?|oz)\s?(?:net\s?)?[x×*@]\s?(\D{0,4}\d\S*(?:\s\S{1,6}){0,3})$/i.exec(
        text,
      );
    const rate = mass?.[3] === undefined ? undefined : this.readRate(mass[3], mass[2] as string);
    const unit = MASS_UNITS.get((mass?.[2] ?? "").toLowerCase());
    if (mass !== null && rate !== undefined && unit !== undefined) {
      const value = Number((mass[1] as string).replace(",", "."));
      return { name: text.slice(0, mass.index).trim(), measured: { kind: "mass", value, unit, ...rate } };
    }
    const each = /(?:^|\s)(\d{1,4})\s?(?:pcs?\s?)?[x×*@]\s?(\S{1,14}(?:\s\S{1,4})?)$/i.exec(text);
    const eachMinor = each?.[2] === undefined ? undefined : this.readMoney(each[2]);
    if (each !== null && eachMinor !== undefined && Number(each[1]) > 0) {
      return { name: text.slice(0, each.index).trim(), measured: { kind: "count", count: Number(each[1]), eachMinor } };
    }
    const [, count, name] = /^(\d{1,3})\s?[x×*]\s(?=\D)(.+)$/i.exec(text) ?? [];
    if (name === undefined || Number(count) === 0) return { name: text };
    return { name: name.trim(), measured: { kind: "count", count: Number(count) } };
  }

  /** "2.40 EUR/kg", "2,40/kg", "0.35 per 100 g"; without a unit the rate is for the unit of the mass. */
  private readRate(text: string, massUnit: string): { rateMinor: number; per: Rate } | undefined {
    const [, price = "", size = "1", word = massUnit] =
      /^(.+?)(?:\s?(?:\/|\bper\b)\s?(\d{1,4})?\s?(kg|g|lb|oz))?$/i.exec(text) ?? [];
    const rateMinor = this.readMoney(price);
    const unit = MASS_UNITS.get(word.toLowerCase());
    if (rateMinor === undefined || unit === undefined || Number(size) === 0) return undefined;
    return { rateMinor, per: { value: Number(size), unit } };
  }

  /** Money that may have a sign or code of its own before or behind, not negative. */
  private readMoney(text: string): number | undefined {
    const words = text
      .trim()
      .split(" ")
      .filter((word) => !this.isSign(word));
    const word = words.length === 1 ? (words[0] as string) : "";
    // A letter behind it is a unit here, not the mark of a tax rate: 6 x 1.50L.
    const read =
      /\d[A-Z*#]{1,2}$/.test(word) && !this.isSign(word.replace(/^.*\d/, "")) ? undefined : this.readAmount(word);
    return read === undefined || read.minor < 0 ? undefined : read.minor;
  }
}

/** A line without characters that do not show, with single spaces, cut where no receipt is so wide. */
function toVisible(raw: string): string {
  return raw
    .slice(0, MOST_CHARACTERS)
    .replace(/\p{Cf}/gu, "")
    .replace(/[\s\p{Cc}]+/gu, " ")
    .trim();
}

/** The letters of a tax rate behind an amount, which no unit is written with. */
function isTaxMark(word: string): boolean {
  return /^[A-Z*#]{1,2}\d?$/.test(word) && !/^(?:L|G|KG|CL|DL|ML|LB|OZ)$/.test(word);
}
