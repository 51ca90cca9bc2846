import { CLOSING, tellDay, tellDayShort, tellMinutes, tellPortions } from "@halfloaf/words/en";
import { harmless } from "../../output/harmless.ts";
import { layTable, wrap, wrapBehind } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";
import type { Names } from "../../words/Names.ts";
import { tellTaken } from "../../words/takenWords.ts";
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
  return [
    paint.strong(title),
    "",
    ...layJobs(data.jobs, page, data.date),
    ...layCookings(page),
    "",
    ...wrap(CLOSING, width),
  ];
}

/** A job; by a kitchen's record also with how many of its portions the stores lack. */
type Job = DayData["jobs"][number] & {
  readonly shortPortions?: number | undefined;
  /** True where its cooking is among the jobs, so that it need not be said that it is not there. */
  readonly isToCook?: true | undefined;
};

/** Jobs by time as a table: for which sitting, how long before, what. */
export function layJobs(
  jobs: readonly Job[],
  { width, names }: Pick<DayPage, "width" | "names">,
  today: string,
): string[] {
  const rows = jobs.flatMap((job): string[][] => [
    [tellFor(job, today), tellBefore(job.beforeMinutes), tellJob(job, names)],
    ...(job.cautions ?? []).map(({ text, authority }) => ["", "", `! ${harmless(text)} [${harmless(authority)}]`]),
    ...tellMissing(job).map((text) => ["", "", text]),
  ]);
  return layTable(COLUMNS, rows, width, 2);
}

function tellFor({ date, sitting }: Job, today: string): string {
  return date === today ? sitting : `${tellDayShort(date)}, ${sitting}`;
}

function tellBefore(minutes: number): string {
  return minutes === 0 ? "then" : `${tellMinutes(minutes)} before`;
}

function tellJob(job: Job, names: Names): string {
  const dish = names.dish(job.dish);
  const portions = job.portions === undefined ? "" : `, ${tellPortions(job.portions)}`;
  const taken = tellTaken(job, names);
  const how = taken === "" ? "" : `, with ${taken}`;
  const foods = (job.foods ?? []).map(names.food).join(", ");
  switch (job.kind) {
    case "cook":
      return `Cook ${dish}${portions}${how}.`;
    case "re-heat":
      return `Heat again ${dish}${portions}${tellOrigin(job)}.`;
    case "take-out":
      return `Take out of the fridge ${dish}${portions}${tellOrigin(job)}.`;
    case "thaw":
      if (job.putBy !== undefined) return `Put out of the freezer into the fridge to thaw: ${dish}.`;
      return `${job.text === undefined ? `Thaw ${job.cautions === undefined ? "in the fridge" : "at once"}: ${foods}.` : harmless(job.text)} For ${dish}.`;
    case "soak":
    case "ahead":
      return `${harmless(job.text ?? "")} For ${dish}.`;
  }
}

function tellMissing({ portions = 0, shortPortions = 0, isToCook }: Job): string[] {
  if (shortPortions <= 0 || isToCook) return [];
  if (shortPortions < portions) return [`Only ${tellPortions(portions - shortPortions)} of it in the stores.`];
  return [
    'The stores have none of it that is still good. Tell the cooking first with "halfloaf cooked", or what came instead with "halfloaf sitting".',
  ];
}

function tellOrigin({ cookedOn, putBy }: Job): string {
  if (putBy === undefined) return cookedOn === undefined ? "" : `, left over from ${tellDayShort(cookedOn)}`;
  const since = cookedOn === undefined ? "" : `, cooked on ${tellDayShort(cookedOn)}`;
  return `, put by in the ${putBy}${since}`;
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
  return ["", paint.heading("MINUTES, FIRST STEP TO PLATE"), "", ...lines];
}
