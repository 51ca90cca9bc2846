import { type DishText, type DraftOptions, draftDish, NO_FINDINGS, readDishTexts } from "@halfloaf/reading";
import { tellCount } from "@halfloaf/words/en";
import { type Found, refuse } from "../../words/Fault.ts";
import { quote } from "../../words/valueWords.ts";
import type { FileReading } from "../FileReading.ts";
import type { PartOf } from "../ReadReport.ts";
import type { ReadWish } from "../ReadWish.ts";
import { settleDish } from "./settleDish.ts";
import { toReadDish, toReadMaking } from "./toReadDish.ts";

/** The dishes of a page, of JSON-LD or of a pasted text. */
export function readDishes(
  name: string,
  kind: "dish" | "page",
  text: string,
  wish: ReadWish,
  options: DraftOptions,
): Found<FileReading> {
  const { dishes, issues } = readDishTexts(text, kind);
  if (dishes.length === 0) return refuse(tellNoDish(name));
  const at = (wish.dish ?? 1) - 1;
  const settles =
    [wish.foods, wish.amounts, wish.leftOut].some((list) => list.length > 0) ||
    wish.title !== undefined ||
    wish.portions !== undefined;
  if (at >= dishes.length || (settles && wish.dish === undefined && dishes.length > 1))
    return refuse(tellWhichDish(name, dishes));
  const taken = wish.dish === undefined ? dishes : [dishes[at] as DishText];
  const read = [];
  for (const dish of taken) {
    const choices = settleDish(wish, draftDish(dish, options), options);
    if (!choices.ok) return choices;
    read.push(toReadDish(dish, choices.value, options));
  }
  const part: PartOf<"dish" | "page"> = {
    kind,
    file: name,
    form: taken[0]?.form ?? "text",
    dishes: read,
    issues: issues.map(({ code, path, expected, received }) => ({ code, path: [...path], expected, received })),
  };
  const made = read.flatMap(({ dish }) => dish ?? []);
  return {
    ok: true,
    value: { part, findings: { ...NO_FINDINGS, dishes: made }, open: read.flatMap(({ open }) => open) },
  };
}

/** Lines of makings alone, of which nothing can be kept. */
export function readMakingsOnly(name: string, text: string, options: DraftOptions): FileReading {
  const lines = text.split(/\r\n|\r|\n/);
  const makings = lines.flatMap((line, at) =>
    line.trim() === "" ? [] : [{ text: line.trim().slice(0, 500), path: ["line", at + 1] }],
  );
  const empty = { form: "text", yields: [], method: [], times: {}, categories: [], unread: [] } as const;
  const draft = draftDish({ ...empty, makings }, options);
  const headings = [...new Set(draft.makings.flatMap(({ passage }) => passage.heading ?? []))];
  const read = draft.makings.map((making, at) => toReadMaking(making, at, undefined, options));
  return { part: { kind: "makings", file: name, makings: read, headings }, findings: NO_FINDINGS, open: [] };
}

function tellNoDish(name: string) {
  return {
    code: "no-dish",
    path: [],
    value: quote(name),
    sentence: `No dish was found in ${quote(name)}: nothing in it looks like makings with a method.`,
    remedy: "Check that it is the whole page or text; lines of makings alone are read with --as makings.",
  };
}

function tellWhichDish(name: string, dishes: readonly DishText[]) {
  const titles = dishes.slice(0, 9).map(({ title }, at) => `${at + 1} ${quote(title?.text ?? "without a title")}`);
  return {
    code: "which-dish",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} holds ${tellCount(dishes.length, "dish", "dishes")}: ${titles.join(", ")}.`,
    remedy: "Say with --dish and its number which one is meant.",
  };
}
