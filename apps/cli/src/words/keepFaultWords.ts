import type { Repair } from "@halfloaf/keep/node";
import { counted, tellCount, tellMass } from "@halfloaf/words/en";
import type { Issue } from "halfloaf/quantity";
import { harmless } from "../output/harmless.ts";
import type { Fault } from "./Fault.ts";
import { findNearest } from "./nearest.ts";
import { quote } from "./valueWords.ts";

const plain = (code: string, sentence: string, remedy: string, value?: string): Fault => ({
  code,
  path: [],
  ...(value !== undefined && { value: quote(value) }),
  sentence,
  remedy,
});

/** Nothing says which kitchen is meant. */
export function tellNoFolder(): Fault {
  return plain(
    "kitchen-unnamed",
    "Nothing says in which folder the kitchen is kept.",
    'Name it with --kitchen or in the variable HALFLOAF_KITCHEN; "halfloaf settle FOLDER --from KITCHEN" makes one.',
  );
}

/** The folder holds no kitchen. */
export function tellNoKitchenThere(name: string, isThere: boolean): Fault {
  const sentence = isThere ? `${quote(name)} holds no kept kitchen.` : `There is no folder ${quote(name)}.`;
  const remedy = `Check the name; "halfloaf settle FOLDER --from KITCHEN" makes one, "halfloaf restore FILE" brings one back.`;
  return plain("kitchen-not-kept", sentence, remedy, name);
}

/** A kitchen is kept there already. */
export function tellKeptAlready(name: string): Fault {
  return plain(
    "kitchen-kept-already",
    `${quote(name)} holds a kitchen already; it is left as it is.`,
    'Name another folder, or bring a file into this kitchen with "halfloaf restore FILE".',
    name,
  );
}

/** Why a folder could not be opened, and what to do. */
export function tellFolderTrouble(name: string, reason: string, detail: string): Fault {
  const folder = quote(name);
  const word = detail === "" ? "" : ` (${harmless(detail)})`;
  const [sentence, remedy] = {
    newer: [
      `The kitchen in ${folder} was kept by a newer Halfloaf${word === "" ? "" : ` (version ${harmless(detail)})`}; it stays untouched.`,
      "Get a newer Halfloaf.",
    ],
    damaged: [
      `The kitchen in ${folder} is damaged and could not be made anew${word}.`,
      'The newest file in its folder "snapshots", or a backup, brings it back: halfloaf restore FILE --kitchen NEWFOLDER.',
    ],
    busy: [`The kitchen in ${folder} was held by another process for too long.`, "Try again when the other has ended."],
    full: [
      `No space is left on the disk of ${folder}.`,
      "Make room and do it again; what was kept before is still there.",
    ],
    "no-folder": [`${folder} is a file, not a folder.`, "Name a folder."],
  }[reason] ?? [
    `The kitchen in ${folder} can't be opened${word}.`,
    "Check that the folder is there and that you may write in it.",
  ];
  return plain(`kitchen-${reason}`, sentence as string, remedy as string, name);
}

/** What was done could not be brought to disk. */
export function tellNotKept(reason: string, detail: string): Fault {
  const why =
    reason === "full"
      ? "no space is left on the disk"
      : reason === "busy"
        ? "another process held it for too long"
        : "";
  const because = why === "" ? harmless(detail) : why;
  return plain(
    "not-kept",
    `What was done is not kept: ${because}.`,
    reason === "full" ? "Make room and do it again." : "Do it again; what was kept before is still there.",
  );
}

/** What had to be mended when a folder was opened, as talk. */
export function tellRepair(name: string, { setAside, readable, damaged, fromSnapshot }: Repair): string[] {
  const what =
    setAside === undefined
      ? `${tellCount(damaged, "piece")} of the kitchen in ${quote(name)} could not be read; the rest is sound (${tellCount(readable, "row")}).`
      : `The file of the kitchen in ${quote(name)} was damaged and was made anew from ${tellCount(readable, "piece")} that could still be read; the damaged one lies as ${quote(setAside)}.`;
  const back =
    fromSnapshot > 0
      ? `${tellCount(fromSnapshot, "row")} came back from the newest snapshot.`
      : "The newest snapshot had nothing more.";
  return [what, `${back} Look through "halfloaf history" and the stores; another device's backup may have more.`];
}

