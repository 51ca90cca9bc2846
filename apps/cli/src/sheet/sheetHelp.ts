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
  weekFile: "a week's file, or the folder of a kept kitchen, whose accepted week is meant",
  weekKitchen: "the kitchen of the week (default: the demo of that name)",
  on: "which day, YYYY-MM-DD (default: the first of the week)",
  onWeek: "a day of the accepted week of a kept kitchen, YYYY-MM-DD (default: today)",
  paper: "paper to print on",
  claim:
    "what the sheet claims, as often as wanted: plate=2.00, day=5.00, ready=30, hands-on=20, waste=1.00, each meaning less than that; a false one is not printed",
  out: "file to write; its ending says as what (default: standard output)",
  over: "write over a file that is there already",
} as const;
