import { tellComponent, tellCount, tellFigureOf } from "@halfloaf/words/en";
import { harmless } from "../../output/harmless.ts";
import { layTable, wrap, wrapBehind } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";
import { layMisfits } from "../layMisfits.ts";
import type { FoodBeside, PartOf } from "../ReadReport.ts";

const MOST_OFFERED = 12;
/** So much of a source has room beside a figure. */
const MOST_SOURCE = 24;

/** An official table as a page: what was read and what was not, what it may be compared with, old beside new. */
export function layOfficial(
  { file, title, counts, near, issues, issueCount, offered, taken }: PartOf<"table">,
  page: Page,
): string[] {
  const { width, paint } = page;
  const columns = [
    { title: "our food" },
    { title: "number" },
    { title: "food of the table", wraps: true },
    { title: "by" },
  ];
  const rows = offered
    .slice(0, MOST_OFFERED)
    .map(({ food, official, by }) => [food.id, official.id, harmless(official.name), by].map(harmless));
  const more = offered.length - rows.length;
  return [
    ...wrap(harmless(title), width).map(paint.strong),
    ...wrap(
      `${harmless(file)}: ${tellCount(counts.foods, "food")} with ${tellCount(counts.figures, "figure")}. Not read: ${tellCount(counts.otherComponents, "figure")} of components that the food table does not hold, ${tellCount(counts.otherRows, "row")} that belong to no food of the table.`,
      width,
    ),
    ...layMisfits(issues, issueCount, page),
    ...(near !== undefined && rows.length === 0
      ? ["", ...wrap(`No food of the table is near ${harmless(near)}.`, width).map(paint.warning)]
      : []),
    ...(rows.length === 0 ? [] : ["", paint.heading("CAN BE COMPARED"), ...layTable(columns, rows, width, 2)]),
    ...(more > 0 ? [`  and ${more} more; --json lists all`] : []),
    ...(taken.length > 0
      ? taken.flatMap((each) => ["", ...layChanges(each, page)])
      : [
          "",
          ...wrap(
            'Nothing is taken. --food "NUMBER=ID" lays the figures of a food of the table beside those of ours; --near ID finds its number.',
            width,
          ),
        ]),
  ];
}

/** A file of own foods as a page. */
export function layOwnFoods({ file, foods, taken }: PartOf<"foods">, page: Page): string[] {
  const { width, paint } = page;
  return [
    ...wrap(
      `${harmless(file)}: ${tellCount(foods.length, "own food")}, ${tellCount(taken.length, "food")} with figures from elsewhere`,
      width,
    ).map(paint.strong),
    ...foods.flatMap(({ id, name }) => wrapBehind("  own: ", harmless(`${name} (${id})`), width)),
    ...taken.flatMap((each) => ["", ...layChanges(each, page)]),
  ];
}

/** Old and new of each component; what stays the same by its count alone. */
function layChanges({ food, from, changes, contradictions }: FoodBeside, { width, paint }: Page): string[] {
  const tell = (component: string, sourced: { readonly figure: number } | undefined) =>
    sourced === undefined ? "unknown" : tellFigureOf(component, sourced.figure);
  const shown = changes.filter(({ kind }) => kind !== "same" && kind !== "kept");
  const rows = shown.map(({ component, now, taken }) => [
    tellComponent(component),
    tell(component, now),
    "->",
    tell(component, taken),
    tellSource(taken?.source, from),
  ]);
  const count = (kind: string) => changes.filter((each) => each.kind === kind).length;
  const columns = [
    { title: "per 100 g eaten", wraps: true },
    { title: "now", right: true },
    { title: "" },
    { title: "taken", right: true },
    { title: "" },
  ];
  return [
    ...wrap(harmless(`${food.name} (${food.id})`), width).map(paint.strong),
    ...wrapBehind("  from ", harmless(from), width),
    ...layTable(columns, rows, width, 2),
    ...wrap(`  The same in both: ${count("same")}. Known only here and kept: ${count("kept")}.`, width),
    ...contradictions.flatMap((code) =>
      wrapBehind("  contradict each other: ", code.replaceAll("-", " "), width).map(paint.warning),
    ),
  ];
}

/** How a figure came about where it is not printed so, as far as its source goes on from that of the food. */
function tellSource(source: string | undefined, from: string): string {
  if (source === undefined || from.startsWith(source)) return "";
  if (/reckoned|from kcal|× |x 4\.184/.test(source)) return "reckoned";
  const shared = [...source].findIndex((sign, at) => sign !== from[at]);
  const rest = source.slice(Math.max(0, shared));
  return source.slice(0, shared).endsWith(": ") && rest.length <= MOST_SOURCE ? harmless(rest) : "other source";
}
