import type { SITTING_KINDS } from "halfloaf/dish";
import type { Kitchen } from "halfloaf/kitchen";
import { type EaterDraft, newEater } from "../kitchen/EaterDraft.ts";
import type { KitDraft } from "../kitchen/KitForm.tsx";

export type SittingKind = (typeof SITTING_KINDS)[number];

/** Minutes at hand for a kind of sitting, and whether it is eaten from this kitchen at all. */
export interface SittingAnswer {
  readonly isHere: boolean;
  readonly weekMinutes: number;
  readonly endMinutes: number;
  /** Taken along from Monday to Friday, to where nothing can be heated. */
  readonly isPacked: boolean;
}

/** What the first use asks, while it is filled in. */
export interface Answers {
  readonly eaters: readonly EaterDraft[];
  readonly kit: KitDraft;
  readonly currency: string;
  /** Money for a week in minor units; undefined = no limit. */
  readonly budgetMinor: number | undefined;
  readonly sittings: Readonly<Record<SittingKind, SittingAnswer>>;
  /** Foods that are in the cupboard already. */
  readonly cupboard: readonly string[];
  readonly authority: Kitchen["authorities"]["intake"];
  readonly english: Kitchen["english"];
}

/** What every page of the first use is given. */
export interface PageProps {
  readonly answers: Answers;
  readonly onChange: (answers: Answers) => void;
}

/** Money for one eater and week where nothing else is said; our own choice, no source. */
const BUDGET_MINOR = 4500;

/** Kit to begin from, smallest first; our own choice, no source. */
export const KITS: Readonly<Record<"small" | "middle" | "full", KitDraft>> = {
  small: {
    ...{ rings: 1, pans: 1, pots: 1, potPortions: 4, boards: 1, fridgeLitres: 40, freezerLitres: 0 },
    ...{ oven: false, microwave: false, kettle: true, blender: false },
  },
  middle: {
    ...{ rings: 2, pans: 1, pots: 2, potPortions: 6, boards: 1, fridgeLitres: 90, freezerLitres: 15 },
    ...{ oven: false, microwave: true, kettle: true, blender: false },
  },
  full: {
    ...{ rings: 4, pans: 2, pots: 3, potPortions: 8, boards: 2, fridgeLitres: 180, freezerLitres: 60 },
    ...{ oven: true, microwave: true, kettle: true, blender: true },
  },
};

const CURRENCY_OF_REGION: Readonly<Record<string, string>> = {
  ...{ GB: "GBP", US: "USD", CA: "CAD", AU: "AUD", NZ: "NZD", CH: "CHF", LI: "CHF", SE: "SEK", NO: "NOK" },
  ...{ DK: "DKK", PL: "PLN", CZ: "CZK", HU: "HUF", RO: "RON", ZA: "ZAR", IN: "INR", JP: "JPY", BR: "BRL", MX: "MXN" },
};

/** Currencies to choose from, by their code of ISO 4217. */
export const CURRENCIES: readonly string[] = ["EUR", ...new Set(Object.values(CURRENCY_OF_REGION))];

/** Somebody with usual figures, to be changed; in the middle of what adults are, from memory. */
export function usualEater(at: number, name: string): EaterDraft {
  const sex = at % 2 === 0 ? "female" : "male";
  const size = sex === "female" ? { heightCm: 165, massKg: 62 } : { heightCm: 178, massKg: 75 };
  return { ...newEater(`eater-${at + 1}`, name), sex, ageYears: 30, ...size };
}

/** The answers with other eaters; money that nobody has set yet goes by their number. */
export function withEaters(answers: Answers, eaters: Answers["eaters"]): Answers {
  const isUsual = answers.budgetMinor === usualBudgetMinor(answers.eaters.length);
  return { ...answers, eaters, ...(isUsual && { budgetMinor: usualBudgetMinor(eaters.length) }) };
}

function usualBudgetMinor(eaters: number): number {
  return BUDGET_MINOR * eaters;
}

/** Answers that hold where nothing is said: one eater, the middle kit, three sittings a day. */
export function usualAnswers(locale: string, firstName: string, usualFoods: readonly string[]): Answers {
  const { region = "" } = new Intl.Locale(locale).maximize();
  const isNorthAmerican = region === "US" || region === "CA";
  return {
    eaters: [usualEater(0, firstName)],
    kit: KITS.middle,
    currency: CURRENCY_OF_REGION[region] ?? "EUR",
    budgetMinor: usualBudgetMinor(1),
    sittings: {
      morning: { isHere: true, weekMinutes: 15, endMinutes: 30, isPacked: false },
      midday: { isHere: true, weekMinutes: 45, endMinutes: 45, isPacked: false },
      between: { isHere: false, weekMinutes: 10, endMinutes: 20, isPacked: false },
      evening: { isHere: true, weekMinutes: 45, endMinutes: 60, isPacked: false },
    },
    cupboard: usualFoods,
    authority: isNorthAmerican ? "nasem" : "efsa",
    english: region === "US" ? "american" : "british",
  };
}
