import { type EventBody, type TickedPacks, tickPacks } from "halfloaf/kitchen/record";
import { type Pack, toGtin14 } from "halfloaf/price";
import type { ExitCode } from "../exitCodes.ts";
import { findPrice } from "../input/findPrice.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import {
  tellFareOfWhich,
  tellNothingNamed,
  tellNothingPlanned,
  tellOnNoTrip,
  tellPackIssue,
  tellThereAndNot,
  tellUnknownPack,
} from "../words/keepFaultWords.ts";
import { tellUnknown } from "../words/unknownWords.ts";
import type { AskedPack, PackFact } from "./AskedPack.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { type OpenTrip, openTrips, tripsToTick } from "./openTrips.ts";
import { runKeep } from "./runKeep.ts";
import { tellNews } from "./tellNews.ts";
import { writeAct } from "./writeAct.ts";

/** What came home from the shops. */
export interface BoughtAsk extends KeepAsk {
  readonly packs: readonly AskedPack[];
  /** True: all that is still open of the planned trip besides. */
  readonly all: boolean;
  /** Id or name of the shop; absent: the one of the planned trip, or of the packs. */
  readonly shop?: string;
  readonly sizes: readonly PackFact<number>[];
  readonly useBy: readonly PackFact<string>[];
  readonly bestBefore: readonly PackFact<string>[];
  /** Packs of a planned trip that were not at the shelf. */
  readonly notThere: readonly string[];
  /** What the way cost; absent: as planned where the whole trip is ticked, else nothing. */
  readonly fare?: string;
}

/** One visit to be written. */
interface Visit {
  readonly shop: string;
  readonly lines: readonly TickedPacks[];
  readonly week?: string;
  readonly fareMinor?: number;
}

/** Books packs that came home: those of the planned trip, all or by name, as found, and any others. */
export function boughtCommand(ask: BoughtAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    if (ask.packs.length + ask.notThere.length === 0 && !ask.all) return refuse(tellNothingNamed());
    const found = findVisits(ask, open);
    if (!found.ok) return found;
    const { visits, missing } = found.value;
    return writeAct(open, terminal.page, (pen) => {
      const ticked = visits.map((visit) => tickPacks(open.kitchen, open.tables.foods, { on: open.day, ...visit }, pen));
      const faults = ticked.flatMap((one) => (one.ok ? [] : one.issues.map(tellPackIssue)));
      if (faults.length > 0) return { ok: false, faults };
      const rows = [...missing.map((body) => pen.write(body)), ...ticked.flatMap((one) => (one.ok ? one.value : []))];
      return {
        ok: true,
        value: { rows, extra: missing.length > 0 ? { after: (state) => tellNews(open, state) } : {} },
      };
    });
  });
}

/** What was bought where, and what was not at the shelf. */
interface Shopping {
  readonly visits: readonly Visit[];
  readonly missing: readonly Missing[];
}

type Missing = Extract<EventBody, { kind: "at-shelf" }>;

function findVisits(ask: BoughtAsk, open: OpenKeep): Found<Shopping> {
  const asked = ask.shop === undefined ? undefined : findShop(ask.shop, open);
  const shop = asked?.ok ? asked.value : undefined;
  const trips = openTrips(open.state, open.day).filter(({ trip }) => shop === undefined || trip.shop === shop);
  const toTick = tripsToTick(trips, open.day);
  const fare = ask.fare === undefined ? undefined : findPrice(ask.fare, open.edited.currency, `--fare ${ask.fare}`);
  const named = ask.packs.map((each) => toLine(each, ask, open, toTick, shop));
  const facts = [...ask.sizes, ...ask.useBy, ...ask.bestBefore].filter(({ name }) => !isNamed(name, ask, toTick, open));
  const missing = ask.notThere.map((name) => toMissing(name, open, toTick, shop));
  const faults = [
    ...(asked?.ok === false ? asked.faults : []),
    ...(ask.all && toTick.length === 0 ? [tellNothingPlanned()] : []),
    ...named.flatMap((one) => (one.ok ? [] : one.faults)),
    ...facts.map(({ name }) => tellUnknownPack(name, open.edited.packs)),
    ...missing.flatMap((one) => (one.ok ? [] : one.faults)),
    ...atOdds(named, missing),
    ...(fare?.ok === false ? fare.faults : []),
  ];
  if (faults.length > 0) return { ok: false, faults };
  const lines = named.flatMap((one) => (one.ok ? [one.value] : []));
  const notThere = missing.flatMap((one) => (one.ok ? [one.value] : []));
  const rest = ask.all ? restOf(toTick, [...lines, ...notThere], ask) : [];
  const paid = { ...(fare?.ok && { fareMinor: fare.value }), isAll: ask.all };
  const visits = toVisits([...lines, ...rest], notThere, paid, toTick);
  return visits.ok ? { ok: true, value: { visits: visits.value, missing: notThere } } : visits;
}

