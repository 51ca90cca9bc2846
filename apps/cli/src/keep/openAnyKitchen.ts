import { type Tables, toPace } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { type OpenKitchen, openKitchen } from "../input/openKitchen.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";
import { openPace } from "../work/pace/openPace.ts";
import { isKept } from "./openFolder.ts";
import { openKeep } from "./openKeep.ts";
import { closeAfter } from "./runKeep.ts";

/**
 * The kitchen of a name: the folder of a kept one, as it stands on a day (today where none is said) and with the pace learned
 * of its cook, else a demo or a file.
 * Whatever is wrong with it comes back at once, in words.
 */
export async function openAnyKitchen(
  name: string,
  terminal: Terminal,
  starter: Tables,
  day?: CivilDate,
): Promise<Found<OpenKitchen>> {
  if (!isKept(name, terminal.cwd)) return openKitchen(name, terminal.cwd, starter);
  const opened = await openKeep({ kitchen: name, json: false, ...(day !== undefined && { on: day }) }, terminal);
  if (!opened.ok) return opened;
  return closeAfter(opened.value, ({ kitchen, tables }) => {
    const found = openPace(undefined, kitchen.name, terminal.cwd);
    if (!found.ok) return found;
    const { learned } = found.value;
    const pace = learned.length === 0 ? kitchen.pace : { ...kitchen.pace, ...toPace(learned) };
    return { ok: true, value: { name: kitchen.name, kitchen: { ...kitchen, ...(pace && { pace }) }, tables } };
  });
}
