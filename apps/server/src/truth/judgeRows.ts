import { mayWrite, type Refusal, type Role } from "@halfloaf/keep/sync";
import { deviceOf, type Edit, parseEdit, parseEvent, type RecordEvent, toCanonicalText } from "halfloaf/kitchen/record";
import type { Issue } from "halfloaf/quantity";
import { checkEditedValue } from "./checkEditedValue.ts";

/** Who sends rows, and what they are held against. */
export interface Judging {
  readonly device: string;
  readonly role: Role;
  /** How many rows the log has. */
  readonly logRows: number;
  /** Most characters of a row's text. */
  readonly mostRowChars: number;
  /** Who claimed each of these writers; those that nobody has are left out. */
  ownersOf(writers: readonly string[]): Promise<ReadonlyMap<string, string>>;
  /** Which device sent each of these rows; those that are not there are left out. */
  sendersOf(ids: readonly string[]): Promise<ReadonlyMap<string, string>>;
}

/** A row that is fit to be kept, as its canonical text. */
interface FitRow {
  readonly id: string;
  readonly text: string;
}

/** What of a push may be kept, act by act, and what not. */
export interface Judged {
  readonly acts: readonly (readonly FitRow[])[];
  readonly refused: readonly Refusal[];
}

/** The year 2223: beyond it no row is dated, so that every device can still tell its time. */
const MOST_AT_MS = 8_000_000_000_000;

/**
 * Greatest tick beyond the number of rows. A row's tick follows from rows before it, so no honest one comes near, and what a
 * forged one takes away of the room below is never more than it adds.
 */
const TICKS_FREE = 1_000_000;

/** Most issues that are told of one row. */
const MOST_ISSUES = 5;

interface ReadRow extends FitRow {
  readonly row: RecordEvent | Edit;
}

/**
 * Holds rows against the schema, the role of the device and what belongs to others. Rows of one act are fit together or not
 * at all. The given rows are only read.
 */
export async function judgeRows(rows: readonly unknown[], judging: Judging): Promise<Judged> {
  const refused: Refusal[] = [];
  const fit: ReadRow[] = [];
  const acts = new Set<string>();
  for (const [at, row] of rows.entries()) {
    const read = readRow(row, at, judging);
    if ("text" in read) fit.push(read);
    else {
      refused.push(read);
      acts.add(actOf(row));
    }
  }
  for (const refusal of await judgeOwners(fit, judging)) {
    refused.push(refusal);
    acts.add(actOf(fit.find(({ id }) => id === refusal.id)?.row));
  }
  const told = new Set(refused.map(({ id }) => id));
  const kept = new Map<string, FitRow[]>();
  for (const { id, text, row } of fit) {
    if (told.has(id)) continue;
    if (acts.has(actOf(row))) refused.push({ id, reason: "act" });
    else kept.set(actOf(row), [...(kept.get(actOf(row)) ?? []), { id, text }]);
  }
  return { acts: [...kept.values()], refused };
}

function readRow(input: unknown, at: number, { role, logRows, mostRowChars }: Judging): ReadRow | Refusal {
  const id = idOf(input);
  const named = id === undefined ? {} : { id };
  const text = toCanonicalText(input);
  if (text.length > mostRowChars) return { ...named, reason: "too-large" };
  const isEdit = typeof input === "object" && input !== null && "kind" in input && input.kind === "edited";
  const read = isEdit ? parseEdit(input) : parseEvent(input);
  if (!read.ok) return { ...named, reason: "schema", issues: tellIssues(read.issues) };
  const row = read.value;
  const issues = [...checkAct(row), ...(row.kind === "edited" ? checkEditedValue(row) : [])];
  if (issues.length > 0) return { ...named, reason: "schema", issues: tellIssues(issues) };
  if (row.atMs > MOST_AT_MS || row.tick > TICKS_FREE + logRows + at) return { ...named, reason: "clock" };
  if (!mayWrite(role, row)) return { ...named, reason: "role" };
  return { id: row.id, text, row };
}

/** An act is of one writer, so that nobody hangs a row on what another device did and would take back. */
function checkAct({ id, act }: RecordEvent | Edit): Issue[] {
  if (act === undefined || deviceOf(act) === deviceOf(id)) return [];
  return [{ code: "act", path: ["act"], expected: `a row of ${deviceOf(id)}`, received: act }];
}

async function judgeOwners(rows: readonly ReadRow[], judging: Judging): Promise<Refusal[]> {
  const { device, role } = judging;
  const withdrawn = (row: ReadRow["row"]) => (role === "cook" && row.kind === "withdrawn" ? row.events : []);
  const named = rows.flatMap(({ row }) => withdrawn(row));
  const writers = new Set([...rows.map(({ id }) => id), ...named].map((id) => deviceOf(id)));
  const owners = await judging.ownersOf([...writers]);
  const senders = named.length === 0 ? new Map<string, string>() : await judging.sendersOf(named);
  const isForeign = (id: string) => (senders.get(id) ?? owners.get(deviceOf(id)) ?? device) !== device;
  return rows.flatMap(({ id, row }): Refusal[] => {
    if ((owners.get(deviceOf(id)) ?? device) !== device) return [{ id, reason: "writer-taken" }];
    return withdrawn(row).some(isForeign) ? [{ id, reason: "not-yours" }] : [];
  });
}

function idOf(row: unknown): string | undefined {
  const id = typeof row === "object" && row !== null && "id" in row ? row.id : undefined;
  return typeof id === "string" ? id.slice(0, 200) : undefined;
}

/** The act that a row says it belongs to; rows that say nothing are acts of their own. */
function actOf(row: unknown): string {
  const act = typeof row === "object" && row !== null && "act" in row ? row.act : undefined;
  return typeof act === "string" ? act : (idOf(row) ?? "");
}

function tellIssues(issues: readonly Issue[]): NonNullable<Refusal["issues"]> {
  return issues
    .slice(0, MOST_ISSUES)
    .map(({ path, expected }) => ({ path: path.join("."), expected: expected.slice(0, 500) }));
}
