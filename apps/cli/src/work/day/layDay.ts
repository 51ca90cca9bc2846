import { harmless } from "../../output/harmless.ts";
import { layTable, wrap, wrapBehind } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";
import { tellMinutes, tellNumber } from "../../words/amountWords.ts";
import { tellDay, tellDayShort } from "../../words/calendarWords.ts";
import { CLOSING } from "../../words/careWords.ts";
import type { Names } from "../../words/Names.ts";
import type { DayData } from "./DayData.ts";

/** A day of a week to be laid out as a page. */
export interface DayPage extends Page {
  readonly data: DayData;
  readonly names: Names;
}

const COLUMNS = [{ title: "for" }, { title: "begun" }, { title: "", wraps: true }];

/** What there is to do on a day, by time, and how long each of its cookings takes as a whole. */
export function layDay(page: DayPage): string[] {
  const { data, width, paint } = page;
  const title = `${tellDay(data.date)}, ${harmless(data.kitchen)}`;
  if (data.jobs.length === 0) return [paint.strong(title), "Nothing is to be done on this day."];
  const rows = data.jobs.flatMap((job): string[][] => [
    [tellFor(job, data.date), tellBefore(job.beforeMinutes), tellJob(job, page)],
    ...(job.cautions ?? []).map(({ text, authority }) => ["", "", `! ${harmless(text)} [${harmless(authority)}]`]),
  ]);
  return [
    paint.strong(title),
    "",
    ...layTable(COLUMNS, rows, width, 2),
    ...layCookings(page),
    "",
    ...wrap(CLOSING, width),
  ];
}

type Job = DayData["jobs"][number];

function tellFor({ date, sitting }: Job, today: string): string {
  return date === today ? sitting : `${tellDayShort(date)}, ${sitting}`;
}

function tellBefore(minutes: number): string {
  return minutes === 0 ? "then" : `${tellMinutes(minutes)} before`;
}

function tellJob(job: Job, { names }: DayPage): string {
  const dish = names.dish(job.dish);
  const portions = job.portions === undefined ? "" : `, ${tellPortions(job.portions)}`;
  const cooked = job.cookedOn === undefined ? "" : `, left over from ${tellDayShort(job.cookedOn)}`;
  const foods = (job.foods ?? []).map(names.food).join(", ");
  switch (job.kind) {
    case "cook":
      return `Cook ${dish}${portions}.`;
    case "re-heat":
      return `Heat again ${dish}${portions}${cooked}.`;
    case "take-out":
      return `Take out of the fridge ${dish}${portions}${cooked}.`;
    case "thaw":
      return `${job.text === undefined ? `Thaw in the fridge: ${foods}.` : harmless(job.text)} For ${dish}.`;
    case "soak":
    case "ahead":
      return `${harmless(job.text ?? "")} For ${dish}.`;
  }
}

function tellPortions(portions: number): string {
  return portions === 1 ? "1 portion" : `${tellNumber(portions)} portions`;
}

function layCookings({ data, names, width, paint }: DayPage): string[] {
  if (data.cookings.length === 0) return [];
  const lines = data.cookings.flatMap((cooking) => {
    const { sitting, packed, dishes, serveMinutes, atHandMinutes } = cooking;
    const what = dishes.map(({ dish }) => names.dish(dish)).join(" and ");
    const when = `${sitting}${packed ? ", to take along" : ""}`;
    const atHand = atHandMinutes === undefined ? "" : ` of ${tellMinutes(atHandMinutes)} at hand`;
    const isLate = serveMinutes !== undefined && atHandMinutes !== undefined && serveMinutes > atHandMinutes;
    const over = isLate ? `, ${tellMinutes(serveMinutes - atHandMinutes)} too long` : "";
    const takes =
      serveMinutes === undefined ? "no order of work was found" : `${tellMinutes(serveMinutes)}${atHand}${over}`;
    const laid = wrapBehind("  - ", `${when}: ${what}${dishes.length > 1 ? ", cooked at once" : ""}: ${takes}.`, width);
    return isLate ? laid.map(paint.warning) : laid;
  });
  return ["", paint.heading("HOW LONG IT TAKES, FROM THE FIRST STEP TO THE PLATE"), "", ...lines];
}
