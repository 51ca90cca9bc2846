import { tellDayShort } from "@halfloaf/words/en";
import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import type { Kitchen, WeekPlan } from "halfloaf/kitchen";
import { addDays, type CivilDate } from "halfloaf/quantity";
import {
  type Claim,
  dayHtml,
  type Paper,
  type Printed,
  type SheetOptions,
  type SheetWords,
  toDaySheet,
  toWeekSheet,
  weekHtml,
} from "halfloaf/sheet";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellBroken } from "./claimWords.ts";
import { openSheetWeek, type WeekAsk } from "./openSheetWeek.ts";
import { type AskedClaim, toClaim } from "./parseClaim.ts";

/** How a day or a week is to be printed. */
export interface WeekSheetAsk extends WeekAsk {
  readonly paper: Paper;
  readonly claim: readonly AskedClaim[];
}

/** The page of one day, by default the first. */
export async function makeDaySheet(ask: WeekSheetAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openSheetWeek(ask, terminal);
  if (!source.ok) return source;
  const { week, kitchen } = source.value;
  const date = findDay(week, ask.on);
  if (!date.ok) return date;
  return print(ask, kitchen, (words, options) => dayHtml(toDaySheet(source.value, date.value), words, options));
}

/** The page of a week and those of its days. */
export async function makeWeekSheet(ask: WeekSheetAsk, terminal: Terminal): Promise<Found<string>> {
  const source = await openSheetWeek(ask, terminal);
  if (!source.ok) return source;
  const { kitchen } = source.value;
  return print(ask, kitchen, (words, options) => weekHtml(toWeekSheet(source.value), words, options));
}

/** A day of the week, its first where none is named. */
export function findDay({ from, days }: Pick<WeekPlan, "from" | "days">, on: CivilDate | undefined): Found<CivilDate> {
  const last = addDays(from, days - 1);
  const date = on ?? from;
  if (date >= from && date <= last) return { ok: true, value: date };
  return refuse({
    code: "day-not-planned",
    path: [],
    value: date,
    sentence: `${tellDayShort(date)} is no day of this week, which goes from ${tellDayShort(from)} to ${tellDayShort(last)}.`,
    remedy: `Name a day with --on, from ${from} to ${last}.`,
  });
}

function print(
  { claim, paper }: WeekSheetAsk,
  { currency, english }: Pick<Kitchen, "currency" | "english">,
  lay: (words: SheetWords, options: SheetOptions) => Printed,
): Found<string> {
  const asked = claim.map((one) => toClaim(one, currency));
  const faults = asked.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return { ok: false, faults };
  const claims = asked.flatMap((one): Claim[] => (one.ok ? [one.value] : []));
  const words = sheetCatalogueEn(english).sheet;
  const printed = lay(words, { paper, claims });
  if (printed.kind === "printed") return { ok: true, value: printed.html };
  return { ok: false, faults: printed.broken.map((broken) => tellBroken(broken, currency, words.day)) };
}
