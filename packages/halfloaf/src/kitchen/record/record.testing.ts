import fc from "fast-check";
import type { LotState } from "../../stores/index.ts";
import { day, foods } from "../../stores/stores.testing.ts";
import type { EventOf, RecordEvent } from "./event.ts";
import { type EventBody, type Pen, penOf } from "./Pen.ts";
import { RecordLedger } from "./RecordLedger.ts";

/** One thing that a person does on one of the devices, in numbers that `live` gives a meaning to. */
export interface Deed {
  readonly device: number;
  readonly what: (typeof DEEDS)[number];
  readonly pick: number;
  readonly share: number;
  /** Days since the deed before, and how many days before its day it is told of. */
  readonly passes: number;
  readonly late: number;
}

const DEEDS = [
  "buy",
  "buy",
  "stock",
  "use",
  "cook",
  "cook",
  "eat",
  "eat",
  "open",
  "label",
  "move",
  "part",
  "waste",
  "count",
  "overuse",
  "skip",
  "guest",
  "begin",
  "price",
  "shelf",
  "rate",
  "trip",
  "withdraw",
  "withdraw",
  "meet",
] as const;

/** Deeds of people on two devices that meet now and then; clocks may be hours apart and days told late. */
export const deeds: fc.Arbitrary<Deed[]> = fc.array(
  fc.record({
    device: fc.nat(1),
    what: fc.constantFrom(...DEEDS),
    pick: fc.nat(1000),
    share: fc.double({ min: 0.01, max: 1, noNaN: true }),
    passes: fc.constantFrom(0, 0, 0, 1, 2),
    late: fc.constantFrom(0, 0, 0, 0, 1, 3),
  }),
  { maxLength: 60, size: "max" },
);

/** By how much each device's clock is off, in ms. */
export const skews = fc.tuple(fc.constantFrom(0, -7_200_000, 3_600_000, 86_400_000), fc.constantFrom(0, 1, -500_000));

/** A life lived on two devices: what each knows at the end, and all that was written. */
export interface Life {
  readonly ledgers: readonly [RecordLedger, RecordLedger];
  readonly all: readonly RecordEvent[];
  readonly lastDay: string;
}

const DAY_MS = 86_400_000;

/** Lives the deeds. `afterEach` sees a device's ledger after each of its own deeds. */
export function live(
  list: readonly Deed[],
  skewMs: readonly [number, number],
  afterEach: (ledger: RecordLedger) => void = () => {},
): Life {
  const ledgers = [new RecordLedger(foods), new RecordLedger(foods)] as const;
  const all: RecordEvent[] = [];
  let [today, nowMs] = [0, 1_700_000_000_000];
  for (const deed of list) {
    today += deed.passes;
    nowMs += deed.passes * DAY_MS + 977;
    const ledger = ledgers[deed.device as 0 | 1];
    if (deed.what === "meet") {
      const [a, b] = ledgers.map(({ events }) => [...events]) as [RecordEvent[], RecordEvent[]];
      ledgers[0].add(b.reverse());
      ledgers[1].add(a);
      continue;
    }
    const device = `device-${deed.device}`;
    const pen = penOf(ledger, { device, by: "ada", nowMs: nowMs + (skewMs[deed.device] as number) });
    const body = toBody(deed, ledger, pen, day(Math.max(0, today - deed.late)));
    if (body === undefined) continue;
    const event = pen.write(body);
    all.push(event);
    ledger.add([event]);
    afterEach(ledger);
  }
  return { ledgers, all, lastDay: day(today) };
}

const KEPT = [
  { food: "milk", place: "fridge" },
  { food: "rice", place: "dry-store" },
  { food: "beans-tinned", place: "dry-store" },
] as const;
const PLACES = ["dry-store", "fridge", "freezer"] as const;
const KINDS = ["morning", "midday", "between", "evening"] as const;

