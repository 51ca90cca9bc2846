import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import { type SittingTimes, toCalendar, writeCalendar, zoneClock } from "halfloaf/sheet";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoZone } from "../words/zoneWords.ts";
import { openSheetWeek, type WeekAsk } from "./openSheetWeek.ts";

/** Of which week, where, and when people sit down. */
export interface CalendarAsk extends WeekAsk {
  /** Time zone by its name in the IANA database; absent: that of this machine. */
  readonly zone?: string;
  readonly at: SittingTimes;
}

/** The calendar of a week: cookings, trips, soaks and thawings, last days. */
export async function makeCalendar(ask: CalendarAsk, terminal: Terminal): Promise<Found<string>> {
  const zone = ask.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (zoneClock(zone) === undefined) return refuse(tellNoZone(zone));
  const source = await openSheetWeek(ask, terminal);
  if (!source.ok) return source;
  const { week, kitchen } = source.value;
  const words = sheetCatalogueEn(kitchen.english).sheet;
  const stamp = new Date(terminal.nowMs()).toISOString().replace(/[-:]|\.\d+/g, "");
  const entries = toCalendar(source.value, words, ask.at);
  return { ok: true, value: writeCalendar({ name: words.calendar.name(week.kitchen), entries, zone, stamp }) };
}
