import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { addDays, parseWith } from "../../quantity/index.ts";
import { makeKitchen, readDemoKitchens, readStarterTables } from "../kitchen.testing.ts";
import type { Kitchen } from "../kitchen.ts";
import { foods as frozenFoods } from "./frozen/frozen.testing.ts";
import { EditedKitchen, KitchenRecord, RECORD_VERSION } from "./kitchenRecord.ts";
import { Pen } from "./Pen.ts";
import { fromKitchen, parseRecord } from "./parseRecord.ts";
import { RecordLedger } from "./RecordLedger.ts";
import { toCanonicalText } from "./settleTwins.ts";
import { toKitchen } from "./toKitchen.ts";

const folder = new URL("./frozen/", import.meta.url);
const frozen = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({ name, content: JSON.parse(readFileSync(new URL(name, folder), "utf8")) as unknown }));
const codesOf = (input: unknown) => {
  const read = parseRecord(input);
  return read.ok ? [] : read.issues.map(({ code, path }) => `${path.join("/")} ${code}`);
};
const kitchen = makeKitchen({
  stores: [
    { id: "rice-1", food: "rice-white-long", place: "dry-store", boughtOn: "2026-03-01", massG: 500, costMinor: 75 },
  ],
});

describe("a frozen file of each released version opens for ever", () => {
  test("there is one of every version", () => {
    expect(frozen.map(({ name }) => name)).toEqual(["kitchen-1.json", "record-1.json"]);
    expect(RECORD_VERSION).toBe(1);
  });

  test.each(frozen)("$name", ({ name, content }) => {
    const read = parseRecord(content);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const { state } = new RecordLedger(frozenFoods, read.value.events);
    const told = [...state.lots.values()].map(({ id, leftG, leftMinor }) => `${id} ${leftG} g ${leftMinor}`);
    expect({ told, faults: state.faults.length, withdrawn: [...state.withdrawn] }).toEqual(EXPECTED[name]);
  });
});

describe("a kitchen's file", () => {
  test.each(readDemoKitchens())("of $name becomes a record and is again the same kitchen", ({ kitchen: demo }) => {
    const { foods } = readStarterTables();
    const read = parseRecord(JSON.parse(JSON.stringify(demo)));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(parseWith(KitchenRecord, read.value).ok).toBe(true);
    const { state } = new RecordLedger(foods, read.value.events);
    expect(state.faults).toEqual([]);
    const lastSeen = demo.packs.reduce((day, { seen }) => (seen !== undefined && seen.on > day ? seen.on : day), "");
    const day = [demo.startsOn, lastSeen].sort()[1] as string;
    const again = toKitchen(read.value.kitchen, state, foods, day);
    const { $schema: _schema, ...asWas } = demo;
    const byId = (kept: Kitchen["stores"]) => [...kept].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect({ ...again, stores: byId(again.stores), startsOn: demo.startsOn }).toEqual({
      ...asWas,
      stores: byId(demo.stores),
    });
  });

  test("gives the same events on every device", () => {
    expect(toCanonicalText(fromKitchen(kitchen))).toBe(toCanonicalText(fromKitchen(structuredClone(kitchen))));
    const [{ id: _id, ...event } = {}] = fromKitchen(kitchen).events;
    expect(event).toMatchObject({ kind: "stocked", on: "2026-03-01" });
    const [a, b] = [kitchen, { ...kitchen, name: "Another" }].map((each) => fromKitchen(each).events[0]?.id ?? "");
    expect([a, b]).toEqual([expect.stringMatching(/^kitchen-file-\w{14,}-1$/), expect.stringMatching(/-1$/)]);
    expect(a).not.toBe(b);
  });

  test("brings what is put by as stock that shrinks as it is eaten, with what its dish says; what is of no known dish stays", () => {
    const tables = readStarterTables();
    const dish = tables.dishes.find(({ keeps }) => keeps.freezerDays !== undefined) as (typeof tables.dishes)[number];
    const box = { dish: dish.id, portions: 3, place: "freezer", cookedOn: "2026-02-20", costMinor: 151 } as const;
    const putBy: Kitchen["putBy"] = [
      { id: "box", ...box, foods: ["rice-white-long"] },
      { id: "old", ...box, keepsUntil: "2026-03-01", foods: [] },
      { id: "lost", ...box, dish: "no-such-dish", foods: [] },
    ];
    const { kitchen: edited, events } = fromKitchen({ ...kitchen, putBy }, tables.dishes);
    expect(edited.putBy.map(({ id }) => id)).toEqual(["lost"]);
    const ledger = new RecordLedger(tables.foods, events);
    const read = (day: string) =>
      toKitchen({ ...edited, putBy }, ledger.state, tables.foods, day).putBy.map(
        ({ id, portions, costMinor, keepsUntil }) => [id, portions, costMinor, keepsUntil],
      );
    const until = addDays("2026-02-20", dish.keeps.freezerDays as number);
    expect(read("2026-03-01")).toEqual([
      ["lost", 3, 151, undefined],
      ["old", 3, 151, "2026-03-01"],
      ["box", 3, 151, until],
    ]);
    const pen = new Pen({ device: "phone", nowMs: 1 }, 0, undefined);
    ledger.add([
      pen.write({
        kind: "eaten",
        on: "2026-03-02",
        sitting: "evening",
        plates: [{ lot: "box", massG: dish.portionMassG }],
      }),
    ]);
    expect(ledger.state.faults).toEqual([]);
    expect(read("2026-03-02")).toEqual([
      ["lost", 3, 151, undefined],
      ["box", 2, 101, until],
    ]);
  });

  test("what is edited is all of it but the stores", () => {
    const { format: _format, version: _version, stores: _stores, ...edited } = kitchen;
    expect(parseWith(EditedKitchen, edited)).toEqual({ ok: true, value: edited });
    expect(parseWith(EditedKitchen, kitchen).ok).toBe(false);
  });
});

