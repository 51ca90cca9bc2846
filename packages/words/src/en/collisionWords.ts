import type { CollisionWords } from "../CollisionWords.ts";

/** What is said of limits that can't all hold, in English. */
export const COLLISION_WORDS: CollisionWords = {
  limits: {
    budget: "the budget",
    "hands-on": "the hands-on minutes of the days",
    elapsed: "the minutes at hand for the sittings",
    energy: "the energy of each day",
    bound: "the hard bounds on intake",
    uses: "how often a dish may be served",
    main: "how often one main ingredient may be served",
    distinct: "the different dishes in the evenings",
    wish: "what is wished for",
    trips: "the number of trips",
    pot: "the size of the pot",
    carry: "what can be carried",
    fridge: "the room in the fridge",
    freezer: "the room in the freezer",
    "must-use": "what must be used up",
  },
  collide: (limits) => `These collide: ${limits.join(" and ")}. With any one of them let go a plan was found.`,
  stands: (limit) => `No plan was found that keeps ${limit}, even with every other limit let go.`,
  wholePacks: "Only because packs come whole: with packs cut at will there was a plan.",
  noneAlone: "No single kind of limit was found that would be enough to loosen by itself.",
  possible: "Looked for with loosened limits, a plan came up that keeps every limit as it stands.",
};