/** A pack of the trips to tick that was not at the shelf. */
function toMissing(
  name: string,
  { kitchen, day }: OpenKeep,
  trips: readonly OpenTrip[],
  shop: string | undefined,
): Found<Missing> {
  const pack = findPack(name, kitchen.packs, plannedPacks(trips), shop);
  if (!pack.ok) return pack;
  const { id } = pack.value;
  const trip = trips.find(({ lines }) => lines.some((line) => line.pack === id))?.trip;
  if (trip === undefined) return refuse(tellOnNoTrip(name));
  return {
    ok: true,
    value: { kind: "at-shelf", on: day, trip: trip.date, shop: trip.shop, pack: id, isThere: false },
  };
}

function atOdds(named: readonly Found<Line>[], missing: readonly Found<Missing>[]): Fault[] {
  const bought = new Set(named.flatMap((one) => (one.ok ? [one.value.pack] : [])));
  return missing.flatMap((one) => (one.ok && bought.has(one.value.pack) ? [tellThereAndNot(one.value.pack)] : []));
}

function findShop(word: string, { edited: { shops } }: OpenKeep): Found<string> {
  const wanted = word.trim().toLowerCase();
  const found = shops.find(({ id, name }) => id === wanted || name.toLowerCase() === wanted);
  const ids = shops.map(({ id }) => id);
  return found === undefined
    ? refuse(tellUnknown("shop", word, ids, "of this kitchen"))
    : { ok: true, value: found.id };
}

/** The pack of a name: by its id or label, with its brand before it as buying lists have it or without, or a food of which a trip has one kind of pack or its shop sells just one. */
export function findPack(
  name: string,
  packs: readonly Pack[],
  preferred: readonly string[],
  shop?: string,
): Found<Pack> {
  const wanted = name.trim().toLowerCase();
  const sold = packs.filter((pack) => shop === undefined || pack.shop === shop);
  const number = toGtin14(wanted);
  const isIt = ({ id, label, brand, food, gtin }: Pack): boolean =>
    id === wanted ||
    label.toLowerCase() === wanted ||
    `${brand} ${label}`.toLowerCase() === wanted ||
    food === wanted ||
    (number !== undefined && gtin !== undefined && toGtin14(gtin) === number);
  const matches = sold.filter(isIt);
  const planned = matches.filter(({ id }) => preferred.includes(id));
  const exact = matches.filter(({ id }) => id === wanted);
  const [only, ...others] = exact.length > 0 ? exact : planned.length > 0 ? planned : matches;
  if (only !== undefined && others.length === 0) return { ok: true, value: only };
  return refuse(tellUnknownPack(name, only === undefined ? sold : [only, ...others], only !== undefined));
}

function plannedPacks(trips: readonly OpenTrip[]): string[] {
  return trips.flatMap(({ lines }) => lines.map(({ pack }) => pack));
}

interface Line extends TickedPacks {
  readonly shop: string;
}

