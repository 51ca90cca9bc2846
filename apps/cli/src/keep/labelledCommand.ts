import type { EventBody } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellDatesAtOdds, tellNoDateGiven, tellNothingThere } from "../words/keepFaultWords.ts";
import { findItem, lotsOf } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { tellNews } from "./tellNews.ts";
import { writeAct } from "./writeAct.ts";

/** The days that the labels of some packs at hand bear. */
export interface LabelledAsk extends KeepAsk {
  /** Names of foods, or ids of lots. */
  readonly items: readonly string[];
  readonly useBy?: CivilDate;
  readonly bestBefore?: CivilDate;
  /** True: no day stands on them. */
  readonly noDate: boolean;
}

/** Books which days the labels of packs at hand bear, in place of those told before: of a food, of all its lots that are here. */
export function labelledCommand(ask: LabelledAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async (open) => {
    const found = ask.items.map((name) => toLabels(name, ask, open));
    const faults = [...findDateFaults(ask), ...found.flatMap((one) => (one.ok ? [] : one.faults))];
    if (faults.length > 0) return { ok: false, faults };
    const bodies = found.flatMap((one) => (one.ok ? one.value : []));
    return writeAct(open, terminal.page, (pen) => ({
      ok: true,
      value: { rows: bodies.map((body) => pen.write(body)), extra: { after: (state) => tellNews(open, state) } },
    }));
  });
}

function findDateFaults({ useBy, bestBefore, noDate }: LabelledAsk): Fault[] {
  const hasDate = useBy !== undefined || bestBefore !== undefined;
  if (hasDate && noDate) return [tellDatesAtOdds()];
  return hasDate || noDate ? [] : [tellNoDateGiven()];
}

function toLabels(name: string, { useBy, bestBefore }: LabelledAsk, open: OpenKeep): Found<EventBody[]> {
  const item = findItem(name, open);
  if (!item.ok) return item;
  // Portions that were cooked here bear no label.
  const lots = lotsOf(item.value, open).filter(({ cooked, leftG }) => cooked === undefined && leftG > 0);
  if (lots.length === 0) return refuse(tellNothingThere(name));
  const label = { ...(useBy !== undefined && { useBy }), ...(bestBefore !== undefined && { bestBefore }) };
  return { ok: true, value: lots.map(({ id }) => ({ kind: "labelled", on: open.day, lot: id, ...label })) };
}
