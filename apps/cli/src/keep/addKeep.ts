import { type Command, InvalidArgumentError, Option } from "commander";
import { SITTING_KINDS } from "halfloaf/dish";
import { PLACES } from "halfloaf/food";
import type { ExitCode } from "../exitCodes.ts";
import { parseDay, parsePortions, parseWhole } from "../input/parseOption.ts";
import type { Terminal } from "../output/Terminal.ts";
import { KEEP_HELP } from "../words/keepHelpTexts.ts";
import { quote } from "../words/valueWords.ts";
import { gatherDays, gatherPacks, gatherSizes } from "./AskedPack.ts";
import { acceptCommand } from "./acceptCommand.ts";
import { type AccountsAsk, accountsCommand } from "./accountsCommand.ts";
import { backupCommand, restoreCommand } from "./backupCommand.ts";
import { begunCommand } from "./begunCommand.ts";
import { type BoughtAsk, boughtCommand } from "./boughtCommand.ts";
import { type CookedAsk, cookedCommand } from "./cookedCommand.ts";
import { type CountAsk, countCommand } from "./countCommand.ts";
import { type FoundAsk, foundCommand } from "./foundCommand.ts";
import { type HistoryAsk, historyCommand, undoCommand } from "./historyCommand.ts";
import { gatherItems, parseItem } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { type KitchenAsk, kitchenCommand } from "./kitchenCommand.ts";
import { type LabelledAsk, labelledCommand } from "./labelledCommand.ts";
import { usedCommand, type WastedAsk, wastedCommand } from "./leaveStores.ts";
import { type MovedAsk, movedCommand } from "./movedCommand.ts";
import { type PricesAsk, pricesCommand } from "./pricesCommand.ts";
import { parsePoints, ratedCommand } from "./ratedCommand.ts";
import { settleCommand } from "./settleCommand.ts";
import { type AskedPlate, type SittingAsk, sittingCommand } from "./sittingCommand.ts";
import { type StoresAsk, storesCommand } from "./storesCommand.ts";
import { todayCommand } from "./todayCommand.ts";

const MOST_PORTIONS = 1000;
const MOST_GUESTS = 50;
const MOST_DAYS = 366;
const MOST_ACTS = 100_000;

type End = (code: ExitCode) => void;

/** Options as they were read: those of an ask without what is an argument or goes by another name. */
type Given<Ask extends KeepAsk = KeepAsk, Other extends keyof Ask = never> = Omit<Ask, Other>;

/** A command on a kept kitchen with the options that all of them have. */
function addOne(program: Command, words: string, help: string): Command {
  return program
    .command(words)
    .description(help)
    .option("--kitchen <folder>", KEEP_HELP.folder)
    .option("--on <date>", KEEP_HELP.on, parseDay)
    .option("--by <eater>", KEEP_HELP.by)
    .option("--json", KEEP_HELP.json, false);
}

/** Registers the commands on a kept kitchen. */
export function addKeep(program: Command, terminal: Terminal, end: End): void {
  addSettle(program, terminal, end);
  addBought(program, terminal, end);
  addAtHand(program, terminal, end);
  addStock(program, terminal, end);
  addEating(program, terminal, end);
  addRated(program, terminal, end);
  addViews(program, terminal, end);
  addWhole(program, terminal, end);
}

function addSettle(program: Command, terminal: Terminal, end: End): void {
  program
    .command("settle")
    .description(KEEP_HELP.settle)
    .argument("<folder>", KEEP_HELP.settleFolder)
    .requiredOption("--from <kitchen>", KEEP_HELP.settleFrom)
    .option("--on <date>", KEEP_HELP.settleOn, parseDay)
    .option("--json", KEEP_HELP.json, false)
    .addHelpText("after", KEEP_HELP.settleAfter)
    .action(async (folder: string, options: { from: string; on?: string; json: boolean }) => {
      end(await settleCommand({ folder, ...options }, terminal));
    });
}

