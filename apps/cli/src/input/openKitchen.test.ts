import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadDemoKitchens } from "@halfloaf/data";
import fc from "fast-check";
import { afterAll, expect, test } from "vitest";
import { type Draft, draftKitchen, OWN_DISH, writeKitchen } from "./draftKitchen.testing.ts";
import { loadTables } from "./loadTables.ts";
import { openKitchen } from "./openKitchen.ts";

const starter = loadTables();
const folder = mkdtempSync(join(tmpdir(), "halfloaf-open-"));
afterAll(() => rmSync(folder, { recursive: true }));

function faultsOf(spoil: (kitchen: Draft) => void) {
  writeKitchen(join(folder, "spoilt.json"), "one-ring", spoil);
  const opened = openKitchen("spoilt.json", folder, starter);
  return opened.ok ? [] : opened.faults;
}

function onlyFault(spoil: (kitchen: Draft) => void) {
  const faults = faultsOf(spoil);
  expect(faults.map(({ code, sentence }) => `${code}: ${sentence}`)).toHaveLength(1);
  return faults[0];
}

test("every demo kitchen opens without a fault", () => {
  for (const { name } of loadDemoKitchens()) {
    const opened = openKitchen(name, folder, starter);
    expect(opened.ok ? [] : opened.faults).toEqual([]);
    expect(opened.ok && opened.value.name).toBe(name);
  }
});

test("an unknown unit is named, with the units there are", () => {
  const fault = onlyFault((kitchen) => {
    kitchen.dishes = [{ ...OWN_DISH, makings: [{ food: "onion", amount: { value: 2, unit: "cups" } }] }];
  });
  expect(fault?.path).toEqual(["dishes", 0, "makings", 0, "amount"]);
  expect(fault?.sentence).toBe('"makings[0].amount" of the dish "own-pot" has the unit "cups", which is not known.');
  expect(fault?.remedy).toMatch(/^Write one of mg, g, .*, piece\.$/);
});

test("a negative price is named by pack, value, line and remedy", () => {
  const id = draftKitchen("one-ring").packs[3].id;
  const fault = onlyFault((kitchen) => {
    kitchen.packs[3].priceMinor = -79;
  });
  expect(fault).toMatchObject({ code: "min_value", path: ["packs", 3, "priceMinor"], value: "-79" });
  expect(fault?.sentence).toBe(`"priceMinor" of the pack "${id}" is -79, which is not at least 0.`);
  expect(fault?.remedy).toContain("whole minor units from 0 on");
  expect(fault?.line).toBeGreaterThan(1);
});

test.each([
  ["no content at all", undefined, 'has no "content"'],
  ["an empty content", {}, "is {}, which gives no size of the pack"],
])("a pack without size is told: %s", (_case, content, words) => {
  const fault = onlyFault((kitchen) => {
    kitchen.packs[0].content = content;
  });
  expect(fault?.sentence).toContain(words);
  expect(fault?.remedy).toContain('{"massG": 500}');
});

test("a dish that calls an unknown food is told with the food that could be meant", () => {
  const fault = onlyFault((kitchen) => {
    const makings = [...OWN_DISH.makings, { food: "carot", amount: { value: 100, unit: "g" } }];
    kitchen.dishes = [{ ...OWN_DISH, makings }];
  });
  expect(fault).toMatchObject({ code: "food-unknown", path: ["dishes", 0, "makings", 1, "food"], value: '"carot"' });
  expect(fault?.remedy).toMatch(/^Near to it: carrot/);
});

test("a date that is none is told", () => {
  const fault = onlyFault((kitchen) => {
    kitchen.startsOn = "2026-02-30";
  });
  expect(fault?.sentence).toBe('"startsOn" is "2026-02-30", not a day of the calendar, YYYY-MM-DD.');
});

