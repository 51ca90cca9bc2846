import fc from "fast-check";
import { expect, test } from "vitest";
import { toCsvText } from "./toCsvText.ts";

/** A reader of RFC 4180 written from its grammar alone. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let [row, at]: [string[], number] = [[], 0];
  while (at < text.length) {
    const quoted = /"((?:[^"]|"")*)"/y;
    const plain = /[^",\r\n]*/y;
    quoted.lastIndex = plain.lastIndex = at;
    const found = quoted.exec(text);
    const field = found ? (found[1] as string).replaceAll('""', '"') : (plain.exec(text)?.[0] ?? "");
    row.push(field);
    at = found ? quoted.lastIndex : plain.lastIndex;
    if (text[at] === ",") at++;
    else if (text.startsWith("\r\n", at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else throw new Error(`a field ends at ${at} with ${JSON.stringify(text[at])}`);
  }
  return rows;
}

const cell = fc.oneof(
  fc.string({ unit: fc.constantFrom('"', ",", "\r", "\n", "=", "+", "-", "@", " ", "\t", "a", "é", "＝", "ש") }),
  fc.string(),
);

test("every text comes back, with an apostrophe before it where it looked like a formula", () => {
  fc.assert(
    fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 }), (rows) => {
      const read = readCsv(toCsvText(["a", "b"], rows));
      expect(read[0]).toEqual(["a", "b"]);
      for (const [y, row] of rows.entries()) {
        for (const [x, text] of row.entries()) expect([text, `'${text}`]).toContain(read[y + 1]?.[x]);
      }
    }),
    { endOnFailure: true },
  );
});

test("no field of text begins, after blanks, with a sign that starts a formula; numbers stay numbers", () => {
  const evil = ["=1+1", "+SUM(A1)", "-2+3", "@cmd", "\t=1", " =1", "＝1", "\r=1", "|calc", "\ufeff=1"];
  const read = readCsv(
    toCsvText(
      ["x"],
      evil.map((text) => [text]),
    ),
  ).slice(1);
  for (const [field = ""] of read) expect(field.startsWith("'")).toBe(true);
  expect(readCsv(toCsvText(["x", "y"], [[-3.5, undefined]]))[1]).toEqual(["-3.5", ""]);
});