function addBought(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "bought", KEEP_HELP.bought)
    .argument("[pack...]", KEEP_HELP.boughtPacks)
    .option("--all", KEEP_HELP.boughtAll, false)
    .option("--shop <shop>", KEEP_HELP.boughtShop)
    .option("--size <pack=g>", KEEP_HELP.boughtSize, gatherSizes, [])
    .option("--use-by <pack=date>", KEEP_HELP.boughtUseBy, gatherDays, [])
    .option("--best-before <pack=date>", KEEP_HELP.boughtBestBefore, gatherDays, [])
    .option("--not-there <pack>", KEEP_HELP.boughtNotThere, gatherWords, [])
    .option("--fare <money>", KEEP_HELP.boughtFare)
    .addHelpText("after", KEEP_HELP.boughtAfter)
    .action(
      async (
        words: string[],
        { size, ...options }: Given<BoughtAsk, "packs" | "sizes"> & { size: BoughtAsk["sizes"] },
      ) => {
        const packs = readAll(words, (word) => gatherPacks(word), program).flat();
        end(await boughtCommand({ ...options, sizes: size, packs }, terminal));
      },
    );
}

function addAtHand(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "found", KEEP_HELP.found)
    .argument("<item...>", KEEP_HELP.foundItems)
    .addOption(new Option("--in <place>", KEEP_HELP.foundPlace).choices(PLACES))
    .option("--since <date>", KEEP_HELP.foundSince, parseDay)
    .option("--opened [date]", KEEP_HELP.foundOpened, parseDay)
    .option("--use-by <date>", KEEP_HELP.useBy, parseDay)
    .option("--best-before <date>", KEEP_HELP.bestBefore, parseDay)
    .option("--cost <money>", KEEP_HELP.foundCost)
    .addHelpText("after", KEEP_HELP.foundAfter)
    .action(
      async (
        words: string[],
        { in: place, ...options }: Given<FoundAsk, "items" | "place"> & { in?: FoundAsk["place"] },
      ) => {
        const items = readAll(words, parseItem, program);
        end(await foundCommand({ ...options, items, ...(place !== undefined && { place }) }, terminal));
      },
    );
  addOne(program, "labelled", KEEP_HELP.labelled)
    .argument("<item...>", KEEP_HELP.labelledItems)
    .option("--use-by <date>", KEEP_HELP.useBy, parseDay)
    .option("--best-before <date>", KEEP_HELP.bestBefore, parseDay)
    .option("--no-date", KEEP_HELP.labelledNoDate)
    .addHelpText("after", KEEP_HELP.labelledAfter)
    .action(
      async (items: string[], { date, ...options }: Given<LabelledAsk, "items" | "noDate"> & { date: boolean }) => {
        end(await labelledCommand({ ...options, items, noDate: !date }, terminal));
      },
    );
}

function addStock(program: Command, terminal: Terminal, end: End): void {
  const items = (words: readonly string[]) => readAll(words, parseItem, program);
  addOne(program, "used", KEEP_HELP.used)
    .argument("<item...>", KEEP_HELP.items)
    .addHelpText("after", KEEP_HELP.itemsAfter)
    .action(async (words: string[], options: KeepAsk) => {
      end(await usedCommand({ ...options, items: items(words) }, terminal));
    });
  addOne(program, "wasted", KEEP_HELP.wasted)
    .argument("[item...]", KEEP_HELP.items)
    .option("--why <text>", KEEP_HELP.wastedWhy)
    .option("--gone-off", KEEP_HELP.wastedGoneOff, false)
    .addHelpText("after", KEEP_HELP.itemsAfter)
    .action(async (words: string[], options: Given<WastedAsk, "items">) => {
      end(await wastedCommand({ ...options, items: items(words) }, terminal));
    });
  addOne(program, "count", KEEP_HELP.count)
    .argument("<item...>", KEEP_HELP.items)
    .addOption(new Option("--as <what>", KEEP_HELP.countAs).choices(["used", "wasted"]))
    .addHelpText("after", KEEP_HELP.itemsAfter)
    .action(async (words: string[], options: Given<CountAsk, "items">) => {
      end(await countCommand({ ...options, items: items(words) }, terminal));
    });
  addOne(program, "moved", KEEP_HELP.moved)
    .argument("<item...>", KEEP_HELP.items)
    .addOption(new Option("--to <place>", KEEP_HELP.movedTo).choices(PLACES).makeOptionMandatory())
    .addHelpText("after", KEEP_HELP.itemsAfter)
    .action(async (words: string[], options: Given<MovedAsk, "items">) => {
      end(await movedCommand({ ...options, items: items(words) }, terminal));
    });
}

