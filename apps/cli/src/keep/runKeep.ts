import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNotKept } from "../words/keepFaultWords.ts";
import type { KeepAnswer, KeepAsk } from "./KeepAsk.ts";
import { namedFolder } from "./openFolder.ts";
import { type OpenKeep, openKeep } from "./openKeep.ts";

/**
 * Opens the kitchen, does what is asked and closes it. Nothing is told as done before it is on disk; what could not be
 * brought there is told as a fault.
 */
export async function runKeep(
  ask: KeepAsk,
  terminal: Terminal,
  act: (open: OpenKeep) => Found<KeepAnswer> | Promise<Found<KeepAnswer>>,
): Promise<ExitCode> {
  const about = namedFolder(ask.kitchen, terminal) ?? "halfloaf";
  const opened = await openKeep(ask, terminal);
  const found = opened.ok ? await closeAfter(opened.value, act) : opened;
  if (!found.ok) return refuseInput(about, found.faults, ask.json, terminal);
  if (ask.json) terminal.print(toJsonText(found.value.data));
  else for (const line of found.value.lines) terminal.print(line);
  return EXIT.done;
}

/** What an act on an open kitchen came to, once the kitchen is closed with all of it on disk; all that is wrong with the ask at once. */
export async function closeAfter<Value>(
  open: OpenKeep,
  act: (open: OpenKeep) => Found<Value> | Promise<Found<Value>>,
): Promise<Found<Value>> {
  let found: Found<Value>;
  try {
    found = await act(open);
  } catch (error) {
    await open.kept.close();
    throw error;
  }
  const closed = await open.kept.close();
  if (open.faults.length > 0) return { ok: false, faults: [...open.faults, ...(found.ok ? [] : found.faults)] };
  return closed.ok || !found.ok ? found : refuse(tellNotKept(closed.reason, closed.detail));
}
