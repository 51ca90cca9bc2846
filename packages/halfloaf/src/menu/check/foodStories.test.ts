import { describe, expect, it } from "vitest";
import type { MenuFood, MenuLimits, MenuPack, MenuProblem, MenuProfile } from "../problem.ts";
import { compareWithSearch, isAgreed } from "./compareWithSearch.testing.ts";

/** What happens to one food in a week of one sitting a day, each with the one dish that needs the grams of that day. */
interface FoodStory {
  readonly needsG: readonly number[];
  readonly packs: readonly Partial<MenuPack>[];
  readonly food?: Partial<MenuFood>;
  readonly tripDays?: readonly number[];
  readonly limits?: Partial<MenuLimits>;
  readonly profiles?: readonly MenuProfile[];
  /** True where no plan is without fault, so that the search must find none. */
  readonly impossible?: boolean;
}

const LASTS = 9999;
const NOTHING = { fixed: 0, perPortion: 0 };

function tellWeek({ needsG, packs, food, tripDays = [0], limits, profiles = [] }: FoodStory): MenuProblem {
  return {
    days: needsG.length,
    periodDay: needsG.map((_, day) => day),
    foods: [
      {
        id: "food",
        openedDays: LASTS,
        unopenedDays: LASTS,
        creditMinorPerG: 0,
        creditOpenedMinorPerG: 0,
        wasteMinorPerG: 0,
        ...food,
      },
    ],
    dishes: needsG.map((massG, main) => ({
      id: `dish-${main}`,
      makings: massG > 0 ? [{ food: 0, massG }] : [],
      handsOn: NOTHING,
      elapsed: NOTHING,
      keepsDays: 0,
      needsHeat: false,
      servedCold: true,
      travels: true,
      main,
      maxUses: 1,
      dislikeMinor: 0,
      energyKj: 1000,
      components: [0],
    })),
    sittings: needsG.map((_, day) => ({
      day,
      period: day,
      portions: 1,
      minutes: 10,
      heat: true,
      packed: false,
      dishes: [day],
      variety: true,
    })),
    lots: [],
    packs: packs.map((pack) => ({
      food: 0,
      shop: 0,
      massG: 100,
      priceMinor: 100,
      limit: LASTS,
      fromDay: 0,
      toDay: LASTS,
      ...pack,
    })),
    shopCount: 1,
    trips: tripDays.map((day) => ({ shop: 0, day, period: day, costMinor: 0, minutes: 0 })),
    components: ["fibre"],
    profiles,
    limits: {
      handsOnMinutes: needsG.map(() => 60),
      energyTolerance: 1,
      distinct: 0,
      mainMax: 9,
      batchPortions: 9,
      maxTrips: 9,
      ...limits,
    },
    worth: {
      minuteMinor: 0,
      leftoverMinutes: 0,
      shortfallFirstMinor: 400,
      shortfallRestMinor: 1200,
      shortfallKnee: 0.1,
    },
  };
}

const nothingWanted: MenuProfile = {
  eaters: 1,
  sittings: [0],
  energyKj: [1000],
  bounds: [{ component: 0, kind: "at-least", amount: 0, hard: false }],
};

/** Weeks about one food in which a search that takes a short cut differs from the words of the problem. */
const STORIES: readonly (readonly [title: string, story: FoodStory])[] = [
  [
    "a pack of a lasting food that itself keeps only a day is not used on the second day after",
    { needsG: [50, 0, 50], packs: [{ unopenedDays: 1 }], impossible: true },
  ],
  [
    "what is left of such a pack has gone off and earns no credit",
    { needsG: [50, 0, 0], food: { creditMinorPerG: 0.5 }, packs: [{ unopenedDays: 1 }] },
  ],
  [
    "an offer on a pack of a lasting food counts although the pack is limited",
    { needsG: [250, 0], packs: [{ limit: 3, offer: { count: 2, priceMinor: 150 } }] },
  ],
  [
    "packs of several sizes are opened on the days for which they were bought",
    {
      needsG: [100, 20],
      food: { openedDays: 0, unopenedDays: 5 },
      packs: [
        { massG: 100, priceMinor: 37 },
        { massG: 50, priceMinor: 30 },
      ],
    },
  ],
  [
    "of packs bought together each starts its opened life when it is opened itself",
    {
      needsG: [190, 340, 260],
      food: { openedDays: 1, unopenedDays: 3, wasteMinorPerG: 0.1 },
      packs: [
        { massG: 350, priceMinor: 178 },
        { massG: 100, priceMinor: 202 },
      ],
      tripDays: [0, 2],
    },
  ],
  [
    "opened stock that outlasts the plan is no lasting stock where the food does not last unopened",
    {
      needsG: [50, 0, 0],
      food: { openedDays: 9, unopenedDays: 2, creditMinorPerG: 0.5, creditOpenedMinorPerG: 0.1 },
      packs: [{}],
    },
  ],
  ["the credit of a pack may exceed its price", { needsG: [50, 0, 0], food: { creditMinorPerG: 1.5 }, packs: [{}] }],
  [
    "the grams of a pack need not be whole",
    {
      needsG: [50, 0, 0],
      food: { openedDays: 2, unopenedDays: 4, creditOpenedMinorPerG: 1 },
      packs: [{ massG: 99.5 }],
    },
  ],
  [
    "packs whose grams have no common measure are counted to the gram in large weeks too",
    {
      needsG: [9000, 50, 0],
      food: { openedDays: 1, unopenedDays: 2, wasteMinorPerG: 1 },
      packs: [{ massG: 397 }, { massG: 500 }],
    },
  ],
  [
    "a sitting for more than the pot holds cannot be served",
    { needsG: [50], packs: [{}], limits: { batchPortions: 0.5 }, impossible: true },
  ],
  [
    "an offer that is dearer than its packs one by one is not taken",
    {
      needsG: [50, 150],
      food: { openedDays: 0, unopenedDays: 5 },
      packs: [{ offer: { count: 2, priceMinor: 250 } }],
    },
  ],
  ["a lasting pack is used as long as the plan goes", { needsG: [50, 0, 50], packs: [{}] }],
  ["a bound of at least nothing costs nothing", { needsG: [50], packs: [{}], profiles: [nothingWanted] }],
];

describe("the search agrees with the check", () => {
  const isSettled = (story: FoodStory): boolean => {
    const comparison = compareWithSearch(tellWeek(story), 1);
    return comparison === undefined ? story.impossible === true : isAgreed(comparison);
  };
  for (const [title, story] of STORIES) {
    it(title, () => expect(isSettled(story)).toBe(true));
  }
});
