import type { EventBody, Pen } from "halfloaf/kitchen/record";
import { throwAway } from "halfloaf/kitchen/record";
import { take } from "halfloaf/stores";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNothingNamed, tellTooMuch } from "../words/keepFaultWords.ts";
import { type AskedItem, amountG, findItem, lotsOf, shareOut } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What was used up without saying for which sitting. */
export interface UsedAsk extends KeepAsk {
  readonly items: readonly AskedItem[];
}

/** What was thrown away. */
export interface WastedAsk extends UsedAsk {
  readonly why?: string;
  /** True: all that has gone off besides. */
  readonly goneOff: boolean;
}

/** Books what was used of the stores: of foods the good lots first expired first out, packs of which some stays are opened. */
export function usedCommand(ask: UsedAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) =>
    writeAct(open, terminal.page, (pen) => writeAll(ask.items, pen, (item) => useOf(item, open))),
  );
}

/** Books what was thrown away, and where asked for all that has gone off. */
export function wastedCommand(ask: WastedAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    if (ask.items.length === 0 && !ask.goneOff) return refuse(tellNothingNamed());
    return writeAct(open, terminal.page, (pen) => {
      const gone = ask.goneOff ? throwAway(open.state, open.day, pen) : [];
      const named = writeAll(ask.items, pen, (item) => wasteOf(item, ask.why, open));
      return named.ok ? { ok: true, value: { rows: [...gone, ...named.value.rows] } } : named;
    });
  });
}

type Rows = Found<{ readonly rows: ReturnType<Pen["write"]>[] }>;

/** The rows of all items, or all that is wrong with them. */
function writeAll(
  items: readonly AskedItem[],
  pen: Pen,
  bodiesOf: (item: AskedItem) => Found<readonly EventBody[]>,
): Rows {
  const found = items.map(bodiesOf);
  const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return { ok: false, faults };
  const bodies = found.flatMap((one) => (one.ok ? one.value : []));
  return { ok: true, value: { rows: bodies.map((body) => pen.write(body)) } };
}

function useOf(asked: AskedItem, open: OpenKeep): Found<readonly EventBody[]> {
  const item = findItem(asked.name, open);
  if (!item.ok) return item;
  const lots = lotsOf(item.value, open);
  const food = open.tables.foods.get(lots[0]?.food ?? "");
  if (food === undefined) return shareAs("used", asked, open);
  const thereG = lots.reduce((sum, { leftG }) => sum + leftG, 0);
  const massG = asked.amount === undefined ? thereG : amountG(asked.amount, item.value, open);
  if (!(massG > 0)) return refuse(tellTooMuch(asked.text, thereG));
  const taken = take(lots, food, Math.abs(massG - thereG) < 0.5 ? thereG : massG, open.day);
  return taken.ok ? { ok: true, value: taken.movements } : refuse(tellTooMuch(asked.text, massG - taken.shortG));
}

function wasteOf(asked: AskedItem, why: string | undefined, open: OpenKeep): Found<readonly EventBody[]> {
  const shares = shareAs("wasted", asked, open);
  if (!shares.ok || why === undefined) return shares;
  return { ok: true, value: shares.value.map((body) => ({ ...body, why }) as EventBody) };
}

function shareAs(kind: "used" | "wasted", asked: AskedItem, open: OpenKeep): Found<readonly EventBody[]> {
  const shares = shareOut(asked, open);
  if (!shares.ok) return shares;
  return { ok: true, value: shares.value.map(({ lot, massG }) => ({ kind, on: open.day, lot: lot.id, massG })) };
}
