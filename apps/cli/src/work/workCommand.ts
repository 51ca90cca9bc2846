import { tellCount } from "@halfloaf/words/en";
import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import {
  type CookingOutcome,
  compareStated,
  type DishToCook,
  findTooLong,
  observeSteps,
  retime,
  scaleSheet,
  solveCooking,
  stopAfter,
  type TimedCooking,
  toWorkProblem,
  toWorkSheet,
} from "halfloaf/kitchen";
import { timelineSvg, toIngredient } from "halfloaf/sheet";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { toNames } from "../words/Names.ts";
import { dayOfWeek } from "./day/dayOfWeek.ts";
import { findDishes, findSitting, type ToCook } from "./findToCook.ts";
import { layWork } from "./layWork.ts";
import { type OpenWork, openWork } from "./openWork.ts";
import { savePace } from "./pace/savePace.ts";
import { findPicturePlace, savePicture } from "./savePicture.ts";
import { type Happened, toHappenings } from "./toHappenings.ts";
import { toWorkData } from "./toWorkData.ts";
import type { MakingTold, WorkPage } from "./WorkPage.ts";
import type { WorkWish } from "./WorkWish.ts";

/** Questions of the search, some seconds of work, after which the best order of work so far is taken. */
const MOST_QUESTIONS = 3000;

/** Prints the order of work of one cooking, or the jobs of a day of a week; or says why there is none. */
export async function workCommand(wish: WorkWish, terminal: Terminal): Promise<ExitCode> {
  const about = wish.week ?? (wish.dishes.length === 0 ? "halfloaf work" : wish.dishes.join(", "));
  const refuseWith = (faults: readonly Fault[]) => refuseInput(about, faults, wish.json, terminal);
  const place = wish.svg === undefined ? undefined : findPicturePlace(wish.svg, terminal.cwd);
  if (place?.ok === false) return refuseWith(place.faults);
  const open = await openWork(wish, terminal);
  if (!open.ok) return refuseWith(open.faults);
  const { week } = open.value;
  if (week !== undefined && wish.sitting === undefined)
    return dayOfWeek({ ...open.value, week }, wish, MOST_QUESTIONS, terminal);
  const toCook = findToCook(wish, open.value);
  if (!toCook.ok) return refuseWith(toCook.faults);
  const planned = timeWork(toCook.value, open.value);
  if (!planned.ok) return refuseWith(planned.faults);
  if (planned.value.kind !== "timed") return tellNone(about, planned.value, wish.json, terminal);
  const { timed } = planned.value;
  const happened = toHappenings(wish.marks, timed, wish.serve);
  if (!happened.ok) return refuseWith(happened.faults);
  const learned = wish.learn ? learn(timed, happened.value, open.value, terminal) : undefined;
  if (learned?.ok === false) return refuseWith(learned.faults);
  const shown = show(wish, open.value, toCook.value, timed, happened.value);
  if (place?.ok === true && wish.svg !== undefined) {
    const words = sheetCatalogueEn(open.value.opened.kitchen.english).timeline(shown.sheet);
    const saved = savePicture(timelineSvg(shown.sheet, words), place.value, wish.svg);
    if (!saved.ok) return refuseWith(saved.faults);
    terminal.talk(`Drawn as ${harmless(wish.svg)}.`);
  }
  if (wish.json) terminal.print(toJsonText(toWorkData(shown)));
  else for (const line of layWork({ ...terminal.page, ...shown })) terminal.print(line);
  return EXIT.done;
}

function findToCook(wish: WorkWish, { opened, week }: OpenWork): Found<ToCook> {
  if (week === undefined || wish.sitting === undefined) return findDishes(wish.dishes, wish.portions, opened);
  return findSitting(week, wish.on ?? week.from, wish.sitting, wish.packed, opened);
}

