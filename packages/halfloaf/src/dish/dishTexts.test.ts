import { loadDishTextsDe, loadStarterDishes } from "@halfloaf/data";
import * as v from "valibot";
import { expect, test } from "vitest";
import { parseWith } from "../quantity/index.ts";
import { Dish } from "./dish.ts";
import { DishTexts, layDishTexts } from "./dishTexts.ts";

const dishes = loadStarterDishes().flatMap(({ content }) => v.parse(v.array(Dish), content));
const read = parseWith(DishTexts, loadDishTextsDe());
if (!read.ok) throw new Error("the German texts cannot be read");
const texts = read.value;
const german = layDishTexts(dishes, texts);

/** What German says as English does. */
const SAME = new Set(["Costa Rica", "Ecuador", "China", "Vietnam", "Sichuan, China", "Ukraine", "Thailand", "Japan"]);

const COUNTS: readonly (readonly [english: string, german: string])[] = [
  ["two|twice", "zwei|zweimal"],
  ["three", "drei"],
  ["four", "vier"],
  ["five", "fünf"],
  ["six", "sechs"],
  ["eight", "acht"],
  ["ten", "zehn"],
  ["twelve", "zwölf"],
  ["twenty", "zwanzig"],
  ["thirty", "dreißig"],
  ["third|thirds", "Drittel|Dritteln"],
  ["half", "halb|halbe[nrs]?|Hälfte"],
  ["seconds", "Sekunden"],
  ["minutes?", "Minuten?"],
  ["hours?", "Stunden?|Viertelstunde"],
  ["overnight", "Nacht"],
  ["days?", "Tage?n?"],
];
const UNITS: Readonly<Record<string, string>> = { mL: "ml", L: "l", litre: "Liter", degrees: "Grad" };

/** Every text of a dish, by its place. */
function textsOf({ title, cooking, note, makings, method, cautions }: Dish): Record<string, string> {
  const list = (name: string, each: readonly (string | undefined)[]) =>
    each.flatMap((text, at) => (text === undefined ? [] : [[`${name} ${at}`, text] as const]));
  return Object.fromEntries([
    ["title", title],
    ["cooking", cooking],
    ...list("note", [note]),
    ...list(
      "cut",
      makings.map(({ cut }) => cut),
    ),
    ...method.map(({ id, text }) => [`step ${id}`, text] as const),
    ...list("caution", cautions),
  ]);
}

/** Numbers in figures with their units, and how often each number in words and each length of time stands in a text. */
function countsIn(text: string, language: "english" | "german"): string {
  const found = text.matchAll(/(\d+(?:[.,]\d+)?)(?: (mL|ml|litre|Liter|L|l|degrees|Grad|cm|g|°C)(?!\p{Ll}{2}))?/gu);
  const figures = [...found].map(([, figure = "", unit = ""]) => `${figure.replace(",", ".")} ${UNITS[unit] ?? unit}`);
  const words = COUNTS.map(([english, german]) => {
    const form = new RegExp(`(?<![\\p{L}])(?:${language === "english" ? english : german})(?![\\p{L}])`, "giu");
    return text.match(form)?.length ?? 0;
  });
  return `${figures.sort().join(" ")} | ${COUNTS.flatMap(([name], at) => (words[at] ? [`${words[at]} x ${name}`] : [])).join(", ")}`;
}

function everyPair(): { readonly place: string; readonly said: string; readonly told: string }[] {
  return dishes.flatMap((dish, at) => {
    const told = textsOf(german[at] as Dish);
    return Object.entries(textsOf(dish)).map(([place, said]) => {
      return { place: `${dish.id} ${place}`, said, told: told[place] ?? "" };
    });
  });
}

test("every text of every starter dish has its German one, and none says more", () => {
  expect(everyPair().filter(({ said, told }) => told === "" || (told === said && !SAME.has(said)))).toEqual([]);
  expect(Object.keys(texts.dishes).sort()).toEqual(dishes.map(({ id }) => id).sort());
  for (const { id, method, note } of dishes) {
    expect(Object.keys(texts.dishes[id]?.steps ?? {})).toEqual(method.map((step) => step.id));
    expect([id, texts.dishes[id]?.note === undefined]).toEqual([id, note === undefined]);
  }
  const said = new Set(everyPair().map((pair) => pair.said));
  expect(Object.keys(texts.phrases).filter((phrase) => !said.has(phrase))).toEqual([]);
  expect(new Set(german.map(({ title }) => title)).size).toBe(dishes.length);
});

test("the German texts have the numbers of the English ones, in figures and in words", () => {
  const differing = everyPair()
    .map(({ place, said, told }) => [place, countsIn(said, "english"), countsIn(told, "german"), told] as const)
    .filter(([, said, told]) => said !== told);
  expect(differing).toEqual([]);
});

test("all but texts stays as it was, and a dish without texts as it is", () => {
  const bare = (dish: Dish) => ({
    ...dish,
    title: "",
    cooking: "",
    note: "",
    cautions: dish.cautions.length,
    makings: dish.makings.map(({ cut, ...making }) => [making, cut === undefined]),
    method: dish.method.map(({ text: _, ...step }) => step),
  });
  expect(german.map(bare)).toEqual(dishes.map(bare));
  expect(layDishTexts(dishes, { dishes: {}, phrases: texts.phrases })).toEqual(dishes);
});