/** Rows that this program does not understand, as talk. */
export function tellStrange(count: number): string {
  return `${tellCount(count, "row")} of this kitchen ${counted(count, { one: "is", other: "are" })} of a newer Halfloaf, or none of its own; they are kept and count for nothing here.`;
}

/** Rows that others follow on are missing, as talk. */
export function tellIncomplete(): string {
  return "Something is missing that later rows follow on; restore a backup of this kitchen, or of another device of it.";
}

/** A name that is no lot, no food and no dish; of what is `there` the nearest comes first, then of `all`. */
export function tellUnknownThing(name: string, there: readonly string[], all: readonly string[]): Fault {
  const near = [...new Set([...findNearest(name, there, 1), ...findNearest(name, all, 4)])].slice(0, 4);
  const sentence = `${quote(name)} is no lot, no food and no dish.`;
  const remedy = near.length > 0 ? `Nearest to it: ${near.join(", ")}.` : 'Look it up in "halfloaf stores".';
  return plain("thing-unknown", sentence, remedy, name);
}

/** More than is in the stores was asked for, or nothing. */
export function tellTooMuch(text: string, thereG: number): Fault {
  const there =
    thereG > 0 ? `only ${tellMass(thereG)} of it ${counted(thereG, { one: "is", other: "are" })}` : "nothing of it is";
  return plain(
    "more-than-there",
    `${quote(text)}: ${there} in the stores.`,
    'Say less, or count what is there with "halfloaf count ITEM=AMOUNT".',
    text,
  );
}

/** Nothing was named that something could be done with. */
export function tellNothingNamed(): Fault {
  return plain("nothing-named", "Nothing is named.", "Name what it is about; add --help for the forms.");
}

/** A count without an amount. */
export function tellNoAmount(text: string): Fault {
  return plain(
    "amount-missing",
    `${quote(text)} says no amount.`,
    "Write ITEM=AMOUNT, such as rice=200g; 0 for nothing.",
    text,
  );
}

/** A demo where a file is to be taken. */
export function tellNoFileToSet(name: string): Fault {
  return plain(
    "file-expected",
    `${quote(name)} is a demo kitchen, and a kitchen is set to what a file says.`,
    `Name a file, ${quote(`./${name}`)} where it is called so; "halfloaf kitchen" prints one to be changed.`,
    name,
  );
}

/** Another currency than that of all that was booked. */
export function tellCurrencyStays(set: string, is: string): Fault {
  return plain(
    "currency-stays",
    `The file has money in ${harmless(set)}, and all of this kitchen is booked in ${is}.`,
    `Write ${is}, or keep another kitchen with "halfloaf settle FOLDER --from KITCHEN".`,
    set,
  );
}

/** A day that is told of a label, and that none stands there. */
export function tellDatesAtOdds(): Fault {
  return plain("label-at-odds", "A label can't bear a date and none.", "Leave out --no-date, or the dates.");
}

/** A label of which nothing is told. */
export function tellNoDateGiven(): Fault {
  return plain(
    "date-missing",
    "Nothing says which date the label bears.",
    "Add --use-by DATE or --best-before DATE, or --no-date where none stands there.",
  );
}

/** Nothing that bears a label is at hand of what was named. */
export function tellNothingThere(name: string): Fault {
  return plain(
    "nothing-there",
    `No pack of ${quote(name)} is in the stores on this day.`,
    'Look it up in "halfloaf stores"; what was never written down is told with "halfloaf found".',
    name,
  );
}

/** What was found is no food. */
export function tellNoFood(name: string, kind: "lot" | "dish"): Fault {
  return kind === "lot"
    ? plain(
        "food-expected",
        `${quote(name)} is in the stores already.`,
        'Name the food where it is another pack, or count this one with "halfloaf count".',
        name,
      )
    : plain("food-expected", `${quote(name)} is a dish, not a food.`, 'Tell its cooking with "halfloaf cooked".', name);
}

/** An amount of a food that is none. */
export function tellNotSoMuch(text: string): Fault {
  return plain("amount", `${quote(text)} is no amount of a food.`, "Write more than 0, in g or kg.", text);
}

