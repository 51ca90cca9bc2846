import { describe, expect, test } from "vitest";
import { day } from "../../../stores/stores.testing.ts";
import type { WeekPlan } from "../../weekPlan.ts";
import { keyOfBegun } from "../recordState.ts";
import { boughtOf, ledgerOf, penFor } from "./acts.testing.ts";
import { beginAhead, type JobAhead } from "./beginAhead.ts";

const use = { food: "milk", massG: 400, costMinor: 40 };
const week = {
  from: day(0),
  batches: [
    { dish: "pudding", date: day(2), kind: "evening", uses: [{ lot: "milk-day-0-1", ...use }] },
  ] as unknown as WeekPlan["batches"],
};
const thaw: JobAhead = {
  kind: "thaw",
  date: day(2),
  sitting: "evening",
  dish: "pudding",
  batch: 0,
  foods: ["milk"],
  beforeMinutes: 1500,
};
const frozen = boughtOf("frozen", {
  place: "freezer",
  massG: 1000,
  planned: { week: day(0), lot: "milk-day-0-1" },
});

describe("what is done ahead", () => {
  test("a step is noted for its sitting and takes nothing; taken back, it is still to be done", () => {
    const ledger = ledgerOf(frozen);
    const soak: JobAhead = { ...thaw, kind: "soak", step: "soak", text: "Soak it." };
    const rows = beginAhead(ledger.state, week, soak, day(1), penFor(ledger));
    expect(rows.map(({ kind }) => kind)).toEqual(["begun"]);
    const before = ledger.state.lots;
    ledger.add(rows);
    const key = keyOfBegun({ dish: "pudding", servedOn: day(2), sitting: "evening", step: "soak" });
    expect(ledger.state.begun.get(key)).toMatchObject({ on: day(1), dish: "pudding", step: "soak" });
    expect(ledger.state.lots).toEqual(before);
    ledger.add([penFor(ledger).write({ kind: "withdrawn", on: day(1), events: rows.map(({ id }) => id) })]);
    expect(ledger.state.begun.size).toBe(0);
  });

  test("what thaws goes from the freezer into the fridge, as much as its dish takes, and back where it is taken back", () => {
    const ledger = ledgerOf(frozen);
    const rows = beginAhead(ledger.state, week, thaw, day(1), penFor(ledger));
    ledger.add(rows);
    const [rest, part] = [...ledger.state.lots.values()];
    expect(rest).toMatchObject({ id: "frozen", place: "freezer", leftG: 600 });
    expect(part).toMatchObject({ food: "milk", place: "fridge", leftG: 400, thawedOn: day(1), leftMinor: 40 });
    expect(part?.keeps).toEqual({ ok: true, on: day(2), because: "thawed" });
    expect(ledger.state.faults).toEqual([]);
    ledger.add([penFor(ledger).write({ kind: "withdrawn", on: day(1), events: rows.map(({ id }) => id) })]);
    expect([...ledger.state.lots.values()].map(({ place, leftG }) => [place, leftG])).toEqual([["freezer", 1000]]);
  });

  test("a lot that is used up whole moves whole; one that lies elsewhere, or would have gone off by then, stays", () => {
    const moves = (massG: number, place: "freezer" | "fridge", on: string) => {
      const ledger = ledgerOf({ ...frozen, massG, place });
      return beginAhead(ledger.state, week, thaw, on, penFor(ledger)).flatMap((row) =>
        row.kind === "moved" ? [row] : [],
      );
    };
    expect(moves(400, "freezer", day(1))).toMatchObject([{ lot: "frozen", to: "fridge" }]);
    expect(moves(400, "freezer", day(1))[0]).not.toHaveProperty("part");
    expect(moves(400, "fridge", day(1))).toEqual([]);
    expect(moves(400, "freezer", day(0))).toEqual([]);
  });
});
