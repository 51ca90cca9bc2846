import fc from "fast-check";
import { parseFragment } from "parse5";
import { expect, test } from "vitest";
import { html } from "./html.ts";

test("whatever text is put in comes out as the same text, in an element and in an attribute", () => {
  const text = fc.string({ unit: fc.constantFrom("<", ">", '"', "'", "&", "a", "é", "ש", "/", "=", " ") });
  fc.assert(
    fc.property(text, text, (inside, beside) => {
      const [element, ...others] = parseFragment(html`<b title="${beside}">${inside}</b>`.html).childNodes;
      expect(others).toEqual([]);
      expect(element).toMatchObject({
        attrs: [{ value: beside }],
        childNodes: inside === "" ? [] : [{ value: inside }],
      });
    }),
    { endOnFailure: true },
  );
});

test("lists and pieces are put in as they are; false and undefined put in nothing", () => {
  expect(html`<p>${[html`<i>${1}</i>`, " & ", false, undefined]}</p>`.html).toBe("<p><i>1</i> &amp; </p>");
});
