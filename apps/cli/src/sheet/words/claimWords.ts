import { type BrokenClaim, MONEY_CLAIMS } from "halfloaf/sheet";
import { harmless } from "../../output/harmless.ts";
import { tellMinutes, tellMoney } from "../../words/amountWords.ts";
import { tellDayShort } from "../../words/calendarWords.ts";
import type { Fault } from "../../words/Fault.ts";
import { DAY_WORDS } from "./dayWords.ts";

/** A line of a sheet that makes a claim false, and by how much. */
export function tellBroken({ claim, value, over, date, sitting, dish, eater }: BrokenClaim, currency: string): Fault {
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
    sentence: `"${DAY_WORDS.claim(claim.kind, tell(claim.below))}" is not true: ${where} is ${tell(value)}, ${by}.`,
    remedy: "Leave the claim out, or claim what the sheet can say.",
  };
}
