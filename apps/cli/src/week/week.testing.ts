import type { WeekPlan } from "halfloaf/kitchen";
import { PLAIN } from "../output/paint.ts";
import type { Names } from "../words/Names.ts";
import type { WeekPage } from "./WeekPage.ts";

/** Two days of two eaters by hand, with one of each thing that a page must show. */
export const TWO_DAYS: WeekPlan = {
  format: "halfloaf-week",
  version: 1,
  kitchen: "Test quay",
  currency: "EUR",
  from: "2026-11-30",
  days: 2,
  search: { seed: 1, moves: 4000, moneyMinor: 912 },
  sittings: [
    {
      date: "2026-11-30",
      kind: "evening",
      eaters: ["ada", "bo"],
      heat: true,
      packed: false,
      dish: "lentil-pot",
      batch: 0,
      leftover: false,
      portions: 2.2,
      handsOnMinutes: 12,
      elapsedMinutes: 30,
      plateMinor: [62, 48],
    },
    {
      date: "2026-12-01",
      kind: "midday",
      eaters: ["ada"],
      heat: false,
      packed: true,
      dish: "lentil-pot",
      batch: 0,
      leftover: true,
      portions: 1.2,
      handsOnMinutes: 2,
      elapsedMinutes: 2,
      plateMinor: [62],
    },
    {
      date: "2026-12-01",
      kind: "evening",
      eaters: ["ada", "bo"],
      heat: true,
      packed: false,
      dish: "oat-pan",
      batch: 1,
      leftover: false,
      portions: 2.2,
      handsOnMinutes: 8,
      elapsedMinutes: 10,
      plateMinor: [31, 24],
    },
  ],
  batches: [
    {
      dish: "lentil-pot",
      date: "2026-11-30",
      kind: "evening",
      portions: 3.4,
      handsOnMinutes: 12,
      elapsedMinutes: 30,
      uses: [
        { lot: "lentils-1", food: "lentils", massG: 300, costMinor: 132 },
        { lot: "carrot-0", food: "carrot", massG: 250, costMinor: 40 },
      ],
      costMinor: 172,
    },
    {
      dish: "oat-pan",
      date: "2026-12-01",
      kind: "evening",
      portions: 2.2,
      handsOnMinutes: 8,
      elapsedMinutes: 10,
      uses: [{ lot: "oats-1", food: "oats", massG: 200, costMinor: 55 }],
      costMinor: 55,
    },
  ],
  trips: [
    {
      shop: "quay",
      date: "2026-11-30",
      tillMinor: 268,
      massG: 1500,
      fareMinor: 120,
      minutes: 20,
      lines: [
        {
          pack: "lentils-500",
          food: "lentils",
          label: "Red lentils, 500 g",
          section: "dry goods",
          count: 2,
          massG: 1000,
          priceMinor: 209,
          savedMinor: 11,
          estimate: false,
          seenOn: "2026-11-28",
        },
        {
          pack: "oats-500",
          food: "oats",
          label: "Oats\u001b[2J, 500 g",
          section: "breakfast",
          count: 1,
          massG: 500,
          priceMinor: 59,
          savedMinor: 0,
          estimate: true,
        },
      ],
    },
  ],
  lots: [
    lot({
      id: "carrot-0",
      food: "carrot",
      from: "stores",
      massG: 300,
      costMinor: 48,
      usedG: 250,
      usedMinor: 40,
      wastedG: 50,
      wastedMinor: 8,
    }),
    lot({
      id: "lentils-1",
      food: "lentils",
      massG: 500,
      costMinor: 105,
      usedG: 300,
      usedMinor: 132,
      leftG: 700,
      leftMinor: 77,
    }),
    lot({ id: "oats-1", food: "oats", massG: 500, costMinor: 59, usedG: 200, usedMinor: 55, leftG: 300, leftMinor: 4 }),
  ],
  accounts: {
    openingMinor: 48,
    tillMinor: 268,
    estimatedMinor: 59,
    faresMinor: 120,
    platesMinor: 227,
    wasteMinor: 8,
    carryOverMinor: 81,
    budgetMinor: 600,
    handsOnMinutes: 20,
  },
  intake: [
    {
      eater: "ada",
      energyNeedKj: 5000,
      energyKj: 4900,
      hereShare: 0.5,
      lines: [
        line("fibreG", "at-least", 25, 19, 1, "short"),
        line("sodiumMg", "at-most", 2000, 2300, 0.9, "above"),
        line("iodineUg", "at-least", 150, undefined, 0, "open"),
        line("proteinG", "at-least", 50, 71, 1, "met"),
      ],
    },
    { eater: "bo", energyKj: 4100, hereShare: 0.4, lines: [], referred: "pregnancy" },
  ],
  cautions: [
    {
      code: "label-first",
      dishes: ["lentil-pot", "oat-pan"],
      text: "Read the label.",
      authority: "Halfloaf's own rule",
    },
    { code: "eat-within", dishes: ["lentil-pot"], text: "Eaten within 2 days.", authority: "UK FSA" },
  ],
};

function lot(given: Partial<WeekPlan["lots"][number]> & { id: string; food: string }): WeekPlan["lots"][number] {
  return {
    from: "bought",
    massG: 0,
    costMinor: 0,
    openedOn: "2026-11-30",
    keepsUntil: "2026-12-01",
    usedG: 0,
    usedMinor: 0,
    wastedG: 0,
    wastedMinor: 0,
    leftG: 0,
    leftMinor: 0,
    ...given,
  };
}

function line(
  component: string,
  kind: "at-least" | "at-most",
  referencePerDay: number,
  knownPerDay: number | undefined,
  knownShare: number,
  verdict: WeekPlan["intake"][number]["lines"][number]["verdict"],
): WeekPlan["intake"][number]["lines"][number] {
  const known = knownPerDay === undefined ? {} : { knownPerDay };
  return { component, kind, basis: "PRI", referencePerDay, ...known, knownShare, verdict, source: "a table" };
}

const TITLES: Readonly<Record<string, string>> = {
  "lentil-pot": "Red lentil pot with carrots and a spoon of yogurt stirred in at the end",
  "oat-pan": "Oats fried with onion",
  ada: "Ada",
  bo: "Bo",
  quay: "Quay Stores",
};

/** Names for the two days; what has none is shown by its id. */
const TEST_NAMES: Names = {
  dish: (id) => TITLES[id] ?? id,
  food: (id) => TITLES[id] ?? id,
  eater: (id) => TITLES[id] ?? id,
  shop: (id) => TITLES[id] ?? id,
};

/** A page of the two days. */
export function toTestPage(width: number, given: Partial<WeekPage> = {}): WeekPage {
  return {
    plan: TWO_DAYS,
    names: TEST_NAMES,
    goneOff: [],
    begunAhead: new Set(["oat-pan"]),
    width,
    paint: PLAIN,
    ...given,
  };
}
