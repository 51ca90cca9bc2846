import { InvalidArgumentError } from "commander";
import { parseDay } from "../input/parseOption.ts";
import { quote } from "../words/valueWords.ts";

/** Packs as they were found, as written: names and prices are not looked up yet. */
export interface AskedPack {
  readonly text: string;
  readonly name: string;
  /** Absent: as many as were planned, else one. */
  readonly count?: number;
  /** Price of one; absent: the one last known. */
  readonly price?: string;
}

/** A pack with what was said of it: the grams it holds, or a day on its label. */
export interface PackFact<Value> {
  readonly name: string;
  readonly value: Value;
}

/** Reads `PACK`, `PACK:COUNT`, `PACK=PRICE` or `PACK:COUNT=PRICE`. */
export function gatherPacks(text: string, before: readonly AskedPack[] = []): AskedPack[] {
  const [, name, count, price] = /^([^=]+?)(?::(\d{1,3}))?(?:=(\d{1,7}(?:\.\d{1,3})?))?$/.exec(text) ?? [];
  if (name === undefined || count === "0")
    throw new InvalidArgumentError(`${quote(text)} is not written as PACK, PACK:COUNT or PACK:COUNT=PRICE.`);
  const asked = {
    text,
    name,
    ...(count !== undefined && { count: Number(count) }),
    ...(price !== undefined && { price }),
  };
  return [...before, asked];
}

/** Reads `PACK=G`. */
export function gatherSizes(text: string, before: readonly PackFact<number>[] = []): PackFact<number>[] {
  const [, name, value] = /^([^=]+)=(\d{1,6}(?:\.\d{1,3})?)g?$/.exec(text) ?? [];
  if (name === undefined || !(Number(value) > 0))
    throw new InvalidArgumentError(`${quote(text)} is not written as PACK=GRAMS.`);
  return [...before, { name, value: Number(value) }];
}

/** Reads `PACK=DATE`. */
export function gatherDays(text: string, before: readonly PackFact<string>[] = []): PackFact<string>[] {
  const at = text.indexOf("=");
  if (at <= 0) throw new InvalidArgumentError(`${quote(text)} is not written as PACK=DATE.`);
  return [...before, { name: text.slice(0, at), value: parseDay(text.slice(at + 1)) }];
}
