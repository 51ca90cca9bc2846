import { WeekPlan } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import type { ExitCode } from "../exitCodes.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { tellNotAWeek, tellOtherKitchen } from "../words/keepFaultWords.ts";
import { valueAt } from "../words/valueWords.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { openKeep } from "./openKeep.ts";
import { closeAfter, runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** Takes a week's file as the plan of its days. */
export function acceptCommand(ask: KeepAsk & { readonly file: string }, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const week = readWeek(ask.file, terminal.cwd);
    if (!week.ok) return week;
    if (week.value.kitchen !== open.edited.name) return refuse(tellOtherKitchen(week.value.kitchen, open.edited.name));
    return writeAct(open, terminal.page, (pen) => ({
      ok: true,
      value: { rows: [pen.write({ kind: "menu-accepted", on: open.day, week: week.value })] },
    }));
  });
}

/** Writes down that a week, planned for a kept kitchen, is the plan of its days. */
export async function acceptWeek(ask: KeepAsk, week: WeekPlan, terminal: Terminal): Promise<Found<unknown>> {
  const opened = await openKeep(ask, terminal);
  if (!opened.ok) return opened;
  const plain: WeekPlan = JSON.parse(JSON.stringify(week));
  return closeAfter(opened.value, (open) =>
    writeAct(open, terminal.page, (pen) => ({
      ok: true,
      value: { rows: [pen.write({ kind: "menu-accepted", on: open.day, week: plain })] },
    })),
  );
}

function readWeek(file: string, cwd: string): Found<WeekPlan> {
  const read = readJsonFile(file, cwd);
  if (!read.ok) return read;
  const { content } = read.value;
  if (valueAt(content, ["format"]) !== "halfloaf-week") return refuse(tellNotAWeek(file));
  const parsed = parseWith(WeekPlan, content);
  return parsed.ok ? parsed : { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
}