/** A cost with several foods. */
export function tellCostOfWhich(): Fault {
  return plain("cost-of-which", "Several foods are named, and --cost is of one.", "Tell each food by itself.");
}

/** A day that can't be where another one stands. */
export function tellDayAtOdds(option: string, day: string, expected: string): Fault {
  return plain("day-at-odds", `${option} ${day} should be ${expected}.`, "Name another day.", day);
}

/** A pack that no open trip has. */
export function tellOnNoTrip(name: string): Fault {
  return plain(
    "pack-on-no-trip",
    `No trip of the accepted week has ${quote(name)} left to buy around this day.`,
    'Look at "halfloaf today" for what is to be bought, or name the day with --on.',
    name,
  );
}

/** A pack that came home and was not there. */
export function tellThereAndNot(name: string): Fault {
  return plain(
    "pack-at-odds",
    `${quote(name)} is told as bought and as not there.`,
    "Leave one of the two out; where some came home, name how many with PACK:COUNT.",
    name,
  );
}

/** Portions were found of which no cooking is known. */
export function tellStrangeDish(dish: string): Fault {
  return plain(
    "portions-unknown",
    `The record knows no portions of ${dish}, so they can't be counted.`,
    'Tell the cooking first with "halfloaf cooked", with --on for its day.',
  );
}

/** No trip of an accepted week has anything left to buy. */
export function tellNothingPlanned(): Fault {
  return plain(
    "nothing-planned",
    "No accepted week has anything left to buy around this day.",
    'Name the packs, or accept a week with "halfloaf week --accept" first.',
  );
}

/** A name that is no pack, or of more than one. */
export function tellUnknownPack(
  name: string,
  packs: readonly { readonly id: string; readonly label: string }[],
  isAmbiguous = false,
): Fault {
  const ids = packs.map(({ id }) => id);
  const byText = new Map(packs.map(({ id, label }) => [`${id} ${label}`, id]));
  const near = isAmbiguous
    ? ids.slice(0, 6)
    : findNearest(name, byText.keys(), 3, 0).flatMap((text) => byText.get(text) ?? []);
  const sentence = isAmbiguous ? `${quote(name)} means more than one pack.` : `There is no pack ${quote(name)} here.`;
  const remedy = `${isAmbiguous ? "Name one of" : "Nearest to it:"} ${near.join(", ")}.`;
  return plain(isAmbiguous ? "pack-ambiguous" : "pack-unknown", sentence, remedy, name);
}

/** A fare with several shops. */
export function tellFareOfWhich(): Fault {
  return plain(
    "fare-of-which",
    "The packs are of several shops, and a fare is of one.",
    "Tell each visit by itself, with --shop.",
  );
}

/** A pack that could not be booked. */
export function tellPackIssue({ code, path, expected, received }: Issue): Fault {
  const isMass = path.includes("massG");
  const sentence = isMass
    ? "It is not known how many grams this pack holds."
    : `${quote(received)} is not ${harmless(expected)}.`;
  return plain(code, sentence, isMass ? "Say it with --size PACK=GRAMS." : "Name another.", received);
}

/** No batch of the accepted week is open. */
export function tellNothingToCook(): Fault {
  return plain(
    "nothing-to-cook",
    "The accepted week has nothing left to cook here on this day.",
    "Name the dish, or the day with --on.",
  );
}

/** Nothing ahead, or nothing of the dishes that were named. */
export function tellNothingToBegin(): Fault {
  return plain(
    "nothing-to-begin",
    "The accepted week has nothing like that to soak, thaw or begin ahead on this day.",
    'See what there is with "halfloaf today", or name the day with --on.',
  );
}

/** Portions or plates for several dishes at once. */
export function tellManyDishes(): Fault {
  return plain(
    "dishes-several",
    "Portions, what was really used and who ate are of one dish, and several are meant.",
    "Tell each dish by itself.",
  );
}

/** Plates without a sitting. */
export function tellNoSittingNamed(): Fault {
  return plain("sitting-missing", "Nothing says at which sitting it was eaten.", "Add --sitting KIND.");
}

/** Nothing of what was to be eaten is in the stores. */
export function tellNothingServed(): Fault {
  return plain(
    "nothing-served",
    "Nothing of what was to be eaten there is in the stores.",
    'Tell the cooking first with "halfloaf cooked", or say what was eaten with --ate.',
  );
}

