import { expect, test } from "vitest";
import type { DishText } from "../dish/DishText.ts";
import { readPage } from "./readPage.ts";

const script = (json: string) =>
  `<html><head><script type="application/ld+json">${json}</script></head><body></body></html>`;

/** What the only dish of a page says, without where it was found. */
function only(html: string): {
  readonly dish: DishText | undefined;
  readonly title: string | undefined;
  readonly makings: readonly string[];
  readonly method: readonly string[];
} {
  const { dishes } = readPage(html);
  expect(dishes.length).toBe(1);
  const [dish] = dishes;
  return {
    dish,
    title: dish?.title?.text,
    makings: dish?.makings.map(({ text }) => text) ?? [],
    method: dish?.method.map(({ text }) => text) ?? [],
  };
}

const SOUP = { title: "Bean soup", makings: ["400 g beans", "1 onion"], method: ["Chop the onion.", "Simmer it."] };

/** One dish of our own in every way of stating it that pages are known to use. */
const WAYS: Record<string, string> = {
  "JSON-LD": script(
    '{"@context":"https://schema.org","@type":"Recipe","name":"Bean soup","recipeIngredient":["400 g beans","1 onion"],"recipeInstructions":["Chop the onion.","Simmer it."]}',
  ),
  "a graph, several types, wrong case": script(
    '{"@graph":[{"@type":"WebSite","name":"x"},{"@type":["Article","RECIPE"],"Name":"Bean soup","recipeingredient":["400 g beans","1 onion"],"RecipeInstructions":["Chop the onion.","Simmer it."]}]}',
  ),
  "lists in lists": script(
    '[[[{"@type":"Recipe","name":["Bean soup"],"recipeIngredient":[["400 g beans",["1 onion"]]],"recipeInstructions":[[{"@type":"HowToStep","text":"Chop the onion."}],[[{"@type":"HowToStep","text":"Simmer it."}]]]}]]]',
  ),
  "within a page's main entity": script(
    '{"@type":"WebPage","mainEntity":{"@type":"Recipe","name":"Bean soup","ingredients":["400 g beans","1 onion"],"recipeInstructions":"1. Chop the onion. 2. Simmer it."}}',
  ),
  "markup and entities in strings": script(
    '{"@type":"http://schema.org/Recipe","name":"Bean&nbsp;soup","recipeIngredient":["<span>400 g</span> beans","1&#32;onion"],"recipeInstructions":"<ol><li>Chop the <b>onion</b>.</li><li>Simmer&#32;it.</li></ol>"}',
  ),
  "commas, comments and line breaks": script(
    '/* cms */{"@type":"Recipe","name":"Bean soup","recipeIngredient":["400 g beans","1 onion",],"recipeInstructions":"Chop the onion.\nSimmer it.",}',
  ),
  sections: script(
    '{"@type":"Recipe","name":"Bean soup","recipeIngredient":"400 g beans\\n1 onion","recipeInstructions":[{"@type":"HowToSection","name":"Soup","itemListElement":[{"@type":"HowToStep","text":"Chop the onion."},{"@type":"HowToStep","itemListElement":[{"@type":"HowToDirection","text":"Simmer it."}]}]}]}',
  ),
  "steps named elsewhere": script(
    '{"@graph":[{"@type":"Recipe","name":"Bean soup","recipeIngredient":["400 g beans","1 onion"],"recipeInstructions":[{"@id":"#1"},{"@id":"#2"}]},{"@id":"#1","@type":"HowToStep","text":"Chop the onion."},{"@id":"#2","@type":"HowToStep","text":"Simmer it."}]}',
  ),
  "a prefix": script(
    '{"@type":"schema:Recipe","schema:name":"Bean soup","schema:recipeIngredient":["400 g beans","1 onion"],"schema:recipeInstructions":{"@list":["Chop the onion.","Simmer it."]}}',
  ),
  microdata: `<article itemscope itemtype="http://schema.org/Recipe"><h1 itemprop="name">Bean soup</h1>
    <ul><li itemprop="recipeIngredient">400 g <b>beans</b></li><li itemprop="ingredients recipeIngredient">1 onion</li></ul>
    <div itemprop="author" itemscope itemtype="http://schema.org/Person"><span itemprop="name">Nobody</span></div>
    <ol itemprop="recipeInstructions"><li>Chop the onion.<li>Simmer it.</ol></article>`,
  "microdata with steps and parts elsewhere": `<p id="m"><span itemprop="recipeIngredient">400 g beans</span><span itemprop="recipeIngredient">1 onion</span></p>
    <div itemscope itemtype="https://schema.org/WebPage"><div itemprop="mainEntity" itemscope itemtype="https://schema.org/Recipe" itemref="m">
    <meta itemprop="name" content="Bean soup"><div itemprop="recipeInstructions" itemscope itemtype="https://schema.org/HowToStep"><p itemprop="text">Chop the onion.</p></div>
    <div itemprop="recipeInstructions" itemscope itemtype="https://schema.org/HowToStep"><p itemprop="text">Simmer it.</p></div></div></div>`,
  RDFa: `<div vocab="https://schema.org/" typeof="Recipe"><h1 property="name">Bean soup</h1><ul><li property="recipeIngredient">400 g beans
    <li property="schema:recipeIngredient" content="1 onion">one</ul><div property="recipeInstructions"><p>Chop the onion.<p>Simmer it.</div></div>`,
  "text alone": `<html><head><title>x</title><style>p{}</style></head><body><nav>Home</nav><main><h1>Bean soup</h1><h2>Ingredients</h2><ul><li>400 g beans<li>1 onion</ul>
    <h2>Method</h2><ol><li>Chop the onion.<li>Simmer it.</ol><script>track()</script></main></body></html>`,
};

