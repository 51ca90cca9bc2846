import type { Issue } from "halfloaf/quantity";
import { unitWordOfCommonCode } from "halfloaf/sheet";
import {
  type DishForm,
  type DishText,
  MOST_CHARACTERS,
  MOST_MAKINGS,
  MOST_STEPS,
  type Passage,
} from "../dish/DishText.ts";
import { withoutNumbering } from "../dish/withoutNumbering.ts";
import { type Item, type ItemValue, MAX_ITEM_DEPTH, valuesOf } from "./Item.ts";
import { toPlainText } from "./plainText.ts";
import { readWrittenDish } from "./readWrittenDish.ts";

type Path = Issue["path"];

/** Properties that are read or that say nothing about how to cook; all others are told as unread. */
const READ = new Set(
  "name headline recipeingredient recipeingredients ingredients supply recipeinstructions instructions step steps recipeyield yield preptime cooktime performtime totaltime recipecuisine recipecategory keywords cookingmethod description additionalproperty".split(
    " ",
  ),
);
const SILENT = new Set(
  "image thumbnailurl url mainentityofpage mainentity author publisher datepublished datemodified datecreated aggregaterating review reviews comment commentcount interactionstatistic interactioncount video isaccessibleforfree ispartof haspart inlanguage potentialaction identifier sameas speakable contributor copyrightholder copyrightyear license tool estimatedcost position articlesection wordcount credittext about".split(
    " ",
  ),
);

const NUMBERED_WITHIN = /(?:^|\s)\d{1,2}[.)]\s+(?=\p{Lu})/gu;

/** The texts of a dish from an item of schema.org's type Recipe, clean and without markup. **Source**: schema.org, Recipe and HowTo. */
export function readRecipeItem(item: Item, form: DishForm): DishText {
  const makings = firstNonEmpty(item, ["recipeIngredient", "recipeIngredients", "ingredients"], toMakings);
  const method = firstNonEmpty(item, ["recipeInstructions", "instructions", "step", "steps"], toSteps);
  const written = readWrittenDish(item);
  return {
    form,
    ...optional("title", firstText(item, "name", "headline")),
    yields: [...texts(item, "recipeYield"), ...texts(item, "yield")].sort((a, b) => tellingOf(b) - tellingOf(a)),
    makings: makings.slice(0, MOST_MAKINGS),
    method: method.slice(0, MOST_STEPS),
    times: {
      ...optional("prep", firstText(item, "prepTime")),
      ...optional("cook", firstText(item, "cookTime", "performTime")),
      ...optional("total", firstText(item, "totalTime")),
    },
    ...optional("cooking", firstText(item, "recipeCuisine")),
    categories: ["recipeCategory", "keywords", "cookingMethod"].flatMap((name) => texts(item, name)),
    ...optional("note", firstText(item, "description")),
    unread: [...makings.slice(MOST_MAKINGS), ...method.slice(MOST_STEPS), ...unreadOf(item)],
    ...(written === undefined ? {} : { written }),
  };
}

function optional<Key extends string>(key: Key, passage: Passage | undefined): { readonly [K in Key]?: Passage } {
  return (passage === undefined ? {} : { [key]: passage }) as { readonly [K in Key]?: Passage };
}

function firstNonEmpty(item: Item, names: readonly string[], read: (item: Item, name: string) => Passage[]): Passage[] {
  for (const name of names) {
    const passages = read(item, name);
    if (passages.length > 0) return passages;
  }
  return [];
}

function firstText(item: Item, ...names: readonly string[]): Passage | undefined {
  return names.flatMap((name) => texts(item, name))[0];
}

/** The texts of a property; of an item its name, its value or the larger end of its range. */
function texts(item: Item, name: string): Passage[] {
  const key = name.toLowerCase();
  return valuesOf(item, key).flatMap((value, at) => toPassage(shownOf(value), [...item.path, key, at]));
}

function toPassage(text: string, path: Path, heading?: string): Passage[] {
  const plain = toPlainText(text.slice(0, 4 * MOST_CHARACTERS)).slice(0, MOST_CHARACTERS);
  if (plain === "") return [];
  return [heading === undefined ? { text: plain, path } : { text: plain, path, heading }];
}

function shownOf(value: ItemValue): string {
  if (typeof value === "string") return value;
  for (const name of ["text", "name", "value", "maxValue", "minValue"]) {
    const [inner] = valuesOf(value, name);
    if (typeof inner === "string" && inner.trim() !== "") return inner;
  }
  return value.text?.() ?? "";
}