function toBody(deed: Deed, ledger: RecordLedger, pen: Pen, on: string): EventBody | undefined {
  const { pick, share, what } = deed;
  const massG = Math.round(share * 1000) + (pick % 3 === 0 ? 0.25 : 0);
  const kept = KEPT[pick % KEPT.length] as (typeof KEPT)[number];
  const sitting = KINDS[pick % 4] as (typeof KINDS)[number];
  switch (what) {
    case "buy":
      return { kind: "bought", on, lot: pen.nameLot(kept.food), ...kept, massG: massG + 1, costMinor: pick };
    case "stock":
      return {
        kind: "stocked",
        on,
        stock: { id: pen.nameLot(kept.food), ...kept, boughtOn: on, massG: massG + 1, costMinor: pick },
      };
    case "skip":
      return pick % 2 === 0 ? { kind: "skipped", on, sitting } : { kind: "ate-out", on, sitting, eater: "ada" };
    case "guest":
      return { kind: "guest", on, sitting, portions: share };
    case "begin":
      return {
        kind: "begun",
        on,
        dish: `dish-${pick % 3}`,
        servedOn: on,
        sitting,
        ...(pick % 2 === 0 && { step: "soak" }),
      };
    case "price":
      return { kind: "price-seen", on, pack: `pack-${pick % 3}`, priceMinor: pick, at: "Corner" };
    case "shelf":
      return {
        kind: "at-shelf",
        on,
        trip: on,
        shop: "corner",
        pack: `pack-${pick % 3}`,
        isThere: pick % 4 === 0,
      };
    case "rate":
      return { kind: "rated", on, dish: `dish-${pick % 3}`, points: pick % 11 };
    case "trip":
      return { kind: "trip", on, shop: "corner", fareMinor: pick };
    case "withdraw": {
      const named = ledger.events[ledger.events.length - 1 - (pick % Math.max(1, Math.min(8, ledger.events.length)))];
      return named === undefined ? undefined : { kind: "withdrawn", on, events: [named.id] };
    }
    default:
      return toMovement(deed, ledger, pen, on);
  }
}

function toMovement({ pick, share, what }: Deed, ledger: RecordLedger, pen: Pen, on: string): EventBody | undefined {
  const filled = [...ledger.state.lots.values()].filter(({ leftG }) => leftG > 0);
  const lot = filled[pick % Math.max(1, filled.length)];
  if (lot === undefined) return undefined;
  const massG = lot.leftG * share;
  const to = PLACES[pick % 3] as (typeof PLACES)[number];
  switch (what) {
    case "use":
      return { kind: "used", on, lot: lot.id, massG };
    case "overuse":
      return { kind: "used", on, lot: lot.id, massG: lot.leftG + 10 };
    case "label":
      return { kind: "labelled", on, lot: lot.id, ...(pick % 3 !== 0 && { useBy: on }) };
    case "open":
      return { kind: "opened", on, lot: lot.id };
    case "move":
      return { kind: "moved", on, lot: lot.id, to };
    case "part":
      return { kind: "moved", on, lot: lot.id, to, part: { massG, lot: pen.nameLot("part") } };
    case "waste":
      return { kind: "wasted", on, lot: lot.id, massG };
    case "count":
      return { kind: "counted", on, lot: lot.id, massG: massG * 1.2, ...(pick % 2 === 0 && { as: "used" as const }) };
    case "eat":
      return {
        kind: "eaten",
        on,
        sitting: "evening",
        plates: [
          { eater: "ada", lot: lot.id, massG: massG / 2 },
          { lot: lot.id, massG: massG / 2 },
        ],
      };
    default:
      return cookOf(filled, pick, share, pen, on);
  }
}

function cookOf(
  filled: readonly LotState[],
  pick: number,
  share: number,
  pen: Pen,
  on: string,
): Omit<EventOf<"cooked">, "id" | "atMs" | "tick" | "by"> {
  const uses = filled
    .filter(({ cooked }, at) => cooked === undefined && (at + pick) % 3 !== 0)
    .slice(0, 3)
    .map(({ id, leftG }) => ({ lot: id, massG: leftG * share, ...(share < 1 && { opens: true as const }) }));
  return {
    kind: "cooked",
    on,
    lot: pen.nameLot("stew"),
    dish: "stew",
    portions: 1 + (pick % 4),
    portionG: 350,
    keeps: { fridgeDays: pick % 3, freezerDays: 60 },
    uses,
  };
}
