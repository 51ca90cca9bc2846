import { COLLISION_WORDS } from "@halfloaf/words/en/collisions";

/** Texts of a week that can't keep every limit in English; the other languages have the same keys. */
export const impossibleEn = {
  impossible: {
    title: "No menu keeps every limit",
    asking: "Looking for what stands in the way …",
    gapTitle: "No dish fits these sittings",
    gap: (at: string) => `${at}: no dish is left for it. Allow heat, more minutes, or more dishes.`,
    gapTrips: (at: string) => `${at}: nothing in the stores makes a dish, and what is bought comes home after it.`,
    putDown: "Is something in the house? Put it down first:",
    goEarlier: (shop: string, sitting: string) => `Go to ${shop} before “${sitting}”, and plan`,
    gapMinutes: (at: string, minutes: string) => `${at}: with ${minutes} more there would be one.`,
    ways: "Enough by the smallest step that was found",
    way: (at: number) => `Way ${at}`,
    otherwise: (limits: string) => `And by hand: ${limits}.`,
    apply: "Set it so and plan",
    from: (now: string) => `now ${now}`,
    noWay: "No small step was found that would be enough. Loosen several limits in Kitchen.",
    limitsNote:
      "Setting it changes the kitchen, for the weeks to come too. Nothing else is changed before you take the week.",
    collision: COLLISION_WORDS,
    limits: {
      budget: "Money for a week",
      "hands-on": "Minutes with both hands",
      elapsed: "Minutes at hand",
      energy: "Energy of a day may differ by (%)",
      bound: "Bounds on intake",
      uses: "The same dish a week",
      main: "The same main food a week",
      distinct: "Different evening dishes",
      wish: "Wishes",
      trips: "Trips a week",
      pot: "Portions in the pot",
      carry: "To carry (kg)",
      fridge: "Fridge (litres)",
      freezer: "Freezer (litres)",
      "must-use": "What must be used up",
    },
  },
};
