import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";

/** A difference of money in words; less than a coin is none. */
export function tellExtra(extraMinor: number, currency: string, { week }: Further<"menu">, formats: Formats): string {
  const coins = Math.round(extraMinor);
  if (coins === 0) return week.same;
  const money = formats.money(Math.abs(coins), currency);
  return coins > 0 ? week.more(money) : week.less(money);
}
