import {
  type DishChoices,
  type DishDraft,
  type DraftOptions,
  type MakingChoice,
  readMakingsLine,
  toAmount,
  toId,
} from "@halfloaf/reading";
import type { Making } from "halfloaf/dish";
import { type Fault, type Found, refuse } from "../../words/Fault.ts";
import { findNearest } from "../../words/nearest.ts";
import { quote } from "../../words/valueWords.ts";
import type { ReadWish, Settled } from "../ReadWish.ts";

/** Water is no food of the table: it costs and gives nothing, and dishes of ours don't list it. */
const WATER = /^(?:(?:cold|cool|hot|warm|lukewarm|tepid|iced?|tap|boiled|boiling|freshly|just)[ -])*water$/i;

/** What the command line settles of a draft; whatever of it fits nowhere comes back as faults, all at once. */
export function settleDish(
  wish: ReadWish,
  draft: Pick<DishDraft, "makings">,
  options: DraftOptions,
): Found<DishChoices> {
  const faults: Fault[] = [];
  const makings: Record<number, MakingChoice> = {};
  const place = (of: string): number | undefined => {
    const at = /^\d{1,4}$/.test(of) ? Number(of) - 1 : -1;
    if (at in draft.makings) return at;
    faults.push(tellNoLine(of, draft.makings.length));
    return undefined;
  };
  const settle = (list: readonly Settled[], read: (each: Settled, name: string) => Found<MakingChoice>) => {
    for (const each of list) {
      const at = place(each.of);
      const found = at === undefined ? undefined : read(each, draft.makings[at]?.name ?? "");
      if (found?.ok === false) faults.push(...found.faults);
      if (at !== undefined && found?.ok) makings[at] = { ...(makings[at] as object), ...(found.value as object) };
    }
  };
  settle(wish.foods, ({ value }) => findFoodNamed(value, options));
  settle(wish.amounts, ({ value }, name) => readAmount(value, name, options));
  for (const of of wish.leftOut) {
    const at = place(of);
    if (at !== undefined) makings[at] = "left-out";
  }
  for (const [at, { food, name }] of draft.makings.entries()) {
    if (food === undefined && WATER.test(name)) makings[at] ??= "left-out";
  }
  if (faults.length > 0) return { ok: false, faults };
  const { title, portions } = wish;
  return {
    ok: true,
    value: {
      ...(title !== undefined && { title, id: toId(title) }),
      ...(portions !== undefined && { portions }),
      ...(Object.keys(makings).length > 0 && { makings }),
    },
  };
}

/** A food of the table by its id; the nearest ids where there is none. */
export function findFoodNamed(id: string, { foods }: Pick<DraftOptions, "foods">): Found<{ readonly food: string }> {
  if (foods.has(id)) return { ok: true, value: { food: id } };
  const near = findNearest(id, foods.keys(), 3);
  return refuse({
    code: "food-unknown",
    path: [],
    value: quote(id),
    sentence: `There is no food ${quote(id)} in the food table.`,
    remedy: near.length === 0 ? "Write the id of a food." : `Near to it: ${near.join(", ")}.`,
  });
}

function readAmount(
  text: string,
  name: string,
  { english }: DraftOptions,
): Found<{ readonly amount: Making["amount"] }> {
  if (/^to[ -]taste$/i.test(text.trim())) return { ok: true, value: { amount: "to-taste" } };
  const line = readMakingsLine(`${text} ${name}`);
  const amount = line.kind === "making" ? toAmount(line, line.choices[0], english).amount : undefined;
  if (amount !== undefined) return { ok: true, value: { amount } };
  return refuse({
    code: "amount-unread",
    path: [],
    value: quote(text),
    sentence: `${quote(text)} is no amount.`,
    remedy: 'Write it as in a line of makings, such as --amount "3=400 g", or "3=to taste".',
  });
}

function tellNoLine(of: string, count: number): Fault {
  return {
    code: "line-unknown",
    path: [],
    value: quote(of),
    sentence: `There is no making with the number ${quote(of)}.`,
    remedy: `Write a number from 1 to ${count}, as it stands before the line.`,
  };
}
