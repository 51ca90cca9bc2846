import fc from "fast-check";
import { expect, test } from "vitest";
import { draftDish } from "../dish/draftDish.ts";
import { starterOptions } from "../dish/reading.testing.ts";
import { readPastedText } from "../dish/readPastedText.ts";
import { toDish } from "../dish/toDish.ts";
import { readPage } from "./readPage.ts";

const OPTIONS = starterOptions();
const MARKUP = /<[a-z/!?]/i;
const UNSEEN = /[^\P{C}\n]/u;

const PAGES = [
  '<script type="application/ld+json">{"@context":"https://schema.org","@graph":[{"@type":"Recipe","name":"Pea soup","recipeYield":"Serves 4","prepTime":"PT10M","totalTime":"PT40M","recipeIngredient":["2 x 400 g tins peas, drained","1 large onion, chopped","salt"],"recipeInstructions":[{"@type":"HowToSection","name":"Soup","itemListElement":[{"@type":"HowToStep","text":"Fry the onion for 5-10 minutes, then add the peas."},{"@type":"HowToStep","text":"Bake at 180C/gas 4 overnight."}]}]}]}</script>',
  '<div itemscope itemtype="https://schema.org/Recipe"><h1 itemprop="name">Pea soup</h1><ul><li itemprop="recipeIngredient">400 g peas<li itemprop="recipeIngredient">1 onion</ul><meta itemprop="totalTime" content="PT40M"><div itemprop="recipeInstructions">Chop the onion. Simmer for 20 minutes.</div></div>',
  '<div vocab="https://schema.org/" typeof="Recipe"><h1 property="name">Pea soup</h1><span property="recipeIngredient">400 g peas</span><p property="recipeInstructions">Chop, meanwhile boil.</p></div>',
  "<main><h1>Pea soup</h1><p>Serves 4</p><h2>Makings</h2><ul><li>400 g peas<li>1 onion</ul><h2>Method</h2><ol><li>Chop the onion.<li>Simmer it for 20 minutes.</ol></main>",
];

const INSERTS = [
  "<script>alert(1)</script>",
  "<img src=x onerror=alert(1)>",
  "&lt;script&gt;alert(1)&lt;/script&gt;",
  "&amp;lt;b&amp;gt;",
  "\\u003cscript\\u003e",
  "\u202e",
  "\u200b",
  "\u0000",
  "\ud800",
  '"__proto__":{"polluted":1},',
  '"constructor":{"prototype":{"polluted":1}},',
  "__proto__",
  "9".repeat(400),
  "1e999",
  "-0",
  "PT99999999999999H",
  "1/0",
  "[".repeat(200),
  "<div>".repeat(300),
  "<!--",
  "-->",
  "<template><li>",
  "</script>",
  '"',
  "\\",
  "}",
  "{",
  ",",
  "\n",
];

/** A page with pieces taken out, doubled or put in at chance places. */
const mutated = fc
  .record({
    page: fc.constantFrom(...PAGES),
    changes: fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 1, noNaN: true }),
        drop: fc.nat(30),
        insert: fc.oneof(fc.constantFrom(...INSERTS), fc.string({ unit: "binary", maxLength: 8 })),
      }),
      { maxLength: 6 },
    ),
  })
  .map(({ page, changes }) =>
    changes.reduce((text, { at, drop, insert }) => {
      const place = Math.floor(at * text.length);
      return text.slice(0, place) + insert + text.slice(place + drop);
    }, page),
  );

/** Every text in a value, however deep. */
function textsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

function readWhole(html: string): void {
  const { dishes } = readPage(html);
  for (const dish of dishes) {
    for (const text of textsIn({ ...dish, written: undefined })) {
      expect(text).not.toMatch(MARKUP);
      expect(text).not.toMatch(UNSEEN);
    }
    const draft = draftDish(dish, OPTIONS);
    const whole = toDish(draft, { portions: 2, title: "x" }, OPTIONS);
    for (const text of whole.ok ? textsIn(whole.value) : []) expect(text).not.toMatch(MARKUP);
  }
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
}

