import fc from "fast-check";
import { expect, test } from "vitest";
import { scanJson, toLineAndColumn } from "./scanJson.ts";

function isSound(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

test("sound JSON has no fault", () => {
  fc.assert(
    fc.property(fc.json(), fc.constantFrom(undefined, 1, "\t"), (text, space) => {
      expect(scanJson(JSON.stringify(JSON.parse(text), undefined, space))).toBe(undefined);
    }),
  );
});

test("a text is faulty exactly where the platform's own reader refuses it", () => {
  const piece = fc.constantFrom(
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    '"a"',
    "'a'",
    "1",
    "-",
    "01",
    "1.",
    "1e5",
    "true",
    "nul",
    " ",
    "\n",
    '"',
    "\\",
    ".5",
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 9 }), (pieces) => {
      const text = pieces.join("");
      expect(scanJson(text) === undefined).toBe(isSound(text));
    }),
    { numRuns: 3000 },
  );
});

test("a cut or changed text is faulty exactly where the platform's own reader refuses it", () => {
  fc.assert(
    fc.property(fc.json(), fc.nat(), fc.constantFrom("", ",", '"', "}", "x", "\\"), (text, where, put) => {
      const at = where % (text.length + 1);
      const changed = text.slice(0, at) + put + text.slice(at + 1);
      expect(scanJson(changed) === undefined).toBe(isSound(changed));
    }),
    { numRuns: 1000 },
  );
});

test("the fault stands at the sign that can't be there", () => {
  const text = '{\n  "name": "Quay",\n  "days": [1, 2,]\n}';
  const fault = scanJson(text);
  expect(fault?.expected).toBe("a value");
  expect(toLineAndColumn(text, fault?.offset as number)).toEqual({ line: 3, column: 17 });
});

test("a depth that would overflow a recursive reader is read", () => {
  expect(scanJson("[".repeat(200_000))?.offset).toBe(200_000);
});

test("every value is told with its path", () => {
  const told: string[] = [];
  scanJson('{"a": [1, {"b": null}], "c": {}}', (levels) => told.push(levels.map(({ key }) => key).join(".")));
  expect(told).toEqual(["", "a", "a.0", "a.1", "a.1.b", "c"]);
});