function addEating(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "cooked", KEEP_HELP.cooked)
    .argument("[dish...]", KEEP_HELP.cookedDishes)
    .option("--portions <n>", KEEP_HELP.cookedPortions, parsePortions(MOST_PORTIONS))
    .addOption(new Option("--sitting <kind>", KEEP_HELP.cookedSitting).choices(SITTING_KINDS))
    .option("--really <food=amount>", KEEP_HELP.cookedReally, gatherItems, [])
    .option("--ate <eater=portions>", KEEP_HELP.cookedAte, gatherItems, [])
    .option("--ate-as-planned", KEEP_HELP.cookedAteAsPlanned, false)
    .addHelpText("after", KEEP_HELP.cookedAfter)
    .action(async (dishes: string[], options: Given<CookedAsk, "dishes">) => {
      end(await cookedCommand({ ...options, dishes }, terminal));
    });
  addOne(program, "begun", KEEP_HELP.begun)
    .argument("[dish...]", KEEP_HELP.begunDishes)
    .addHelpText("after", KEEP_HELP.begunAfter)
    .action(async (dishes: string[], options: KeepAsk) => {
      end(await begunCommand({ ...options, dishes }, terminal));
    });
  const sitting = addOne(program, "sitting", KEEP_HELP.sitting)
    .argument("<kind>", KEEP_HELP.sittingKind)
    .option("--ate <eater:item=amount>", KEEP_HELP.sittingAte, gatherPlates, [])
    .option("--as-planned", KEEP_HELP.sittingAsPlanned, false)
    .option("--skipped <eater>", KEEP_HELP.sittingSkipped, gatherWords, [])
    .option("--guests <n>", KEEP_HELP.sittingGuests, parseWhole(1, MOST_GUESTS))
    .option("--out <eater=cost>", KEEP_HELP.sittingOut, gatherOut, [])
    .addHelpText("after", KEEP_HELP.sittingAfter);
  sitting.action(async (word: string, options: Given<SittingAsk, "sitting">) => {
    const kind = SITTING_KINDS.find((one) => one === word);
    if (kind === undefined)
      return sitting.error(`error: ${quote(word)} is no kind of sitting. Write one of ${SITTING_KINDS.join(", ")}.`);
    end(await sittingCommand({ ...options, sitting: kind }, terminal));
  });
}

function addRated(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "rated", KEEP_HELP.rated)
    .argument("<dish...>", KEEP_HELP.ratedDishes)
    .addHelpText("after", KEEP_HELP.ratedAfter)
    .action(async (words: string[], options: KeepAsk) => {
      const dishes = readAll(words, parsePoints, program);
      end(await ratedCommand({ ...options, dishes }, terminal));
    });
}

