import { listStores, useUpList } from "halfloaf/kitchen/record";
import { daysBetween } from "halfloaf/quantity";
import * as v from "valibot";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { layStores } from "./layStores.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { type StoresLine, StoresReport } from "./StoresReport.ts";

/** What is asked of the stores. */
export interface StoresAsk extends KeepAsk {
  /** How many days ahead what ends is told apart. */
  readonly within: number;
}

/** Shows what is here, where, until when, and what must be used up. */
export function storesCommand(ask: StoresAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const data = toStoresReport(open, ask.within);
    return { ok: true, value: { data, lines: layStores({ ...terminal.page, data, names: open.names }) } };
  });
}

function toStoresReport(open: OpenKeep, withinDays: number): StoresReport {
  const { edited, day, stateThen } = open;
  const useUp = useUpList(stateThen, day, withinDays).map(({ lot }) => lot);
  return v.parse(StoresReport, {
    format: "halfloaf-stores",
    version: 1,
    kitchen: edited.name,
    currency: edited.currency,
    on: day,
    lots: listLots(open),
    withinDays,
    useUp,
  });
}

function listLots({ stateThen, day }: OpenKeep): StoresLine[] {
  return listStores(stateThen, day).map(({ leftG, until, because: _because, pack: _pack, ...row }) => {
    return { ...row, massG: leftG, ...(until !== undefined && { until, daysLeft: daysBetween(day, until) }) };
  });
}
