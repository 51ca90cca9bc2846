import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitPage } from "./fitPage.ts";
import { type Html, html } from "./html.ts";
import { LINE, measureHtml } from "./measureHtml.ts";
import { table } from "./table.ts";

const text = fc.string({ unit: fc.constantFrom("a", "m", "i", " ", "W", "7", "&", "ש", "漢"), maxLength: 120 });
const piece: fc.Arbitrary<Html> = fc.oneof(
  text.map((words) => html`<p>${words}</p>`),
  text.map((words) => html`<ul><li>${words} <span class="note">${words}</span></li></ul>`),
  fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 5 }).map((rows) =>
    table({
      caption: "c",
      columns: [{ title: "t" }, { title: "u", isFigure: true }],
      rows: rows.map(([a, b]) => [a, b.slice(0, 9)]),
    }),
  ),
);
const pieces = fc.array(piece, { minLength: 1, maxLength: 8 });

function lettersOf({ html: page }: Html): number {
  return Number(/--letters: ([\d.]+)pt/.exec(page)?.[1]);
}

describe("the height of a piece", () => {
  test("is more than nothing, and that of two pieces is that of both", () => {
    fc.assert(
      fc.property(piece, piece, fc.integer({ min: 12, max: 90 }), (one, other, width) => {
        const [first, second] = [measureHtml(one)(width), measureHtml(other)(width)];
        expect(Math.min(first, second)).toBeGreaterThan(1);
        expect(measureHtml(html`${one}${other}`)(width)).toBeCloseTo(first + second, 9);
      }),
      { endOnFailure: true },
    );
  });

  test("is a line of a paragraph that has room, two where it has not, and a word too long is broken", () => {
    const lines = (words: string, width: number) =>
      Math.round(measureHtml(html`<p>${words}</p>`)(width) / (LINE + 0.15));
    expect([lines("on one line", 12), lines("on two lines", 4), lines("a".repeat(100), 30)]).toEqual([1, 2, 2]);
  });
});

describe("the letters of a page", () => {
  test("are never larger where there is more on it", () => {
    fc.assert(
      fc.property(pieces, pieces, (some, more) => {
        const page = { above: [html`<h1>Day</h1>`], columns: some, below: [] };
        const fuller = { ...page, columns: [...some, ...more, ...more] };
        expect(lettersOf(fitPage(fuller, "a4"))).toBeLessThanOrEqual(lettersOf(fitPage(page, "a4")));
      }),
      { endOnFailure: true },
    );
  });

  test("are the largest for a few lines and the smallest where no size is small enough", () => {
    const line = html`<p>One line.</p>`;
    const page = (count: number) => ({ above: [], columns: Array.from({ length: count }, () => line), below: [] });
    expect(lettersOf(fitPage(page(3), "a4"))).toBe(10.5);
    expect(lettersOf(fitPage(page(2000), "letter"))).toBe(6);
  });
});
