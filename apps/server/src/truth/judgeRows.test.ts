import { loadDemoKitchens } from "@halfloaf/data";
import fc from "fast-check";
import { parseKitchen } from "halfloaf/kitchen";
import { type EventBody, editsBetween, fromKitchen, Pen } from "halfloaf/kitchen/record";
import { describe, expect, it } from "vitest";
import { type Judging, judgeRows } from "./judgeRows.ts";

const judging = (over: Partial<Judging> = {}): Judging => ({
  device: "mine",
  role: "keeper",
  logRows: 0,
  mostRowChars: 10_000,
  ownersOf: async () => new Map(),
  sendersOf: async () => new Map(),
  ...over,
});

const oats: EventBody = {
  kind: "bought",
  on: "2026-03-02",
  lot: "oats-1",
  food: "oats-rolled",
  place: "dry-store",
  massG: 500,
  costMinor: 85,
};
const write = (...bodies: EventBody[]) => {
  const pen = new Pen({ device: "phone-a1", nowMs: 1_000 }, 0, undefined);
  return bodies.map((body) => pen.write(body));
};
const reasons = async (rows: readonly unknown[], over: Partial<Judging> = {}) =>
  (await judgeRows(rows, judging(over))).refused.map(({ reason }) => reason);

describe("Rows that a device sends", () => {
  it("are fit where they are written by this program, the kitchen whole as well", async () => {
    for (const { content } of loadDemoKitchens()) {
      const kitchen = parseKitchen(content);
      if (!kitchen.ok) throw new Error("the demo kitchen can't be read");
      const pen = new Pen({ device: "phone-a1", nowMs: 1_000 }, 0, undefined);
      const rows = editsBetween(undefined, fromKitchen(kitchen.value).kitchen).map((edit) => pen.write(edit));
      const { acts, refused } = await judgeRows(rows, judging({ mostRowChars: 100_000 }));
      expect(refused).toEqual([]);
      expect(acts.length).toBe(1);
      expect(acts.flat().length).toBe(rows.length);
    }
  });

  it("are fit where a cook tells what was begun ahead, and not where a reader does", async () => {
    const begun = { kind: "begun", on: "2026-03-01", dish: "stew", servedOn: "2026-03-02", step: "soak" } as const;
    const rows = write({ ...begun, sitting: "evening" });
    expect(await reasons(rows, { role: "cook" })).toEqual([]);
    expect(await reasons(rows, { role: "reader" })).toEqual(["role"]);
  });

  it("are refused with what is wrong where they break the schema, and their act with them", async () => {
    const [first, second] = write(oats, { ...oats, lot: "oats-2" });
    const { acts, refused } = await judgeRows([first, { ...second, massG: -5 }], judging());
    expect(acts).toEqual([]);
    expect(refused).toMatchObject([
      { id: "phone-a1-2", reason: "schema", issues: [{ path: "massG" }] },
      { id: "phone-a1-1", reason: "act" },
    ]);
  });

  it("are refused whatever else they are", async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), async (value) => {
        const { acts, refused } = await judgeRows([value], judging());
        expect(acts).toEqual([]);
        expect(refused.length).toBe(1);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it("are refused where an edit gives a thing a value that it can't have, or a thing that no kitchen has", async () => {
    const edit = { id: "phone-a1-1", atMs: 5, tick: 0, kind: "edited" };
    expect(await reasons([{ ...edit, thing: "name", value: "Loft" }])).toEqual([]);
    expect(await reasons([{ ...edit, thing: "eaters/ada" }])).toEqual([]);
    for (const broken of [
      { thing: "name", value: 7 },
      { thing: "eaters/ada", value: { id: "ada" } },
      { thing: "eaters/ada", value: null },
      { thing: "constructor", value: 1 },
      { thing: "stores", value: [] },
      { thing: "kit/pan", value: 1 },
    ])
      expect(await reasons([{ ...edit, ...broken }])).toEqual(["schema"]);
  });

  it("are refused where they hang on an act of another writer", async () => {
    const [row] = write(oats);
    expect(await reasons([{ ...row, act: "laptop-b-7" }])).toEqual(["schema"]);
    expect(await reasons([{ ...row, act: "phone-a1-7" }])).toEqual([]);
  });

  it("are refused where the role does not allow them", async () => {
    const [bought] = write(oats);
    const edit = { id: "phone-a1-2", atMs: 5, tick: 0, kind: "edited", thing: "name", value: "Loft" };
    expect(await reasons([bought, edit], { role: "cook" })).toEqual(["role"]);
    expect(await reasons([bought, edit], { role: "reader" })).toEqual(["role", "role"]);
  });

  it("are refused to a cook who takes back what others wrote, not to one who takes back what is their own", async () => {
    const rows = write({ kind: "withdrawn", on: "2026-03-02", events: ["laptop-b-7"] });
    const sent = (device: string) => ({ sendersOf: async () => new Map([["laptop-b-7", device]]) });
    expect(await reasons(rows, { role: "cook", ...sent("theirs") })).toEqual(["not-yours"]);
    expect(await reasons(rows, { role: "cook", ...sent("mine") })).toEqual([]);
    expect(await reasons(rows, { role: "keeper", ...sent("theirs") })).toEqual([]);
    const claimed = { ownersOf: async () => new Map([["laptop-b", "theirs"]]) };
    expect(await reasons(rows, { role: "cook", ...claimed })).toEqual(["not-yours"]);
  });

  it("are refused where their ids belong to another device, so that nobody takes an id before its owner", async () => {
    const owned = (by: string) => ({ ownersOf: async () => new Map([["phone-a1", by]]) });
    expect(await reasons(write(oats), owned("theirs"))).toEqual(["writer-taken"]);
    expect(await reasons(write(oats), owned("mine"))).toEqual([]);
  });

  it("are refused where no clock shows their time, and followers of a row that was let in never are", async () => {
    const [row] = write(oats);
    expect(await reasons([{ ...row, atMs: 8.64e15 }])).toEqual(["clock"]);
    expect(await reasons([{ ...row, tick: 1_000_001 }])).toEqual(["clock"]);
    expect(await reasons([{ ...row, tick: 1_000_000 }])).toEqual([]);
    expect(await reasons([{ ...row, tick: 1_000_001 }], { logRows: 1 })).toEqual([]);
  });

  it("are refused where one is too large", async () => {
    const [row] = write({ ...oats, note: "x".repeat(200) });
    expect(await reasons([row], { mostRowChars: 300 })).toEqual(["too-large"]);
  });
});
