import type { Issue } from "halfloaf/quantity";
import type { Fault } from "./Fault.ts";
import { tellIssue } from "./issueWords.ts";
import { quote, tellValue } from "./valueWords.ts";

/** Why a field is less than sure, by the code of the reason; behind "because". */
const REASONS: Readonly<Record<string, string>> = {
  "ahead-by-length": "it takes so long that it is done hours before",
  "ahead-unsaid": "nothing says that it is done hours before",
  "alternatives-by-name": "foods that may take its place are told by their names",
  "amount-after-name": "the amount stands behind the name",
  "amount-unsaid": "no amount is told, so it is to taste",
  "amount-unsure": "the amount can be read in more than one way",
  "cooking-unsaid": "where this way of cooking is at home is not told",
  "degrees-unnamed": "the scale of the degrees is not named",
  "each-or-total": "the amount may be of each or of all",
  "fan-only": "the temperature is that of a fan oven",
  "fits-by-category": "the page sorts the dish so",
  "fits-unsaid": "the sittings it is for are not told",
  "food-by-name": "the name agrees with this food of the table",
  "hands-by-kind": "such steps usually take the hands so",
  "heading-by-form": "the line looks like a heading",
  "id-by-title": "it is made of the title",
  "keeps-unsaid": "how long it keeps is not told, so it is eaten the day it is made",
  "kit-by-kind": "such steps are usually done with it",
  "kit-unsaid": "such steps need none",
  "kind-by-liquid": "there is liquid in it",
  "kind-by-pan": "it is cooked in a frying pan",
  "kind-by-words": "its words say so",
  "kind-goes-on": "it goes on from the step before",
  "kind-unsaid": "its words don't tell what is done",
  "long-name": "the name is unusually long",
  "main-by-mass": "it weighs most",
  "makings-by-name": "they are named in it",
  "makings-unnamed": "it names none of the makings",
  "manner-by-steps": "the steps are cooked so",
  "manner-by-title": "the title says so",
  "mass-of-raw-makings": "it is the mass of the raw makings",
  "minutes-usual": "no time is told; such steps usually take so long",
  "minutes-usual-boil-up": "no time is told; coming to the boil usually takes so long",
  "minutes-usual-preheat": "no time is told; heating up usually takes so long",
  "minutes-usual-adding": "no time is told; putting something in usually takes so long",
  "may-be-two-foods": "the name may be that of two foods",
  "named-before": "the food is named before",
  "no-name-found": "no name was found",
  "number-in-name": "a number stands in the name",
  "one-implied": "no number is told, so it is one",
  "optional-by-purpose": "it is for serving or decorating",
  "optional-unsaid": "nothing says that it can be left out",
  "order-heats-from-start": "what heats up is begun at once",
  "order-as-written": "the steps are done as they are written",
  "order-meanwhile": "it is done meanwhile",
  "ounces-of-liquid": "ounces of a liquid are taken for fluid ounces",
  "oven-mark": "it is told as an oven mark",
  "oven-word": "it is told in words",
  "pack-with-refuse": "what a pack holds is taken with what is not eaten of it",
  "served-by-steps": "the steps leave it so",
  "size-not-in-table": "the table has no piece of that size",
  "size-of-cup": "cups differ in size",
  "stick-of-fat": "a stick is taken for a quarter of a pound",
  "time-each-side": "the time is for each side",
  "time-of-one-part": "only one part of the time is told",
  "time-of-parts": "it is the sum of the parts told",
  "time-overnight": "overnight is taken for so long",
  "time-range": "a range is told",
  "time-vague": "the time is told vaguely",
  "times-added": "several times are told and added up",
  "travels-unsaid": "whether it travels is not told",
  "yield-bare": "only a number is told",
  "yield-range": "a range of portions is told",
};

const FIELDS: Readonly<Record<string, string>> = {
  after: "order",
  ahead: "done ahead",
  as: "with refuse",
  cooking: "cooking",
  fits: "sittings",
  food: "food",
  holdMinutes: "longest wait",
  keeps: "keeping",
  main: "main making",
  makings: "makings handled",
  optional: "if wanted",
  portionMassG: "mass of a portion",
  statedMinutes: "minutes stated",
  tempC: "temperature",
};

/** Why something is less than sure; a reason without words of its own is told by its code. */
export function tellReason(code: string): string {
  return REASONS[code] ?? code.replaceAll("-", " ");
}

/** What a field is called on a page. */
export function tellField(field: string): string {
  return FIELDS[field] ?? field;
}

/** What `toDish` gives as expected where no food is near. */
const NO_NEAR_FOOD = "a food of the table";

/** Words by the code of what keeps a draft from being a dish. */
const OPEN: Readonly<Record<string, (issue: Issue, line: string) => readonly [sentence: string, remedy: string]>> = {
  "title-unsaid": () => ["No title was found.", "Give it one with --title."],
  "portions-unsaid": ({ received }) => [
    received === ""
      ? "It is not told how many portions it makes."
      : `How many portions it makes is told as ${quote(received)}.`,
    "Say how many with --portions.",
  ],
  "mass-unknown": () => [
    "The mass of a portion can't be reckoned: no making has a mass.",
    "Give a making its amount with --amount.",
  ],
  "makings-none": () => ["No making is left.", "Leave out fewer makings."],
  "method-none": () => ["No step is left.", "A dish needs a method of at least one step."],
  "food-unsure": ({ path, expected, received }) => [
    expected === NO_NEAR_FOOD
      ? `No food of the table is near ${quote(received)}.`
      : `Which food is meant by ${quote(received)} is not sure. Nearest: ${expected}.`,
    `Say it with --food "${Number(path[1]) + 1}=ID", or leave it out with --leave-out ${Number(path[1]) + 1}.`,
  ],
  "food-unknown": ({ received }) => [`There is no food ${quote(received)}.`, "Write the id of a food."],
  "amount-unsure": ({ path }, line) => [
    `How much is meant by ${quote(line)} can't be weighed.`,
    `Say it with --amount "${Number(path[1]) + 1}=400 g".`,
  ],
};

/** What keeps a draft from being a dish, and what to do; `lines` are those of its makings. */
export function tellOpen(issue: Issue, lines: readonly string[]): Fault {
  const words = OPEN[issue.code];
  if (words === undefined) return tellIssue(issue, undefined);
  const [sentence, remedy] = words(issue, lines[Number(issue.path[1])] ?? "");
  return { code: issue.code, path: [...issue.path], sentence, remedy };
}

/** Something that did not fit in a file that was read, by file, line and column: one sentence. */
export function tellMisfit({ path, expected, received }: Pick<Issue, "path" | "expected" | "received">): string {
  const [first, second, third] = path;
  const isFile = typeof first === "string" && typeof second === "number" && path.length <= 3;
  const column =
    third === undefined ? "" : typeof third === "number" ? `, column ${third}` : `, column ${quote(third)}`;
  const place = isFile
    ? `line ${second}${column}`
    : path.length === 1 && typeof first === "number"
      ? `line ${first}`
      : path.join(".");
  const found = received === "" ? "nothing" : tellValue(received).replace(/^"\\?"?|\\?"?"$/g, '"');
  return `${place === "" ? "" : `${tellPlain(place)}: `}${found} stands where ${tellPlain(expected)} should.`;
}

function tellPlain(text: string): string {
  return quote(text).slice(1, -1);
}
