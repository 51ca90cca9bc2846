import { type Command, InvalidArgumentError, Option } from "commander";
import { SITTING_KINDS } from "halfloaf/dish";
import { type WhyWish, whyCommand } from "../commands/whyCommand.ts";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { quote } from "../words/valueWords.ts";

interface WhyOptions extends Omit<WhyWish, "about" | "limits" | "json"> {
  readonly limits?: boolean;
  readonly json?: boolean;
}

/** Registers `halfloaf why`. */
export function addWhy(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  program
    .command("why")
    .description(HELP.why)
    .argument("[file]", HELP.whyFile)
    .addOption(new Option("--kitchen <kitchen>", HELP.whyKitchen))
    .option("--sitting <date:kind>", HELP.whySitting, parseSitting)
    .option("--dish <dish>", HELP.whyDish)
    .option("--pack <pack>", HELP.whyPack)
    .option("--limits", HELP.whyLimits)
    .option("--today <date>", HELP.whyToday, parseDay)
    .option("--json", HELP.json)
    .addHelpText("after", HELP.whyAfter)
    .action(async (about: string | undefined, { json = false, limits = false, ...options }: WhyOptions) => {
      end(await whyCommand({ ...(about !== undefined && { about }), ...options, json, limits }, terminal));
    });
}

/** A day and a kind of sitting with a colon between; anything else is refused. */
function parseSitting(text: string): { readonly date: string; readonly kind: string } {
  const [date = "", kind = "", ...rest] = text.split(":");
  const isKind = SITTING_KINDS.some((one) => one === kind);
  if (isKind && rest.length === 0) return { date: parseDay(date), kind };
  throw new InvalidArgumentError(
    `${quote(text)} is no sitting. Write it as YYYY-MM-DD:KIND with one of ${SITTING_KINDS.join(", ")}.`,
  );
}
