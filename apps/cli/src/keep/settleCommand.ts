import { loadDemoKitchens } from "@halfloaf/data";
import { parseBackup } from "@halfloaf/keep";
import type { Kitchen } from "halfloaf/kitchen";
import { type CivilDate, daysBetween, moveDates } from "halfloaf/quantity";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { openKitchen } from "../input/openKitchen.ts";
import { toJsonText } from "../output/harmless.ts";
import { wrap } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellKeptAlready, tellNotKept } from "../words/keepFaultWords.ts";
import { tellSettled } from "../words/keepWords.ts";
import { civilDayOf } from "./civilDayOf.ts";
import { isKept, openFolder } from "./openFolder.ts";

/** What `halfloaf settle` was asked. */
export interface SettleAsk {
  readonly folder: string;
  /** A kitchen's file or the name of a demo. */
  readonly from: string;
  /** The first day; absent: that of a file, and today for a demo. */
  readonly on?: CivilDate;
  readonly json: boolean;
}

/** Makes the folder of a kept kitchen out of a kitchen's file or a demo, whose dates are moved to begin on the day. */
export async function settleCommand(ask: SettleAsk, terminal: Terminal): Promise<ExitCode> {
  const settled = await settle(ask, terminal);
  if (!settled.ok) return refuseInput(ask.folder, settled.faults, ask.json, terminal);
  const { name, startsOn, stores } = settled.value;
  const data = {
    format: "halfloaf-settled",
    version: 1,
    folder: ask.folder,
    kitchen: name,
    startsOn,
    lots: stores.length,
  };
  if (ask.json) terminal.print(toJsonText(data));
  else
    for (const line of tellSettled(ask.folder, settled.value).flatMap((each) => wrap(each, terminal.page.width)))
      terminal.print(line);
  return EXIT.done;
}

async function settle(ask: SettleAsk, terminal: Terminal): Promise<Found<Kitchen>> {
  const tables = loadTables();
  const opened = openKitchen(ask.from, terminal.cwd, tables);
  if (!opened.ok) return opened;
  if (isKept(ask.folder, terminal.cwd)) return refuse(tellKeptAlready(ask.folder));
  const kitchen = moveTo(opened.value.kitchen, ask, terminal);
  const rows = parseBackup(kitchen, tables.dishes);
  if (!rows.ok) throw new Error(`a kitchen that was read can't be kept: ${JSON.stringify(rows.issues)}`);
  const folder = await openFolder(ask.folder, tables.foods, terminal);
  if (!folder.ok) return folder;
  const kept = folder.value;
  await kept.merge(rows.value);
  const closed = await kept.close();
  return closed.ok ? { ok: true, value: kitchen } : refuse(tellNotKept(closed.reason, closed.detail));
}

function moveTo(kitchen: Kitchen, { from, on }: SettleAsk, { nowMs }: Terminal): Kitchen {
  const isDemo = loadDemoKitchens().some(({ name }) => name === from);
  const start = on ?? (isDemo ? civilDayOf(nowMs()) : kitchen.startsOn);
  return moveDates(kitchen, daysBetween(kitchen.startsOn, start)) as Kitchen;
}
