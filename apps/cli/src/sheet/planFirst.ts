import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { loadDemoKitchens } from "@halfloaf/data";
import { toMenuProblem, toWeekPlan } from "halfloaf/kitchen";
import { EFFORTS } from "halfloaf/menu";
import { loadTables } from "../input/loadTables.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import type { WeekFile } from "../mend/openWeekFile.ts";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { searchWeek } from "../week/searchWeek.ts";
import { settleFound } from "../week/settleFound.ts";
import { tellNoPlan } from "../week/tellNoPlan.ts";
import type { Found } from "../words/Fault.ts";
import { toNames } from "../words/Names.ts";
import { valueAt } from "../words/valueWords.ts";

const [SEED, DAYS] = [1, 7];

/** True for the name of a demo kitchen and for a file that says it is a kitchen. */
export function isKitchenName(name: string, cwd: string): boolean {
  if (loadDemoKitchens().some((demo) => demo.name === name)) return true;
  if (!existsSync(resolve(cwd, name))) return false;
  const read = readJsonFile(name, cwd);
  return read.ok && valueAt(read.value.content, ["format"]) === "halfloaf-kitchen";
}

/** Plans seven days of a kitchen from its first day on, as `halfloaf week` does unasked; or tells why there is no plan. */
export async function planFirst(name: string, terminal: Terminal): Promise<Found<WeekFile>> {
  const opened = await openAnyKitchen(name, terminal, loadTables());
  if (!opened.ok) return opened;
  const { kitchen, tables } = opened.value;
  const { currency, startsOn } = kitchen;
  terminal.talk(`Planning ${harmless(kitchen.name)} first, as "halfloaf week" does.`);
  const given = toMenuProblem(kitchen, tables, startsOn, DAYS);
  const found = await searchWeek({ stated: given, currency, seed: SEED, moves: EFFORTS.usual }, terminal);
  const settled = found.kind === "found" ? settleFound(opened.value, given, found) : undefined;
  const { stated, outcome } = settled ?? { stated: given, outcome: found };
  if (outcome.kind === "found") {
    const { plan, moves, moneyMinor } = outcome;
    const week = toWeekPlan(kitchen, tables, stated, plan, { seed: SEED, moves, moneyMinor });
    return { ok: true, value: { week, opened: opened.value } };
  }
  const names = toNames(kitchen, tables);
  const { why, nearest } = tellNoPlan({ kitchen, tables, stated, names }, outcome);
  return { ok: false, faults: [...why, ...nearest] };
}
