import type { Act } from "@halfloaf/keep";
import { tellDayShort } from "@halfloaf/words/en";
import type { ExitCode } from "../exitCodes.ts";
import { wrapBehind } from "../output/layout.ts";
import type { Terminal } from "../output/Terminal.ts";
import { refuse } from "../words/Fault.ts";
import { tellNothingToUndo } from "../words/keepFaultWords.ts";
import { DONE_AGAIN, FROM_FILE, gather, type KeepNames, TAKEN_BACK, tellRow } from "../words/keepWords.ts";
import { civilDayOf } from "./civilDayOf.ts";
import type { HistoryReport } from "./HistoryReport.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { runKeep } from "./runKeep.ts";
import { toKeepNames } from "./toKeepNames.ts";
import { tellAct } from "./writeAct.ts";

/** What is asked of the history. */
export interface HistoryAsk extends KeepAsk {
  /** The last so many acts. */
  readonly last: number;
}

/** Rows of one act that are told in full. */
const MOST_ROWS = 12;

/** Shows who did what when, the latest last. */
export function historyCommand(ask: HistoryAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const acts = gatherFile(open.kept.history()).slice(-ask.last);
    const data: HistoryReport = {
      format: "halfloaf-history",
      version: 1,
      kitchen: open.edited.name,
      acts: acts.map((act) => ({ ...act, rows: [...act.rows] })),
    };
    const names = toKeepNames(open);
    return { ok: true, value: { data, lines: acts.flatMap((act) => layAct(act, names, terminal)) } };
  });
}

/** Takes back the last act of this device, or does again what was taken back last. */
export function undoCommand(ask: KeepAsk, direction: "undo" | "redo", terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async (open) => {
    if (open.faults.length > 0) return { ok: false, faults: [] };
    const act = open.kept.undoable()[direction];
    const written = await (direction === "undo" ? open.kept.undo(open.by) : open.kept.redo(open.by));
    if (act === undefined || written === undefined) return refuse(tellNothingToUndo(direction));
    const names = toKeepNames(open);
    const undone = act.undoes === undefined ? act : open.kept.history().find(({ id }) => id === act.undoes);
    const told = gather((undone ?? act).rows.map((row) => tellRow(row, names)));
    const { data } = tellAct(open, terminal.page, written);
    const lines = told.flatMap((text) => wrapBehind("  ", text, terminal.page.width));
    return { ok: true, value: { data, lines: [direction === "undo" ? TAKEN_BACK : DONE_AGAIN, ...lines] } };
  });
}

/** What came from a kitchen's file as one act, at the beginning: the stores first, then what was set. */
function gatherFile(acts: readonly Act[]): Act[] {
  const [first, ...others] = acts.filter(({ atMs }) => atMs === 0);
  const later = acts.filter(({ atMs }) => atMs !== 0);
  if (first === undefined) return later;
  const rows = [first, ...others].flatMap((act) => act.rows);
  const inTurn = [...rows.filter(({ kind }) => kind !== "edited"), ...rows.filter(({ kind }) => kind === "edited")];
  return [{ ...first, rows: inTurn }, ...later];
}

function layAct({ atMs, by, writer, rows, undoes }: Act, names: KeepNames, { page }: Terminal): string[] {
  const at = new Date(atMs);
  const clock = `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
  const when = atMs === 0 ? FROM_FILE : `${tellDayShort(civilDayOf(atMs))} ${clock}`;
  const who =
    atMs === 0 ? "" : `, ${by === undefined ? "" : `${names.eater(by)}, `}${writer.slice(0, writer.lastIndexOf("-"))}`;
  const days = [...new Set(rows.flatMap((row) => (row.kind === "edited" ? [] : [row.on])))];
  const about = days.length === 1 && days[0] !== civilDayOf(atMs) ? `, of ${tellDayShort(days[0] as string)}` : "";
  const told = gather(rows.map((row) => tellRow(row, names)));
  const shown = told.slice(0, MOST_ROWS);
  const more = told.length > shown.length ? [`and ${told.length - shown.length} more`] : [];
  const title = `${when}${who}${about}${undoes === undefined ? "" : ", taking back"}`;
  return [page.paint.strong(title), ...[...shown, ...more].flatMap((text) => wrapBehind("  ", text, page.width))];
}
