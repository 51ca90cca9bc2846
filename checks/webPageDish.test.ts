import { loadStarterFoods } from "@halfloaf/data";
import { draftDish, FoodIndex, readPage } from "@halfloaf/reading";
import { parseFoodTable } from "halfloaf/food";
import { describe, expect, test } from "vitest";

// Outside check 14: the example of the type Recipe in each of the standard's encodings, as far as a dish is read from it.
// Source: schema.org/Recipe, example 1, read through copies of that page in public repositories.

const METHOD =
  "Preheat the oven to 350 degrees. Mix in the ingredients in a bowl. Add the flour last. Pour the mixture into a loaf pan and bake for one hour.";

const JSON_LD = `<script type="application/ld+json">
{
  "@context": "https://schema.org",
  "@type": "Recipe",
  "author": "John Smith",
  "cookTime": "PT1H",
  "datePublished": "2009-05-08",
  "image": "bananabread.jpg",
  "recipeIngredient": ["3 or 4 ripe bananas, smashed", "1 egg", "3/4 cup of sugar"],
  "interactionStatistic": {
    "@type": "InteractionCounter",
    "interactionType": "https://schema.org/Comment",
    "userInteractionCount": "140"
  },
  "name": "Mom's World Famous Banana Bread",
  "nutrition": { "@type": "NutritionInformation", "calories": "240 calories", "fatContent": "9 grams fat" },
  "prepTime": "PT15M",
  "recipeInstructions": "${METHOD}",
  "recipeYield": "1 loaf",
  "suitableForDiet": "https://schema.org/LowFatDiet"
}
</script>`;

const MICRODATA = `<div itemscope itemtype="https://schema.org/Recipe">
  <span itemprop="name">Mom's World Famous Banana Bread</span>
  By <span itemprop="author">John Smith</span>,
  <meta itemprop="datePublished" content="2009-05-08">May 8, 2009
  <img itemprop="image" src="bananabread.jpg" alt="Banana bread on a plate" />
  Prep Time: <meta itemprop="prepTime" content="PT15M">15 minutes
  Cook time: <meta itemprop="cookTime" content="PT1H">1 hour
  Yield: <span itemprop="recipeYield">1 loaf</span>
  Tags: <link itemprop="suitableForDiet" href="https://schema.org/LowFatDiet" />Low fat
  <div itemprop="nutrition" itemscope itemtype="https://schema.org/NutritionInformation">
    Nutrition facts: <span itemprop="calories">240 calories</span>, <span itemprop="fatContent">9 grams fat</span>
  </div>
  Ingredients:
  - <span itemprop="recipeIngredient">3 or 4 ripe bananas, smashed</span>
  - <span itemprop="recipeIngredient">1 egg</span>
  - <span itemprop="recipeIngredient">3/4 cup of sugar</span>
  ...
  Instructions:
  <span itemprop="recipeInstructions">
  Preheat the oven to 350 degrees. Mix in the ingredients in a bowl. Add
  the flour last. Pour the mixture into a loaf pan and bake for one hour.
  </span>
</div>`;

const RDFA = `<div vocab="https://schema.org/" typeof="Recipe">
  <span property="name">Mom's World Famous Banana Bread</span>
  By <span property="author">John Smith</span>,
  <meta property="datePublished" content="2009-05-08">May 8, 2009
  <img property="image" src="bananabread.jpg" alt="Banana bread on a plate" />
  Prep Time: <meta property="prepTime" content="PT15M">15 minutes
  Cook time: <meta property="cookTime" content="PT1H">1 hour
  Yield: <span property="recipeYield">1 loaf</span>
  Tags: <link property="suitableForDiet" href="https://schema.org/LowFatDiet" />Low Fat
  <div property="nutrition" typeof="NutritionInformation">
    Nutrition facts: <span property="calories">240 calories</span>, <span property="fatContent">9 grams fat</span>
  </div>
  Ingredients:
  - <span property="recipeIngredient">3 or 4 ripe bananas, smashed</span>
  - <span property="recipeIngredient">1 egg</span>
  - <span property="recipeIngredient">3/4 cup of sugar</span>
  ...
  Instructions:
  <span property="recipeInstructions">
  Preheat the oven to 350 degrees. Mix in the ingredients in a bowl. Add
  the flour last. Pour the mixture into a loaf pan and bake for one hour.
  </span>
</div>`;