test("a page that was tampered with gives plain texts or none, and touches no prototype", () => {
  fc.assert(fc.property(mutated, readWhole), { numRuns: 400, endOnFailure: true });
});

test("bytes of chance are read to an end", () => {
  const bytes = fc.uint8Array({ maxLength: 400 }).map((values) => String.fromCharCode(...values));
  const units = fc.array(fc.nat(0xffff), { maxLength: 200 }).map((values) => String.fromCharCode(...values));
  const signs = fc.string({ unit: fc.constantFrom(..."<>/=\"'&;!-[]{}:, ab1\n"), maxLength: 200 });
  fc.assert(fc.property(fc.oneof(bytes, units, signs), readWhole), { numRuns: 400, endOnFailure: true });
});

test("a pasted text of chance lines is read to an end", () => {
  const line = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 40 }),
    fc.constantFrom(
      "Ingredients",
      "Method",
      "1 onion",
      "2 cups flour",
      "Chop it.",
      "For the sauce:",
      "Serves 4",
      "Notes",
      "",
      ...INSERTS,
    ),
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 30 }), (lines) => {
      const dish = readPastedText(lines.join("\n"));
      for (const text of textsIn(dish)) expect(text).not.toMatch(MARKUP);
      if (dish !== undefined) toDish(draftDish(dish, OPTIONS), {}, OPTIONS);
    }),
    { numRuns: 300, endOnFailure: true },
  );
});

const DEEP = 100_000;
test.each([
  ["signs for less than", "<".repeat(DEEP)],
  ["beginnings of scripts", "<script ".repeat(DEEP)],
  ["beginnings of entities", "&".repeat(DEEP)],
  ["stops", ".".repeat(DEEP)],
  ["elements", "<div>".repeat(DEEP)],
  ["elements and ends", `${"<div>".repeat(DEEP)}x${"</div>".repeat(DEEP)}`],
  ["formatting that never ends", "<b><p>".repeat(DEEP / 2)],
  ["items", "<div itemscope itemtype=https://schema.org/Recipe itemprop=x>".repeat(DEEP / 10)],
  ["lists of JSON", `<script type="application/ld+json">${"[".repeat(DEEP)}</script>`],
  ["maps of JSON", `<script type="application/ld+json">${'{"a":'.repeat(DEEP)}</script>`],
  [
    "markup in a string",
    `<script type="application/ld+json">{"@type":"Recipe","recipeIngredient":["${"<b>".repeat(5_000)}"]}</script>`,
  ],
  [
    "sections",
    `<script type="application/ld+json">{"@type":"Recipe","recipeInstructions":${'{"@type":"HowToSection","itemListElement":['.repeat(45)}"x"</script>`,
  ],
])("%s within each other without end are read to an end", (_, html) => {
  readWhole(html);
});

test("items that name each other in a ring are read to an end", () => {
  readWhole(
    '<script type="application/ld+json">{"@graph":[{"@type":"Recipe","@id":"#r","recipeInstructions":{"@id":"#s"},"isPartOf":{"@id":"#r"}},{"@id":"#s","@type":"HowToStep","itemListElement":[{"@id":"#s"},{"@id":"#r"}]}]}</script>',
  );
  readWhole(
    '<div id=a itemscope itemtype=https://schema.org/Recipe itemref="a b"><p id=b itemprop=x itemscope itemref="a b">y</p></div>',
  );
});

test("a long list of values is read as far as a dish goes", () => {
  const html = `<script type="application/ld+json">{"@type":"Recipe","recipeIngredient":[${'"1 onion",'.repeat(50_000)}]}</script>`;
  expect(readPage(html).dishes[0]?.makings.length).toBeLessThanOrEqual(200);
});
