import { type Command, Option } from "commander";
import { STEP_KINDS } from "halfloaf/dish";
import type { ExitCode } from "../../exitCodes.ts";
import { kitchenArgument } from "../../input/kitchenArgument.ts";
import type { Terminal } from "../../output/Terminal.ts";
import { HELP } from "../../words/helpTexts.ts";
import { type PaceWish, paceCommand } from "./paceCommand.ts";

interface PaceOptions extends Pick<PaceWish, "pace" | "forget"> {
  readonly json?: boolean;
}

/** Registers `halfloaf pace`. */
export function addPace(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  program
    .command("pace")
    .description(HELP.pace)
    .addArgument(kitchenArgument(terminal))
    .option("--pace <file>", HELP.paceFile)
    .addOption(new Option("--forget <kind>", HELP.paceForget).choices(["all", ...STEP_KINDS]))
    .option("--json", HELP.json)
    .addHelpText("after", HELP.paceAfter)
    .action(async (kitchen: string, { json = false, ...options }: PaceOptions) => {
      end(await paceCommand({ kitchen, json, ...options }, terminal));
    });
}
