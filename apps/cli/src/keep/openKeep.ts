import type { KeptKitchen } from "@halfloaf/keep";
import { type Kitchen, type Tables, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { type EditedKitchen, type RecordState, toKitchen } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import { loadTables } from "../input/loadTables.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { tellNoKitchenThere } from "../words/keepFaultWords.ts";
import { type Names, toNames } from "../words/Names.ts";
import { civilDayOf } from "./civilDayOf.ts";
import { findEater } from "./findEater.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { namedFolder, openKept } from "./openFolder.ts";

/** A kept kitchen that is open, as it stands on a day. */
export interface OpenKeep {
  /** The folder as it was named. */
  readonly folder: string;
  readonly kept: KeptKitchen;
  readonly edited: EditedKitchen;
  /** As it stands at the end of the day. */
  readonly kitchen: Kitchen;
  readonly tables: Tables;
  readonly names: Names;
  readonly day: CivilDate;
  /** What is known, later days included: for what is to be written. */
  readonly state: RecordState;
  /** What was known to have happened by the end of the day: for what is to be shown. */
  readonly stateThen: RecordState;
  readonly by?: string;
  /**
   * What is wrong with the ask whatever it is about, such as an eater that nobody is. Then nothing is written, and it is told
   * together with all else that is wrong (`closeAfter`).
   */
  readonly faults: readonly Fault[];
}

/** Opens the kitchen a command is about; whoever opens it closes `kept`. */
export async function openKeep(ask: KeepAsk, terminal: Terminal): Promise<Found<OpenKeep>> {
  const starter = loadTables();
  const opened = await openKept(ask.kitchen, starter, terminal);
  if (!opened.ok) return opened;
  const found = toOpen(opened.value, ask, starter, terminal);
  if (!found.ok) await opened.value.close();
  return found;
}

function toOpen(kept: KeptKitchen, ask: KeepAsk, starter: Tables, terminal: Terminal): Found<OpenKeep> {
  const folder = namedFolder(ask.kitchen, terminal) ?? "";
  const day = ask.on ?? civilDayOf(terminal.nowMs());
  const read = kept.kitchen();
  if (!read.ok) return { ok: false, faults: tellNoneYet(kept, folder, read.issues) };
  const edited = read.value.kitchen;
  const by = ask.by === undefined ? undefined : findEater(ask.by, edited);
  const tables = withOwnFoodsAndDishes(starter, edited);
  const { state } = kept.events;
  const last = kept.events.events.at(-1);
  const stateThen = last !== undefined && last.on > day ? kept.events.stateOn(day) : state;
  const value: OpenKeep = {
    folder,
    kept,
    edited,
    kitchen: toKitchen(edited, stateThen, tables.foods, day),
    tables,
    names: toNames(edited, tables),
    day,
    state,
    stateThen,
    ...(by?.ok && { by: by.value }),
    faults: by?.ok === false ? by.faults : [],
  };
  return { ok: true, value };
}

function tellNoneYet(
  kept: KeptKitchen,
  folder: string,
  issues: readonly Parameters<typeof tellIssue>[0][],
): readonly Fault[] {
  if (kept.edits.all().length === 0) return refuse(tellNoKitchenThere(folder, true)).faults;
  return issues.map((issue) => tellIssue(issue, undefined));
}