/** The newer edition of the example states two of the makings as property values. */
const toNewer = (html: string, property: string, item: string) =>
  html
    .replace(/>1 egg</, ` ${item}><span ${property}="value">1</span> <span ${property}="name">egg</span><`)
    .replace(
      />3\/4 cup of sugar</,
      ` ${item}><span ${property}="value">3/4</span> <meta ${property}="unitCode" content="G21">cup of <span ${property}="name">sugar</span><`,
    );

const ENCODINGS = {
  "JSON-LD": JSON_LD,
  microdata: MICRODATA,
  RDFa: RDFA,
  "microdata with property values": toNewer(
    MICRODATA,
    "itemprop",
    'itemscope itemtype="https://schema.org/PropertyValue"',
  ),
  "RDFa with property values": toNewer(RDFA, "property", 'typeof="PropertyValue"'),
};

const foods = parseFoodTable(loadStarterFoods());
if (!foods.ok) throw new Error(JSON.stringify(foods.issues));
const OPTIONS = { foods: foods.table, index: new FoodIndex(foods.table.values()), english: "american" as const };

function read(html: string) {
  const { dishes, issues } = readPage(html);
  expect(issues).toEqual([]);
  expect(dishes.length).toBe(1);
  const dish = dishes[0] as (typeof dishes)[number];
  return { dish, draft: draftDish(dish, OPTIONS) };
}

describe.each(Object.entries(ENCODINGS))("the standard's example in %s", (_, html) => {
  const { dish, draft } = read(html);

  test("has its title, yield and times", () => {
    expect(dish.title?.text).toBe("Mom's World Famous Banana Bread");
    expect(dish.yields.map(({ text }) => text)).toEqual(["1 loaf"]);
    expect([dish.times.prep?.text, dish.times.cook?.text]).toEqual(["PT15M", "PT1H"]);
    expect(draft.statedMinutes?.value).toBe(15 + 60);
    expect([draft.yieldText, draft.portions]).toEqual(["1 loaf", undefined]);
  });

  test("has its makings, three quarters of a cup of sugar among them", () => {
    expect(dish.makings.map(({ text }) => text)).toEqual(["3 or 4 ripe bananas, smashed", "1 egg", "3/4 cup of sugar"]);
    expect(draft.makings.map(({ amount }) => amount?.value)).toEqual([
      { from: 3, to: 4, unit: "piece" },
      { value: 1, unit: "piece" },
      { value: 0.75, unit: "[cup_us]" },
    ]);
    expect(draft.makings.slice(0, 2).map(({ food }) => food?.value)).toEqual(["banana", "egg"]);
  });

  test("has its method: an oven at 350 F is heated, what is mixed is baked in it for an hour", () => {
    expect(dish.method.map(({ text }) => text)).toEqual([METHOD]);
    const [heat, ...others] = draft.method;
    const baked = others.at(-1);
    expect([heat?.kind.value, heat?.tempC?.value, heat?.after.value]).toEqual(["bake", 175, []]);
    expect([baked?.kind.value, baked?.minutes]).toEqual([
      "bake",
      { value: { fixed: 60, perPortion: 0 }, sure: "sure" },
    ]);
    expect(baked?.after.value).toContain(heat?.id);
    expect(others[0]?.kind.value).toBe("mix");
  });
});

test("all encodings give the same dish", () => {
  const [first, ...others] = Object.values(ENCODINGS).map((html) => {
    const { makings, method, portions, statedMinutes, title } = read(html).draft;
    const plain = {
      makings: makings.map(({ passage, ...making }) => making),
      method: method.map(({ path, ...step }) => step),
    };
    return { ...plain, portions, statedMinutes, title: title?.value };
  });
  for (const other of others) expect(other).toEqual(first);
});
