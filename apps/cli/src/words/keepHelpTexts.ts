/** Texts of `--help` of the commands on a kept kitchen. */
export const KEEP_HELP = {
  folder: "folder of the kept kitchen (default: the variable HALFLOAF_KITCHEN)",
  on: "the day it is about, YYYY-MM-DD (default: today)",
  by: "the eater who does it",
  json: "print data and nothing else",
  settle: "Keep a kitchen in a folder, from a kitchen's file or a demo, whose dates are moved to today.",
  settleAfter: `
Examples:
  $ halfloaf settle home --from port-ansel
  $ halfloaf settle home --from my-kitchen.json --on 2026-12-07`,
  settleFolder: "folder that becomes the kitchen's",
  settleFrom: "a kitchen file, or the name of a demo kitchen",
  settleOn: "first day, to which all dates are moved (default: of a file its own, of a demo today)",
  bought: "Tell what came home: packs of the planned trip, all or by name, as found, and any others.",
  boughtAfter: `
PACK is PACK, PACK:COUNT, PACK=PRICE or PACK:COUNT=PRICE, the price of one pack;
packs go by id, label, or food where only one is meant.

Examples:
  $ halfloaf bought --all --kitchen home
  $ halfloaf bought --all onion-1000g-tally-store=1.19 --fare 2.40 --kitchen home
  $ halfloaf bought oats-rolled-500g-tally-store:2 --kitchen home
  $ halfloaf bought --all --not-there onion-1000g-tally-store --kitchen home`,
  boughtPacks: "packs that came home",
  boughtAll: "all that is still to be bought of the planned trip",
  boughtShop: "the shop, by id or name",
  boughtSize: "what a pack really holds, PACK=GRAMS",
  boughtUseBy: "the use-by day on a pack, PACK=DATE",
  boughtBestBefore: "the best-before day on a pack, PACK=DATE",
  boughtNotThere: "a pack of the trip that was not at the shelf, by id, label or food",
  boughtFare: "what the way cost",
  found: "Tell what is at hand and was never written down: a gift, a find, what another shop sold.",
  foundAfter: `
ITEM is a food by id or name; an amount is in g where no unit says otherwise.
What it cost is told of one food at a time.

Examples:
  $ halfloaf found onion=300g --kitchen home
  $ halfloaf found butter-salted=250g --in fridge --use-by 2026-12-20 --cost 1.80 --kitchen home
  $ halfloaf found rice-white-long=400g --opened --since 2026-11-20 --kitchen home`,
  foundItems: "ITEM=AMOUNT",
  foundPlace: "where it is (default: where it keeps longest)",
  foundSince: "since when it is here (default: the day it is about)",
  foundOpened: "it is open, since this day (default: the day it is about)",
  foundCost: "what it cost (default: nobody knows)",
  labelled: "Tell which date packs at hand bear; it holds in place of what was told before.",
  labelledAfter: `
ITEM is a food by id or name, of which all that is here bears the date, or the
id of a lot; "halfloaf stores --json" has the ids.

Examples:
  $ halfloaf labelled milk-whole --use-by 2026-12-10 --kitchen home
  $ halfloaf labelled rice-white-long --best-before 2027-06-30 --kitchen home
  $ halfloaf labelled bread-wholemeal --no-date --kitchen home`,
  labelledItems: "a food by id or name, or the id of a lot",
  useBy: "the use-by day on the pack, YYYY-MM-DD: the last day it may be eaten",
  bestBefore: "the best-before day on the pack, YYYY-MM-DD: the last day it is at its best",
  labelledNoDate: "no date stands on it",
  used: "Tell what was used up without saying for which sitting.",
  wasted: "Tell what was thrown away.",
  wastedWhy: "why it was thrown away",
  wastedGoneOff: "all that has gone off",
  count: "Count what is there; differences are told and booked.",
  countAs: "what became of what is missing (default: nobody knows, which counts as waste)",
  itemsAfter: `
ITEM is a food or a dish by id or name, or the id of a lot; an amount is in g
of a food and in portions of a dish where no unit says otherwise.

Examples:
  $ halfloaf used rice-white-long=200g --kitchen home
  $ halfloaf wasted --gone-off --kitchen home
  $ halfloaf count rice-white-long=350 onion=0 --as used --kitchen home
  $ halfloaf moved bread-wholemeal=400g --to freezer --kitchen home`,
  items: "ITEM or ITEM=AMOUNT",
  moved: "Tell what was put somewhere else.",
  movedTo: "where to",
  cooked: "Tell a cooking: a batch of the accepted week, or any dish.",
  cookedAfter: `
With no dish it is all that the accepted week has for the day and is not cooked
yet.

Examples:
  $ halfloaf cooked --kitchen home
  $ halfloaf cooked --sitting evening --ate-as-planned --kitchen home
  $ halfloaf cooked red-lentil-cumin-soup-pitta --portions 3 --really onion=250g --kitchen home`,
  cookedDishes: "ids or titles of dishes",
  cookedPortions: "portions, where they are not those of the week or of the dish",
  cookedSitting: "kind of sitting it was cooked for",
  cookedReally: "what was really used where that differed, FOOD=AMOUNT",
  cookedAte: "who ate of it at once, EATER=PORTIONS; guest for a guest",
  cookedAteAsPlanned: "those ate at once whom the week has at that sitting",
  begun: "Tell what was soaked, put to thaw or begun for later sittings.",
  begunAfter: `
With no dish it is all that the accepted week has somebody begin on the day.
What lies frozen in the stores goes into the fridge.

Example:
  $ halfloaf begun --kitchen home`,
  begunDishes: "ids or titles of the dishes that it is for",
  sitting: "Tell what became of a sitting: eaten, skipped, guests, eaten elsewhere.",
  sittingAfter: `
Examples:
  $ halfloaf sitting evening --as-planned --kitchen home
  $ halfloaf sitting midday --ate joren:red-lentil-cumin-soup-pitta=1 --kitchen home
  $ halfloaf sitting evening --out maris=8.50 --guests 1 --kitchen home`,
  sittingKind: "kind of sitting",
  sittingAte: "who ate what, EATER:ITEM=AMOUNT; guest for a guest",
  sittingAsPlanned: "all ate what the accepted week has for them",
  sittingSkipped: "an eater who did not eat here, or all",
  sittingGuests: "standard portions that guests ate or will eat",
  sittingOut: "an eater, or all, who ate elsewhere, and what that cost",
  rated: "Tell what was thought of dishes; the next plan weighs them by it.",
  ratedDishes: "DISH=POINTS, from 0 (never again) to 10; a dish by id or title",
  ratedAfter: `
The latest points of a dish count.

Example:
  $ halfloaf rated red-lentil-cumin-soup-pitta=8 --kitchen home`,
  prices: "Show how prices moved and how old they are, or tell prices that were seen.",
  pricesAfter: `
Examples:
  $ halfloaf prices oats-rolled --kitchen home
  $ halfloaf prices --seen oats-rolled-500g-tally-store=0.89 --kitchen home`,
  pricesFood: "a food by id or name (default: all)",
  pricesSeen: "a price that was seen, PACK=PRICE",
  pricesAt: "where it was seen (default: the shop)",
  stores: "Show what is here, where, until when, and what must be used up.",
  storesWithin: "days within which what ends is to be used up",
  accounts: "Show what was planned, spent, eaten and wasted, by day, week or month.",
  accountsAfter: `
Examples:
  $ halfloaf accounts --kitchen home
  $ halfloaf accounts --each day --from 2026-11-30 --to 2026-12-06 --kitchen home
  $ halfloaf accounts --each month --kwh 0.32 --kitchen home`,
  accountsEach: "how long a line of the accounts is",
  accountsFrom: "first day (default: the kitchen's first day; by day, Monday of the week)",
  accountsTo: "last day (default: the day it is about)",
  accountsKwh: "price of a kWh, to reckon what cooking drew (default: that of the kitchen)",
  backup: "Write everything that the kitchen is made of as one file.",
  backupFile: "file to write",
  restore:
    "Bring a backup into the kitchen of a folder, which is made where there is none; one of another device is merged.",
  restoreFile: "a backup, a record or a kitchen's file",
  today: "Show what to do next, what to buy, to use up and to count, and the week's money.",
  accept: "Take a week's file as the plan of its days from now on.",
  acceptFile: "a week's file that was planned for this kitchen",
  weekAccept: "take the plan as that of its days; only for a kept kitchen",
  mendAccept: "take the mended week as the plan; only for a kept kitchen",
  kitchen:
    "Print the kitchen as a file, or set it to what a changed copy says: eaters, kit, shops, packs, limits, dishes.",
  kitchenAfter: `
Stores and what is put by follow from what happened and are not taken from a
file; "halfloaf found" and "halfloaf count" tell of them. What was seen of prices
since holds beside what the file says of a pack.

Examples:
  $ halfloaf kitchen --kitchen home > kitchen.json
  $ halfloaf kitchen --set kitchen.json --kitchen home`,
  kitchenSet: "a kitchen's file, of which all that differs is taken as one act",
  undo: "Take back the last thing that was done on this device.",
  redo: "Do again what was taken back last.",
  history: "Show who did what when.",
  historyLast: "how many of the last acts",
} as const;
