import { Dish } from "halfloaf/dish";
import { namesOf } from "halfloaf/food";
import { type Issue, parseWith } from "halfloaf/quantity";
import { type Field, reckoned, told } from "../method/DraftStep.ts";
import type { NamedMaking } from "../method/matchMakings.ts";
import { readMethod } from "../method/readMethod.ts";
import { readDuration } from "../method/readTimes.ts";
import type { DishDraft, DraftMaking, DraftOptions } from "./DishDraft.ts";
import type { DishText, Passage } from "./DishText.ts";
import { draftWritten } from "./draftWritten.ts";
import { readMakings } from "./readMaking.ts";
import { readYield } from "./readYield.ts";
import { reckonFits, reckonMain, reckonManner, reckonPortionMassG, reckonServed } from "./reckonWhole.ts";

/**
 * A draft of the dish that texts tell: makings with their foods and amounts, the method as steps, and all that a dish has
 * besides, each with how sure it is. Nothing that isn't sure is settled here: a food in doubt is offered, not chosen.
 *
 * A dish that this program wrote is taken as written where it is sound; where it isn't, the issues say so and the texts
 * are read like any others.
 */
export function draftDish(text: DishText, options: DraftOptions): DishDraft {
  const written = text.written === undefined ? undefined : parseWith(Dish, text.written);
  if (written?.ok) return draftWritten(written.value, text);
  const issues: Issue[] =
    written === undefined ? [] : written.issues.map((issue) => ({ ...issue, path: ["written", ...issue.path] }));
  const makings = readMakings(
    text.makings.filter((passage) => !isTooLong(passage)),
    options,
  );
  const method = readMethod(text.method, nameMakings(makings, options));
  const { portions, text: yieldText } = readYield(text.yields);
  const statedMinutes = readStatedMinutes(text.times);
  const main = reckonMain(makings, options.foods);
  const portionMassG = reckonPortionMassG(makings, portions?.value, options.foods);
  const title = text.title === undefined ? undefined : oneLine(text.title);
  return {
    form: text.form,
    id: reckoned(toId(title ?? ""), "likely", "id-by-title"),
    ...(title === undefined ? {} : { title: { ...told(title), from: text.title } }),
    cooking:
      text.cooking === undefined
        ? reckoned("not told", "guess", "cooking-unsaid")
        : { ...told(oneLine(text.cooking)), from: text.cooking },
    manner: reckonManner(title ?? "", method),
    fits: reckonFits(text.categories),
    ...(main === undefined ? {} : { main }),
    ...(portions === undefined ? {} : { portions }),
    ...(yieldText === undefined ? {} : { yieldText }),
    ...(portionMassG === undefined ? {} : { portionMassG }),
    ...(statedMinutes === undefined ? {} : { statedMinutes }),
    makings,
    method,
    keeps: reckoned(
      { fridgeDays: 0, authority: "not told where it was read: eaten on the day" },
      "guess",
      "keeps-unsaid",
    ),
    travels: reckoned(false, "guess", "travels-unsaid"),
    served: reckonServed(method),
    cautions: told([]),
    ...(text.note === undefined ? {} : { note: { ...told(text.note.text), from: text.note } }),
    unread: [...text.unread, ...text.makings.filter(isTooLong), ...unreadTimes(text.times)],
    issues,
  };
}

/** Longest line of makings that is read, in UTF-16 units; a longer one is something else. */
const LONGEST_MAKING = 500;

function isTooLong({ text }: Passage): boolean {
  return text.length > LONGEST_MAKING;
}

/** What each making may be called in the method: its own name, its alternatives', the table's names of its food. */
function nameMakings(makings: readonly DraftMaking[], { foods }: DraftOptions): NamedMaking[] {
  return makings.map(({ name, line, food, passage: { heading } }) => {
    const row = food === undefined ? undefined : foods.get(food.value);
    const others = line?.choices.slice(1).map((choice) => choice.name.text) ?? [];
    const names = [name, ...others, ...(row === undefined ? [] : namesOf(row))];
    return heading === undefined ? { names } : { names, heading };
  });
}

/** The time that its author states: in all, else for preparing and cooking together. */
function readStatedMinutes({ prep, cook, total }: DishText["times"]): Field<number> | undefined {
  const [whole, first, second] = [total, prep, cook].map((each) =>
    each === undefined ? undefined : readDuration(each.text),
  );
  if (whole !== undefined && total !== undefined) return { ...told(whole), from: total };
  const parts = [first, second].flatMap((minutes) => minutes ?? []);
  if (parts.length === 0) return undefined;
  const sum = parts.reduce((minutes, part) => minutes + part, 0);
  return reckoned(sum, "likely", parts.length === 2 ? "time-of-parts" : "time-of-one-part");
}

function unreadTimes(times: DishText["times"]): Passage[] {
  return Object.values(times).filter((passage) => passage !== undefined && readDuration(passage.text) === undefined);
}

function oneLine({ text }: Passage): string {
  return text.replace(/\s*\n\s*/g, " ").slice(0, 200);
}

/** A title as an id: its letters and digits without marks, in lower case, joined by hyphens; "dish" for one without any. */
export function toId(title: string): string {
  const words =
    title
      .normalize("NFD")
      .toLowerCase()
      .replace(/['’\p{M}]/gu, "")
      .match(/[a-z0-9]+/g) ?? [];
  return words.slice(0, 12).join("-") || "dish";
}
