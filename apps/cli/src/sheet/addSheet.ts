import { type Command, Option } from "commander";
import { PAPERS } from "halfloaf/sheet";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay } from "../input/parseOption.ts";
import { weekArgument } from "../mend/weekArgument.ts";
import type { Terminal } from "../output/Terminal.ts";
import { makeDaySheet, makeWeekSheet, type WeekSheetAsk } from "./makeWeekSheet.ts";
import { type AskedClaim, parseClaim } from "./parseClaim.ts";
import type { Made, OutWish } from "./putOut.ts";
import { runSheet } from "./runSheet.ts";
import { SHEET_HELP } from "./sheetHelp.ts";

/** Registers `halfloaf sheet` with all that it can make. */
export function addSheet(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const sheet = program.command("sheet").description(SHEET_HELP.sheet).addHelpText("after", SHEET_HELP.after);
  addWeekSheets(sheet, terminal, end);
}

type WeekOptions = Omit<WeekSheetAsk, "week"> & OutWish;

function addWeekSheets(sheet: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const kinds = [
    { kind: "day", help: SHEET_HELP.day, onHelp: SHEET_HELP.on, make: makeDaySheet },
    { kind: "week", help: SHEET_HELP.week, onHelp: SHEET_HELP.onWeek, make: makeWeekSheet },
  ] as const;
  for (const { kind, help, onHelp, make } of kinds) {
    withOut(sheet.command(kind).description(help))
      .addArgument(weekArgument(terminal, SHEET_HELP.weekFile))
      .option("--kitchen <kitchen>", SHEET_HELP.weekKitchen)
      .option("--on <date>", onHelp, parseDay)
      .addOption(paperOption())
      .addOption(new Option("--claim <kind=bound>", SHEET_HELP.claim).argParser(gatherClaims).default([], "none"))
      .action(async (week: string, { out, over, ...options }: WeekOptions) => {
        end(await runSheet(jobOf(week, "page", { out, over }), terminal, () => make({ week, ...options }, terminal)));
      });
  }
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
