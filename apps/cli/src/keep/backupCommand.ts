import { realpathSync, statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { parseBackup, toBackup } from "@halfloaf/keep";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { toJsonText } from "../output/harmless.ts";
import { wrap } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { writeWhole } from "../output/writeWhole.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import {
  tellBackupNewer,
  tellBackupPlace,
  tellBegunApart,
  tellNoBackup,
  tellNoFolder,
  tellNotKept,
  tellNotWritten,
} from "../words/keepFaultWords.ts";
import { tellBackedUp, tellRestored } from "../words/keepWords.ts";
import { valueAt } from "../words/valueWords.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { namedFolder, openFolder } from "./openFolder.ts";
import { runKeep } from "./runKeep.ts";

/** Where a backup goes to, or comes from. */
export interface BackupAsk extends KeepAsk {
  readonly file: string;
}

/** Writes everything that the kitchen is made of as one file, whole or not at all. */
export function backupCommand(ask: BackupAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, ({ kept }) => {
    const place = findPlace(ask.file, terminal.cwd);
    if (!place.ok) return place;
    const trouble = writeWhole(toBackup(kept, terminal.nowMs()), place.value);
    if (trouble !== undefined) return refuse(tellNotWritten(ask.file, trouble));
    const rows = kept.rawRows().length;
    const data = { format: "halfloaf-backed-up", version: 1, file: ask.file, rows };
    return { ok: true, value: { data, lines: wrap(tellBackedUp(ask.file, rows), terminal.page.width) } };
  });
}

/** A path that a backup may be written to: nothing stands there, or a backup does. */
function findPlace(name: string, cwd: string): Found<string> {
  const path = resolve(cwd, name);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind === undefined)
    return statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory()
      ? { ok: true, value: path }
      : refuse(tellBackupPlace(name, false));
  const read = kind.isFile() ? readJsonFile(name, cwd) : undefined;
  const isBackup = read?.ok === true && valueAt(read.value.content, ["format"]) === "halfloaf-backup";
  return isBackup ? { ok: true, value: realpathSync(path) } : refuse(tellBackupPlace(name, true));
}

/** Brings a backup, a record or a kitchen's file into the kitchen of a folder, which is made where there is none. */
export async function restoreCommand(ask: BackupAsk, terminal: Terminal): Promise<ExitCode> {
  const restored = await restore(ask, terminal);
  if (!restored.ok) return refuseInput(ask.file, restored.faults, ask.json, terminal);
  const { added, rows, folder } = restored.value;
  const data = { format: "halfloaf-restored", version: 1, file: ask.file, folder, added, rows };
  if (ask.json) terminal.print(toJsonText(data));
  else for (const line of wrap(tellRestored(ask.file, folder, added, rows), terminal.page.width)) terminal.print(line);
  return EXIT.done;
}

interface Restored {
  readonly added: number;
  readonly rows: number;
  readonly folder: string;
}

async function restore({ file, kitchen }: BackupAsk, terminal: Terminal): Promise<Found<Restored>> {
  const folder = namedFolder(kitchen, terminal);
  if (folder === undefined) return refuse(tellNoFolder());
  const read = readJsonFile(file, terminal.cwd);
  if (!read.ok) return read;
  const { content } = read.value;
  const tables = loadTables();
  const rows = parseBackup(content, tables.dishes);
  if (!rows.ok) {
    const isStrange = rows.issues.some(({ code }) => code === "format-unknown");
    const isNewer = rows.issues.some(({ code }) => code === "version-newer");
    if (isStrange) return refuse(tellNoBackup(file));
    if (isNewer) return refuse(tellBackupNewer(file));
    return { ok: false, faults: rows.issues.map((issue) => tellIssue(issue, content)) };
  }
  const opened = await openFolder(folder, tables.foods, terminal);
  if (!opened.ok) return opened;
  const isOther = opened.value.isOther(rows.value);
  const { added } = isOther ? { added: 0 } : await opened.value.merge(rows.value);
  const closed = await opened.value.close();
  if (!closed.ok) return refuse(tellNotKept(closed.reason, closed.detail));
  return isOther
    ? refuse(tellBegunApart(file, folder))
    : { ok: true, value: { added, rows: rows.value.length, folder } };
}
