import { type Command, Option } from "commander";
import { SITTING_KINDS } from "halfloaf/dish";
import type { SittingKind } from "halfloaf/kitchen";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay, parseWhole } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { parseClock } from "./parseClock.ts";
import { type AskedMark, type Moment, parseLate, parseMoment, parseStepMark, parseWashed } from "./parseMark.ts";
import type { WorkWish } from "./WorkWish.ts";
import { workCommand } from "./workCommand.ts";

const MOST_PORTIONS = 1000;
const MOST_MINUTES = 1440;

interface WorkOptions
  extends Pick<WorkWish, "kitchen" | "week" | "on" | "portions" | "serve" | "minutes" | "cooks" | "pace" | "svg"> {
  readonly sitting?: SittingKind;
  readonly packed?: boolean;
  readonly learn?: boolean;
  readonly now?: Moment;
  readonly asPlanned?: Moment;
  readonly json?: boolean;
}

/** Registers `halfloaf work`. Options that mark what has happened may be given as often as there is something to mark. */
export function addWork(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const marks: AskedMark[] = [];
  const gather = (read: (text: string) => AskedMark) => (text: string) => {
    marks.push(read(text));
  };
  program
    .command("work")
    .description(HELP.work)
    .argument("[dish...]", HELP.workDishes)
    .option("--kitchen <kitchen>", HELP.workKitchen)
    .addOption(new Option("--week <file>", HELP.workWeek).conflicts("portions"))
    .option("--on <date>", HELP.workOn, parseDay)
    .addOption(new Option("--sitting <kind>", HELP.workSitting).choices(SITTING_KINDS))
    .option("--packed", HELP.workPacked)
    .option("--portions <n>", HELP.workPortions, parseWhole(1, MOST_PORTIONS))
    .option("--serve <time>", HELP.serve, parseClock)
    .option("--minutes <n>", HELP.workMinutes, parseWhole(1, MOST_MINUTES))
    .addOption(new Option("--cooks <n>", HELP.cooks).argParser(parseWhole(1, 2)).default(1))
    .option("--now <time>", HELP.workNow, parseMoment)
    .option("--as-planned <time>", HELP.workAsPlanned, parseMoment)
    .addOption(new Option("--begun <a:step=time>", HELP.workBegun).argParser(gather(parseStepMark("begun"))))
    .addOption(new Option("--done <a:step=time>", HELP.workDone).argParser(gather(parseStepMark("done"))))
    .addOption(new Option("--late <a:step=n>", HELP.workLate).argParser(gather(parseLate)))
    .addOption(new Option("--washed <thing=time>", HELP.workWashed).argParser(gather(parseWashed)))
    .option("--pace <file>", HELP.paceFile)
    .option("--learn", HELP.workLearn)
    .option("--svg <file>", HELP.svg)
    .option("--json", HELP.json)
    .addHelpText("after", HELP.workAfter)
    .action(async (dishes: string[], { json = false, learn = false, packed = false, ...options }: WorkOptions) => {
      const { now, asPlanned, ...rest } = options;
      const asked = { marks, ...(now && { now }), ...(asPlanned && { asPlanned }) };
      end(await workCommand({ dishes, json, learn, packed, ...rest, marks: asked }, terminal));
    });
}
