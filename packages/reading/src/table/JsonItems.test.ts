import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { JsonItems } from "./JsonItems.ts";

function readItems(text: string, cuts: readonly number[] = [], keys = ["foods"]) {
  const reader = new JsonItems(keys);
  const items = [];
  let at = 0;
  for (const cut of cuts) {
    items.push(...reader.push(text.slice(at, at + cut)));
    at += cut;
  }
  items.push(...reader.push(text.slice(at)));
  return { items, isFound: reader.isFound, depth: reader.depth };
}

const cuts = fc.array(fc.nat(7), { maxLength: 40 });

describe("elements of a list in a JSON text", () => {
  test("are those that JSON.parse finds, wherever the text is cut and however it is laid out", () => {
    const others = fc.dictionary(fc.string(), fc.jsonValue(), { maxKeys: 3, noNullPrototype: true });
    fc.assert(
      fc.property(
        others,
        fc.array(fc.jsonValue(), { maxLength: 5 }),
        fc.nat(3),
        cuts,
        (before, list, indent, pieces) => {
          fc.pre(!("foods" in before));
          const text = JSON.stringify({ ...before, foods: list, last: [1, [2]] }, undefined, indent);
          const { items, isFound, depth } = readItems(text, pieces);
          expect(items.map((item) => JSON.parse(item.text as string))).toEqual(JSON.parse(JSON.stringify(list)));
          expect([isFound, depth]).toEqual([true, 0]);
        },
      ),
    );
  });

  test("may stand in an outermost list", () => {
    expect(readItems('[{"a":1}, 2]').items.map((item) => item.text)).toEqual(['{"a":1}', "2"]);
  });

  test("carry line and column", () => {
    const text = '{"x": [1],\n "foods": [\n  {"a": "\\"]"},\n  {}\n]}';
    expect(readItems(text, [5, 9, 4]).items.map(({ line, column }) => [line, column])).toEqual([
      [3, 3],
      [4, 3],
    ]);
  });

  test("are not looked for deeper or under another name", () => {
    expect(readItems('{"other": {"foods": [1]}, "also": [2]}').isFound).toBe(false);
  });

  test("too deep or too long are told without their text, and those behind them are read", () => {
    const deep = "[".repeat(100_000) + "]".repeat(100_000);
    const { items } = readItems(`{"foods":[${deep},{"a":1},"${"x".repeat(5_000_000)}",3]}`);
    expect(items.map((item) => item.text)).toEqual([undefined, '{"a":1}', undefined, "3"]);
  });

  test("do not depend on where any text is cut, however broken it is", () => {
    const broken = fc.string({
      unit: fc.constantFrom('"', "\\", "[", "]", "{", "}", ",", ":", "f", "\n"),
      maxLength: 40,
    });
    fc.assert(
      fc.property(broken, cuts, (text, pieces) => {
        const all = `{"foods":[${text}`;
        expect(readItems(all, pieces)).toEqual(readItems(all));
      }),
    );
  });
});