function toLine(
  asked: AskedPack,
  ask: BoughtAsk,
  { kitchen, edited }: OpenKeep,
  trips: readonly OpenTrip[],
  shop: string | undefined,
): Found<Line> {
  const pack = findPack(asked.name, kitchen.packs, plannedPacks(trips), shop);
  const price = asked.price === undefined ? undefined : findPrice(asked.price, edited.currency, asked.text);
  if (!pack.ok || price?.ok === false)
    return { ok: false, faults: [...(pack.ok ? [] : pack.faults), ...(price?.ok === false ? price.faults : [])] };
  const { id } = pack.value;
  const open = trips.flatMap(({ lines }) => lines).find((line) => line.pack === id)?.lots ?? [];
  const count = asked.count ?? Math.max(1, open.length);
  const priced = price === undefined ? {} : { priceMinor: price.value };
  return {
    ok: true,
    value: {
      shop: pack.value.shop,
      ...asFound(id, ask, pack.value),
      ...priced,
      pack: id,
      count,
      planned: open.slice(0, count),
    },
  };
}

/** What was found on the pack: the grams it holds, the day on its label. */
function asFound(
  id: string,
  { sizes, useBy, bestBefore }: BoughtAsk,
  pack?: Pick<Pack, "label" | "food">,
): Pick<TickedPacks, "massG" | "useBy" | "bestBefore"> {
  const isIt = ({ name }: { name: string }): boolean =>
    [id, pack?.label.toLowerCase(), pack?.food].includes(name.trim().toLowerCase());
  const massG = sizes.find(isIt)?.value;
  const [lastDay, bestDay] = [useBy, bestBefore].map((facts) => facts.find(isIt)?.value);
  return {
    ...(massG !== undefined && { massG }),
    ...(lastDay !== undefined && { useBy: lastDay }),
    ...(bestDay !== undefined && { bestBefore: bestDay }),
  };
}

function isNamed(name: string, ask: BoughtAsk, trips: readonly OpenTrip[], { edited }: OpenKeep): boolean {
  const wanted = name.trim().toLowerCase();
  const ids = [...ask.packs.map((asked) => asked.name.trim().toLowerCase()), ...(ask.all ? plannedPacks(trips) : [])];
  const pack = edited.packs.find(({ id, label }) => id === wanted || label.toLowerCase() === wanted);
  return (
    ids.includes(wanted) ||
    (pack !== undefined && [pack.id, pack.label.toLowerCase(), pack.food].some((each) => ids.includes(each)))
  );
}

/** What of the trips was not named. */
function restOf(trips: readonly OpenTrip[], named: readonly { readonly pack: string }[], ask: BoughtAsk): Line[] {
  const done = new Set(named.map(({ pack }) => pack));
  return trips.flatMap(({ trip, lines }) =>
    lines
      .filter(({ pack }) => !done.has(pack))
      .map(({ pack, lots }) => ({ shop: trip.shop, ...asFound(pack, ask), pack, count: lots.length, planned: lots })),
  );
}

function toVisits(
  lines: readonly Line[],
  missing: readonly Missing[],
  { fareMinor: told, isAll }: { readonly fareMinor?: number; readonly isAll: boolean },
  trips: readonly OpenTrip[],
): Found<Visit[]> {
  // Where nothing of the list was there, the way was made all the same.
  const shops = [...new Set([...lines, ...missing].map(({ shop }) => shop))];
  if (told !== undefined && shops.length > 1) return refuse(tellFareOfWhich());
  const visits = shops.map((shop): Visit => {
    const planned = trips.find(({ trip }) => trip.shop === shop);
    const fareMinor = told ?? (isAll ? planned?.trip.fareMinor : undefined);
    return {
      shop,
      lines: lines.filter((line) => line.shop === shop).map(({ shop: _shop, ...line }) => line),
      ...(planned !== undefined && { week: planned.week }),
      ...(fareMinor !== undefined && { fareMinor }),
    };
  });
  return { ok: true, value: visits };
}
