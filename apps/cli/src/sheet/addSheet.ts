import { Argument, type Command, InvalidArgumentError, Option } from "commander";
import { SITTING_KINDS } from "halfloaf/dish";
import type { Stretch } from "halfloaf/kitchen/record";
import { PAPERS, type Paper, type SittingTimes } from "halfloaf/sheet";
import type { ExitCode } from "../exitCodes.ts";
import { kitchenArgument } from "../input/kitchenArgument.ts";
import { parseDay, parseWhole } from "../input/parseOption.ts";
import { weekArgument } from "../mend/weekArgument.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { quote } from "../words/valueWords.ts";
import { parseClock } from "../work/parseClock.ts";
import { type CalendarAsk, makeCalendar } from "./makeCalendar.ts";
import {
  type DishAsk,
  makeCardSheet,
  makeDayLesson,
  makeDishLesson,
  makeDrivers,
  makeJsonLd,
  makeTimeline,
} from "./makeDishSheet.ts";
import { makeAccounts, makeFrontier, makePrices, makeRibbons } from "./makePicture.ts";
import { type KeptAsk, makeTable, TABLES, type TableKind } from "./makeTable.ts";
import { makeDaySheet, makeWeekSheet, type WeekSheetAsk } from "./makeWeekSheet.ts";
import type { WeekAsk } from "./openSheetWeek.ts";
import { type AskedClaim, parseClaim } from "./parseClaim.ts";
import type { Made, OutWish } from "./putOut.ts";
import { runSheet } from "./runSheet.ts";
import { SHEET_HELP } from "./sheetHelp.ts";

const MOST_PORTIONS = 1000;

/** Registers `halfloaf sheet` with all that it can make. */
export function addSheet(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const sheet = program.command("sheet").description(SHEET_HELP.sheet).addHelpText("after", SHEET_HELP.after);
  addWeekSheets(sheet, terminal, end);
  addDishSheets(sheet, terminal, end);
  addWeekOthers(sheet, terminal, end);
  addKept(sheet, terminal, end);
}

type WeekOptions = Omit<WeekSheetAsk, "week"> & OutWish;
type WeekAskOptions = Omit<WeekAsk, "week"> & OutWish;

/** A command on a week, with its kitchen and a day. */
function ofWeek(
  sheet: Command,
  kind: string,
  help: string,
  terminal: Terminal,
  onHelp: string = SHEET_HELP.on,
): Command {
  return withOut(sheet.command(kind).description(help))
    .addArgument(weekArgument(terminal, SHEET_HELP.weekFile))
    .option("--kitchen <kitchen>", SHEET_HELP.weekKitchen)
    .option("--on <date>", onHelp, parseDay);
}

function addWeekSheets(sheet: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const kinds = [
    { kind: "day", help: SHEET_HELP.day, onHelp: SHEET_HELP.on, make: makeDaySheet },
    { kind: "week", help: SHEET_HELP.week, onHelp: SHEET_HELP.onWeek, make: makeWeekSheet },
  ] as const;
  ofWeek(sheet, "day-lesson", SHEET_HELP.dayLesson, terminal).action(async (week: string, options: WeekAskOptions) => {
    const { out, over, ...rest } = options;
    const make = () => makeDayLesson({ week, ...rest }, terminal);
    end(await runSheet(jobOf(week, "page", { out, over }), terminal, make));
  });
  for (const { kind, help, onHelp, make } of kinds) {
    ofWeek(sheet, kind, help, terminal, onHelp)
      .addOption(paperOption())
      .addOption(new Option("--claim <kind=bound>", SHEET_HELP.claim).argParser(gatherClaims).default([], "none"))
      .action(async (week: string, { out, over, ...options }: WeekOptions) => {
        end(await runSheet(jobOf(week, "page", { out, over }), terminal, () => make({ week, ...options }, terminal)));
      });
  }
}

type DishOptions = Pick<DishAsk, "portions"> & OutWish;

function addDishSheets(sheet: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const ofDish = (kind: string, help: string) =>
    withOut(sheet.command(kind).description(help))
      .argument("<dish>", HELP.dish)
      .addArgument(kitchenArgument(terminal))
      .option("--portions <n>", HELP.portions, parseWhole(1, MOST_PORTIONS));
  ofDish("card", SHEET_HELP.card)
    .addOption(paperOption())
    .action(async (dish: string, kitchen: string, { out, over, ...options }: DishOptions & { paper: Paper }) => {
      const make = () => makeCardSheet({ dish, kitchen, ...options }, terminal);
      end(await runSheet(jobOf(dish, "page", { out, over }), terminal, make));
    });
  const kinds = [
    { kind: "lesson", help: SHEET_HELP.lesson, made: "page", make: makeDishLesson },
    { kind: "timeline", help: SHEET_HELP.timeline, made: "picture", make: makeTimeline },
    { kind: "drivers", help: SHEET_HELP.drivers, made: "picture", make: makeDrivers },
    { kind: "dish", help: SHEET_HELP.dish, made: "data", make: makeJsonLd },
  ] as const;
  for (const { kind, help, made, make } of kinds) {
    ofDish(kind, help).action(async (dish: string, kitchen: string, { out, over, portions }: DishOptions) => {
      const ask = { dish, kitchen, ...(portions !== undefined && { portions }) };
      end(await runSheet(jobOf(dish, made, { out, over }), terminal, () => make(ask, terminal)));
    });
  }
}

