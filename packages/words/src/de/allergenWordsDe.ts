import type { EuAllergen, UsAllergen } from "halfloaf/food";

/** The allergens of the list of the EU in German. **Source**: Regulation (EU) 1169/2011, Annex II, in German (from memory). */
export const EU_ALLERGEN_NAMES_DE: Readonly<Record<EuAllergen, string>> = {
  gluten: "glutenhaltiges Getreide",
  crustaceans: "Krebstiere",
  eggs: "Eier",
  fish: "Fisch",
  peanuts: "Erdnüsse",
  soybeans: "Sojabohnen",
  milk: "Milch",
  nuts: "Schalenfrüchte",
  celery: "Sellerie",
  mustard: "Senf",
  sesame: "Sesam",
  sulphites: "Sulfite",
  lupin: "Lupinen",
  molluscs: "Weichtiere",
};

/** The allergens of the list of the United States in German. */
export const US_ALLERGEN_NAMES_DE: Readonly<Record<UsAllergen, string>> = {
  milk: EU_ALLERGEN_NAMES_DE.milk,
  eggs: EU_ALLERGEN_NAMES_DE.eggs,
  fish: EU_ALLERGEN_NAMES_DE.fish,
  "crustacean-shellfish": EU_ALLERGEN_NAMES_DE.crustaceans,
  "tree-nuts": "Baumnüsse",
  peanuts: EU_ALLERGEN_NAMES_DE.peanuts,
  wheat: "Weizen",
  soybeans: EU_ALLERGEN_NAMES_DE.soybeans,
  sesame: EU_ALLERGEN_NAMES_DE.sesame,
};
