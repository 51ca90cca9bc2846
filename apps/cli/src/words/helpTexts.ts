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
The same kitchen, days, seed and effort give the same plan. Ctrl-C stops the
search and takes the best plan so far; a second Ctrl-C ends the program.

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
  mendFile: "a week's file",
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
  work: "Print the order of work of one cooking: when to begin each step so that all is ready together.",
  workAfter: `
Steps, hands, rings, pans, oven and board are timed to the minute; what is raw
and what is ready to eat never share an unwashed board. The same dishes and
kitchen give the same order of work.

Examples:
  $ halfloaf work red-lentil-cumin-soup-pitta
  $ halfloaf work chicken-pepper-paprika-rice red-lentils-spinach-pitta --serve 19:00
  $ halfloaf work potato-corn-cheese-soup --portions 6 --kitchen six-flat --cooks 2
  $ halfloaf work potato-corn-cheese-soup --svg evening.svg`,
  workDishes: "ids or titles of the dishes that are cooked together",
  workPortions: "portions of each dish, 1 to 1000 (default: as each is written)",
  workMinutes: "minutes at hand; tells by how much it is too long",
  serve: "time of day at which all is served, such as 19:00",
  cooks: "how many cook, 1 or 2",
  svg: "file to draw the timeline in, as SVG",
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
  proof: "seconds to prove how close to the best the plan is, told as talk",
  out: "file to keep the plan in (default: halfloaf-week-KITCHEN-FROM.json)",
  weekJson: "print the plan as data and keep no file, unless --out names one",
  json: "print data and nothing else",
  portions: "portions to cost, 1 to 1000 (default: as the dish is written)",
  help: "show this help",
  version: "show the version",
} as const;
