import {
  type Kitchen,
  type KitchenProblem,
  leaveOutOver,
  listOver,
  type Tables,
  toMenuProblem,
} from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { civilDayOf } from "../keep/civilDayOf.ts";
import { isKept } from "../keep/openFolder.ts";
import type { Terminal } from "../output/Terminal.ts";

interface AskedDays {
  /** The kitchen as it was named. */
  readonly name: string;
  /** The first day where it was said; absent: the day the kitchen says, which for a kept one is today. */
  readonly from?: CivilDate;
  readonly days: number;
}

/** The days of a kitchen as a problem; where they begin today by the clock, without what is over by now, which is told. */
export function stateFromNow(
  { kitchen, tables }: { readonly kitchen: Kitchen; readonly tables: Tables },
  { name, from: asked, days }: AskedDays,
  terminal: Terminal,
): KitchenProblem {
  const from = asked ?? kitchen.startsOn;
  const stated = toMenuProblem(kitchen, tables, from, days);
  if (asked !== undefined || !isKept(name, terminal.cwd)) return stated;
  const nowMs = terminal.nowMs();
  const now = new Date(nowMs);
  const clock = { date: civilDayOf(nowMs), minutes: 60 * now.getHours() + now.getMinutes() };
  const over = listOver(kitchen, { from, days }, clock);
  if (over.length > 0) terminal.talk(`Over for today and not planned: ${over.join(", ")}.`);
  return leaveOutOver(stated, kitchen, over);
}
