/** Every text of the app in English; the other languages have the same keys. */
export const en = {
  shell: {
    skip: "Skip to the page",
    ways: "Screens",
    more: "More",
    loading: "One moment …",
    lost: "There is no such screen.",
    toToday: "Go to Today",
  },
  screens: {
    today: "Today",
    menu: "Menu",
    buying: "Buying",
    work: "Order of work",
    workShort: "Work",
    stores: "Stores",
    dishes: "Dishes",
    prices: "Prices",
    accounts: "Accounts",
    kitchen: "Kitchen",
  },
  opening: {
    noKitchen: "No kitchen on this device yet",
    missing: "The browser has thrown this kitchen away",
    missingRemedy: "Bring it back from a backup, or from another device that shares it.",
    newer: "This kitchen was written by a newer Halfloaf",
    newerRemedy: "Load the page again to get the newer program. Nothing was changed.",
    unopenable: "This kitchen can't be opened",
    unopenableRemedy: "Close other tabs of Halfloaf and load the page again.",
    notKept: "The last change is not on disk",
    full: "The device has no space left. Free some, then try again; until then keep this page open.",
    tryAgain: "Try again",
  },
  first: {
    title: "A kitchen of your own",
    promise:
      "Halfloaf plans what you eat from whole packs, times the cooking and adds up what it truly costs. Everything stays on this device.",
    demo: "Look around in a demo kitchen",
    make: "Make my kitchen",
    restore: "Bring back a backup",
    demos: {
      "port-ansel": "Two flatmates, two rings, a small fridge",
      "one-ring": "One person, one ring, no oven",
      "six-flat": "Six in a shared flat, a full kitchen",
    } as Record<string, string>,
  },
  menu: {
    none: "No menu for these days yet.",
    plan: "Plan the days",
  },
};

/** What every language says. */
export type Words = typeof en;
