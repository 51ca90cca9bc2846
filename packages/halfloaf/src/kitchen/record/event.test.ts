import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseWith } from "../../quantity/index.ts";
import { parseEvent, parseEvents, RecordEvent } from "./event.ts";
import { deviceOf, numberOf, toEventId } from "./eventId.ts";
import { deeds, live, skews } from "./record.testing.ts";

const used = { id: "phone-3", atMs: 5, tick: 0, kind: "used", on: "2026-03-02", lot: "milk-phone-1", massG: 5 };
const pathsOf = (input: unknown) => {
  const read = parseEvent(input);
  return read.ok ? [] : read.issues.map(({ path }) => path.join("/"));
};

test("every event written as text is read back as it was, by its own schema and by that of all kinds", () => {
  fc.assert(
    fc.property(deeds, skews, (list, skewMs) => {
      for (const event of live(list, skewMs).all) {
        const row = JSON.parse(JSON.stringify(event));
        expect(parseEvent(row)).toEqual({ ok: true, value: row });
        expect(parseWith(RecordEvent, row)).toEqual({ ok: true, value: row });
      }
    }),
    { numRuns: 30, endOnFailure: true },
  );
});

describe("faulty rows", () => {
  test.each([
    [{ ...used, id: "phone" }, ["id"]],
    [{ ...used, id: "phone-0" }, ["id"]],
    [{ ...used, id: "Phone-1" }, ["id"]],
    [{ ...used, atMs: -1, tick: 0.5 }, ["atMs", "tick"]],
    [{ ...used, on: "2026-02-30", massG: 0 }, ["on", "massG"]],
    [{ ...used, kind: "vanished" }, ["kind"]],
    [{ ...used, colour: "white" }, ["colour"]],
    [{ ...used, kind: "toString" }, ["kind"]],
    ["text", [""]],
    [null, [""]],
  ])("%j", (row, paths) => {
    expect(pathsOf(row)).toEqual(paths);
  });

  test("take no other row with them", () => {
    const { events, issues } = parseEvents([used, { ...used, massG: -1 }, 7, { ...used, id: "phone-4" }]);
    expect(events.map(({ id }) => id)).toEqual(["phone-3", "phone-4"]);
    expect(issues.map(({ path }) => path)).toEqual([[1, "massG"], [2]]);
  });
});

test("an id tells its device and number", () => {
  const id = toEventId("kitchen-2-phone", 17);
  expect([deviceOf(id), numberOf(id)]).toEqual(["kitchen-2-phone", 17]);
});
