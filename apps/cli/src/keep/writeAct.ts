import type { LedgerRow, Written } from "@halfloaf/keep";
import { tellMoney } from "@halfloaf/words/en";
import { budgetOf, type Pen, type RecordState } from "halfloaf/kitchen/record";
import * as v from "valibot";
import { wrap } from "../output/layout.ts";
import type { Page } from "../output/Page.ts";
import type { Fault, Found } from "../words/Fault.ts";
import { gather, tellDoubt, tellRow } from "../words/keepWords.ts";
import { ActReport } from "./ActReport.ts";
import type { KeepAnswer } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { toKeepNames } from "./toKeepNames.ts";

/** What an act tells besides its rows. */
export interface ActExtra extends Pick<ActReport, "differences" | "short"> {
  /** Sentences after those of the rows. */
  readonly sentences?: readonly string[];
  /** Sentences after those, about what the act made of the record. */
  readonly after?: (state: RecordState) => readonly string[];
}

/**
 * Writes one act and answers with its rows, each as a sentence, and with what of them cannot have happened. Where `act`
 * finds faults, or the ask has some, nothing is written. Each row but the first belongs to the act of the first.
 */
export async function writeAct(
  open: OpenKeep,
  page: Page,
  act: (pen: Pen) => Found<{ readonly rows: readonly LedgerRow[]; readonly extra?: ActExtra }>,
): Promise<Found<KeepAnswer>> {
  let faults: readonly Fault[] = [];
  let extra: ActExtra = {};
  const written = await open.kept.write((pen) => {
    const found = act(pen);
    if (!found.ok) faults = found.faults;
    else extra = found.value.extra ?? {};
    return found.ok && open.faults.length === 0 ? found.value.rows : [];
  }, open.by);
  return faults.length + open.faults.length > 0
    ? { ok: false, faults }
    : { ok: true, value: tellAct(open, page, written, extra) };
}

/** An act that was written, as data and as a page. */
export function tellAct(open: OpenKeep, page: Page, { rows }: Pick<Written, "rows">, extra: ActExtra = {}): KeepAnswer {
  const { edited, day, by, kept } = open;
  const { state } = kept.events;
  const names = toKeepNames(open, state);
  const { sentences = [], after = () => [], ...more } = extra;
  const ids = new Map(rows.map((row) => [row.id, row]));
  const doubts = state.faults.flatMap(({ event, issue: { code, expected, received } }) =>
    ids.has(event) ? [{ event, code, expected, received }] : [],
  );
  const report = {
    format: "halfloaf-act",
    version: 1,
    kitchen: edited.name,
    currency: edited.currency,
    on: day,
    ...(by !== undefined && { by }),
    rows,
    doubts,
    ...more,
  };
  const isBuying = rows.some(({ kind }) => kind === "bought");
  const shown = rows.filter(({ kind }) => !isBuying || kind !== "price-seen").map((row) => tellRow(row, names));
  const doubtful = doubts.map((doubt) => tellDoubt(doubt, tellRow(ids.get(doubt.event) as LedgerRow, names)));
  const all = [
    ...gather(shown),
    ...(isBuying ? tellTill(open, rows, state) : []),
    ...doubtful,
    ...sentences,
    ...after(state),
  ];
  return {
    data: v.parse(ActReport, JSON.parse(JSON.stringify(report))),
    lines: all.flatMap((line) => wrap(line, page.width)),
  };
}

function tellTill({ edited, day }: OpenKeep, rows: readonly LedgerRow[], state: RecordState): string[] {
  const money = (minor: number): string => tellMoney(minor, edited.currency);
  const paid = rows.reduce((sum, row) => (row.kind === "bought" ? sum + row.costMinor : sum), 0);
  const { budgetMinor, leftMinor } = budgetOf(edited, state, day);
  const rest =
    budgetMinor === undefined || leftMinor === undefined
      ? ""
      : ` ${money(Math.abs(leftMinor))} of this week's ${money(budgetMinor)} ${leftMinor < 0 ? "too much" : "left"}.`;
  return [`Paid at the till: ${money(paid)} ${edited.currency}.${rest}`];
}
