import type { Repair } from "@halfloaf/keep/node";
import { harmless } from "../output/harmless.ts";
import { tellCount } from "./amountWords.ts";
import type { Fault } from "./Fault.ts";
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
  return `${tellCount(count, "row")} of this kitchen ${count === 1 ? "is" : "are"} of a newer Halfloaf, or none of its own; they are kept and count for nothing here.`;
}

/** Rows that others follow on are missing, as talk. */
export function tellIncomplete(): string {
  return "Something is missing that later rows follow on; restore a backup of this kitchen, or of another device of it.";
}