test.each(Object.keys(WAYS))("the same dish is read from %s", (way) => {
  const { title, makings, method } = only(WAYS[way] as string);
  expect({ title, makings, method }).toEqual(SOUP);
});

test("sections of method and headings among makings head what stands under them", () => {
  const { dish } = only(
    script(
      '{"@type":"Recipe","recipeIngredient":"1 onion\\nFor the sauce:\\n1 tin tomatoes","recipeInstructions":[{"@type":"HowToSection","name":"Sauce","itemListElement":["Simmer."]}]}',
    ),
  );
  expect(dish?.makings.map(({ heading }) => heading)).toEqual([undefined, "For the sauce"]);
  expect(dish?.method.map(({ heading }) => heading)).toEqual(["Sauce"]);
});

test("each passage tells where it was found", () => {
  const { dish } = only(WAYS["JSON-LD"] as string);
  expect(dish?.makings[1]?.path).toEqual(["json-ld", 0, "recipeingredient", 1]);
  expect(only(WAYS.microdata as string).dish?.makings[1]?.path).toEqual(["microdata", 0, "recipeingredient", 1]);
});

test("no markup gets into a path by the name of a property", () => {
  const { dish } = only(
    '<div itemscope itemtype=Recipe><b itemprop="x<script>" content=y></b><b itemprop=ingredients>1 egg</b></div>',
  );
  expect(JSON.stringify(dish)).not.toMatch(/<[a-z/!?]/i);
});

test("times, yields, cuisine and categories are sorted, the rest is told as unread", () => {
  const { dish } = only(
    script(
      '{"@type":"Recipe","name":"a","recipeIngredient":["1 onion"],"prepTime":"PT15M","cookTime":{"@type":"Duration","maxValue":"PT1H"},"totalTime":"1 hour","recipeYield":["4","4 servings"],"recipeCuisine":"Welsh","recipeCategory":"Lunch","keywords":"beans","image":"http://x.test/a.jpg","tip":"Good cold."}',
    ),
  );
  expect(dish?.times.prep?.text).toBe("PT15M");
  expect(dish?.times.cook?.text).toBe("PT1H");
  expect(dish?.times.total?.text).toBe("1 hour");
  expect(dish?.yields.map(({ text }) => text)).toEqual(["4 servings", "4"]);
  expect(dish?.cooking?.text).toBe("Welsh");
  expect(dish?.categories.map(({ text }) => text)).toEqual(["Lunch", "beans"]);
  expect(dish?.unread.map(({ text }) => text)).toEqual(["Good cold."]);
});

test("a script that can't be read on is told with script, line and column, and a sound one beside it is read", () => {
  const page = `${script('{"@type":"Recipe",\n ?}')}${WAYS["JSON-LD"]}`;
  const { dishes, issues } = readPage(page);
  expect(dishes.length).toBe(1);
  expect(issues).toEqual([{ code: "json", path: ["json-ld", 0, 2, 2], expected: "a key", received: '"?}"' }]);
});

test("a dish that is stated twice is one, two dishes are two", () => {
  expect(readPage(`${WAYS["JSON-LD"]}${WAYS["JSON-LD"]}`).dishes.length).toBe(1);
  expect(readPage(`${WAYS["JSON-LD"]}${script('{"@type":"Recipe","recipeIngredient":["1 egg"]}')}`).dishes.length).toBe(
    2,
  );
});

test("a making stated as a property value is read as it is shown, else from its parts", () => {
  const { makings } = only(
    script(
      '{"@type":"Recipe","recipeIngredient":[{"@type":"PropertyValue","value":"3/4","unitCode":"G21","name":"sugar"}]}',
    ),
  );
  expect(makings).toEqual(["3/4 cups sugar"]);
});

test("a page without a dish says so", () => {
  for (const html of ["", "hello", "<p>News</p>", script("{}"), script('{"@type":"Recipe","name":"x"}')]) {
    const { dishes, issues } = readPage(html);
    expect(dishes).toEqual([]);
    expect(issues.map(({ code }) => code)).toContain("no-dish");
  }
});
