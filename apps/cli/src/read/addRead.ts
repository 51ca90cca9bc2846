import { type Command, InvalidArgumentError, Option } from "commander";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay, parseWhole } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { HELP } from "../words/helpTexts.ts";
import { quote } from "../words/valueWords.ts";
import { READ_KINDS, type ReadWish, type Settled } from "./ReadWish.ts";
import { readCommand } from "./readCommand.ts";

const MOST_PORTIONS = 1000;
const MOST_DISHES = 50;

type ReadOptions = Omit<ReadWish, "files" | "foods" | "amounts" | "packs" | "leftOut" | "json" | "keep" | "fetch"> & {
  readonly json?: boolean;
  readonly keep?: boolean;
  readonly fetch?: boolean;
};

/** Registers `halfloaf read`. Options that settle a line may be given as often as there is something to settle. */
export function addRead(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const settled = { foods: [] as Settled[], amounts: [] as Settled[], packs: [] as Settled[], leftOut: [] as string[] };
  const gather = (list: Settled[]) => (text: string) => {
    list.push(parseSettled(text));
  };
  program
    .command("read")
    .description(HELP.read)
    .argument("<file...>", HELP.readFiles)
    .addOption(new Option("--as <kind>", HELP.readAs).choices(READ_KINDS))
    .option("--kitchen <kitchen>", HELP.readKitchen)
    .option("--mapping <file>", HELP.readMapping)
    .addOption(new Option("--english <english>", HELP.readEnglish).choices(["british", "american"]))
    .option("--dish <n>", HELP.readDish, parseWhole(1, MOST_DISHES))
    .option("--title <title>", HELP.readTitle)
    .option("--portions <n>", HELP.readPortions, parseWhole(1, MOST_PORTIONS))
    .addOption(new Option("--food <line=id>", HELP.readFood).argParser(gather(settled.foods)))
    .addOption(new Option("--amount <line=amount>", HELP.readAmount).argParser(gather(settled.amounts)))
    .addOption(
      new Option("--leave-out <line>", HELP.readLeaveOut).argParser((text: string) => void settled.leftOut.push(text)),
    )
    .addOption(new Option("--pack <line=pack>", HELP.readPack).argParser(gather(settled.packs)))
    .option("--shop <shop>", HELP.readShop)
    .option("--on <date>", HELP.readOn, parseDay)
    .addOption(new Option("--date-order <order>", HELP.readDateOrder).choices(["dmy", "mdy", "ymd"]))
    .option("--near <food>", HELP.readNear)
    .option("--fetch", HELP.readFetch)
    .option("--keep", HELP.readKeep)
    .option("--out <file>", HELP.readOut)
    .option("--json", HELP.json)
    .addHelpText("after", HELP.readAfter)
    .action(async (files: string[], { json = false, keep = false, fetch = false, ...options }: ReadOptions) => {
      const { as, kitchen, mapping, english, dish, title, portions, shop, on, dateOrder, near, out } = options;
      const asked = { as, kitchen, mapping, english, dish, title, portions, shop, on, dateOrder, near, out };
      const given = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
      end(await readCommand({ files, json, keep, fetch, ...settled, ...given }, terminal));
    });
}

/** "3=onion": what a line means. */
function parseSettled(text: string): Settled {
  const [, of = "", value = ""] = /^([^=]{1,40})=(.{1,200})$/s.exec(text) ?? [];
  if (of.trim() !== "" && value.trim() !== "") return { of: of.trim(), value: value.trim() };
  throw new InvalidArgumentError(`${quote(text)} is not written as LINE=VALUE.`);
}
