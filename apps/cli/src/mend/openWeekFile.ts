import { loadDemoKitchens } from "@halfloaf/data";
import { type Tables, WeekPlan } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import type { OpenKitchen } from "../input/openKitchen.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { quote, valueAt } from "../words/valueWords.ts";

/** A kept week with the kitchen it was planned for. */
export interface WeekFile {
  readonly week: WeekPlan;
  readonly opened: OpenKitchen;
}

/** Reads a week's file and its kitchen: the one named, else the demo kitchen of the name in the week. */
export async function openWeekFile(
  file: string,
  kitchen: string | undefined,
  terminal: Terminal,
  starter: Tables,
): Promise<Found<WeekFile>> {
  const read = readJsonFile(file, terminal.cwd);
  if (!read.ok) return read;
  const { content } = read.value;
  if (valueAt(content, ["format"]) !== "halfloaf-week") return refuse(tellNoWeek(file));
  const parsed = parseWith(WeekPlan, content);
  if (!parsed.ok) return { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
  const week = parsed.value;
  const name = kitchen ?? loadDemoKitchens().find((demo) => valueAt(demo.content, ["name"]) === week.kitchen)?.name;
  if (name === undefined) return refuse(tellNoKitchen(week));
  const opened = await openAnyKitchen(name, terminal, starter, week.from);
  return opened.ok ? { ok: true, value: { week, opened: opened.value } } : opened;
}

function tellNoWeek(file: string): Fault {
  return {
    code: "not-a-week",
    path: ["format"],
    value: quote(file),
    sentence: `${quote(file)} holds no week of Halfloaf.`,
    remedy: 'Name a file that "halfloaf week" or "halfloaf mend" has kept.',
  };
}

function tellNoKitchen({ kitchen }: WeekPlan): Fault {
  return {
    code: "week-kitchen",
    path: ["kitchen"],
    value: quote(kitchen),
    sentence: `This week was planned for the kitchen ${quote(kitchen)}, which is no demo kitchen.`,
    remedy: "Name its file with --kitchen.",
  };
}
