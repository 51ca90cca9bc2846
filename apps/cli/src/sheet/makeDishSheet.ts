import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import { minutesOf, nutrientsOfDish, withoutOptional } from "halfloaf/dish";
import { solveCooking, stopAfter, toWorkProblem, toWorkSheet } from "halfloaf/kitchen";
import {
  type CardSource,
  cardHtml,
  costDriversSvg,
  dayLesson,
  dishLesson,
  dishToJsonLd,
  lessonHtml,
  type Paper,
  timelineSvg,
  toCardSheet,
  toJsonLdText,
} from "halfloaf/sheet";
import { findDish } from "../card/findDish.ts";
import { loadTables } from "../input/loadTables.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { toNames } from "../words/Names.ts";
import { findDay } from "./makeWeekSheet.ts";
import { openSheetWeek, type WeekAsk } from "./openSheetWeek.ts";

/** Of which dish, in which kitchen. */
export interface DishAsk {
  readonly dish: string;
  readonly kitchen: string;
  readonly portions?: number;
}

/** Questions of the search after which the best order of work so far is drawn. */
const MOST_QUESTIONS = 3000;

/** The costing card of a dish as a page. */
export async function makeCardSheet(
  ask: DishAsk & { readonly paper: Paper },
  terminal: Terminal,
): Promise<Found<string>> {
  const source = await openDish(ask, terminal);
  if (!source.ok) return source;
  const timeline = drawTimeline(source.value);
  const words = sheetCatalogueEn(source.value.kitchen.english).sheet;
  const options = { paper: ask.paper, ...(timeline.ok && { timeline: timeline.value }) };
  return { ok: true, value: cardHtml(toCardSheet(source.value), words, options) };
}

/** The order of work of one dish as a picture. */
export async function makeTimeline(ask: DishAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openDish(ask, terminal);
  return source.ok ? drawTimeline(source.value) : source;
}

/** What drives the cost of a dish, as a picture. */
export async function makeDrivers(ask: DishAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openDish(ask, terminal);
  if (!source.ok) return source;
  return {
    ok: true,
    value: costDriversSvg(toCardSheet(source.value), sheetCatalogueEn(source.value.kitchen.english).sheet),
  };
}

function drawTimeline({ kitchen, tables, dish, portions = dish.portions }: CardSource): Found<string> {
  const stated = toWorkProblem({
    kit: kitchen.kit,
    cooks: 1,
    tables,
    authority: kitchen.authorities.safety,
    dishes: [{ dish, portions }],
  });
  const outcome = stated.ok ? solveCooking(stated.cooking, { shouldStop: stopAfter(MOST_QUESTIONS) }) : undefined;
  if (outcome?.kind === "timed") {
    const sheet = toWorkSheet(outcome.timed);
    return { ok: true, value: timelineSvg(sheet, sheetCatalogueEn(kitchen.english).timeline(sheet)) };
  }
  return refuse({
    code: "no-order-of-work",
    path: [],
    sentence: `"${dish.title}" has no order of work in this kitchen.`,
    remedy: '"halfloaf work" says why.',
  });
}

/** A dish for publishing, as JSON-LD with its cost as plain text and what a portion holds. */
export async function makeJsonLd(ask: DishAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openDish(ask, terminal);
  if (!source.ok) return source;
  const { kitchen, tables, dish } = source.value;
  const { elapsed, ahead } = minutesOf(dish, dish.portions, { rings: Math.max(1, kitchen.kit.rings), cooks: 1 });
  const jsonLd = dishToJsonLd(dish, {
    foods: tables.foods,
    english: kitchen.english,
    minutes: { total: elapsed + ahead },
    nutrients: nutrientsOfDish(dish, tables.foods, tables.retain, withoutOptional),
    cost: sheetCatalogueEn(kitchen.english).publishedCost(toCardSheet(source.value)),
  });
  return { ok: true, value: `${toJsonLdText(jsonLd)}\n` };
}

/** A dish for teaching, with its sums unfolded. */
export async function makeDishLesson(ask: DishAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openDish(ask, terminal);
  if (!source.ok) return source;
  return {
    ok: true,
    value: lessonHtml(dishLesson(source.value), sheetCatalogueEn(source.value.kitchen.english).sheet),
  };
}

/** A day of a week for teaching, with its sums unfolded. */
export async function makeDayLesson(ask: WeekAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openSheetWeek(ask, terminal);
  if (!source.ok) return source;
  const { week, kitchen } = source.value;
  const date = findDay(week, ask.on);
  if (!date.ok) return date;
  const lesson = dayLesson(source.value, date.value);
  if (lesson.cookings.length > 0)
    return { ok: true, value: lessonHtml(lesson, sheetCatalogueEn(kitchen.english).sheet) };
  return refuse({
    code: "nothing-eaten",
    path: [],
    value: date.value,
    sentence: `On ${date.value} nothing of this week is eaten.`,
    remedy: "Name another day with --on.",
  });
}

/** A dish with the kitchen whose prices count. */
async function openDish(
  { dish: word, kitchen: name, portions }: DishAsk,
  terminal: Terminal,
): Promise<Found<CardSource>> {
  const opened = await openAnyKitchen(name, terminal, loadTables());
  if (!opened.ok) return opened;
  const { kitchen, tables } = opened.value;
  const dish = findDish(word, tables.dishes);
  if (!dish.ok) return dish;
  const names = toNames(kitchen, tables);
  return { ok: true, value: { kitchen, tables, names, dish: dish.value, ...(portions !== undefined && { portions }) } };
}