function addWeekOthers(sheet: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  ofWeek(sheet, "ribbons", SHEET_HELP.ribbons, terminal, SHEET_HELP.onWeek).action(
    async (week: string, { out, over, ...options }: WeekAskOptions) => {
      const make = () => makeRibbons({ week, ...options }, terminal);
      end(await runSheet(jobOf(week, "picture", { out, over }), terminal, make));
    },
  );
  ofWeek(sheet, "calendar", SHEET_HELP.calendar, terminal, SHEET_HELP.onWeek)
    .option("--zone <name>", SHEET_HELP.zone)
    .addOption(new Option("--at <sitting=time>", SHEET_HELP.at).argParser(gatherTimes).default({}, "usual"))
    .action(async (week: string, { out, over, ...options }: Omit<CalendarAsk, "week"> & OutWish) => {
      const make = () => makeCalendar({ week, ...options }, terminal);
      end(await runSheet(jobOf(week, "calendar", { out, over }), terminal, make));
    });
  withOut(sheet.command("frontier").description(SHEET_HELP.frontier))
    .argument("<file>", SHEET_HELP.frontierFile)
    .action(async (file: string, { out, over }: OutWish) => {
      end(await runSheet(jobOf(file, "picture", { out, over }), terminal, () => makeFrontier({ file }, terminal)));
    });
}

/** What is made of a kept kitchen. */
function addKept(sheet: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const kept = (command: Command) =>
    withOut(command).argument("<folder>", SHEET_HELP.folder).option("--on <date>", SHEET_HELP.onDay, parseDay);
  const eachOption = () =>
    new Option("--each <stretch>", SHEET_HELP.each).choices(["day", "week", "month"]).default("week");
  kept(sheet.command("prices").description(SHEET_HELP.prices))
    .option("--food <id>", SHEET_HELP.pricesFood)
    .action(async (kitchen: string, { out, over, ...options }: KeptOptions & { food?: string }) => {
      const make = () => makePrices({ kitchen, ...options }, terminal);
      end(await runSheet(jobOf(kitchen, "picture", { out, over }), terminal, make));
    });
  kept(sheet.command("accounts").description(SHEET_HELP.accounts))
    .addOption(eachOption())
    .action(async (kitchen: string, { out, over, ...options }: KeptOptions & { each: Stretch }) => {
      const make = () => makeAccounts({ kitchen, ...options }, terminal);
      end(await runSheet(jobOf(kitchen, "picture", { out, over }), terminal, make));
    });
  kept(
    sheet
      .command("table")
      .description(SHEET_HELP.table)
      .addArgument(new Argument("<table>", SHEET_HELP.tableKind).choices(TABLES)),
  )
    .addOption(eachOption())
    .action(async (table: TableKind, kitchen: string, { out, over, ...options }: KeptOptions & { each: Stretch }) => {
      const make = () => makeTable({ table, kitchen, ...options }, terminal);
      end(await runSheet(jobOf(kitchen, "table", { out, over }), terminal, make));
    });
}

type KeptOptions = Omit<KeptAsk, "kitchen"> & OutWish;

/** A sitting and its time of day, `evening=18:30`; anything else is refused. */
function gatherTimes(text: string, before: SittingTimes): SittingTimes {
  const [kind = "", time = "", ...rest] = text.split("=");
  const sitting = SITTING_KINDS.find((one) => one === kind);
  if (sitting !== undefined && rest.length === 0) return { ...before, [sitting]: parseClock(time) };
  throw new InvalidArgumentError(
    `${quote(text)} is no sitting with its time. Write it as KIND=TIME with one of ${SITTING_KINDS.join(", ")}.`,
  );
}

/** The options that say where a sheet goes. */
function withOut(command: Command): Command {
  return command.option("--out <file>", SHEET_HELP.out).option("--over", SHEET_HELP.over, false);
}

function paperOption(): Option {
  return new Option("--paper <paper>", SHEET_HELP.paper).choices(Object.keys(PAPERS)).default("a4");
}

function gatherClaims(text: string, before: readonly AskedClaim[]): readonly AskedClaim[] {
  return [...before, parseClaim(text)];
}

function jobOf(
  about: string,
  made: Made,
  { out, over }: { readonly out?: string | undefined; readonly over: boolean },
) {
  return { about, made, wish: { over, ...(out !== undefined && { out }) } };
}