function addViews(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "today", KEEP_HELP.today).action(async (options: KeepAsk) =>
    end(await todayCommand(options, terminal)),
  );
  addOne(program, "stores", KEEP_HELP.stores)
    .addOption(new Option("--within <days>", KEEP_HELP.storesWithin).argParser(parseWhole(0, MOST_DAYS)).default(3))
    .action(async (options: StoresAsk) => end(await storesCommand(options, terminal)));
  addOne(program, "prices", KEEP_HELP.prices)
    .argument("[food]", KEEP_HELP.pricesFood)
    .option("--shop <shop>", KEEP_HELP.boughtShop)
    .option("--seen <pack=price>", KEEP_HELP.pricesSeen, gatherPacks, [])
    .option("--size <pack=g>", KEEP_HELP.boughtSize, gatherSizes, [])
    .option("--at <place>", KEEP_HELP.pricesAt)
    .addHelpText("after", KEEP_HELP.pricesAfter)
    .action(
      async (
        food: string | undefined,
        { size, ...options }: Given<PricesAsk, "food" | "sizes"> & { size: PricesAsk["sizes"] },
      ) => {
        end(await pricesCommand({ ...options, sizes: size, ...(food !== undefined && { food }) }, terminal));
      },
    );
  addOne(program, "accounts", KEEP_HELP.accounts)
    .addOption(new Option("--each <stretch>", KEEP_HELP.accountsEach).choices(["day", "week", "month"]).default("week"))
    .option("--from <date>", KEEP_HELP.accountsFrom, parseDay)
    .option("--to <date>", KEEP_HELP.accountsTo, parseDay)
    .option("--kwh <price>", KEEP_HELP.accountsKwh)
    .addHelpText("after", KEEP_HELP.accountsAfter)
    .action(async (options: AccountsAsk) => end(await accountsCommand(options, terminal)));
  addOne(program, "history", KEEP_HELP.history)
    .addOption(new Option("--last <n>", KEEP_HELP.historyLast).argParser(parseWhole(1, MOST_ACTS)).default(20))
    .action(async (options: HistoryAsk) => end(await historyCommand(options, terminal)));
}

function addWhole(program: Command, terminal: Terminal, end: End): void {
  addOne(program, "kitchen", KEEP_HELP.kitchen)
    .option("--set <file>", KEEP_HELP.kitchenSet)
    .addHelpText("after", KEEP_HELP.kitchenAfter)
    .action(async (options: KitchenAsk) => end(await kitchenCommand(options, terminal)));
  addOne(program, "accept", KEEP_HELP.accept)
    .argument("<weekfile>", KEEP_HELP.acceptFile)
    .action(async (file: string, options: KeepAsk) => end(await acceptCommand({ ...options, file }, terminal)));
  addOne(program, "undo", KEEP_HELP.undo).action(async (options: KeepAsk) =>
    end(await undoCommand(options, "undo", terminal)),
  );
  addOne(program, "redo", KEEP_HELP.redo).action(async (options: KeepAsk) =>
    end(await undoCommand(options, "redo", terminal)),
  );
  addOne(program, "backup", KEEP_HELP.backup)
    .argument("<file>", KEEP_HELP.backupFile)
    .action(async (file: string, options: KeepAsk) => end(await backupCommand({ ...options, file }, terminal)));
  addOne(program, "restore", KEEP_HELP.restore)
    .argument("<file>", KEEP_HELP.restoreFile)
    .action(async (file: string, options: KeepAsk) => end(await restoreCommand({ ...options, file }, terminal)));
}

/** What a reader gives of each word; all that it refuses is told at once, as wrong usage. */
function readAll<Value>(words: readonly string[], read: (word: string) => Value, program: Command): Value[] {
  const refused: string[] = [];
  const values = words.flatMap((word) => {
    try {
      return [read(word)];
    } catch (error) {
      if (!(error instanceof InvalidArgumentError)) throw error;
      refused.push(`error: ${error.message}`);
      return [];
    }
  });
  return refused.length === 0 ? values : program.error(refused.join("\n"));
}

/** Gathers words of an option that may come several times. */
function gatherWords(word: string, before: readonly string[]): string[] {
  return [...before, word];
}

/** Reads `EATER:ITEM=AMOUNT`. */
function gatherPlates(text: string, before: readonly AskedPlate[]): AskedPlate[] {
  const at = text.indexOf(":");
  if (at <= 0) throw new InvalidArgumentError(`${quote(text)} is not written as EATER:ITEM=AMOUNT.`);
  return [...before, { who: text.slice(0, at), item: parseItem(text.slice(at + 1)) }];
}

/** Reads `EATER` or `EATER=COST`. */
function gatherOut(text: string, before: readonly { who: string; cost?: string }[]): { who: string; cost?: string }[] {
  const [who = "", cost] = text.split("=");
  return [...before, cost === undefined ? { who } : { who, cost }];
}
