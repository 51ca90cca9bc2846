import type { CardSheet } from "halfloaf/sheet";
import { tellMoney, tellPortions } from "../amountWords.ts";

/** What a dish costs, as plain text for whoever reads it elsewhere: with its day, its kitchen and how sure it is. */
export function tellPublishedCost({
  platesMinor,
  totalMinor,
  portions,
  currency,
  on,
  kitchen,
  atLeast,
  estimate,
}: CardSheet): string {
  const least = atLeast ? "at least " : "";
  const portion = `${tellMoney(platesMinor[0] ?? 0, currency)} ${currency}`;
  const all = `${tellMoney(totalMinor, currency)} ${currency}`;
  const sure = estimate ? ", some of them estimates" : "";
  return `${least}${portion} a portion, ${all} for ${tellPortions(portions)}, at prices of ${kitchen} on ${on}${sure}`;
}
