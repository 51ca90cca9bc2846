import { parseMoney } from "halfloaf/quantity";
import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";

/** A price of 0 or more in minor units, from a decimal number; `asked` is the text that it stands in. */
export function findPrice(price: string, currency: string, asked: string): Found<number> {
  const money = parseMoney(price, currency);
  if (money.ok && money.value.minor >= 0) return { ok: true, value: money.value.minor };
  return refuse({
    code: "price",
    path: [],
    value: quote(price),
    sentence: `${quote(asked)}: ${quote(price)} is no price in ${currency}.`,
    remedy: "Write it as a decimal number, such as 1.29.",
  });
}
