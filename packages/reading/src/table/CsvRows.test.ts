import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CsvRows } from "./CsvRows.ts";

/** Rows of a text cut into pieces of the lengths given. */
function readRows(text: string, cuts: readonly number[] = [], delimiter = ",") {
  const reader = new CsvRows(delimiter);
  const rows = [];
  let at = 0;
  for (const cut of cuts) {
    rows.push(...reader.push(text.slice(at, at + cut), false));
    at += cut;
  }
  rows.push(...reader.push(text.slice(at), true));
  return rows;
}

const delimiters = fc.constantFrom(",", ";", "\t", "|");
const ends = fc.constantFrom("\n", "\r\n", "\r");
const cuts = fc.array(fc.nat(9), { maxLength: 40 });
const nasty = fc.string({ unit: fc.constantFrom('"', ",", ";", "\n", "\r", "a", " ", "€", "0"), maxLength: 30 });
const cells = fc.array(nasty, { minLength: 2, maxLength: 6 });

describe("rows of a CSV file", () => {
  test("are read back as they were written, with the line each begins on, wherever the text is cut", () => {
    fc.assert(
      fc.property(
        fc.array(cells, { maxLength: 6 }),
        delimiters,
        ends,
        cuts,
        fc.boolean(),
        (table, mark, end, pieces, isOpen) => {
          let line = 1;
          const expected = table.map((row) => {
            const begun = line;
            line +=
              row
                .join()
                .replaceAll("\r\n", "\n")
                .match(/[\r\n]/g)?.length ?? 0;
            line++;
            return { line: begun, cells: row };
          });
          const quoted = table.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(mark));
          const text = quoted.join(end) + (isOpen || quoted.length === 0 ? "" : end);
          expect(readRows(text, pieces, mark)).toEqual(expected);
        },
      ),
    );
  });

  test("do not depend on where any text is cut, however broken it is", () => {
    fc.assert(
      fc.property(fc.array(nasty, { maxLength: 12 }), cuts, (parts, pieces) => {
        const text = parts.join("\n");
        expect(readRows(text, pieces)).toEqual(readRows(text));
      }),
      { numRuns: 500 },
    );
  });

  test("a quotation mark within an unquoted cell is a character like any other", () => {
    expect(readRows('5" tin,a\n').map((row) => row.cells)).toEqual([['5" tin', "a"]]);
  });

  test("blank lines are no rows and still count as lines", () => {
    expect(readRows("a,b\n\n\r\nc,d")).toEqual([
      { line: 1, cells: ["a", "b"] },
      { line: 4, cells: ["c", "d"] },
    ]);
  });

  test("a faulty row ends with its line and does not lose the others", () => {
    expect(readRows('a,b\n"x"y,z\nc,d\n"open,e\nf,g\n')).toEqual([
      { line: 1, cells: ["a", "b"] },
      { line: 2, cells: [], fault: "text-after-quote" },
      { line: 3, cells: ["c", "d"] },
      { line: 4, cells: [], fault: "quote-unclosed" },
      { line: 5, cells: ["f", "g"] },
    ]);
  });

  test("a row longer than any row is passed over to its end, in small pieces as well", () => {
    const long = "x".repeat(200_000);
    const text = `a,b\n${long},${long}\nc,d\n`;
    const expected = [
      { line: 1, cells: ["a", "b"] },
      { line: 2, cells: [], fault: "row-too-long" },
      { line: 3, cells: ["c", "d"] },
    ];
    expect(readRows(text)).toEqual(expected);
    expect(readRows(text, Array(500).fill(1000))).toEqual(expected);
  });
});
