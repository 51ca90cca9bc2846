import { type Command, Option } from "commander";
import { EFFORTS, type Effort } from "halfloaf/menu";
import { type ChoicesWish, choicesCommand } from "../commands/choicesCommand.ts";
import type { ExitCode } from "../exitCodes.ts";
import { USUAL_KITCHEN } from "../input/openKitchen.ts";
import { parseDay, parseWhole } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { AGAINST } from "./ChoicesReport.ts";

interface ChoicesOptions extends Omit<ChoicesWish, "kitchen" | "json"> {
  readonly json?: boolean;
}

const MOST_DAYS = 28;
const MOST_SEED = 2 ** 32 - 1;

/** Registers `halfloaf choices`. */
export function addChoices(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  program
    .command("choices")
    .description(HELP.choices)
    .argument("[kitchen]", HELP.kitchen, USUAL_KITCHEN)
    .addOption(new Option("--against <what>", HELP.choicesAgainst).choices([...AGAINST]).default("minutes"))
    .option("--from <date>", HELP.from, parseDay)
    .addOption(new Option("--days <n>", HELP.days).argParser(parseWhole(1, MOST_DAYS)).default(7))
    .addOption(new Option("--seed <n>", HELP.seed).argParser(parseWhole(0, MOST_SEED)).default(1))
    .addOption(
      new Option("--effort <effort>", HELP.choicesEffort).choices(Object.keys(EFFORTS) as Effort[]).default("quick"),
    )
    .option("--json", HELP.json)
    .addHelpText("after", HELP.choicesAfter)
    .action(async (kitchen: string, { json = false, ...options }: ChoicesOptions) => {
      end(await choicesCommand({ kitchen, json, ...options }, terminal));
    });
}
