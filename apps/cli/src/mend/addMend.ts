import { type Command, Option } from "commander";
import { EFFORTS, type Effort } from "halfloaf/menu";
import { type MendWish, mendCommand } from "../commands/mendCommand.ts";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay, parseWhole } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { KEEP_HELP } from "../words/keepHelpTexts.ts";
import { type AskedChange, READERS } from "./parseMendOptions.ts";
import { weekArgument } from "./weekArgument.ts";

interface MendOptions extends Pick<MendWish, "kitchen" | "today" | "seed" | "effort" | "out"> {
  readonly accept: boolean;
  readonly all?: boolean;
  readonly json?: boolean;
}

const MOST_SEED = 2 ** 32 - 1;

/** How each change is written and told of, in the order of the help. */
const CHANGES: readonly { readonly kind: AskedChange["kind"]; readonly form: string; readonly help: string }[] = [
  { kind: "refuse", form: "<dish>", help: HELP.mendRefuse },
  { kind: "want", form: "<date:kind=dish>", help: HELP.mendWant },
  { kind: "price", form: "<pack=price>", help: HELP.mendPrice },
  { kind: "gone", form: "<pack>", help: HELP.mendGone },
  { kind: "skip", form: "<date:kind>", help: HELP.mendSkip },
  { kind: "guest", form: "<date:kind=n>", help: HELP.mendGuest },
  { kind: "off", form: "<lot>", help: HELP.mendOff },
];

/** Registers `halfloaf mend`. Options that say a change may be given as often as there are changes. */
export function addMend(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const changes: AskedChange[] = [];
  const command = program.command("mend").description(HELP.mend).addArgument(weekArgument(terminal, HELP.mendFile));
  command.option("--kitchen <kitchen>", HELP.mendKitchen).option("--today <date>", HELP.mendToday, parseDay);
  for (const { kind, form, help } of CHANGES) {
    const read = (text: string): void => {
      changes.push({ kind, text: `--${kind} ${text}`, ...READERS[kind](text) } as AskedChange);
    };
    command.addOption(new Option(`--${kind} ${form}`, help).argParser(read));
  }
  command
    .addOption(new Option("--seed <n>", HELP.seed).argParser(parseWhole(0, MOST_SEED)).default(1))
    .addOption(
      new Option("--effort <effort>", HELP.mendEffort).choices(Object.keys(EFFORTS) as Effort[]).default("quick"),
    )
    .option("--all", HELP.mendAll)
    .option("--out <file>", HELP.mendOut)
    .option("--accept", KEEP_HELP.mendAccept, false)
    .option("--json", HELP.mendJson)
    .addHelpText("after", HELP.mendAfter)
    .action(
      async (file: string, { kitchen, today, seed, effort, out, accept, all = false, json = false }: MendOptions) => {
        const given = { ...(kitchen && { kitchen }), ...(today && { today }), ...(out && { out }) };
        end(await mendCommand({ file, changes, seed, effort, accept, all, json, ...given }, terminal));
      },
    );
}
