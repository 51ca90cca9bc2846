import { tellDayShort, tellMinutes, tellMoney } from "@halfloaf/words/en";
import { type BrokenClaim, type DayWords, MONEY_CLAIMS } from "halfloaf/sheet";
import { harmless } from "../output/harmless.ts";
import type { Fault } from "../words/Fault.ts";

/** A line of a sheet that makes a claim false, and by how much; the claim is told in the words of the sheet. */
export function tellBroken(
  { claim, value, over, date, sitting, dish, eater }: BrokenClaim,
  currency: string,
  { claim: tellClaim }: Pick<DayWords, "claim">,
): Fault {
  const tell = (amount: number): string =>
    MONEY_CLAIMS.includes(claim.kind) ? `${tellMoney(amount, currency)} ${currency}` : tellMinutes(amount);
  const where = [
    ...(date === undefined ? [] : [tellDayShort(date)]),
    ...(sitting === undefined ? [] : [sitting]),
    ...(dish === undefined ? [] : [harmless(dish.name)]),
    ...(eater === undefined ? [] : [harmless(eater.name)]),
  ].join(", ");
  const by = over === 0 ? "just that, which is not under it" : `${tell(over)} too much`;
  return {
    code: "claim-broken",
    path: [],
    value: tell(value),
    sentence: `"${tellClaim(claim.kind, tell(claim.below))}" is not true: ${where} is ${tell(value)}, ${by}.`,
    remedy: "Leave the claim out, or claim what the sheet can say.",
  };
}
