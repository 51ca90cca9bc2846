import { EFFORTS, type FoundPlan } from "halfloaf/menu";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { USUAL_KITCHEN } from "../input/openKitchen.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { layNoPlan } from "../week/layNoPlan.ts";
import { type SearchOutcome, searchWeek } from "../week/searchWeek.ts";
import { tellNoPlan } from "../week/tellNoPlan.ts";
import { layWhyHead, layWhyPart } from "../why/layWhy.ts";
import { addPart, beginReport, listWhySteps, type WhyQuestion, type WhyStep } from "../why/listWhySteps.ts";
import { openPlan, type WhyKitchen } from "../why/openPlan.ts";
import type { WhyTask } from "../why/WhyTask.ts";
import { toFaultReport } from "../words/FaultReport.ts";
import { refuseInput } from "./refuseInput.ts";

/** What `halfloaf why` was asked. */
export interface WhyWish extends WhyQuestion {
  /** A week's file, or a kitchen that is planned first. Absent: the kitchen named apart, or the demo. */
  readonly about?: string;
  /** The kitchen that a week was planned for; absent: the demo of the name in the week. */
  readonly kitchen?: string;
  readonly json: boolean;
}

const SEED = 1;

/** Prints the reasons of a plan, in sentences with money. */
export async function whyCommand(wish: WhyWish, terminal: Terminal): Promise<ExitCode> {
  const about = wish.about ?? wish.kitchen ?? USUAL_KITCHEN;
  const opened = await openPlan(about, wish, terminal, loadTables());
  if (!opened.ok) return refuseInput(about, opened.faults, wish.json, terminal);
  const { value } = opened;
  let plan = value.kind === "week" ? value.task.plan : undefined;
  if (plan === undefined) {
    terminal.talk(`Planning ${harmless(value.task.kitchen.name)} first, as "halfloaf week" does.`);
    const { stated, currency } = value.task;
    const outcome = await searchWeek({ stated, currency, seed: SEED, moves: EFFORTS.usual }, terminal);
    if (outcome.kind !== "found") return endWithoutPlan(about, value.task, outcome, wish.json, terminal);
    plan = outcome.plan;
  }
  const task = { ...value.task, plan };
  const steps = listWhySteps(task, wish);
  if (!steps.ok) return refuseInput(about, steps.faults, wish.json, terminal);
  await reason(task, steps.value, wish.json, terminal);
  return EXIT.done;
}

/** Looks for one reason after the other, and prints each as soon as it is there; as data all at the end. */
async function reason(task: WhyTask, steps: readonly WhyStep[], json: boolean, terminal: Terminal): Promise<void> {
  const { page, print, showProgress, pause } = terminal;
  const known: FoundPlan[] = [];
  let report = beginReport(task);
  let title: string | undefined;
  if (!json) for (const line of layWhyHead(page, report, task)) print(line);
  for (const [done, { about, find }] of steps.entries()) {
    showProgress(`Reason ${done + 1} of ${steps.length}: ${about}`);
    await pause();
    const part = find(known);
    showProgress("");
    report = addPart(report, part);
    if (json) continue;
    const laid = layWhyPart(page, part, task, title);
    title = laid.title ?? title;
    for (const line of laid.lines) print(line);
  }
  if (json) print(toJsonText(report));
}

function endWithoutPlan(
  about: string,
  task: WhyKitchen,
  outcome: Exclude<SearchOutcome, { kind: "found" }>,
  json: boolean,
  { page, print, talk }: Terminal,
): ExitCode {
  const reasons = tellNoPlan(task, outcome);
  if (json) print(toJsonText(toFaultReport(about, [...reasons.why, ...reasons.nearest], "no-plan")));
  else for (const line of layNoPlan(reasons, page)) print(line);
  talk("No plan was found that keeps every limit, so there is none to give reasons for.");
  return EXIT.noPlan;
}