/** "4 servings" tells more than "4". */
function tellingOf({ text }: Passage): number {
  return /\d/.test(text) ? (/\p{L}/u.test(text) ? 2 : 1) : 0;
}

function toMakings(item: Item, name: string): Passage[] {
  const key = name.toLowerCase();
  return valuesOf(item, key).flatMap((value, at) => {
    const path = [...item.path, key, at];
    const text = typeof value === "string" ? value : makingOf(value);
    return toPassage(text, path).flatMap((passage) => toLines(passage));
  });
}

/** A making that is stated as an item: as it is shown, else its number, unit and name. */
function makingOf(item: Item): string {
  const shown = item.text?.().trim();
  if (shown) return shown;
  const part = (name: string) => valuesOf(item, name).find((value) => typeof value === "string") ?? "";
  const unit = part("unitText") || unitWordOfCommonCode(part("unitCode")) || "";
  const quantity = valuesOf(item, "requiredQuantity").map((value) =>
    typeof value === "string" ? value : makingOf(value),
  );
  return [part("value"), unit, ...quantity, part("name") || part("text")].filter((each) => each !== "").join(" ");
}

function toSteps(item: Item, name: string): Passage[] {
  const key = name.toLowerCase();
  return stepsOf(valuesOf(item, key), [...item.path, key], undefined, 0);
}

function stepsOf(values: readonly ItemValue[], path: Path, heading: string | undefined, depth: number): Passage[] {
  if (depth > MAX_ITEM_DEPTH) return [];
  return values.flatMap((value, at) => {
    const place = values.length === 1 ? path : [...path, at];
    if (typeof value === "string") return toPassage(value, place, heading).flatMap(toNumbered);
    return stepsOfItem(value, place, heading, depth);
  });
}

function stepsOfItem(item: Item, path: Path, heading: string | undefined, depth: number): Passage[] {
  const inner = ["itemListElement", "steps", "step", "item"].flatMap((name) =>
    valuesOf(item, name).map((value) => ({ name, value })),
  );
  const isSection = item.types.includes("howtosection") || item.types.includes("itemlist");
  const [own] = ["text", "name", "description"].flatMap((name) =>
    toPassage(shownIn(item, name), [...path, name], heading),
  );
  if (inner.length === 0 || (own !== undefined && !isSection && valuesOf(item, "text").length > 0)) {
    const shown = own ?? toPassage(item.text?.() ?? "", path, heading)[0];
    return shown === undefined ? [] : toNumbered(shown);
  }
  const under = isSection ? (toPassage(shownIn(item, "name"), path)[0]?.text ?? heading) : heading;
  return inner.flatMap(({ name, value }, at) => stepsOf([value], [...path, name, at], under, depth + 1));
}

function shownIn(item: Item, name: string): string {
  const [value] = valuesOf(item, name);
  return typeof value === "string" ? value : "";
}

/** The lines of a passage, each without its number; a short line that ends with a colon heads those after it. */
function toLines(passage: Passage): Passage[] {
  const lines: Passage[] = [];
  let heading = passage.heading;
  for (const line of passage.text.split("\n")) {
    const text = withoutNumbering(line);
    if (text === "") continue;
    if (passage.text.includes("\n") && /^.{1,50}:$/.test(text)) heading = text.slice(0, -1);
    else lines.push(heading === undefined ? { text, path: passage.path } : { text, path: passage.path, heading });
  }
  return lines;
}

/** The lines of a passage of the method; one line with numbers 1, 2, 3 in it is as many. */
function toNumbered(passage: Passage): Passage[] {
  const numbers = [...passage.text.matchAll(NUMBERED_WITHIN)].map((match) => Number.parseInt(match[0].trim(), 10));
  const counts = numbers.length > 1 && numbers.every((number, at) => number === at + 1);
  if (!counts || passage.text.includes("\n")) return toLines(passage);
  return toLines({ ...passage, text: passage.text.replace(NUMBERED_WITHIN, "\n") });
}

function unreadOf(item: Item): Passage[] {
  return [...item.properties.keys()]
    .filter((name) => !READ.has(name) && !SILENT.has(name))
    .flatMap((name) =>
      valuesOf(item, name).flatMap((value, at) => toPassage(shownOf(value), [...item.path, name, at])),
    );
}
