import type { Place } from "halfloaf/food";
import { foodLife, placesOf } from "halfloaf/kitchen";
import type { EventBody, Pen } from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import type { ExitCode } from "../exitCodes.ts";
import { findPrice } from "../input/findPrice.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellCostOfWhich, tellDayAtOdds, tellNoAmount, tellNoFood, tellNotSoMuch } from "../words/keepFaultWords.ts";
import { tellNotKeptThere } from "../words/keepWords.ts";
import { type AskedItem, amountG, findItem } from "./Item.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { tellNews } from "./tellNews.ts";
import { writeAct } from "./writeAct.ts";

/** Foods that are at hand and were never written down: a gift, a find, a pack of another shop. */
export interface FoundAsk extends KeepAsk {
  readonly items: readonly AskedItem[];
  /** Absent: where each keeps longest unopened. */
  readonly place?: Place;
  /** Since when it is here; absent: the day it is about. */
  readonly since?: CivilDate;
  /** The day it was opened, or true for the day it is about; absent: it is unopened. */
  readonly opened?: CivilDate | true;
  readonly useBy?: CivilDate;
  readonly bestBefore?: CivilDate;
  /** What it cost, of one food; absent: nobody knows. */
  readonly cost?: string;
}

interface Finding {
  readonly food: string;
  readonly massG: number;
}

/** Books foods that were found at hand, each as a lot of its own. */
export function foundCommand(ask: FoundAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async (open) => {
    const found = ask.items.map((item) => toFinding(item, open));
    const cost = findCost(ask, open);
    const faults = [
      ...found.flatMap((one) => (one.ok ? [] : one.faults)),
      ...(cost.ok ? [] : cost.faults),
      ...findDayFaults(ask, open),
    ];
    if (faults.length > 0 || !cost.ok) return { ok: false, faults };
    const findings = found.flatMap((one) => (one.ok ? [one.value] : []));
    return writeAct(open, terminal.page, (pen) => {
      const rows = findings.map((finding) => pen.write(toStock(finding, ask, cost.value, open, pen)));
      const lost = findings.filter(({ food }) => !isKnownToKeep(food, ask, open));
      const sentences = lost.map(({ food }) => tellNotKeptThere(open.names.food(food), placeFor(food, ask, open)));
      return { ok: true, value: { rows, extra: { sentences, after: (state) => tellNews(open, state) } } };
    });
  });
}

function toFinding(asked: AskedItem, open: OpenKeep): Found<Finding> {
  const item = findItem(asked.name, open);
  if (!item.ok) return item;
  if (item.value.kind !== "food") return refuse(tellNoFood(asked.name, item.value.kind));
  if (asked.amount === undefined) return refuse(tellNoAmount(asked.text));
  if (asked.amount.unit === "portions" || !(asked.amount.value > 0)) return refuse(tellNotSoMuch(asked.text));
  return { ok: true, value: { food: item.value.food, massG: amountG(asked.amount, item.value, open) } };
}

type Cost = { readonly costMinor: number; readonly costUnknown?: true };

function findCost({ cost, items }: FoundAsk, { edited }: OpenKeep): Found<Cost> {
  if (cost === undefined) return { ok: true, value: { costMinor: 0, costUnknown: true } };
  if (items.length > 1) return refuse(tellCostOfWhich());
  const price = findPrice(cost, edited.currency, `--cost ${cost}`);
  return price.ok ? { ok: true, value: { costMinor: price.value } } : price;
}

function findDayFaults({ since, opened }: FoundAsk, { day }: OpenKeep): Fault[] {
  const from = since ?? day;
  const openedOn = opened === true ? day : opened;
  return [
    ...(from > day ? [tellDayAtOdds("--since", from, `no day after ${day}, the day it is about`)] : []),
    ...(openedOn !== undefined && (openedOn < from || openedOn > day)
      ? [tellDayAtOdds("--opened", openedOn, `no day before ${from}, since when it is here, and none after ${day}`)]
      : []),
  ];
}

function placeFor(food: string, { place }: Pick<FoundAsk, "place">, { tables, kitchen }: OpenKeep): Place {
  const facts = tables.foods.get(food);
  return place ?? (facts === undefined ? "dry-store" : foodLife(facts, placesOf(kitchen.kit)).place);
}

/** True where the food table says how long it keeps there, opened or not as it is. */
function isKnownToKeep(food: string, ask: Pick<FoundAsk, "place" | "opened">, open: OpenKeep): boolean {
  const keeping = open.tables.foods.get(food)?.keeping;
  const lives = ask.opened === undefined ? keeping?.unopened : keeping?.opened;
  return lives?.[placeFor(food, ask, open)] !== undefined;
}

function toStock({ food, massG }: Finding, ask: FoundAsk, cost: Cost, open: OpenKeep, pen: Pen): EventBody {
  const { since, opened, useBy, bestBefore } = ask;
  const { day } = open;
  const life = {
    boughtOn: since ?? day,
    ...(opened !== undefined && { openedOn: opened === true ? day : opened }),
    ...(useBy !== undefined && { useBy }),
    ...(bestBefore !== undefined && { bestBefore }),
  };
  const stock = { id: pen.nameLot(food), food, place: placeFor(food, ask, open), massG, ...life, ...cost };
  return { kind: "stocked", on: day, stock };
}
