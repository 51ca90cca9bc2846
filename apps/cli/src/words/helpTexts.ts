/** Texts of `--help`, one place for all commands. */
export const HELP = {
  program: "Plans, prices, times and accounts for cooking on very little money with whole packs.",
  programAfter: `
Examples:
  $ halfloaf week                     plan a week for the demo kitchen Port Ansel
  $ halfloaf week my-kitchen.json     plan a week for a kitchen of your own
  $ halfloaf why                      what its limits cost, why its dishes are there
  $ halfloaf card red-lentil-cumin-soup-pitta
                                      what a dish costs, takes and gives
  $ halfloaf work red-lentil-cumin-soup-pitta --serve 19:00
                                      when to begin which step
  $ halfloaf check my-kitchen.json    all that is wrong with a kitchen file

Results go to standard output, talk to standard error.
Exit codes: 0 done; 1 defect of the program; 2 input or usage can't be used;
3 no plan within the limits. The commands and the data that --json prints are
described in docs/commands.md.`,
  week: "Plan the days of a kitchen: menu, buying list, accounts, intake; keep the plan as a file.",
  weekAfter: `
The same kitchen, days, seed, effort and number of searches give the same plan.
Ctrl-C stops the search and takes the best plan so far; a second Ctrl-C ends
the program.

Examples:
  $ halfloaf week
  $ halfloaf week my-kitchen.json --from 2026-12-07 --days 5
  $ halfloaf week one-ring --effort long --out december.json
  $ halfloaf week six-flat --json > week.json`,
  why: "Give the reasons of a plan: why this dish, why not that one, why these packs, what each limit costs.",
  whyAfter: `
FILE is a week that "halfloaf week" kept, or a kitchen, which is planned first.
With nothing asked for it tells what the limits cost and why the dearest and
the best-sharing dishes are there. Differences in money are found by search.

Examples:
  $ halfloaf why halfloaf-week-port-ansel-2026-11-30.json
  $ halfloaf why week.json --kitchen my-kitchen.json --sitting 2026-12-01:evening
  $ halfloaf why week.json --sitting 2026-12-01:evening --dish red-lentil-cumin-soup-pitta
  $ halfloaf why week.json --pack onion
  $ halfloaf why week.json --limits --json`,
  whyFile: "a week's file or a kitchen (default: the demo Port Ansel)",
  whyKitchen: "the kitchen of the week (default: the demo of that name)",
  whySitting: "why the dish of this sitting; YYYY-MM-DD:KIND",
  whyDish: "why this dish, or why not, at the sitting or wherever it may stand",
  whyPack: "why these packs of a food; a pack or a food by its id",
  whyLimits: "what each limit costs that the plan comes up to",
  whyToday: "first day of a week that is not over: the limits alone, of what is left; YYYY-MM-DD",
  mend: "Plan a kept week again after life changed it, keeping as much of it as can stay.",
  mendAfter: `
WEEKFILE is what "halfloaf week" kept. Every change may be given as often as
wanted. What was cooked and paid before --today stays as it was. Packs and lots
go by their ids in the kitchen and in the week, dishes by id or title.
What should last longer than this week belongs into the kitchen's file.

Examples:
  $ halfloaf mend week.json --refuse red-lentil-cumin-soup-pitta
  $ halfloaf mend week.json --today 2026-12-02 --skip 2026-12-03:evening
  $ halfloaf mend week.json --skip 2026-12-04:evening:maris --out friday.json
  $ halfloaf mend week.json --kitchen my-kitchen.json --guest 2026-12-05:evening=2
  $ halfloaf mend week.json --today 2026-12-02 --off lot-yogurt --json`,
  mendFile: "a week's file, or the folder of a kept kitchen, whose accepted week is meant",
  mendKitchen: "the kitchen of the week (default: the demo of that name)",
  mendToday: "first day that is not over, YYYY-MM-DD (default: none is)",
  mendRefuse: "a dish that is not wanted any more",
  mendWant: "a dish that is wanted at a sitting; DATE:KIND:EATER=DISH where several sit apart",
  mendPrice: "a pack that costs this from today on",
  mendGone: "a pack that is not to be had from today on",
  mendSkip: "a sitting at which nobody eats; DATE:KIND:EATER where only one does not",
  mendGuest: "so many guests at a sitting, one standard portion each",
  mendOff: "a lot that can't be eaten any more",
  mendEffort: "how long to look for a cheaper plan made afresh",
  mendAll: "print the whole new week as well",
  mendOut: "file to keep the new week in (default: WEEKFILE-mended.json)",
  mendJson: "print data and keep no file, unless --out names one",
  choices: "Weigh money against minutes, different dishes or shortfalls: plans from the cheapest on.",
  choicesAfter: `
Each row is a checked plan; none is beaten by another in both. The last column
says what the step to the next row costs.

Examples:
  $ halfloaf choices
  $ halfloaf choices my-kitchen.json --against variety
  $ halfloaf choices one-ring --against intake --effort usual --json`,
  choicesAgainst: "what money is weighed against",
  choicesEffort: "how long to search for each row",
  card: "Print the costing card of a dish: makings, cost, minutes, intake, allergens, keeping.",
  cardAfter: `
Prices are those of the kitchen on its first day: the cheapest single pack of
each making, or what the stock at hand cost.

Examples:
  $ halfloaf card red-lentil-cumin-soup-pitta
  $ halfloaf card red-lentil-cumin-soup-pitta my-kitchen.json --portions 6
  $ halfloaf card red-lentil-cumin-soup-pitta --json`,
  work: "Print the order of work of one cooking, or the jobs of a day: when to begin each step so that all is ready together.",
  workAfter: `
Steps, hands, rings, pans, oven and board are timed to the minute; what is raw
and what is ready to eat never share an unwashed board. The same dishes,
kitchen and pace give the same order of work.

With a week it lists the jobs of a day: cooking, leftovers, what is soaked,
thawed or set aside for later; with --sitting what is cooked then, all at once.

While you cook: say with --now what time it is and mark what has happened;
steps go by the names on the page (A:cut). The rest is timed anew.

Examples:
  $ halfloaf work red-lentil-cumin-soup-pitta
  $ halfloaf work chicken-pepper-paprika-rice red-lentils-spinach-pitta --serve 19:00
  $ halfloaf work potato-corn-cheese-soup --portions 6 --kitchen six-flat --cooks 2
  $ halfloaf work potato-corn-cheese-soup --svg evening.svg
  $ halfloaf work --week halfloaf-week-port-ansel-2026-11-30.json --on 2026-12-01
  $ halfloaf work red-lentil-cumin-soup-pitta --serve 19:00 --as-planned 18:40 --late A:simmer=9 --now 18:45`,
  workDishes: "ids or titles of the dishes that are cooked together",
  workKitchen: "a kitchen file, or the name of a demo kitchen (default: that of the week, else the demo Port Ansel)",
  workWeek: "a week's file, in place of dishes",
  workOn: "day of the week, YYYY-MM-DD (default: its first)",
  workSitting: "order of work of what the week has cooked for this sitting",
  workPacked: "of that sitting what is taken along",
  workNow: "what time it is, such as 18:45, or the minute of the cooking",
  workAsPlanned: "until then all went as planned, but for what is marked",
  workBegun: "a step that was begun",
  workDone: "a step that was done",
  workLate: "a step that still takes so many minutes from now on",
  workWashed: "the board, or a pan, pot or blender, that was washed up for what comes next",
  workLearn: "keep how long the steps took that are marked as begun and done",
  pace: "Show the pace that was learned from finished cookings, and forget it.",
  paceAfter: `
How long steps took is kept by "halfloaf work" with --learn, and "halfloaf work"
reckons with it from then on.

Examples:
  $ halfloaf pace
  $ halfloaf pace my-kitchen.json --forget cut
  $ halfloaf pace my-kitchen.json --forget all`,
  paceFile: "file of the pace (default: halfloaf-pace-KITCHEN.json)",
  paceForget: "kind of step whose pace is forgotten, or all",
  workPortions: "portions of each dish, 1 to 1000 (default: as each is written)",
  workMinutes: "minutes at hand; tells by how much it is too long",
  serve: "time of day at which all is served, such as 19:00",
  cooks: "how many cook, 1 or 2",
  svg: "file to draw the timeline in, as SVG",
  read: "Read in what is written somewhere: dishes, makings, food tables, price lists, receipts; show it beside its source.",
  readAfter: `
FILE is found out by what stands in it: a saved page or JSON-LD, a pasted dish,
lines of makings, a receipt, a folder or JSON file of FoodData Central, a file of
own foods; a price list or any other table needs a mapping (docs/reading.md).
"-" reads standard input. Nothing is kept without --keep, and no guess is hidden.
Lines go by the numbers that stand before them.

Examples:
  $ halfloaf read pea-soup.html
  $ halfloaf read pea-soup.txt --food "3=split-pea-green" --portions 4 --keep --kitchen my-kitchen.json
  $ halfloaf read pea-soup.txt --keep
  $ halfloaf read receipt.txt --kitchen my-kitchen.json --pack "7=oats-1kg" --keep
  $ halfloaf read prices.csv --mapping prices-mapping.json --kitchen my-kitchen.json
  $ halfloaf read FoodData_Central_csv --near onion
  $ halfloaf read FoodData_Central_csv --food "170000=onion" --kitchen my-kitchen.json --keep`,
  readFiles: "files, a folder, - for standard input, or a web address with --fetch",
  readAs: "what the file is, where that is not plain",
  readKitchen:
    "file or folder of the kitchen whose packs and foods are meant, and which keeps what is read (default: the variable HALFLOAF_KITCHEN, else the demo Port Ansel, which keeps nothing)",
  readMapping: "file that says what the columns of a table or price list hold",
  readEnglish: "whose cups, spoons and pints are meant (default: that of the kitchen)",
  readDish: "which dish of a page, counted from 1",
  readTitle: "title of the dish",
  readPortions: "portions the dish makes, 1 to 1000",
  readFood: "the food a line means; of a table NUMBER=ID, of prices a new pack of this food",
  readAmount: "how much a line means, or what a new pack holds",
  readLeaveOut: "a making that is no part of the dish",
  readPack: "the pack of the kitchen that a line of a receipt or price list means; it is remembered",
  readShop: "shop of the receipt or list, by its id in the kitchen",
  readOn: "day of the receipt or list, or of the choice of figures, YYYY-MM-DD",
  readDateOrder: "how dates in numbers are written",
  readNear: "one of our foods, whose nearest three in the table are shown",
  readFetch: "fetch the web addresses among the files, once each",
  readKeep: "keep what was read in the kitchen, a dish without a kitchen in a file of its own",
  readOut: "file to write the dish in, as JSON-LD of schema.org",
  check: "Look for everything that is wrong with a kitchen file, all at once.",
  checkAfter: `
Each fault comes with its place, its value and what to do about it. The exit
code is 0 where nothing is wrong and 2 otherwise.

Examples:
  $ halfloaf check my-kitchen.json
  $ halfloaf check my-kitchen.json --json`,
  kitchen: "a kitchen file, or the name of a demo kitchen",
  kitchenUsual: "the demo Port Ansel",
  dish: "id or title of a dish",
  from: "first day to plan, YYYY-MM-DD (default: the day the kitchen says)",
  days: "how many days, 1 to 28",
  seed: "start of the search; another one gives another plan",
  effort: "how long to search",
  searches: "searches beside each other, the best is taken (default: what the machine has room for, 1 to 4)",
  proof: "seconds to prove how close to the best the plan is, told as talk",
  stand: "let the budget hold even if every estimated price rises by so many percent",
  out: "file to keep the plan in (default: halfloaf-week-KITCHEN-FROM.json)",
  weekJson: "print the plan as data and keep no file, unless --out names one",
  json: "print data and nothing else",
  portions: "portions to cost, 1 to 1000 (default: as the dish is written)",
  help: "show this help",
  version: "show the version",
} as const;
