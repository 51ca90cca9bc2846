import fc from "fast-check";
import { expect, test } from "vitest";
import { type LooseValue, parseLooseJson } from "./parseLooseJson.ts";

/** What the strict reader of the language makes of a loose value's text, in maps. */
function toLoose(value: unknown): LooseValue {
  if (Array.isArray(value)) return value.map(toLoose);
  if (typeof value !== "object" || value === null) return value as LooseValue;
  return new Map(Object.entries(value).map(([key, each]) => [key, toLoose(each)]));
}

test("sound JSON is read as the strict reader reads it", () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 5 }), (text) => {
      expect(parseLooseJson(text)).toEqual({ values: [toLoose(JSON.parse(text))], issues: [] });
    }),
  );
});

const BROKEN: [string, string, unknown][] = [
  ["commas at the end", '{"a": [1, 2,], }', { a: [1, 2] }],
  ["commas that are missing", '{"a": 1 "b": [1 2]}', { a: 1, b: [1, 2] }],
  ["comments", '/* one */ {"a": 1, // two\n "b": 2}', { a: 1, b: 2 }],
  ["wrappings that hide scripts", '<!--\n//<![CDATA[\n{"a": 1}\n//]]>\n-->', { a: 1 }],
  ["line breaks and tabs within strings", '{"a": "one\ntwo\tthree"}', { a: "one\ntwo\tthree" }],
  ["quotes within strings", '{"a": "a 2" piece, cut", "b": 1}', { a: 'a 2" piece, cut', b: 1 }],
  ["single quotes and bare keys", "{a: 'x', b: undefined}", { a: "x", b: null }],
  ["a byte order mark and a semicolon", '\ufeff{"a": 1};', { a: 1 }],
];

test.each(BROKEN)("%s do not keep a text from being read", (_, text, value) => {
  expect(parseLooseJson(text)).toEqual({ values: [toLoose(value)], issues: [] });
});

test("several values one after the other are all read", () => {
  expect(parseLooseJson('{"a":1}\n{"b":2}').values).toEqual([new Map([["a", 1]]), new Map([["b", 2]])]);
});

test("what stands before the fault is given, and the fault with line and column", () => {
  const { values, issues } = parseLooseJson('{"a": 1,\n "b": [1, ?');
  expect(values).toEqual([toLoose({ a: 1, b: [1] })]);
  expect(issues).toEqual([{ code: "json", path: [2, 11], expected: "a value", received: '"?"' }]);
});

test("a missing end is told, and what was read is given", () => {
  const { values, issues } = parseLooseJson('{"a": ["x", "y');
  expect(values).toEqual([toLoose({ a: ["x", "y"] })]);
  expect(issues.map(({ code, received }) => [code, received])).toEqual([["json", "the end"]]);
});

test("nesting without end is refused", () => {
  for (const sign of ["[", '{"a":']) expect(parseLooseJson(sign.repeat(100_000)).issues[0]?.code).toBe("json-too-deep");
});

test("no key reaches a prototype", () => {
  const { values } = parseLooseJson('{"__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}}}');
  expect((values[0] as ReadonlyMap<string, LooseValue>).get("__proto__")).toEqual(new Map([["polluted", 1]]));
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});

test("any text is read to an end", () => {
  const signs = fc.string({ unit: fc.constantFrom(..."{}[]\",:'\\/*-1e.a \n<!"), maxLength: 60 });
  fc.assert(fc.property(signs, (text) => void parseLooseJson(text)));
});
