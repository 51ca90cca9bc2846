import { tellMoney } from "@halfloaf/words/en";
import type { MendReport } from "../mend/MendReport.ts";

type Sitting = MendReport["sittings"][number];

/** What each broken limit would mean, by the code of the rule. */
const WOULD: Readonly<Record<string, string>> = {
  budget: "the budget would be overspent",
  "hands-on": "there are not the hands-on minutes",
  elapsed: "it would not be ready in time",
  energy: "the day's energy would be out of its bounds",
  bound: "a bound on the intake would not hold",
  distinct: "the evenings would have too few different dishes",
  main: "one main ingredient would come too often",
  uses: "the dish would come too often",
  wish: "what is wished for would not be",
  "cooked-twice": "it would be cooked twice on that day",
  keeps: "what is left of it would not keep",
  "batch-size": "the pot is too small",
  heat: "it can't be heated there",
  "leftover-cold": "what is left of it can't be heated there",
  "making-short": "its makings can't be had in time",
  "lot-late": "its makings would not keep",
  "lot-early": "its makings would not be bought yet",
  "must-use": "what must be used up would not be",
  carry: "it would be too much to carry",
  fridge: "the fridge would be too full",
  freezer: "the freezer would be too full",
};

/** Why a sitting is not as it was, as a sentence. */
export function tellReason({ why }: Sitting, currency: string): string {
  switch (why.kind) {
    case "refused":
      return "It was refused.";
    case "wanted":
      return "Another dish was wanted.";
    case "not-for-eaters":
      return "It is not for all who sit there.";
    case "not-there":
      return "Too little of what was cooked of it is left.";
    case "not-to-be-had":
      return "Its makings can't be had in time, or there is no time or heat for it.";
    case "breaks": {
      const reasons = (why.limits ?? []).map((code) => WOULD[code] ?? `the rule "${code}" would be broken`);
      return `It could not stay beside the others: ${reasons.join("; ")}.`;
    }
    case "dearer":
      return (why.byMinor ?? 0) > 0
        ? `It could stay for ${tellMoney(why.byMinor ?? 0, currency)} ${currency} more, all weighed.`
        : "It could stay, and the week would cost the same.";
    case "skipped":
      return "Skipped.";
    case "guests":
      return "As guests.";
  }
}