describe("what is no record of this program", () => {
  const record = JSON.parse(JSON.stringify(fromKitchen(kitchen)));

  test("of a newer version says so and nothing else, whatever else is new in it", () => {
    expect(codesOf({ ...record, version: 2, events: "packed" })).toEqual(["version version-newer"]);
    expect(codesOf({ ...kitchen, version: 9 })).toEqual(["version version-newer"]);
  });

  test.each<[unknown, string[]]>([
    [null, [" object"]],
    [[], [" object"]],
    [{}, ["format format-unknown"]],
    [{ ...record, format: "halfloaf-week" }, ["format format-unknown"]],
    [{ ...record, version: "1" }, ["version version"]],
    [{ ...record, version: 0 }, ["version version"]],
    [{ ...record, events: 7 }, ["events array"]],
    [{ ...record, colour: "white" }, ["colour strict_object"]],
  ])("%#", (input, codes) => {
    expect(codesOf(input)).toEqual(codes);
  });

  test("all that is wrong comes at once, with its path in the file", () => {
    const [event] = record.events;
    const input = { ...record, kitchen: { ...record.kitchen, name: "" }, events: [event, { ...event, tick: -1 }, 5] };
    expect(codesOf(input)).toEqual(["kitchen/name non_empty", "events/1/tick min_value", "events/2 variant"]);
  });
});
/** What the frozen files said when they were frozen. */
const EXPECTED: Readonly<Record<string, unknown>> = {
  "kitchen-1.json": { told: ["rice-start 420 g 54", "onion-start 600 g 60"], faults: 0, withdrawn: [] },
  "record-1.json": {
    told: [
      "rice-start 0 g 0",
      "onion-start 465 g 46",
      "milk-whole-kitchen-phone-1 0 g 0",
      "kidney-beans-tinned-kitchen-phone-3 0 g 0",
      "kidney-beans-tinned-kitchen-phone-4 0 g 0",
      "rice-white-long-kitchen-phone-6 800 g 124",
      "bean-rice-pot-kitchen-phone-10 0 g 0",
      "bean-rice-pot-kitchen-phone-20 380 g 39",
    ],
    faults: 0,
    withdrawn: ["kitchen-phone-17"],
  },
};
