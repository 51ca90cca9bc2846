import { checkKitchen, type Kitchen, parseKitchen, platesAgainst, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { changedSince, type EditedKitchen, editsBetween, menuOn, toKitchen } from "halfloaf/kitchen/record";
import type { ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { openKitchen } from "../input/openKitchen.ts";
import { toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { tellCurrencyStays, tellNoFileToSet } from "../words/keepFaultWords.ts";
import { NOTHING_SET, tellAgainst, tellBehind, tellLater } from "../words/keepWords.ts";
import { toNames } from "../words/Names.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What is asked of the kitchen itself. */
export interface KitchenAsk extends KeepAsk {
  /** A kitchen's file to set the kitchen to; absent: it is printed. */
  readonly set?: string;
}

/** Prints the kitchen as a kitchen's file, or sets it to what a changed copy of that file says, as one act. */
export function kitchenCommand(ask: KitchenAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async (open) => {
    if (ask.set === undefined) {
      const data = toFile(open);
      return { ok: true, value: { data, lines: [toJsonText(data)] } };
    }
    const now = readSet(ask.set, open, terminal);
    if (!now.ok) return now;
    const edits = editsBetween(open.edited, now.value);
    return writeAct(open, terminal.page, (pen) => ({
      ok: true,
      value: {
        rows: edits.map((body) => pen.write(body)),
        extra: { sentences: edits.length === 0 ? [NOTHING_SET] : tellFollow(open, now.value) },
      },
    }));
  });
}

/** Says how the accepted week of the day may follow what was set, and what of it waits for the next week. */
function tellFollow({ kept, state, stateThen, day, folder }: OpenKeep, now: EditedKitchen): string[] {
  const menu = menuOn(state, day);
  if (menu === undefined) return [];
  const { followed, later } = changedSince(menu, { events: kept.events.events, edits: kept.edits.all() }, now);
  const tables = withOwnFoodsAndDishes(loadTables(), now);
  const kitchen = toKitchen(now, stateThen, tables.foods, day);
  const names = toNames(now, tables);
  return [
    ...platesAgainst(menu.week, kitchen, tables, day, state.plates).map((plate) => tellAgainst(plate, names)),
    ...(followed.length > 0 ? [tellBehind(folder)] : []),
    ...(later.length > 0 ? [tellLater(later)] : []),
  ];
}

/** What was edited as it stands, with the stores of the day, so that the file is a kitchen by itself. */
function toFile({ edited, kitchen }: OpenKeep): Kitchen {
  const { stores, putBy, useUp } = kitchen;
  const read = parseKitchen({ format: "halfloaf-kitchen", version: 1, ...edited, stores, putBy, useUp });
  if (!read.ok) throw new Error(`a kept kitchen is none: ${JSON.stringify(read.issues)}`);
  return read.value;
}

/**
 * The kitchen as a file would have it. Stores and what is put by follow from what happened and are not taken from it, nor
 * are lots to be used up where the file has them as they were.
 */
function readSet(file: string, open: OpenKeep, terminal: Terminal): Found<EditedKitchen> {
  const { edited, state, day } = open;
  const starter = loadTables();
  const opened = openKitchen(file, terminal.cwd, starter);
  if (!opened.ok) return opened;
  if (opened.value.file === undefined) return refuse(tellNoFileToSet(file));
  const { $schema: _schema, format: _format, version: _version, stores, putBy, ...set } = opened.value.kitchen;
  if (set.currency !== edited.currency) return refuse(tellCurrencyStays(set.currency, edited.currency));
  const there = new Set([...stores, ...putBy].map(({ id }) => id));
  const asPrinted = edited.useUp.filter((id) => there.has(id));
  const isAsPrinted = JSON.stringify(set.useUp) === JSON.stringify(asPrinted);
  const now: EditedKitchen = { ...set, putBy: edited.putBy, useUp: isAsPrinted ? edited.useUp : set.useUp };
  const tables = withOwnFoodsAndDishes(starter, now);
  const kitchen = toKitchen(now, state, tables.foods, day);
  const issues = checkKitchen(kitchen, tables);
  return issues.length > 0
    ? { ok: false, faults: issues.map((issue) => tellIssue(issue, kitchen)) }
    : { ok: true, value: now };
}
