import { tellDay } from "@halfloaf/words/en";
import {
  jobsOfDay,
  listCookings,
  type SittingCooking,
  type SittingKitchen,
  solveCooking,
  stopAfter,
  toWorkProblem,
  type WeekPlan,
} from "halfloaf/kitchen";
import { addDays } from "halfloaf/quantity";
import * as v from "valibot";
import { refuseInput } from "../../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../../exitCodes.ts";
import { toJsonText } from "../../output/harmless.ts";
import type { Terminal } from "../../output/Terminal.ts";
import type { Fault } from "../../words/Fault.ts";
import { toNames } from "../../words/Names.ts";
import { quote } from "../../words/valueWords.ts";
import type { OpenWork } from "../openWork.ts";
import type { WorkWish } from "../WorkWish.ts";
import { DayData } from "./DayData.ts";
import { layDay } from "./layDay.ts";

/** Prints what there is to do on one day of a week; `questions` is how far the search for each cooking goes. */
export function dayOfWeek(
  { opened, week, sitting }: OpenWork & { readonly week: WeekPlan },
  wish: WorkWish,
  questions: number,
  terminal: Terminal,
): ExitCode {
  const { kitchen, tables } = opened;
  const date = wish.on ?? week.from;
  const last = addDays(week.from, week.days - 1);
  const file = wish.week ?? "";
  // Something may be begun on the evening before the first day.
  if (date < addDays(week.from, -1) || date > last)
    return refuseInput(file, [tellOutside(date, week.from, last)], wish.json, terminal);
  const needless = findNeedless(wish);
  if (needless.length > 0) return refuseInput(file, needless, wish.json, terminal);
  const data = v.parse(DayData, {
    format: "halfloaf-day",
    version: 1,
    kitchen: kitchen.name,
    date,
    jobs: jobsOfDay(week, kitchen, tables, date, sitting.pace),
    cookings: listCookings(week, kitchen, tables)
      .filter((cooking) => cooking.date === date)
      .map((cooking) => timeCooking(cooking, sitting, questions)),
  });
  if (wish.json) terminal.print(toJsonText(data));
  else for (const line of layDay({ ...terminal.page, data, names: toNames(kitchen, tables) })) terminal.print(line);
  return EXIT.done;
}

function timeCooking(
  { sitting: kind, packed, dishes, batches, elapsedMinutes, atHandMinutes }: SittingCooking,
  sitting: SittingKitchen,
  questions: number,
): DayData["cookings"][number] {
  const stated = toWorkProblem({ ...sitting, dishes });
  const outcome = stated.ok
    ? solveCooking(stated.cooking, { shouldStop: stopAfter(questions), until: "serve" })
    : undefined;
  const timed = outcome?.kind === "timed" ? outcome.timed : undefined;
  return {
    sitting: kind,
    packed,
    dishes: dishes.map(({ dish, portions }) => ({ dish: dish.id, portions })),
    batches: [...batches],
    ...(timed && { serveMinutes: timed.plan.serveMinutes }),
    isProven: timed?.isProven === true,
    reckonedMinutes: elapsedMinutes,
    ...(atHandMinutes !== undefined && { atHandMinutes }),
  };
}

/** Options that only say something about one cooking. */
function findNeedless({ serve, minutes, svg, marks, learn, packed }: WorkWish): Fault[] {
  const given = [
    ...(serve === undefined ? [] : ["--serve"]),
    ...(minutes === undefined ? [] : ["--minutes"]),
    ...(svg === undefined ? [] : ["--svg"]),
    ...(marks.marks.length > 0 || marks.now || marks.asPlanned || learn ? ["marks"] : []),
    ...(packed ? ["--packed"] : []),
  ];
  if (given.length === 0) return [];
  return [
    {
      code: "sitting-missing",
      path: [],
      value: quote(given.join(", ")),
      sentence: `${given.join(", ")}: these belong to one cooking, and no sitting is named.`,
      remedy: "Name the sitting with --sitting, or leave them out.",
    },
  ];
}

function tellOutside(date: WeekPlan["from"], from: WeekPlan["from"], last: WeekPlan["from"]): Fault {
  return {
    code: "day-outside",
    path: [],
    value: quote(date),
    sentence: `${tellDay(date)} is no day of this week.`,
    remedy: `Name one from ${from} to ${last} with --on.`,
  };
}