/** The accepted week has nobody at a sitting who has not eaten. */
export function tellNobodyLeft(sitting: string): Fault {
  return plain(
    "nobody-left",
    `The accepted week has nobody, ${sitting}, of whom it is not told already that they ate or were not here.`,
    "Name the day with --on, or say what was eaten with --ate.",
  );
}

/** Nothing of this device can be taken back, or done again. */
export function tellNothingToUndo(direction: "undo" | "redo"): Fault {
  return direction === "undo"
    ? plain(
        "nothing-to-undo",
        "This device has done nothing that could be taken back.",
        "What another device did is taken back there.",
      )
    : plain(
        "nothing-to-redo",
        "Nothing was taken back, or something was done since.",
        'Do it anew; "halfloaf history" shows what it was.',
      );
}

/** A look at a pack without its price. */
export function tellNoPriceGiven(text: string): Fault {
  return plain("price-missing", `${quote(text)} says no price.`, "Write PACK=PRICE, such as rice-500g=1.29.", text);
}

/** A place that a backup is not written to. */
export function tellBackupPlace(name: string, isTaken: boolean): Fault {
  return isTaken
    ? plain(
        "out-taken",
        `${quote(name)} is there already and is no backup; it is left as it is.`,
        "Name another file.",
        name,
      )
    : plain(
        "out-no-folder",
        `The folder of ${quote(name)} is not there.`,
        "Make it first, or name another file.",
        name,
      );
}

/** A file that could not be written. */
export function tellNotWritten(name: string, code: string): Fault {
  return plain(
    "out-not-written",
    `${quote(name)} can't be written (${code}).`,
    "Check that you may write there and that the disk is not full, or name another file.",
    name,
  );
}

/** A file that brings nothing back. */
export function tellNoBackup(name: string): Fault {
  return plain(
    "not-a-backup",
    `${quote(name)} is no backup, no record and no kitchen of Halfloaf.`,
    'Name a file that "halfloaf backup" has written, one of the folder "snapshots", or a kitchen\'s file.',
    name,
  );
}

/** A backup of a newer version. */
export function tellBackupNewer(name: string): Fault {
  return plain(
    "version-newer",
    `${quote(name)} was written by a newer Halfloaf; nothing of it was taken.`,
    "Get a newer Halfloaf.",
    name,
  );
}

/** Rows of a kitchen that began apart from the one kept here. */
export function tellBegunApart(name: string, folder: string): Fault {
  return plain(
    "kitchen-other",
    `${quote(name)} is of a kitchen that began apart from the one in ${quote(folder)}; together they would count their stores twice. Nothing of it was taken.`,
    'Bring it into a folder of its own. A second device of one kitchen begins with "halfloaf restore" of the first one\'s backup.',
    name,
  );
}

/** A file that holds no week. */
export function tellNotAWeek(name: string): Fault {
  return plain(
    "not-a-week",
    `${quote(name)} holds no week of Halfloaf.`,
    'Name a file that "halfloaf week" or "halfloaf mend" has kept.',
    name,
  );
}

/** A week of another kitchen. */
export function tellOtherKitchen(of: string, here: string): Fault {
  return plain(
    "week-kitchen",
    `This week was planned for the kitchen ${quote(of)}, and here ${quote(here)} is kept.`,
    "Plan a week with this kitchen's folder.",
    of,
  );
}

/** Only a kept kitchen takes a week as its plan. */
export function tellNothingToAccept(name: string): Fault {
  return plain(
    "kitchen-not-kept",
    `${quote(name)} is no folder of a kept kitchen, so no week can be accepted there.`,
    'Make one with "halfloaf settle FOLDER --from KITCHEN", or leave out --accept.',
    name,
  );
}

/** A last day before the first. */
export function tellDaysTurned(from: string, to: string): Fault {
  return plain("days-turned", `The last day, ${to}, is before the first, ${from}.`, "Name another --from or --to.");
}

/** No accepted week holds the day. */
export function tellNoWeekThen(day: string, otherwise?: string): Fault {
  return plain(
    "no-week",
    `No accepted week holds ${day}.`,
    `Accept one with "halfloaf week FOLDER --accept"${otherwise === undefined ? "" : `, or ${otherwise}`}.`,
  );
}
