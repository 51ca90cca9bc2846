import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { accountOf } from "../../stores/index.ts";
import { foods } from "../../stores/stores.testing.ts";
import type { RecordEvent } from "./event.ts";
import { type EventBody, penOf } from "./Pen.ts";
import { RecordLedger } from "./RecordLedger.ts";
import { deeds, live, skews } from "./record.testing.ts";
import type { RecordState } from "./recordState.ts";
import { toCanonicalText } from "./settleTwins.ts";

const add = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
/** Everything of a state, the order of its maps too, as one text. */
const textOf = ({ lots, toCount, cookings, sittings, missing, ratings, planned, withdrawn, ...lists }: RecordState) =>
  toCanonicalText([
    ...[lots, toCount, cookings, sittings, missing, ratings, planned].map((map) => [...map]),
    [...withdrawn].sort(),
    lists,
  ]);
const fromScratch = (events: readonly RecordEvent[]) => textOf(new RecordLedger(foods, events).state);

/** Every sum that must hold in a state. */
function expectSums(state: RecordState): void {
  const account = accountOf(state.lots.values());
  expect(account.usedMinor + account.wastedMinor + account.leftMinor).toBe(account.openingMinor + account.boughtMinor);
  expect(add(state.plates.map(({ costMinor }) => costMinor))).toBe(account.usedMinor);
  for (const lot of state.lots.values()) {
    const out = add(lot.outflows.map(({ massG }) => massG));
    expect(Math.min(lot.leftG, lot.leftMinor, ...lot.outflows.map(({ massG }) => massG))).toBeGreaterThanOrEqual(0);
    expect(Math.abs(lot.broughtG + lot.foundG - out - lot.leftG)).toBeLessThan(1e-6);
    expect(add(lot.outflows.map(({ costMinor }) => costMinor)) + lot.leftMinor).toBe(lot.broughtMinor);
  }
}

