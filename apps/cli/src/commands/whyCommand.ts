import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { USUAL_KITCHEN } from "../input/openKitchen.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import { layFaults } from "../output/layFaults.ts";
import type { Terminal } from "../output/Terminal.ts";
import { EFFORTS, type SearchOutcome, searchWeek } from "../week/searchWeek.ts";
import { tellBroken, tellGaps } from "../week/tellNoPlan.ts";
import { layWhy } from "../why/layWhy.ts";
import { openPlan, type WhyKitchen } from "../why/openPlan.ts";
import { toWhyReport, type WhyQuestion } from "../why/toWhyReport.ts";
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
  const opened = await openPlan(about, wish.kitchen, terminal, loadTables());
  if (!opened.ok) return refuseInput(about, opened.faults, wish.json, terminal);
  const { value } = opened;
  let plan = value.kind === "week" ? value.task.plan : undefined;
  if (plan === undefined) {
    terminal.talk(`Planning ${harmless(value.task.kitchen.name)} first, as "halfloaf week" does.`);
    const { stated, currency } = value.task;
    const outcome = await searchWeek({ stated, currency, seed: SEED, moves: EFFORTS.usual }, terminal);
    if (outcome.kind !== "found") return tellNoPlan(about, value.task, outcome, wish.json, terminal);
    plan = outcome.plan;
  }
  const task = { ...value.task, plan };
  const report = toWhyReport(task, wish);
  if (!report.ok) return refuseInput(about, report.faults, wish.json, terminal);
  if (wish.json) terminal.print(toJsonText(report.value));
  else for (const line of layWhy(terminal.page, report.value, task)) terminal.print(line);
  return EXIT.done;
}

function tellNoPlan(
  about: string,
  { kitchen, tables, stated, currency, names }: WhyKitchen,
  outcome: Exclude<SearchOutcome, { kind: "found" }>,
  json: boolean,
  { page, print, talk }: Terminal,
): ExitCode {
  const faults =
    outcome.kind === "gaps"
      ? tellGaps(kitchen, tables, stated, outcome.sittings, names)
      : outcome.plan === undefined
        ? []
        : tellBroken(stated, outcome.plan, currency, names);
  if (json) print(toJsonText(toFaultReport(about, faults, "no-plan")));
  else for (const line of layFaults(faults, page)) print(line);
  talk("No plan was found that keeps every limit, so there is none to give reasons for.");
  return EXIT.noPlan;
}