function timeWork({ dishes }: ToCook, { sitting }: OpenWork): Found<CookingOutcome> {
  const stated = toWorkProblem({ ...sitting, dishes });
  if (stated.ok) return { ok: true, value: solveCooking(stated.cooking, { shouldStop: stopAfter(MOST_QUESTIONS) }) };
  return refuse({
    code: "kit-missing",
    path: [],
    sentence: `${harmless(dishes[stated.dish]?.dish.title ?? "")} can't be cooked here: the kit has no ${stated.kit}, or not enough of them.`,
    remedy: "Choose another dish, or another kitchen with --kitchen.",
  });
}

/** Keeps what the marks say of the cook's pace. */
function learn(
  timed: TimedCooking,
  happened: Happened | undefined,
  { opened, pace }: OpenWork,
  terminal: Terminal,
): Found<unknown> {
  const seen = observeSteps(timed, happened?.marked ?? []);
  if (seen.length === 0) {
    return refuse({
      code: "nothing-to-learn",
      path: [],
      sentence: "No step is marked with both its begin and its end, so nothing can be learned.",
      remedy: "Mark steps with --begun and --done, or leave out --learn.",
    });
  }
  const saved = savePace([...pace.observed, ...seen], opened.kitchen.name, pace.file, terminal.cwd);
  if (saved.ok) terminal.talk(`${tellCount(seen.length, "step")} kept for the pace, in ${harmless(pace.file)}.`);
  return saved;
}

function show(
  wish: WorkWish,
  { opened, pace, sitting }: OpenWork,
  { dishes, atHandMinutes }: ToCook,
  planned: TimedCooking,
  happened: Happened | undefined,
): Omit<WorkPage, "width" | "paint"> {
  const again = happened && retime(planned, happened.happenings, happened.nowMinutes, stopAfter(MOST_QUESTIONS));
  const timed = again?.timed ?? planned;
  const wasServeMinutes = planned.plan.serveMinutes;
  // Clock times stay where they are; serving moves.
  const serveAt = wish.serve === undefined ? undefined : wish.serve + timed.plan.serveMinutes - wasServeMinutes;
  const minutes = wish.minutes ?? atHandMinutes;
  return {
    sheet: scaleSheet(
      toWorkSheet(timed, serveAt),
      dishes.map(({ dish }) => dish),
    ),
    makings: dishes.map((toCook) => tellMakings(toCook, opened)),
    kitchen: opened.kitchen.name,
    names: toNames(opened.kitchen, opened.tables),
    tooLong: minutes === undefined || again !== undefined ? undefined : findTooLong(timed, minutes),
    stated: dishes.map(({ dish }) => compareStated(dish, sitting)),
    pace: pace.learned,
    retimed: again && happened && { kind: again.kind, nowMinutes: happened.nowMinutes, wasServeMinutes },
  };
}

/** What goes into a dish, one line a making, with the food that was chosen for each. */
function tellMakings({ dish, portions, choose }: DishToCook, { kitchen, tables }: OpenWork["opened"]): MakingTold[] {
  return dish.makings.flatMap((making) => {
    const chosen = choose === undefined ? making : choose(making);
    if (chosen === undefined) return [];
    const alone = { ...making, ...chosen, alternatives: [] };
    const text = toIngredient(alone, tables.foods, { english: kitchen.english }, portions / dish.portions);
    return [{ food: chosen.food, text }];
  });
}

function tellNone(
  about: string,
  outcome: Exclude<CookingOutcome, { kind: "timed" }>,
  json: boolean,
  terminal: Terminal,
): ExitCode {
  const fault: Fault =
    outcome.kind === "stopped"
      ? {
          code: "work-stopped",
          path: [],
          sentence: "No order of work was found before the search was stopped.",
          remedy: "Cook fewer dishes at once.",
        }
      : {
          code: "work-impossible",
          path: [],
          value: outcome.conflict.rules.join(", "),
          sentence:
            "These dishes can't be cooked together: what may not wait for reasons of safety would have to, with this kit.",
          remedy: "Cook them one after the other, or cook fewer at once.",
        };
  if (json) terminal.print(toJsonText(toFaultReport(about, [fault], "no-plan")));
  else for (const line of layFaults([fault], terminal.page)) terminal.print(line);
  return EXIT.noPlan;
}
