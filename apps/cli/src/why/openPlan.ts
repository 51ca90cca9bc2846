import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { loadDemoKitchens } from "@halfloaf/data";
import {
  changeWeek,
  type Kitchen,
  type KitchenProblem,
  leaveOutLate,
  readWeekPlan,
  stateKept,
  stateTogether,
  stockBesides,
  type Tables,
  toMenuProblem,
  WeekPlan,
  withStandRise,
} from "halfloaf/kitchen";
import { toRemainder } from "halfloaf/menu";
import { checkPlan } from "halfloaf/menu/check";
import { type CivilDate, type Issue, parseWith } from "halfloaf/quantity";
import { readJsonFile } from "../input/readJsonFile.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { tellChangeIssue } from "../mend/toWeekChanges.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { toNames } from "../words/Names.ts";
import { tellPlanFault } from "../words/planFaultWords.ts";
import { quote, tellPath, valueAt } from "../words/valueWords.ts";
import type { WhyTask } from "./WhyTask.ts";

/** A kitchen without a plan yet. */
export type WhyKitchen = Omit<WhyTask, "plan">;

/** What the reasons are asked of: a week with its plan, or a kitchen that is yet to be planned. */
export type Opened =
  | { readonly kind: "week"; readonly task: WhyTask }
  | { readonly kind: "kitchen"; readonly task: WhyKitchen };

const DAYS = 7;

/** The kitchen of a week, and the first of its days that is not over; absent = none is. */
interface OfWeek {
  readonly kitchen?: string;
  readonly today?: CivilDate;
}

/** Opens a week's file with its kitchen, or a kitchen. Faults come back in words. */
export async function openPlan(name: string, of: OfWeek, terminal: Terminal, starter: Tables): Promise<Found<Opened>> {
  const week = readWeek(name, terminal.cwd);
  if (week !== undefined) return week.ok ? openWeek(week.value, of, terminal, starter) : week;
  if (of.today !== undefined) return refuse(tellNoWeek(name));
  const opened = await openAnyKitchen(name, terminal, starter);
  if (!opened.ok) return opened;
  const { kitchen, tables } = opened.value;
  return {
    ok: true,
    value: { kind: "kitchen", task: toTask(kitchen, tables, toMenuProblem(kitchen, tables, kitchen.startsOn, DAYS)) },
  };
}

function toTask(kitchen: Kitchen, tables: Tables, stated: KitchenProblem): WhyKitchen {
  return { kitchen, tables, stated, names: toNames(kitchen, tables), currency: kitchen.currency };
}

/** The week in a file; undefined where the name is that of a demo kitchen, of no file, or of a file of another kind. */
function readWeek(name: string, cwd: string): Found<WeekPlan> | undefined {
  const isDemo = loadDemoKitchens().some((demo) => demo.name === name);
  if (isDemo || !existsSync(resolve(cwd, name))) return undefined;
  const read = readJsonFile(name, cwd);
  if (!read.ok || valueAt(read.value.content, ["format"]) !== "halfloaf-week") return undefined;
  const { content } = read.value;
  const parsed = parseWith(WeekPlan, content);
  return parsed.ok ? parsed : { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
}

async function openWeek(
  week: WeekPlan,
  { kitchen: kitchenName, today }: OfWeek,
  terminal: Terminal,
  starter: Tables,
): Promise<Found<Opened>> {
  const demo = loadDemoKitchens().find(({ content }) => valueAt(content, ["name"]) === week.kitchen);
  const name = kitchenName ?? demo?.name;
  if (name === undefined) return refuse(tellNoKitchen(week));
  const opened = await openAnyKitchen(name, terminal, starter, week.from);
  if (!opened.ok) return opened;
  const { kitchen, tables } = opened.value;
  if (today !== undefined) return openRest(week, kitchen, tables, today);
  const asked = withStandRise(stockBesides(kitchen, week), week.accounts.risen?.pct ?? 0);
  const task = toTask(asked, tables, stateKept(asked, tables, week));
  const plan = readWeekPlan(week, task.stated);
  if (!plan.ok) return { ok: false, faults: plan.issues.map(tellMisfit) };
  const timed = stateTogether(task.stated, plan.value, asked, tables);
  const stated = leaveOutLate(timed, asked, week.from, plan.value);
  const context = { ...task, stated, plan: plan.value };
  const { faults } = checkPlan(stated.problem, plan.value);
  if (faults.length > 0) return { ok: false, faults: faults.map((fault) => tellPlanFault(fault, context)) };
  return { ok: true, value: { kind: "week", task: context } };
}

/** What is left of a week from a day on, with all that is over as it was. */
function openRest(week: WeekPlan, kitchen: Kitchen, tables: Tables, today: CivilDate): Found<Opened> {
  const changed = changeWeek(kitchen, tables, week, [], today);
  if (!changed.ok) return { ok: false, faults: changed.issues.map((issue) => tellChangeIssue(issue, [])) };
  const { stated, week: rest } = changed.value;
  const context = { ...toTask(kitchen, tables, stated), plan: rest.plan, rest };
  const { problem, plan } = toRemainder(rest);
  const faults = checkPlan(problem, plan).faults.map((fault) =>
    tellPlanFault(fault, { ...context, stated: { ...stated, problem }, plan }),
  );
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { kind: "week", task: context } };
}

function tellNoWeek(name: string): Fault {
  return {
    code: "today-no-week",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} is a kitchen, which is planned from its first day on: none of its days is over.`,
    remedy: "Leave out --today, or name a week's file.",
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

/** A place in a week's file that no longer fits the kitchen. */
function tellMisfit({ code, path, expected, received }: Issue): Fault {
  return {
    code,
    path: [...path],
    value: quote(received),
    sentence: `${quote(tellPath(path))} of the week is ${quote(received)}; the kitchen as it is now asks for ${expected}.`,
    remedy: "The kitchen has changed since the week was planned: plan it anew, or name the kitchen as it was.",
  };
}
