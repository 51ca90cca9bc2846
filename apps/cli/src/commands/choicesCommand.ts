import { tellCount } from "@halfloaf/words/en";
import { type KitchenProblem, stateTogether, toWeekPlan } from "halfloaf/kitchen";
import { type Against, type Choice, EFFORTS, type Effort, type FrontierReport, frontier } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { addDays, type CivilDate } from "halfloaf/quantity";
import type { ChoicesReport } from "../choices/ChoicesReport.ts";
import { layChoices } from "../choices/layChoices.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import type { Terminal } from "../output/Terminal.ts";
import { stateFromNow } from "../week/stateFromNow.ts";
import { tellGaps } from "../week/tellNoPlan.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { toNames } from "../words/Names.ts";
import { refuseInput } from "./refuseInput.ts";

/** What `halfloaf choices` was asked. */
export interface ChoicesWish {
  readonly kitchen: string;
  readonly against: Against;
  /** Absent: the day the kitchen says. */
  readonly from?: CivilDate;
  readonly days: number;
  readonly seed: number;
  /** How long to search for each step. */
  readonly effort: Effort;
  readonly json: boolean;
}

interface Task {
  readonly opened: OpenKitchen;
  readonly stated: KitchenProblem;
}

/** Prints plans between which money and one other thing decide, from the cheapest on. */
export async function choicesCommand(wish: ChoicesWish, terminal: Terminal): Promise<ExitCode> {
  const task = await prepare(wish, terminal);
  if (!task.ok) return refuseInput(wish.kitchen, task.faults, wish.json, terminal);
  const { opened, stated } = task.value;
  const gaps = stated.problem.sittings.flatMap(({ dishes }, k) => (dishes.length === 0 ? [k] : []));
  if (gaps.length > 0) {
    const { kitchen, tables } = opened;
    return tellNone(wish, tellGaps(kitchen, tables, stated, gaps, toNames(kitchen, tables)), terminal);
  }
  const report = toReport(wish, task.value, await search(wish, stated, terminal));
  if (report.choices.length === 0) return tellNone(wish, [tellNoChoice(wish)], terminal);
  if (wish.json) terminal.print(toJsonText(report));
  else for (const line of layChoices(terminal.page, report)) terminal.print(line);
  return EXIT.done;
}

async function prepare({ kitchen: name, from: asked, days }: ChoicesWish, terminal: Terminal): Promise<Found<Task>> {
  const opened = await openAnyKitchen(name, terminal, loadTables(), asked);
  if (!opened.ok) return opened;
  const { kitchen } = opened.value;
  const from = asked ?? kitchen.startsOn;
  if (from > addDays("9999-12-31", -days))
    return refuse({
      code: "from-late",
      path: [],
      value: from,
      sentence: `The days from ${from} on run past the end of the year 9999.`,
      remedy: "Name an earlier day with --from.",
    });
  const stated = stateFromNow(opened.value, { name, days, ...(asked && { from: asked }) }, terminal);
  if (stated.sittings.length === 0)
    return refuse({
      code: "no-sittings",
      path: ["sittings"],
      sentence: `The kitchen has no sitting in the days from ${from} on.`,
      remedy: 'Plan more days with --days, or give "sittings" more weekdays.',
    });
  return { ok: true, value: { opened: opened.value, stated } };
}

/** Step by step; a person who asks to stop gets the choices so far. */
async function search(wish: ChoicesWish, stated: KitchenProblem, terminal: Terminal): Promise<FrontierReport> {
  let stopped = false;
  const takeOff = terminal.onStop(() => {
    stopped = true;
  });
  let last: FrontierReport = { done: 0, steps: 0, choices: [] };
  const options = { judge: checkPlan, seed: wish.seed, moves: EFFORTS[wish.effort] };
  for (const report of frontier(stated.problem, wish.against, options)) {
    last = report;
    const { done, steps, choices } = report;
    terminal.showProgress(`Step ${done} of ${steps}: ${tellCount(choices.length, "choice")} (Ctrl-C takes these)`);
    await terminal.pause();
    if (stopped) break;
  }
  terminal.showProgress("");
  takeOff();
  return last;
}

function toReport(
  wish: ChoicesWish,
  { opened, stated }: Task,
  { done, steps, choices }: FrontierReport,
): ChoicesReport {
  const { kitchen } = opened;
  return {
    format: "halfloaf-choices",
    version: 1,
    kitchen: kitchen.name,
    currency: kitchen.currency,
    from: stated.from,
    days: stated.problem.days,
    against: wish.against,
    done,
    steps,
    choices: choices.flatMap((choice) => {
      const exact = stateTogether(stated, choice.plan, kitchen, opened.tables);
      return isInTime(exact, choice) ? [toChoice(wish, { opened, stated: exact }, choice)] : [];
    }),
  };
}

/** True where also what is cooked at once is done in time, by its own order of work; the search knows only its loads. */
function isInTime({ problem }: KitchenProblem, { plan }: Choice): boolean {
  return checkPlan(problem, plan).faults.length === 0;
}

function toChoice(
  { seed, effort }: ChoicesWish,
  { opened: { kitchen, tables }, stated }: Task,
  { plan, moneyMinor, minutes, distinct, shortfallMinor }: Choice,
): ChoicesReport["choices"][number] {
  const { totalMinor } = checkPlan(stated.problem, plan).money;
  const week = toWeekPlan(kitchen, tables, stated, plan, { seed, moves: EFFORTS[effort], moneyMinor: totalMinor });
  return {
    moneyMinor: Math.round(moneyMinor),
    paidMinor: week.accounts.tillMinor + week.accounts.faresMinor,
    minutes,
    distinct,
    shortfallMinor: Math.round(shortfallMinor),
    week,
  };
}

function tellNoChoice({ kitchen }: ChoicesWish): Fault {
  return {
    code: "no-choice",
    path: [],
    sentence: `No plan was found for ${harmless(kitchen)} that keeps every limit, so there is nothing to choose between.`,
    remedy: 'Search longer with --effort; "halfloaf week" says which limits are in the way.',
  };
}

function tellNone(wish: ChoicesWish, faults: readonly Fault[], { page, print, talk }: Terminal): ExitCode {
  if (wish.json) print(toJsonText(toFaultReport(wish.kitchen, faults, "no-plan")));
  else for (const line of layFaults(faults, page)) print(line);
  talk("There is no plan to choose.");
  return EXIT.noPlan;
}
