import { type Findings, newObservations, withFindings } from "@halfloaf/reading";
import { checkKitchen, type Tables, withOwnFoodsAndDishes } from "halfloaf/kitchen";
import { type EditedKitchen, type EventBody, editsBetween, toKitchen } from "halfloaf/kitchen/record";
import { type OpenKeep, openKeep } from "../keep/openKeep.ts";
import { closeAfter } from "../keep/runKeep.ts";
import type { Terminal } from "../output/Terminal.ts";
import type { Found } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { findFoundFaults } from "./planKeeping.ts";
import { tellFindings } from "./tellFindings.ts";

/**
 * Writes what was found into the kitchen kept in a folder, as one act, and tells what that was ("" where nothing was new).
 * Prices are written as seen where and when; one that is there already is not written again.
 */
export async function keepInFolder(
  folder: string,
  findings: Findings,
  starter: Tables,
  terminal: Terminal,
): Promise<Found<string>> {
  const faults = findFoundFaults(findings, starter);
  if (faults.length > 0) return { ok: false, faults };
  const opened = await openKeep({ kitchen: folder, json: false }, terminal);
  return opened.ok ? closeAfter(opened.value, (open) => write(findings, open, starter)) : opened;
}

async function write(findings: Findings, open: OpenKeep, starter: Tables): Promise<Found<string>> {
  const { kept, edited, state, day } = open;
  const now: EditedKitchen = { ...edited, ...withFindings(edited, findings) };
  const tables = withOwnFoodsAndDishes(starter, now);
  const kitchen = toKitchen(now, state, tables.foods, day);
  const issues = checkKitchen(kitchen, tables);
  if (issues.length > 0) return { ok: false, faults: issues.map((issue) => tellIssue(issue, kitchen)) };
  const prices = listPrices(findings, open);
  const edits = editsBetween(edited, now);
  if (prices.length + edits.length === 0) return { ok: true, value: "" };
  await kept.write((pen) => [...edits, ...prices].map((body) => pen.write(body)));
  return { ok: true, value: tellFindings(findings, prices.length) };
}

function listPrices({ observations }: Findings, { state, kitchen }: OpenKeep): EventBody[] {
  return newObservations(observations, state.prices, kitchen.packs).map(
    ({ pack, priceMinor, offer, seen }): EventBody => ({
      kind: "price-seen",
      on: seen.on,
      pack,
      priceMinor,
      ...(offer && { offer }),
      at: seen.at,
    }),
  );
}