describe("laws of the ledger, whatever is lived", () => {
  test("two devices agree once each has what the other wrote, in whatever order it arrives", () => {
    fc.assert(
      fc.property(deeds, skews, fc.infiniteStream(fc.nat()), (list, skewMs, luck) => {
        const { ledgers, all } = live(list, skewMs);
        const [a, b] = ledgers;
        for (const event of shuffle(all, luck)) a.add([event]);
        b.add(shuffle(all, luck));
        expect(textOf(a.state)).toBe(textOf(b.state));
        expect(textOf(a.state)).toBe(fromScratch([...all].reverse()));
        expect(a.events.map(({ id }) => id)).toEqual(b.events.map(({ id }) => id));
      }),
      { numRuns: 600, endOnFailure: true },
    );
  });

  test("after every event the sums hold, and the state is what all events make of it from the start", () => {
    fc.assert(
      fc.property(deeds, skews, (list, skewMs) => {
        live(list, skewMs, (ledger) => {
          expectSums(ledger.state);
          expect(textOf(ledger.state)).toBe(fromScratch(ledger.events));
        });
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });

  test("the sums hold at every prefix of the one order", () => {
    fc.assert(
      fc.property(deeds, skews, (list, skewMs) => {
        const { all } = live(list, skewMs);
        const whole = new RecordLedger(foods, all);
        const grown = new RecordLedger(foods);
        for (const event of whole.events) {
          grown.add([event]);
          expectSums(grown.state);
        }
        expect(textOf(grown.state)).toBe(textOf(whole.state));
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });

  test("adding what is there changes nothing, and a state once given does not change", () => {
    fc.assert(
      fc.property(deeds, skews, fc.nat(50), (list, skewMs, cut) => {
        const { all } = live(list, skewMs);
        const ledger = new RecordLedger(foods, all.slice(0, cut));
        const { state } = ledger;
        const before = textOf(state);
        expect(ledger.add(all.slice(0, cut).map((event) => structuredClone(event)))).toBe(0);
        expect(ledger.state).toEqual(state);
        ledger.add(all);
        expect(textOf(state)).toBe(before);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test("withdrawing all that was written leaves an empty kitchen, withdrawing that brings everything back", () => {
    fc.assert(
      fc.property(deeds, skews, (list, skewMs) => {
        const plain = live(
          list.filter(({ what }) => what !== "withdraw"),
          skewMs,
        ).all;
        fc.pre(plain.length > 0);
        const ledger = new RecordLedger(foods, plain);
        const before = textOf({ ...ledger.state, withdrawn: new Set() });
        const atMs = 9_000_000_000_000;
        const names = plain.map(({ id }) => id);
        ledger.add([{ id: "late-1", atMs, tick: 0, kind: "withdrawn", on: "2026-01-01", events: names }]);
        expect(ledger.state.lots.size + ledger.state.plates.length + ledger.state.sittings.size).toBe(0);
        ledger.add([{ id: "late-2", atMs, tick: 1, kind: "withdrawn", on: "2026-01-01", events: ["late-1"] }]);
        expect(textOf({ ...ledger.state, withdrawn: new Set() })).toBe(before);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test("the state at the end of a day is that of the events up to it", () => {
    fc.assert(
      fc.property(deeds, skews, fc.nat(20), (list, skewMs, at) => {
        const { all } = live(
          list.filter(({ what }) => what !== "withdraw"),
          skewMs,
        );
        const ledger = new RecordLedger(foods, all);
        const day = ledger.events[at]?.on ?? "2026-03-05";
        expect(textOf(ledger.stateOn(day))).toBe(fromScratch(all.filter(({ on }) => on <= day)));
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe("a pack that is not at the shelf", () => {
  const ledger = new RecordLedger(foods);
  const write = (...bodies: EventBody[]): RecordEvent[] => {
    const pen = penOf(ledger, { device: "phone", nowMs: 5 });
    const events = bodies.map((body) => pen.write(body));
    ledger.add(events);
    return events;
  };
  const look = (trip: string, isThere: boolean, pack = "rice-1kg"): EventBody => {
    return { kind: "at-shelf", on: "2026-03-02", trip, shop: "corner", pack, isThere };
  };
  const missing = () => [...ledger.state.missing.values()].map(({ trip, pack }) => `${trip} ${pack}`);

  test("is missing on its trip until it is there, is bought or its price is seen; what is taken back did not happen", () => {
    write(look("2026-03-02", false), look("2026-03-05", false), look("2026-03-02", false, "milk-1l"));
    expect(missing()).toEqual(["2026-03-02 rice-1kg", "2026-03-05 rice-1kg", "2026-03-02 milk-1l"]);
    const [there] = write(look("2026-03-02", true));
    expect(missing()).toEqual(["2026-03-05 rice-1kg", "2026-03-02 milk-1l"]);
    write({ kind: "withdrawn", on: "2026-03-02", events: [there?.id as string] });
    expect(missing().length).toBe(3);
    const seen = { on: "2026-03-03", place: "dry-store", food: "rice", massG: 1000, costMinor: 99 } as const;
    const [bought] = write({ kind: "bought", lot: "rice-phone-9", pack: "rice-1kg", ...seen });
    expect(missing()).toEqual(["2026-03-02 milk-1l"]);
    write({ kind: "price-seen", on: "2026-03-03", pack: "milk-1l", priceMinor: 119, at: "Corner" });
    expect(missing()).toEqual([]);
    write({ kind: "withdrawn", on: "2026-03-03", events: [bought?.id as string] });
    expect(missing()).toEqual(["2026-03-02 rice-1kg", "2026-03-05 rice-1kg"]);
  });
});

/** The events in an order of chance. */
function shuffle(events: readonly RecordEvent[], luck: fc.Stream<number>): RecordEvent[] {
  const keyed = events.map((event) => ({ event, key: luck.next().value as number }));
  return keyed.sort((a, b) => a.key - b.key).map(({ event }) => event);
}
