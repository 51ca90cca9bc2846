import {
  type CookingOutcome,
  findTooLong,
  type SittingKitchen,
  solveCooking,
  stopAfter,
  type TimedCooking,
  toWorkProblem,
  toWorkSheet,
} from "halfloaf/kitchen";
import { timelineSvg } from "halfloaf/sheet";
import { findDish } from "../card/findDish.ts";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { type OpenKitchen, openKitchen } from "../input/openKitchen.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Fault, Found } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { layWork } from "./layWork.ts";
import { findPicturePlace, savePicture } from "./savePicture.ts";
import { toSvgWords } from "./svgWords.ts";
import { toWorkData } from "./toWorkData.ts";

/** What `halfloaf work` was asked. */
export interface WorkWish {
  readonly dishes: readonly string[];
  readonly kitchen: string;
  /** Absent: of each dish as many as it is written for. */
  readonly portions?: number;
  /** Minutes after midnight; absent: no clock times. */
  readonly serve?: number;
  /** Minutes at hand; absent: as many as it takes. */
  readonly minutes?: number;
  readonly cooks: 1 | 2;
  /** File for the picture; absent: none. */
  readonly svg?: string;
  readonly json: boolean;
}

/** Questions of the search, some seconds of work, after which the best order of work so far is taken. */
const MOST_QUESTIONS = 3000;

/** Prints the order of work of one cooking; or says why there is none. */
export function workCommand(wish: WorkWish, terminal: Terminal): ExitCode {
  const about = wish.dishes.join(", ");
  const opened = openKitchen(wish.kitchen, terminal.cwd, loadTables());
  if (!opened.ok) return refuseInput(wish.kitchen, opened.faults, wish.json, terminal);
  const place = wish.svg === undefined ? undefined : findPicturePlace(wish.svg, terminal.cwd);
  if (place?.ok === false) return refuseInput(about, place.faults, wish.json, terminal);
  const timed = timeWork(wish, opened.value);
  if (!timed.ok) return refuseInput(about, timed.faults, wish.json, terminal);
  if (timed.value.kind !== "timed") return tellNone(about, timed.value, wish.json, terminal);
  return finish(wish, opened.value, timed.value.timed, place?.value, terminal);
}

function timeWork(wish: WorkWish, { kitchen, tables }: OpenKitchen): Found<CookingOutcome> {
  const found = wish.dishes.map((word) => findDish(word, tables.dishes));
  const faults = found.flatMap((each) => (each.ok ? [] : [...each.faults]));
  if (faults.length > 0) return { ok: false, faults };
  const dishes = found.flatMap((each) => (each.ok ? [each.value] : []));
  const { kit, authorities } = kitchen;
  const sitting: SittingKitchen = { kit, cooks: wish.cooks, tables, authority: authorities.safety };
  const toCook = dishes.map((dish) => ({ dish, portions: wish.portions ?? dish.portions }));
  const stated = toWorkProblem({ ...sitting, dishes: toCook });
  if (stated.ok) return { ok: true, value: solveCooking(stated.cooking, { shouldStop: stopAfter(MOST_QUESTIONS) }) };
  const fault: Fault = {
    code: "kit-missing",
    path: [],
    sentence: `${harmless(dishes[stated.dish]?.title ?? "")} can't be cooked here: the kit has no ${stated.kit}, or not enough of them.`,
    remedy: "Choose another dish, or another kitchen with --kitchen.",
  };
  return { ok: false, faults: [fault] };
}

function finish(
  wish: WorkWish,
  { kitchen }: OpenKitchen,
  timed: TimedCooking,
  path: string | undefined,
  terminal: Terminal,
): ExitCode {
  const sheet = toWorkSheet(timed, wish.serve);
  const tooLong = wish.minutes === undefined ? undefined : findTooLong(timed, wish.minutes);
  if (path !== undefined && wish.svg !== undefined) {
    const saved = savePicture(timelineSvg(sheet, toSvgWords(sheet)), path, wish.svg);
    if (!saved.ok) return refuseInput(wish.dishes.join(", "), saved.faults, wish.json, terminal);
    terminal.talk(`Drawn as ${harmless(wish.svg)}.`);
  }
  if (wish.json) terminal.print(toJsonText(toWorkData(sheet, kitchen.name, tooLong)));
  else for (const line of layWork({ ...terminal.page, sheet, kitchen: kitchen.name, tooLong })) terminal.print(line);
  return EXIT.done;
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
