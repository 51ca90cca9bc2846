import type {
  AccountsWords,
  FrontierWords,
  PackCounts,
  PriceHistoryWords,
  RibbonWords,
  SheetPictureWords,
} from "halfloaf/sheet";
import { counted, tellMinutes, tellMoney, tellNumber } from "../amountWords.ts";
import { tellDayShort } from "../calendarWords.ts";

/** The pictures on pages, in English. */
export const PICTURE_WORDS: SheetPictureWords = {
  driversTitle: (dish) => `What drives the cost of ${dish}`,
};

/** The pack ribbons in English; their description counts what the picture shows. */
export function ribbonWords(kitchen: string, from: string, counts: PackCounts): RibbonWords {
  return {
    title: `Pack ribbons: ${kitchen}, week of ${tellDayShort(from)}`,
    description: `${counted(counts.packs, { one: "A ribbon for the one pack", other: `A ribbon for each of ${counts.packs} packs` })} from the day it comes to the plate that finishes it; ${counts.finished} ${counted(counts.finished, { one: "is", other: "are" })} finished, of ${counts.wasted} something is thrown away. The ribbon is as thick as so much of the pack is left, a ring is a cooking that takes of it.`,
    end: (end, rest) => (end === "wasted" ? `${rest} thrown away` : `${rest} left`),
    kind: {
      dry: "dry goods",
      fresh: "vegetables and fruit",
      dairy: "dairy",
      protein: "protein",
      fat: "fat",
      other: "other",
    },
  };
}

/** What money is weighed against, by what a report of choices says. */
export const AGAINST_WORDS = {
  minutes: { other: "hands-on minutes and ways", tell: tellMinutes },
  variety: { other: "different dishes in the evenings", tell: tellNumber },
  intake: { other: "worth of what falls short of the references", tell: tellNumber },
} as const;

/** The frontier in English. */
export function frontierWords(
  kitchen: string,
  against: keyof typeof AGAINST_WORDS,
  plans: readonly string[],
): FrontierWords {
  const { other, tell } = AGAINST_WORDS[against];
  return {
    title: `${kitchen}: money against ${other}`,
    description: `Plans that no other beats in both: ${plans.join("; ")}.`,
    money: "money",
    other,
    tellOther: tell,
  };
}

/** The history of prices in English. */
export function priceHistoryWords(
  kitchen: string,
  currency: string,
  told: readonly string[],
  line: PriceHistoryWords["line"],
): PriceHistoryWords {
  return {
    title: `Prices seen, ${kitchen}`,
    description: told.length === 0 ? "No price with a known mass was seen." : `${told.join("; ")}.`,
    perKg: `${currency} a kg`,
    day: "day seen",
    line,
  };
}

/** The accounts in English. */
export function accountsWords(
  kitchen: string,
  currency: string,
  lines: readonly {
    readonly name: string;
    readonly tillMinor: number;
    readonly platesMinor: number;
    readonly wasteMinor: number;
  }[],
): AccountsWords {
  const money = (minor: number) => tellMoney(minor, currency);
  const told = lines.map(
    ({ name, tillMinor, platesMinor, wasteMinor }) =>
      `${name} spent ${money(tillMinor)}, eaten ${money(platesMinor)}, thrown away ${money(wasteMinor)}`,
  );
  return {
    title: `Accounts of ${kitchen}`,
    description: `${told.join("; ")}.`,
    money: currency,
    days: "days",
    bar: { planned: "planned", spent: "spent", eaten: "eaten", wasted: "wasted" },
  };
}
