/** Texts of `halfloaf sheet --help` and of all that is below it. */
export const SHEET_HELP = {
  sheet: "Make what one prints, pins to the fridge, puts into a calendar or publishes.",
  after: `
The ending of --out says what is written: .html or .pdf for pages, .svg or .png
for pictures, .ics, .csv, .jsonld. A PDF is printed by an installed browser of
the Chromium family. Without --out the text goes to standard output.

Examples:
  $ halfloaf sheet day week.json --on 2026-12-01 --out tuesday.html
  $ halfloaf sheet week week.json --claim plate=2.00 --claim ready=30 --out week.pdf`,
  day: "The sheet of one day: dishes, minutes, plate costs, what is bought and left, intake, cautions, prices.",
  week: "The sheet of a week: an overview, then one page a day.",
  card: "The costing card of a dish: as purchased, refuse, edible, cost here and at each shop, declaration, allergens, order of work.",
  lesson: "A dish for teaching, as a page that a cook can put on a site: the sums of each portion unfold.",
  dayLesson: "A day for teaching, with the sums of each portion unfolded.",
  timeline: "The order of work of a dish, as a picture.",
  drivers: "What drives the cost of a dish, as a picture.",
  dish: "A dish for publishing, as JSON-LD of schema.org with its cost and what a portion holds.",
  ribbons: "The pack ribbons of a week, as a picture.",
  frontier: "What money is weighed against, as a picture of what halfloaf choices --json has printed.",
  frontierFile: "a file that halfloaf choices --json has printed",
  prices: "How prices have moved in a kept kitchen, as a picture.",
  pricesFood: "only packs of this food, by its id",
  accounts: "What was planned, spent, eaten and wasted in a kept kitchen, as a picture.",
  each: "days of a bar or row",
  calendar: "Cookings, trips, soaks, thawing and last days of a week for a calendar (RFC 5545).",
  zone: "time zone by its IANA name (default: that of this machine)",
  at: "when a sitting is, such as evening=18:30, as often as wanted (default: 7:30, 12:30, 16:00, 19:00)",
  table: "A table of a kept kitchen as comma-separated values (RFC 4180).",
  tableKind: "which table",
  folder: "the folder of a kept kitchen",
  onDay: "as it stands at the end of a day, YYYY-MM-DD (default: today)",
  weekFile:
    "a week's file, the folder of a kept kitchen, whose accepted week is meant, or a kitchen, which is planned first",
  weekKitchen: "the kitchen of the week (default: the demo of that name)",
  on: "which day, YYYY-MM-DD (default: the first of the week)",
  onWeek: "a day of the accepted week of a kept kitchen, YYYY-MM-DD (default: today)",
  paper: "paper to print on",
  claim:
    "what the sheet claims, as often as wanted: plate=2.00, day=5.00, ready=30, hands-on=20, waste=1.00, each meaning less than that; a false one is not printed",
  out: "file to write; its ending says as what (default: standard output)",
  over: "write over a file that is there already",
} as const;
