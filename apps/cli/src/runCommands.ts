import { Command, CommanderError, Option } from "commander";
import { EFFORTS, type Effort } from "halfloaf/menu";
import { addChoices } from "./choices/addChoices.ts";
import { cardCommand } from "./commands/cardCommand.ts";
import { checkCommand } from "./commands/checkCommand.ts";
import { weekCommand } from "./commands/weekCommand.ts";
import { EXIT, type ExitCode } from "./exitCodes.ts";
import { kitchenArgument } from "./input/kitchenArgument.ts";
import { parseDay, parseWhole } from "./input/parseOption.ts";
import { addKeep } from "./keep/addKeep.ts";
import { addMend } from "./mend/addMend.ts";
import { harmlessLines } from "./output/harmless.ts";
import { layHelp, layHelpItem } from "./output/layHelp.ts";
import type { Terminal } from "./output/Terminal.ts";
import { addRead } from "./read/addRead.ts";
import { addShare } from "./share/addShare.ts";
import { addSheet } from "./sheet/addSheet.ts";
import { addWhy } from "./why/addWhy.ts";
import { HELP } from "./words/helpTexts.ts";
import { KEEP_HELP } from "./words/keepHelpTexts.ts";
import { addWork } from "./work/addWork.ts";
import { addPace } from "./work/pace/addPace.ts";

const MOST_DAYS = 28;
const MOST_PORTIONS = 1000;
const MOST_PROOF_S = 3600;
const MOST_RISE_PCT = 100;
const MOST_SEED = 2 ** 32 - 1;
const MOST_SEARCHES = 8;

/**
 * Runs the command of the words after the program's name and gives the exit code. Wrong usage is told as talk; a defect
 * of the program comes out as an exception.
 */
export async function runCommands(words: readonly string[], version: string, terminal: Terminal): Promise<ExitCode> {
  let code: ExitCode = EXIT.done;
  const end = (answer: ExitCode) => {
    code = answer;
  };
  const program = createProgram(version, terminal);
  addWeek(program, terminal, end);
  addWhy(program, terminal, end);
  addMend(program, terminal, end);
  addChoices(program, terminal, end);
  addCard(program, terminal, end);
  addWork(program, terminal, end);
  addPace(program, terminal, end);
  addSheet(program, terminal, end);
  addRead(program, terminal, end);
  addCheck(program, terminal, end);
  addKeep(program, terminal, end);
  addShare(program, terminal, end);
  try {
    await program.parseAsync([...words], { from: "user" });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.done : EXIT.badInput;
  }
}

function createProgram(version: string, { page, print, talk }: Terminal): Command {
  const trimmed = (write: (text: string) => void) => (text: string) => write(harmlessLines(text).replace(/\n$/, ""));
  return new Command("halfloaf")
    .description(HELP.program)
    .version(version, "-V, --version", HELP.version)
    .helpOption("-h, --help", HELP.help)
    .helpCommand(false)
    .addHelpText("after", HELP.programAfter)
    .exitOverride()
    .configureHelp({ helpWidth: page.width, formatItem: layHelpItem })
    .configureOutput({
      writeOut: trimmed((text) => print(layHelp(text, page.width))),
      writeErr: trimmed(talk),
      getOutHelpWidth: () => page.width,
      getErrHelpWidth: () => page.width,
    })
    .showHelpAfterError("(add --help for the usage)");
}

interface WeekOptions {
  readonly from?: string;
  readonly days: number;
  readonly seed: number;
  readonly effort: Effort;
  readonly searches?: number;
  readonly proof: number;
  readonly stand?: number;
  readonly out?: string;
  readonly accept: boolean;
  readonly json?: boolean;
}

function addWeek(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const efforts = Object.keys(EFFORTS) as Effort[];
  program
    .command("week")
    .description(HELP.week)
    .addArgument(kitchenArgument(terminal))
    .option("--from <date>", HELP.from, parseDay)
    .addOption(new Option("--days <n>", HELP.days).argParser(parseWhole(1, MOST_DAYS)).default(7))
    .addOption(new Option("--seed <n>", HELP.seed).argParser(parseWhole(0, MOST_SEED)).default(1))
    .addOption(new Option("--effort <effort>", HELP.effort).choices(efforts).default("usual"))
    .option("--searches <n>", HELP.searches, parseWhole(1, MOST_SEARCHES))
    .addOption(new Option("--proof <seconds>", HELP.proof).argParser(parseWhole(0, MOST_PROOF_S)).default(3))
    .option("--stand <percent>", HELP.stand, parseWhole(0, MOST_RISE_PCT))
    .option("--out <file>", HELP.out)
    .option("--accept", KEEP_HELP.weekAccept, false)
    .option("--json", HELP.weekJson)
    .addHelpText("after", HELP.weekAfter)
    .action(async (kitchen: string, { json = false, ...options }: WeekOptions) => {
      end(await weekCommand({ kitchen, json, ...options }, terminal));
    });
}

function addCard(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  program
    .command("card")
    .description(HELP.card)
    .argument("<dish>", HELP.dish)
    .addArgument(kitchenArgument(terminal))
    .option("--portions <n>", HELP.portions, parseWhole(1, MOST_PORTIONS))
    .option("--json", HELP.json)
    .addHelpText("after", HELP.cardAfter)
    .action(
      async (dish: string, kitchen: string, { json = false, portions }: { json?: boolean; portions?: number }) => {
        end(await cardCommand({ dish, kitchen, json, ...(portions !== undefined && { portions }) }, terminal));
      },
    );
}

function addCheck(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  program
    .command("check")
    .description(HELP.check)
    .argument("<kitchen>", HELP.kitchen)
    .option("--json", HELP.json)
    .addHelpText("after", HELP.checkAfter)
    .action((kitchen: string, { json = false }: { json?: boolean }) => {
      end(checkCommand({ kitchen, json }, terminal));
    });
}
