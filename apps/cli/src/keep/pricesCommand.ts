import { findFoodCalled } from "halfloaf/food";
import { type EventBody, type PriceHistory, priceHistory } from "halfloaf/kitchen/record";
import { judgePriceAge, latestPrices, unitPrice } from "halfloaf/price";
import * as v from "valibot";
import type { ExitCode } from "../exitCodes.ts";
import { findPrice } from "../input/findPrice.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoPriceGiven, tellUnknownPack, tellUnknownThing } from "../words/keepFaultWords.ts";
import { tellUnknown } from "../words/unknownWords.ts";
import type { AskedPack, PackFact } from "./AskedPack.ts";
import { findPack } from "./boughtCommand.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { layPrices } from "./layPrices.ts";
import type { OpenKeep } from "./openKeep.ts";
import { PricesReport } from "./PricesReport.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What is asked of prices, or what was seen. */
export interface PricesAsk extends KeepAsk {
  /** Id or name of a food; absent: all that the kitchen's shops sell. */
  readonly food?: string;
  readonly shop?: string;
  readonly seen: readonly AskedPack[];
  readonly sizes: readonly PackFact<number>[];
  /** Where it was seen; absent: at the shop. */
  readonly at?: string;
}

/** Shows how prices have moved and how old they are, or books prices that were seen. */
export function pricesCommand(ask: PricesAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    if (ask.seen.length === 0) return showPrices(ask, open, terminal);
    const bodies = listSeen(ask, open);
    if (!bodies.ok) return bodies;
    return writeAct(open, terminal.page, (pen) => ({
      ok: true,
      value: { rows: bodies.value.map((body) => pen.write(body)) },
    }));
  });
}

function listSeen({ seen, sizes, at, shop }: PricesAsk, open: OpenKeep): Found<EventBody[]> {
  const { edited, kitchen, day, names } = open;
  const strangers = sizes.filter(({ name }) => !seen.some((asked) => asked.name === name));
  const found = seen.map((asked): Found<EventBody> => {
    const pack = findPack(asked.name, kitchen.packs, [], shop);
    const price =
      asked.price === undefined
        ? refuse(tellNoPriceGiven(asked.text))
        : findPrice(asked.price, edited.currency, asked.text);
    if (!pack.ok || !price.ok)
      return { ok: false, faults: [...(pack.ok ? [] : pack.faults), ...(price.ok ? [] : price.faults)] };
    const massG = sizes.find(({ name }) => name === asked.name)?.value;
    const { id, shop: of, offer } = pack.value;
    const stays = offer !== undefined && price.value === pack.value.priceMinor;
    return {
      ok: true,
      value: {
        kind: "price-seen",
        on: day,
        pack: id,
        priceMinor: price.value,
        at: at ?? names.shop(of),
        ...(stays && { offer }),
        ...(massG !== undefined && { massG }),
      },
    };
  });
  const faults = [
    ...found.flatMap((one) => (one.ok ? [] : one.faults)),
    ...strangers.map(({ name }) => tellUnknownPack(name, kitchen.packs)),
  ];
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, value: found.flatMap((one) => (one.ok ? [one.value] : [])) };
}

function showPrices(ask: PricesAsk, open: OpenKeep, { page }: Terminal): Found<{ data: object; lines: string[] }> {
  const { edited, tables, kitchen, stateThen } = open;
  const food = ask.food === undefined ? undefined : findFoodCalled(tables.foods, ask.food, kitchen.english);
  if (ask.food !== undefined && food === undefined)
    return refuse(
      tellUnknownThing(
        ask.food,
        edited.packs.map((pack) => pack.food),
        [...tables.foods.keys()],
      ),
    );
  const shops = edited.shops.map(({ id }) => id);
  const shop =
    ask.shop === undefined ? undefined : edited.shops.find(({ id, name }) => id === ask.shop || name === ask.shop)?.id;
  if (ask.shop !== undefined && shop === undefined)
    return refuse(tellUnknown("shop", ask.shop, shops, "of this kitchen"));
  const question = { ...(food !== undefined && { food: food.id }), ...(shop !== undefined && { shop }) };
  const data = toPricesReport(open, priceHistory(edited, stateThen, tables.foods, question));
  return { ok: true, value: { data, lines: layPrices({ ...page, data, names: open.names }) } };
}

function toPricesReport(
  { edited, kitchen, stateThen, day, tables }: OpenKeep,
  histories: readonly PriceHistory[],
): PricesReport {
  const latest = latestPrices(edited.packs, stateThen.prices, day);
  const packs = histories.flatMap(({ points, ...history }) => {
    const priced = latest.get(history.pack);
    const pack = kitchen.packs.find(({ id }) => id === history.pack);
    const food = tables.foods.get(history.food);
    if (priced === undefined || pack === undefined) return [];
    const { kind, ...age } = judgePriceAge(priced);
    const unit =
      food === undefined ? undefined : unitPrice({ content: pack.content, priceMinor: priced.pack.priceMinor }, food);
    return [
      {
        ...history,
        sureness: kind,
        ...age,
        priceMinor: priced.pack.priceMinor,
        ...(unit?.ok && { perKgMinor: unit.perKgMinor }),
        points: points
          .filter(({ on }) => on <= day)
          .map(({ on, priceMinor, massG, perKgMinor, changePct }) => ({
            on,
            priceMinor,
            massG,
            perKgMinor,
            changePct,
          })),
      },
    ];
  });
  const report = {
    format: "halfloaf-prices",
    version: 1,
    kitchen: edited.name,
    currency: edited.currency,
    on: day,
    packs,
  };
  return v.parse(PricesReport, JSON.parse(JSON.stringify(report)));
}
