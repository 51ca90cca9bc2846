import { SAMPLE_FOODS, writeCsvFiles, writeJsonFile } from "@halfloaf/reading/table/testing";
import { FILE_MARK, type ReaderName } from "./fuzzReaders.ts";

const LINES = [
  "2 x 400 g tins chopped tomatoes, drained",
  "150g/5oz butter, softened (or oil)",
  "1 1/2 cups plain flour, plus extra for dusting",
  "juice of half a lime",
  "a quarter of a tin of coconut milk",
  "2-3 large onions (about 300 g), finely chopped",
  "½ tsp salt, or to taste",
  "For the sauce:",
  "1,5 kg potatoes, peeled and cut into 2 cm cubes",
  "3 cloves garlic, crushed, optional",
  "salt and pepper",
  "1 pound 4 ounces stewing beef",
];

const METHOD = [
  "Heat the oven to 200C/180C fan/gas 6. Chop the onion and fry it for 5-10 minutes until soft.",
  "Add the peas and 500 ml water, bring to the boil, then simmer for 20 minutes, stirring.",
  "Meanwhile soak the rice overnight. Drain, season and serve hot.",
];

const TEXT = ["Pea soup of the quay", "Serves 4 | 40 minutes", "", ...LINES, "", "Method", ...METHOD].join("\n");

const RECIPE = {
  "@context": "https://schema.org",
  "@type": ["Recipe"],
  name: "Pea soup &amp; bread",
  recipeYield: ["4", "4 servings"],
  totalTime: "PT40M",
  recipeIngredient: LINES,
  recipeInstructions: [
    { "@type": "HowToSection", name: "Soup", itemListElement: METHOD.map((text) => ({ "@type": "HowToStep", text })) },
  ],
};

const PAGES = [
  `<!doctype html><title>x</title><script type="application/ld+json">${JSON.stringify({ "@graph": [[RECIPE]] })}</script><body><h1>Pea soup</h1></body>`,
  `<div itemscope itemtype="https://schema.org/Recipe"><h1 itemprop="name">Pea soup</h1><ul>${LINES.map((line) => `<li itemprop="recipeIngredient">${line}`).join("")}</ul><meta itemprop="totalTime" content="PT40M"><div itemprop="recipeInstructions">${METHOD.join(" ")}</div></div>`,
  `<div vocab="https://schema.org/" typeof="Recipe"><h1 property="name">Pea soup</h1><span property="recipeIngredient">400 g peas</span><p property="recipeInstructions">${METHOD[0]}</p></div>`,
  `<main><h1>Pea soup</h1><p>Serves 4</p><h2>Makings</h2><ul>${LINES.map((line) => `<li>${line}</li>`).join("\n")}</ul><h2>Method</h2><ol>${METHOD.map((step) => `<li>${step}</li>`).join("\n")}</ol></main>`,
];

const RECEIPT = `*** QUAY MARKET ***
1 Long Stairs
28.11.2026 18:05
------------------------------
OATS 500G            0.89 A
2 x PITTA 6S         1.58 A
ONIONS
  0.455 kg x 1.20/kg 0.55 A
TIN TOMATOES 3 @ 0.45  1.35
  3 for 1.20         -0.15
Deposit              0.25
SUBTOTAL             4.47
Coupon              -0.50
TOTAL                3.97
Cash                 5.00
Change               1.03`;

const PRICES = `label;price;shop;content;unit price;date;gtin;offer
Rolled oats;0,89 €;Quay Market;500 g;1,78;28.11.2026;4006381333931;
"Pitta; six";0,79;;6 pcs;;2026-11-27;;3 for 2,00
Tomatoes;1.234,50;quay;6 x 1,5 L;;;;`;

const TABLE = `id;name;energy kcal;protein;salt;portion
1;"Harbour beans; dry";338;22,5;0,03;30
2;Kelp;<10;tr;(1,2);25
3;Moor oats;379;;;40`;

const CSV = writeCsvFiles(SAMPLE_FOODS);
const FOOD_DATA_FILES = [
  "food.csv",
  "nutrient.csv",
  "food_nutrient.csv",
  "food_portion.csv",
  "measure_unit.csv",
  "sr_legacy_food.csv",
];

const OWN_FOODS = JSON.stringify({
  format: "halfloaf-foods",
  version: 1,
  foods: [
    {
      id: "kelp-crackers",
      group: "bread",
      names: { british: ["kelp crackers"], american: ["kelp crackers"] },
      diet: "vegan",
      hygiene: "ready-to-eat",
      allergens: { eu: ["gluten"], us: ["wheat"] },
      refusePct: 0,
      keeping: { unopened: { "dry-store": 90 }, opened: { "dry-store": 14 }, authority: "the label" },
      source: "the label",
      composition: { energyKj: 1715, proteinG: 9 },
    },
  ],
  overrides: [{ food: "onion", from: "x", figures: { energyKj: 160 }, sources: { energyKj: "x" } }],
});

const MAPPING = JSON.stringify({
  format: "halfloaf-price-list-mapping",
  version: 1,
  csv: { delimiter: ";", decimal: "," },
  currency: "EUR",
  columns: { label: "label", price: "price" },
});

/** What inputs are made of, by reader; all of it made up. */
export const SAMPLES: Readonly<Record<ReaderName, readonly string[]>> = {
  line: LINES,
  text: [TEXT, TEXT.toUpperCase(), LINES.join("\n"), METHOD.join("\n")],
  page: PAGES,
  any: [...PAGES, TEXT, JSON.stringify(RECIPE), RECEIPT, LINES.join("\r\n")],
  receipt: [RECEIPT, RECEIPT.replaceAll(".", ",")],
  prices: [PRICES],
  table: [TABLE],
  "food-data-csv": [FOOD_DATA_FILES.map((name) => CSV[name] ?? "").join(FILE_MARK)],
  "food-data-json": [writeJsonFile(SAMPLE_FOODS.slice(0, 2)), writeJsonFile(SAMPLE_FOODS.slice(2), "FoundationFoods")],
  json: [OWN_FOODS, MAPPING, JSON.stringify(RECIPE)],
};
