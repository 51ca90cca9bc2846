import * as v from "valibot";
import { expect, test } from "vitest";
import { parseWith } from "./issue.ts";

const Pack = v.strictObject({
  name: v.pipe(v.string(), v.nonEmpty()),
  masses: v.array(v.pipe(v.number(), v.gtValue(0))),
  kind: v.optional(v.picklist(["tin", "bag"])),
});

test("a value that fits comes back as parsed", () => {
  expect(parseWith(Pack, { name: "beans", masses: [400] })).toEqual({
    ok: true,
    value: { name: "beans", masses: [400] },
  });
});

test("all faults come at once, each with its path, what was expected and what was there", () => {
  const parsed = parseWith(Pack, { name: "", masses: [400, -1, "x"], kind: "box", brand: 1 });
  expect(parsed.ok).toBe(false);
  const told = parsed.ok
    ? []
    : parsed.issues.map(({ path, expected, received }) => [path.join("."), expected, received]);
  expect(told).toEqual([
    ["name", "!0", "0"],
    ["masses.1", ">0", "-1"],
    ["masses.2", "number", '"x"'],
    ["kind", '("tin" | "bag")', '"box"'],
    ["brand", "never", '"brand"'],
  ]);
});

test("a missing key is named", () => {
  expect(parseWith(Pack, { masses: [] })).toMatchObject({
    ok: false,
    issues: [{ path: ["name"], expected: '"name"', received: "undefined" }],
  });
});

test("where several shapes were allowed the message tells why each did not fit", () => {
  const Either = v.union([v.strictObject({ a: v.number() }), v.literal("none")]);
  const told = (input: unknown) => {
    const parsed = parseWith(v.array(Either), input);
    return parsed.ok ? [] : parsed.issues.map(({ path, message }) => [path.join("."), message]);
  };
  const number = 'a: Invalid type: Expected number but received "x"';
  expect(told([{ a: "x" }])).toEqual([["0", `${number}; or Invalid type: Expected "none" but received Object`]]);
  expect(told(["none", 7])).toEqual([
    ["1", 'Invalid type: Expected Object but received 7; or Invalid type: Expected "none" but received 7'],
  ]);
});

test("the whole value at fault has an empty path", () => {
  expect(parseWith(Pack, null)).toMatchObject({ ok: false, issues: [{ path: [], received: "null" }] });
});
