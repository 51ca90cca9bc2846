import { accountsBy, type Stretch } from "halfloaf/kitchen/record";
import { accountsCsv, type KeptSource, movementsCsv, pricesCsv, storesCsv } from "halfloaf/sheet";
import { type OpenKeep, openKeep } from "../keep/openKeep.ts";
import { closeAfter } from "../keep/runKeep.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";

/** Tables of a kept kitchen. */
export const TABLES = ["prices", "stores", "movements", "accounts"] as const;
export type TableKind = (typeof TABLES)[number];

/** Which kept kitchen, as it stands on which day. */
export interface KeptAsk {
  readonly kitchen: string;
  /** Absent: today. */
  readonly on?: string;
}

/** Which table; `each` is the stretch of a row of the accounts. */
export interface TableAsk extends KeptAsk {
  readonly table: TableKind;
  readonly each: Stretch;
}

/** A table of a kept kitchen as comma-separated values. */
export function makeTable({ table, each, ...ask }: TableAsk, terminal: Terminal): Promise<Found<string>> {
  return withKept(ask, terminal, (source, { day }) => {
    switch (table) {
      case "prices":
        return pricesCsv(source);
      case "stores":
        return storesCsv(source, day);
      case "movements":
        return movementsCsv(source);
      case "accounts":
        return accountsCsv(source.edited, accountsOf(source, each, day));
    }
  });
}

/** The accounts from the kitchen's first day to a day. */
export function accountsOf({ edited, state }: KeptSource, each: Stretch, day: string) {
  const [from = day, to = day] = [edited.startsOn, day].sort();
  return accountsBy(state, each, from, to);
}

/** Makes something of a kept kitchen and closes it. */
export async function withKept(
  { kitchen, on }: KeptAsk,
  terminal: Terminal,
  make: (source: KeptSource, open: OpenKeep) => string,
): Promise<Found<string>> {
  const opened = await openKeep({ kitchen, json: false, ...(on !== undefined && { on }) }, terminal);
  if (!opened.ok) return opened;
  return closeAfter(opened.value, (open) => {
    const { edited, stateThen, tables, names } = open;
    return { ok: true, value: make({ edited, state: stateThen, foods: tables.foods, names }, open) };
  });
}
