import { loadDemoKitchens, loadStarterTables } from "@halfloaf/data";
import type { Dish } from "../dish/index.ts";
import type { Food } from "../food/index.ts";
import { checkKitchen, parseKitchen } from "./checkKitchen.ts";
import type { Eater, Kitchen } from "./kitchen.ts";
import { parseTables, type Tables } from "./tables.ts";

/** The tables of the starter data. */
export function readStarterTables(): Tables {
  const read = parseTables(loadStarterTables());
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 5)));
  return read.value;
}

/** The demo kitchens by name. */
export function readDemoKitchens(): { readonly name: string; readonly kitchen: Kitchen }[] {
  return loadDemoKitchens().map(({ name, content }) => {
    const read = parseKitchen(content);
    if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 5)));
    return { name, kitchen: read.value };
  });
}

/** A grown-up of 30 who eats all, with what is given put in its place. */
export function makeEater(id: string, over: Partial<Eater> = {}): Eater {
  return {
    id,
    name: id,
    sex: "female",
    ageYears: 30,
    heightCm: 165,
    massKg: 60,
    activity: "low-active",
    diet: "meat",
    avoids: { allergens: [], foods: [] },
    ...over,
  };
}

/** A sound kitchen of one eater, one shop that sells nothing and an evening sitting a day, in a week from a Monday. */
export function makeKitchen(over: Partial<Kitchen> = {}): Kitchen {
  const content: Kitchen = {
    format: "halfloaf-kitchen",
    version: 1,
    name: "Test kitchen",
    currency: "EUR",
    startsOn: "2026-03-02",
    authorities: { intake: "efsa", safety: "strictest" },
    english: "british",
    eaters: [makeEater("ada")],
    kit: {
      rings: 1,
      pans: 1,
      pots: 1,
      potPortions: 4,
      oven: false,
      microwave: false,
      kettle: false,
      blender: false,
      boards: 1,
      fridgeLitres: 50,
      freezerLitres: 0,
    },
    shops: [
      {
        id: "corner",
        name: "Corner",
        openDays: [1, 2, 3, 4, 5, 6, 7],
        trip: { costMinor: 0, minutes: 10 },
        beforeSitting: "morning",
      },
    ],
    packs: [],
    stores: [],
    putBy: [],
    energySharePct: { morning: 25, midday: 30, between: 10, evening: 35 },
    sittings: [{ kind: "evening", on: [1, 2, 3, 4, 5, 6, 7], eaters: ["ada"], minutes: 60, heat: true, packed: false }],
    limits: {
      standRisePct: 0,
      handsOnMinutes: 90,
      energyTolerancePct: 10,
      distinctEvenings: 1,
      mainMax: 9,
      usesPerDish: 9,
      tripsPerWeek: 3,
      variety: [],
    },
    worth: {
      minuteMinor: 2,
      vesselMinutes: 2,
      dislikePointMinor: 8,
      shortfallFirstMinor: 400,
      shortfallRestMinor: 1200,
    },
    ratings: [],
    useUp: [],
    refusedDishes: [],
    wishes: [],
    foods: [],
    overrides: [],
    dishes: [],
    ...over,
  };
  return content;
}

/** The starter tables with other foods and dishes. */
export function withTables(tables: Tables, foods: readonly Food[], dishes: readonly Dish[]): Tables {
  return { ...tables, foods: new Map(foods.map((food) => [food.id, food])), dishes };
}

/** Codes of all that is wrong in a kitchen. */
export function faultsOf(kitchen: Kitchen, tables: Tables): string[] {
  return checkKitchen(kitchen, tables).map(({ code, path }) => `${code} ${path.join(".")}`);
}