test("faults of shape and of what does not fit together come at once, in the order of the lines", () => {
  const faults = faultsOf((kitchen) => {
    kitchen.packs[0].priceMinor = -1;
    kitchen.packs[1].food = "oats-roled";
    kitchen.packs[2].shop = "nowhere";
    kitchen.dishes = [
      { ...OWN_DISH, makings: [{ food: "carot", amount: { value: 1, unit: "cups" } }] },
      { ...OWN_DISH, id: "own-pan", main: "carrot" },
    ];
  });
  expect(faults.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([
    "min_value packs.0.priceMinor",
    "food-unknown packs.1.food",
    "shop-unknown packs.2.shop",
    "food-unknown dishes.0.makings.0.food",
    "union dishes.0.makings.0.amount",
    "main-unknown dishes.1.main",
  ]);
});

test("what is left out because it is faulty brings on no further fault", () => {
  const codes = faultsOf((kitchen) => {
    kitchen.eaters[0].sex = "unknown";
    kitchen.shops[0].openDays = [8];
    for (const lot of kitchen.stores) lot.massG = 0;
    kitchen.useUp = kitchen.stores.map((lot: { id: string }) => lot.id);
  }).map(({ code }) => code);
  expect(new Set(codes)).toEqual(new Set(["picklist", "max_value", "gt_value"]));
});

test("a newer version of the format is told as such, and nothing else", () => {
  const fault = onlyFault((kitchen) => {
    kitchen.version = 2;
    kitchen.packs[0].priceMinor = "new in version 2";
  });
  expect(fault?.sentence).toContain("written in version 2 of its format; this program reads version 1");
});

test("a week is no kitchen, and neither is a number", () => {
  writeFileSync(join(folder, "week.json"), '{"format": "halfloaf-week", "version": 1}');
  writeFileSync(join(folder, "number.json"), "7");
  const week = openKitchen("week.json", folder, starter);
  expect(week.ok ? "" : week.faults[0]?.code).toBe("format-week");
  const number = openKitchen("number.json", folder, starter);
  expect(number.ok ? "" : number.faults[0]?.sentence).toBe("The kitchen is 7, not an object in braces.");
});

test.each(["halfloaf-backup", "halfloaf-record"])(
  "a %s is told as one fault, with the command that brings it back",
  (format) => {
    writeFileSync(join(folder, "kept.json"), JSON.stringify({ format, version: 1, writtenAtMs: 0, rows: [] }));
    const kept = openKitchen("kept.json", folder, starter);
    const faults = kept.ok ? [] : kept.faults;
    expect(faults.map(({ code }) => code)).toEqual(["format-kept"]);
    expect(faults[0]?.remedy).toContain('"halfloaf restore FILE --kitchen FOLDER"');
  },
);

test("a name that is neither demo nor file is answered with the demos", () => {
  const opened = openKitchen("port-anselm", folder, starter);
  expect(opened.ok ? "" : opened.faults[0]?.remedy).toContain("port-ansel");
});

test("control characters of a kitchen are harmless in its faults", () => {
  const [fault] = faultsOf((kitchen) => {
    kitchen.packs[0].id = "Oats\u001b[2J";
  });
  expect(fault?.sentence).toContain("\\u001b[2J");
  expect(`${fault?.sentence}${fault?.remedy}${fault?.value}`).not.toContain("\u001b");
});

test("whatever is put in place of whatever, faults are told in whole sentences and nothing breaks", () => {
  const put = fc.oneof(
    fc.jsonValue({ maxDepth: 2 }),
    fc.constantFrom<unknown>(undefined, -1, 0.5, "", "x y", [], {}, null),
  );
  fc.assert(
    fc.property(fc.array(fc.nat(), { minLength: 1, maxLength: 5 }), put, (way, value) => {
      const faults = faultsOf((kitchen) => replaceDeep(kitchen, way, value));
      for (const { sentence, remedy } of faults) {
        expect(sentence).toMatch(/^["\p{L}].*\.$/u);
        expect(remedy).toMatch(/\S\.$/);
        expect(`${sentence} ${remedy}`).not.toMatch(/undefined|NaN|\[object/);
      }
    }),
    { numRuns: 150 },
  );
});

/** Goes down the record by the numbers, as far as it goes, and puts the value there; undefined takes out what is there. */
function replaceDeep(record: Draft, way: readonly number[], value: unknown): void {
  const [step = 0, ...rest] = way;
  const keys = Object.keys(record);
  const key = keys[step % keys.length];
  if (key === undefined) return;
  const inner = record[key];
  if (rest.length > 0 && typeof inner === "object" && inner !== null && Object.keys(inner).length > 0)
    replaceDeep(inner, rest, value);
  else if (value === undefined && Array.isArray(record)) record.splice(Number(key), 1);
  else record[key] = value;
}
