import { CLOSING, tellCount, tellDay, tellDayShort, tellMass } from "@halfloaf/words/en";
import { wrapBehind } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import {
  AGAINST_CAUTION,
  type KeepNames,
  tellAgainst,
  tellBudget,
  tellDaysLeft,
  tellToCount,
} from "../words/keepWords.ts";
import { layJobs } from "../work/day/layDay.ts";
import type { TodayReport } from "./TodayReport.ts";

/** A day to be laid out as a page. */
export interface TodayPage extends Page {
  readonly data: TodayReport;
  readonly names: KeepNames;
  /** What is otherwise than the accepted week has it, in words. */
  readonly news: readonly string[];
}

type Line = TodayReport["useUp"][number];

/** The day: what is to be done, to be bought, to be used up, to be thrown away, to be counted; the week's money. */
export function layToday(page: TodayPage): string[] {
  const { data, paint, width, names } = page;
  const { jobs, against, toBuy, lastDay, goneOff, useUp, toCount } = data;
  const list = (title: string, texts: readonly string[]): string[] =>
    texts.length === 0 ? [] : ["", paint.heading(title), "", ...texts.flatMap((text) => wrapBehind("  ", text, width))];
  const bought = toBuy.map(
    ({ shop, date, pack, count, notThere }) =>
      `${count} x ${names.pack(pack)}, ${names.shop(shop)}${date < data.on ? ` (planned for ${tellDayShort(date)})` : ""}${notThere ? " (was not there)" : ""}`,
  );
  return [
    paint.strong(`${tellDay(data.on)}: ${tellCount(jobs.length, "job")}`),
    ...(jobs.length === 0 ? [] : ["", ...layJobs(jobs, page, data.on)]),
    ...list(
      "NOT FOR EVERYONE",
      against.length === 0 ? [] : [...against.map((plate) => tellAgainst(plate, names)), AGAINST_CAUTION],
    ),
    ...list("TO BUY", bought),
    ...list(
      "USE UP",
      [...lastDay, ...useUp].map((line) => tellLine(line, names)),
    ),
    ...list(
      "THROW AWAY",
      goneOff.map((line) => tellLine(line, names)),
    ),
    ...list(
      "TO COUNT",
      toCount.map(({ lot, shortG }) => tellToCount(names.lot(lot), shortG)),
    ),
    "",
    ...[...page.news, tellBudget(data.budget, data.currency), ...(jobs.length > 0 ? [CLOSING] : [])].flatMap((text) =>
      wrapBehind("", text, width),
    ),
  ];
}

function tellLine({ lot, food, dish, massG, daysLeft }: Line, names: KeepNames): string {
  const what = dish !== undefined ? names.dish(dish) : food !== undefined ? names.food(food) : lot;
  return `${what}, ${tellMass(massG)}: ${tellDaysLeft(daysLeft)}`;
}
