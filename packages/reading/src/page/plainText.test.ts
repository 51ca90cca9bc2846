import fc from "fast-check";
import { expect, test } from "vitest";
import { tidyText, toPlainText } from "./plainText.ts";

const MARKUP = /<[a-z/!?]/i;
const UNSEEN = /[^\P{C}\n]/u;

test("elements are read as a page shows them", () => {
  expect(toPlainText("<p>Chop the <b>onion</b>.</p><ul><li>One</li><li>Two<br>Three</ul>")).toBe(
    "Chop the onion.\nOne\nTwo\nThree",
  );
});

test("entities become their characters, also where they were encoded twice", () => {
  expect(toPlainText("1&frac12; cups &amp;amp; salt &#39;n&#x27; pepper")).toBe("1½ cups & salt 'n' pepper");
  expect(toPlainText("&amp;lt;p&amp;gt;Hello&amp;lt;/p&amp;gt;")).toBe("Hello");
});

test("scripts and styles are no text", () => {
  expect(toPlainText("a<script>alert(1)</script><style>b{}</style><svg><text>c</text></svg>d")).toBe("ad");
});

test("a sign for less than stays where it is no tag", () => {
  expect(toPlainText("salt < 5 g & pepper > 1 g")).toBe("salt < 5 g & pepper > 1 g");
});

test("what cannot be seen is taken out", () => {
  expect(tidyText("ca\u200bfe\u0301\u202e \u00a0 x\u0000\ufeff\r\ny\u00ad\ud800")).toBe("café x\ny");
});

test("no markup and nothing unseen is in a plain text, whatever it was made from", () => {
  const piece = fc.oneof(
    fc.string({ unit: "binary", maxLength: 6 }),
    fc.constantFrom(
      ..."<|<<|</|<!--|-->|&lt;|&amp;lt;|&#60;|&#x3c|b>|script>|\u200b|\u202e|<img src=x onerror=alert(1)>|<svg/onload=x>|<![CDATA[".split(
        "|",
      ),
    ),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
      const plain = toPlainText(pieces.join(""));
      expect(plain).not.toMatch(MARKUP);
      expect(plain).not.toMatch(UNSEEN);
      expect(tidyText(plain)).toBe(plain);
    }),
    { numRuns: 500 },
  );
});
