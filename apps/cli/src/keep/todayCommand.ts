import { platesAgainst } from "halfloaf/kitchen";
import {
  budgetOf,
  keyOfMissing,
  menuOn,
  type Reminder,
  remindersOf,
  type UseUpLine,
  useUpList,
} from "halfloaf/kitchen/record";
import * as v from "valibot";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { tellNoWeekYet } from "../words/keepWords.ts";
import { civilDayOf } from "./civilDayOf.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { layToday } from "./layToday.ts";
import type { OpenKeep } from "./openKeep.ts";
import { openTrips } from "./openTrips.ts";
import { runKeep } from "./runKeep.ts";
import { TodayReport } from "./TodayReport.ts";
import { countNews, tellNews } from "./tellNews.ts";
import { toKeepNames } from "./toKeepNames.ts";

/** Shows what to do next, what to buy, what must be used up, what is to be counted, and the week's money. */
export function todayCommand(ask: KeepAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const data = toTodayReport(open);
    // What was told of days to come, too: it is what the plan would follow.
    const news = [...tellUnplanned(open, terminal), ...tellNews(open, open.state)];
    const lines = layToday({ ...terminal.page, data, news, names: toKeepNames(open, open.stateThen) });
    return { ok: true, value: { data, lines } };
  });
}

/** That nothing is planned for the day, and what plans it. */
function tellUnplanned({ stateThen, day, folder }: OpenKeep, terminal: Terminal): string[] {
  if (menuOn(stateThen, day) !== undefined) return [];
  const isNow = day === civilDayOf(terminal.nowMs());
  return [tellNoWeekYet(folder, isNow ? undefined : day)];
}

function toTodayReport(open: OpenKeep): TodayReport {
  const { edited, kitchen, day, stateThen: state, tables } = open;
  const menu = menuOn(state, day);
  const reminders = remindersOf(edited, state, tables, day);
  const told = <Kind extends Reminder["kind"]>(kind: Kind) =>
    reminders.filter((one): one is Extract<Reminder, { kind: Kind }> => one.kind === kind);
  const soon = useUpList(state, day, 3).filter(({ daysLeft }) => daysLeft !== undefined && daysLeft > 0);
  const toBuy = openTrips(state, day).flatMap(({ trip, lines }) =>
    trip.date > day
      ? []
      : lines.map(({ pack, lots }) => ({
          shop: trip.shop,
          date: trip.date,
          pack,
          count: lots.length,
          ...(state.missing.has(keyOfMissing({ trip: trip.date, shop: trip.shop, pack })) && { notThere: true }),
        })),
  );
  return v.parse(TodayReport, {
    format: "halfloaf-today",
    version: 1,
    kitchen: edited.name,
    currency: edited.currency,
    on: day,
    jobs: told("job").map(({ job, shortPortions, isToCook }) => ({
      ...job,
      ...(shortPortions !== undefined && { shortPortions }),
      ...(isToCook && { isToCook }),
    })),
    against: menu === undefined ? [] : platesAgainst(menu.week, kitchen, tables, day, state.plates),
    toBuy,
    lastDay: told("last-day").map(({ line }) => toLine(line)),
    goneOff: told("gone-off").map(({ line }) => toLine(line)),
    useUp: soon.map(toLine),
    toCount: told("to-count").map(({ count: { lot, shortG, since } }) => ({ lot, shortG, since })),
    news: countNews(open, open.state),
    budget: budgetOf(edited, state, day),
  });
}

function toLine({ lot, food, dish, leftG, leftMinor, daysLeft }: UseUpLine): TodayReport["useUp"][number] {
  return {
    lot,
    ...(food !== undefined && { food }),
    ...(dish !== undefined && { dish }),
    massG: leftG,
    ...(daysLeft !== undefined && { daysLeft }),
    costMinor: leftMinor,
  };
}
