import { foodLife, placesOf } from "halfloaf/kitchen";
import { type Count, type EventBody, stocktake } from "halfloaf/kitchen/record";
import type { ExitCode } from "../exitCodes.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoAmount, tellStrangeDish } from "../words/keepFaultWords.ts";
import { NOTHING_DIFFERS, tellDifference } from "../words/keepWords.ts";
import { type AskedItem, amountG, findItem } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { toKeepNames } from "./toKeepNames.ts";
import { writeAct } from "./writeAct.ts";

/** What somebody found in the stores. */
export interface CountAsk extends KeepAsk {
  readonly items: readonly AskedItem[];
  /** What became of what is missing; absent = nobody knows. */
  readonly as?: "used" | "wasted";
}

/** Books a stocktake: what is missing or found besides, and foods that the record did not know to be there. */
export function countCommand(ask: CountAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const found = ask.items.map((item) => toCount(item, ask.as, open));
    const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
    if (faults.length > 0) return { ok: false, faults };
    const counts = found.flatMap((one) => (one.ok ? [one.value] : []));
    return writeAct(open, terminal.page, (pen) => {
      const { events, differences, strange } = stocktake(open.state, counts, open.day, pen);
      const dishes = strange.flatMap((count) => ("dish" in count ? [count.dish] : []));
      if (dishes.length > 0) return { ok: false, faults: dishes.map((dish) => tellStrangeDish(open.names.dish(dish))) };
      const stocked = strange.map((count) =>
        pen.write(toStock(count, pen.nameLot("food" in count ? count.food : "lot"), open)),
      );
      const names = toKeepNames(open, open.state);
      const told = differences.map((difference) => tellDifference(difference, ask.as, names));
      const sentences = told.length + stocked.length > 0 ? told : [NOTHING_DIFFERS];
      return {
        ok: true,
        value: { rows: [...events, ...stocked], extra: { differences: [...differences], sentences } },
      };
    });
  });
}

function toCount(asked: AskedItem, as: CountAsk["as"], open: OpenKeep): Found<Count> {
  const { amount } = asked;
  if (amount === undefined) return refuse(tellNoAmount(asked.text));
  const item = findItem(asked.name, open);
  if (!item.ok) return item;
  const { value } = item;
  const what =
    value.kind === "lot" ? { lot: value.lot.id } : value.kind === "food" ? { food: value.food } : { dish: value.dish };
  const massG = amountG(amount, value, open);
  return { ok: true, value: { ...what, massG, ...(as !== undefined && { as }) } };
}

/** A food that was found and that no lot is known of: it enters at no cost, where it keeps. */
function toStock(count: Count, id: string, { day, kitchen, tables }: OpenKeep): EventBody {
  const food = "food" in count ? count.food : "";
  const facts = tables.foods.get(food);
  const place = facts === undefined ? "dry-store" : foodLife(facts, placesOf(kitchen.kit)).place;
  return { kind: "stocked", on: day, stock: { id, food, place, boughtOn: day, massG: count.massG, costMinor: 0 } };
}
