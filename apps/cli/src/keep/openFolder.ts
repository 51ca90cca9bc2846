import { existsSync, statSync } from "node:fs";
import { hostname } from "node:os";
import { resolve } from "node:path";
import type { KeptKitchen } from "@halfloaf/keep";
import { isKitchenFolder, openKitchenFolder } from "@halfloaf/keep/node";
import type { Tables } from "halfloaf/kitchen";
import type { Terminal } from "../output/Terminal.ts";
import { toFileWord } from "../week/saveWeek.ts";
import { type Found, refuse } from "../words/Fault.ts";
import {
  tellFolderTrouble,
  tellIncomplete,
  tellNoFolder,
  tellNoKitchenThere,
  tellRepair,
  tellStrange,
} from "../words/keepFaultWords.ts";

/** What the system says where the disk, or a person's share of it, is full. */
const NO_ROOM = ["ENOSPC", "EDQUOT"];

/** The variable of the environment that names the folder where no option does. */
const KITCHEN_VARIABLE = "HALFLOAF_KITCHEN";

/** The folder that a command is about, as named; undefined where nothing names one. */
export function namedFolder(kitchen: string | undefined, { env }: Pick<Terminal, "env">): string | undefined {
  const name = kitchen ?? env[KITCHEN_VARIABLE];
  return name === "" ? undefined : name;
}

/** True where a name leads to the folder of a kept kitchen. */
export function isKept(name: string, cwd: string): boolean {
  return isKitchenFolder(resolve(cwd, name));
}

/** Opens the kitchen kept in a folder that holds one. What had to be mended is told as talk. */
export async function openKept(
  kitchen: string | undefined,
  { foods }: Tables,
  terminal: Terminal,
): Promise<Found<KeptKitchen>> {
  const name = namedFolder(kitchen, terminal);
  if (name === undefined) return refuse(tellNoFolder());
  if (!isKept(name, terminal.cwd)) return refuse(tellNoKitchenThere(name, existsSync(resolve(terminal.cwd, name))));
  return openFolder(name, foods, terminal);
}

/** Opens the folder of a name, which becomes the folder of a kitchen where it is none yet. */
export async function openFolder(
  name: string,
  foods: Tables["foods"],
  terminal: Terminal,
): Promise<Found<KeptKitchen>> {
  const path = resolve(terminal.cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind !== undefined && !kind.isDirectory()) return refuse(tellFolderTrouble(name, "no-folder", ""));
  const device = toFileWord(terminal.env.HALFLOAF_DEVICE ?? hostname());
  try {
    const opened = await openKitchenFolder(path, { foods, device, now: terminal.nowMs });
    if (!opened.ok) return refuse(tellFolderTrouble(name, opened.reason, opened.detail));
    const { kept, repair } = opened;
    if (repair !== undefined) for (const line of tellRepair(name, repair)) terminal.talk(line);
    if (kept.strange().length > 0) terminal.talk(tellStrange(kept.strange().length));
    if (kept.isIncomplete()) terminal.talk(tellIncomplete());
    return { ok: true, value: kept };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return refuse(tellFolderTrouble(name, NO_ROOM.includes(code) ? "full" : "unopenable", code));
  }
}
