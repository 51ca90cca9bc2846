import { toPlainText } from "../page/plainText.ts";
import { type DishText, MOST_CHARACTERS, MOST_MAKINGS, MOST_STEPS, MOST_TEXT, type Passage } from "./DishText.ts";
import { FOR_SO_MANY, type SortedLine, sortLines } from "./sortLines.ts";
import { withoutNumbering } from "./withoutNumbering.ts";

const SERVES = /\b(?:serves|servings?|serving size|portions?|makes|yields?|feeds|for \d+ (?:people|persons))\b/i;
const TIMES: readonly (readonly ["prep" | "cook" | "total", RegExp])[] = [
  ["prep", /\b(?:prep(?:aration)?|hands-on)(?: time)?\b[^,;|]*/i],
  ["cook", /\b(?:cook(?:ing)?|baking|bake)(?: time)?\b[^,;|]*/i],
  ["total", /\b(?:total|ready in|takes|time)(?: time)?\b[^,;|]*/i],
];
const LONGEST_TITLE = 120;

/**
 * The texts of the dish that a text tells, sorted by what each line looks like: the title first, makings, method; what is said
 * of portions and times wherever it stands. No keywords are needed, though "Method" and its like help. Undefined where
 * there is nothing that looks like makings with a method. Paths are `["line", number]`, counted from 1 without empty lines.
 * Of a text longer than `MOST_TEXT` only the beginning is read.
 */
export function readPastedText(text: string): DishText | undefined {
  const sorted = sortLines(toPlainText(text.slice(0, MOST_TEXT)).split("\n"));
  const makings = underHeadings(sorted.filter(({ part }) => part === "makings"));
  const method = underHeadings(joinBroken(sorted.filter(({ part }) => part === "method")));
  if (makings.length === 0 || method.length === 0 || makings.length + method.length < 3) return undefined;
  const about = sorted.filter(({ part }) => part === "about").map(toPassage);
  const rest = sorted.filter(({ part, isKeyword }) => part === "other" && !isKeyword).map(toPassage);
  const before = rest.filter(({ path }) => Number(path[1]) < Number(makings[0]?.path[1]));
  const title = before.find((passage) => passage.text.length <= LONGEST_TITLE);
  const note = before.find((passage) => passage !== title && passage.text.length > 40);
  return {
    form: "text",
    ...(title === undefined ? {} : { title }),
    yields: about.filter(({ text }) => tellsYield(text)).map(cutToYield),
    makings: makings.slice(0, MOST_MAKINGS),
    method: method.slice(0, MOST_STEPS),
    times: readTimesOf(about),
    categories: [],
    ...(note === undefined ? {} : { note }),
    unread: [
      ...rest.filter((passage) => passage !== title && passage !== note),
      ...makings.slice(MOST_MAKINGS),
      ...method.slice(MOST_STEPS),
    ],
  };
}

function toPassage({ text, line }: SortedLine): Passage {
  return { text: text.slice(0, MOST_CHARACTERS), path: ["line", line] };
}

/** Lines that a margin broke within a sentence are one. */
function joinBroken(lines: readonly SortedLine[]): SortedLine[] {
  const joined: SortedLine[] = [];
  for (const each of lines) {
    const last = joined.at(-1);
    const goesOn =
      last !== undefined && !last.isHeading && last.line === each.line - 1 && !/[.!?:;]["')]?$/.test(last.text);
    if (
      goesOn &&
      /^[\p{Ll}\d(]/u.test(each.text) &&
      last.text.length > 40 &&
      withoutNumbering(each.text) === each.text
    ) {
      // The line number of the last piece keeps the next one in reach; the passage is told where it begins.
      joined[joined.length - 1] = { ...last, text: `${last.text} ${each.text}` };
    } else joined.push(each);
  }
  return joined;
}

function underHeadings(lines: readonly SortedLine[]): Passage[] {
  const passages: Passage[] = [];
  let heading: string | undefined;
  for (const each of lines) {
    const text = withoutNumbering(each.text);
    if (each.isHeading) heading = each.isKeyword ? undefined : text.replace(/\s*:$/, "");
    else if (text !== "") {
      const passage = toPassage({ ...each, text });
      passages.push(heading === undefined ? passage : { ...passage, heading });
    }
  }
  return passages;
}

function tellsYield(text: string): boolean {
  return SERVES.test(text) || FOR_SO_MANY.test(text);
}

/** Of "Serves 4 | 20 minutes" only what is said of portions. */
function cutToYield(passage: Passage): Passage {
  const parts = passage.text.split(/[|;•·]/).filter((part) => tellsYield(part));
  return { ...passage, text: (parts[0] ?? passage.text).trim() };
}

function readTimesOf(about: readonly Passage[]): DishText["times"] {
  const times: { prep?: Passage; cook?: Passage; total?: Passage } = {};
  for (const passage of about) {
    let left = passage.text;
    for (const [name, pattern] of TIMES) {
      const match = pattern.exec(left);
      if (match === null || !/\d|hour|overnight/i.test(match[0])) continue;
      times[name] ??= { ...passage, text: match[0].trim() };
      left = left.replace(match[0], " ");
    }
  }
  return times;
}
