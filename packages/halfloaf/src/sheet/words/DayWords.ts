import type { Claim } from "../claim/Claim.ts";

/** Words of the day sheet and of the week sheet. */
export interface DayWords {
  readonly title: (kitchen: string, day: string) => string;
  readonly weekTitle: (kitchen: string, from: string, to: string) => string;
  readonly moneyIn: (currency: string) => string;
  readonly claims: string;
  readonly claim: (kind: Claim["kind"], below: string) => string;
  /** What the claims do not hold: dishes of which something is begun hours before. */
  readonly claimAhead: (dishes: string) => string;
  /** What the claims rest on: money of estimated prices, and of all plates. */
  readonly claimEstimate: (estimated: string, all: string) => string;
  readonly menu: string;
  readonly date: string;
  readonly sitting: string;
  readonly dish: string;
  readonly handsOn: string;
  readonly ready: string;
  /** What of the plates rests on a price. */
  readonly plate: string;
  readonly together: string;
  readonly dayTotal: string;
  readonly weekTotal: string;
  readonly packed: string;
  readonly ahead: string;
  readonly leftover: (cookedOn: string | undefined) => string;
  readonly putBy: (place: "fridge" | "freezer") => string;
  readonly bought: string;
  readonly noneBought: string;
  readonly trip: (shop: string, day: string | undefined, minutes: string) => string;
  readonly pack: string;
  readonly price: string;
  readonly estimate: string;
  readonly saved: (money: string) => string;
  readonly till: string;
  readonly fare: (money: string) => string;
  readonly flow: string;
  readonly opening: string;
  readonly toTills: string;
  readonly onPlates: string;
  readonly wasted: string;
  readonly left: string;
  readonly leftOf: string;
  readonly mass: string;
  readonly worth: string;
  readonly until: (day: string) => string;
  readonly waiting: (portions: number) => string;
  readonly otherPacks: (packs: number) => string;
  readonly leftTotal: string;
  readonly wastedLines: string;
  readonly intake: string;
  readonly component: string;
  /** The need of what is eaten here, absent where it is left to care, and the share of the day's energy that this is. */
  readonly energyNeed: (need: string | undefined, here: string) => string;
  readonly verdict: Readonly<Record<"met" | "short" | "above" | "open", string>>;
  readonly bound: (kind: "at-least" | "at-most", amount: string) => string;
  readonly unknown: string;
  readonly known: (share: string) => string;
  readonly openFor: (components: string) => string;
  readonly metBy: (components: string) => string;
  readonly intakeOfDay: string;
  readonly intakeOfWeek: string;
  readonly referred: (eater: string, reason: string) => string;
  readonly references: (sources: string) => string;
  readonly cautions: string;
  /** That a caution without a letter is about all dishes of the day. */
  readonly cautionsByLetter: string;
  readonly sources: string;
  readonly seenAt: (place: string, day: string) => string;
  readonly estimatedAt: (place: string) => string;
  readonly atHand: string;
  readonly budget: (budget: string, paid: string, left: string, isOver: boolean) => string;
  readonly cautionsOnDays: string;
}
