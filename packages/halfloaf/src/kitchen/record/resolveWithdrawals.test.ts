import { describe, expect, test } from "vitest";
import { foods } from "../../stores/stores.testing.ts";
import type { RecordEvent } from "./event.ts";
import { RecordLedger } from "./RecordLedger.ts";

const on = "2026-03-02";
const rated = (number: number, points: number): RecordEvent => ({
  id: `a-${number}`,
  atMs: number,
  tick: 0,
  kind: "rated",
  on,
  dish: "stew",
  points,
});
const withdraw = (number: number, ...events: string[]): RecordEvent => ({
  id: `a-${number}`,
  atMs: number,
  tick: 0,
  kind: "withdrawn",
  on,
  events,
});
const pointsOf = (...events: RecordEvent[]) => new RecordLedger(foods, events).state.ratings.get("stew");

describe("withdrawals", () => {
  test("what is withdrawn did not happen; what came before it holds again", () => {
    expect(pointsOf(rated(1, 7), rated(2, 3))).toBe(3);
    expect(pointsOf(rated(1, 7), rated(2, 3), withdraw(3, "a-2"))).toBe(7);
  });

  test("a withdrawal that is withdrawn brings it back, and so on", () => {
    const undone = [rated(1, 7), rated(2, 3), withdraw(3, "a-2"), withdraw(4, "a-3")];
    expect(pointsOf(...undone)).toBe(3);
    expect(pointsOf(...undone, withdraw(5, "a-4"))).toBe(7);
  });

  test("withdrawn twice by two people it takes both to be withdrawn", () => {
    const twice = [rated(1, 7), withdraw(2, "a-1"), withdraw(3, "a-1")];
    expect(pointsOf(...twice, withdraw(4, "a-2"))).toBeUndefined();
    expect(pointsOf(...twice, withdraw(4, "a-2", "a-3"))).toBe(7);
  });

  test("what is not there, or was written later, is not withdrawn, and that is told", () => {
    const ledger = new RecordLedger(foods, [withdraw(1, "a-2", "b-9"), rated(2, 7)]);
    expect(ledger.state.ratings.get("stew")).toBe(7);
    expect(ledger.state.faults.map(({ event, issue }) => [event, issue.code, issue.path.join("/")])).toEqual([
      ["a-1", "event-unknown", "events/0"],
      ["a-1", "event-unknown", "events/1"],
    ]);
  });

  test("it may arrive before what it withdraws", () => {
    const ledger = new RecordLedger(foods, [withdraw(3, "a-2")]);
    ledger.add([rated(1, 7)]);
    ledger.add([rated(2, 3)]);
    expect(ledger.state.ratings.get("stew")).toBe(7);
    expect(ledger.state.faults).toEqual([]);
  });
});

describe("two events of one id", () => {
  test("the same one counts on every device, and it is told", () => {
    const [a, b] = [rated(1, 7), rated(1, 3)];
    for (const events of [
      [a, b],
      [b, a],
      [b, a, b],
    ]) {
      const ledger = new RecordLedger(foods, events);
      expect(ledger.state.ratings.get("stew")).toBe(3);
      expect(ledger.state.faults).toMatchObject([{ event: "a-1", issue: { code: "event-forked" } }]);
    }
  });

  test("one that comes late takes the place of the other", () => {
    const ledger = new RecordLedger(foods, [rated(1, 7), rated(2, 9)]);
    ledger.add([rated(2, 1)]);
    expect(ledger.events).toHaveLength(2);
    expect(ledger.state.ratings.get("stew")).toBe(1);
  });
});
