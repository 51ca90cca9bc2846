import type { EuAllergen, UsAllergen } from "../food/index.ts";

/** What an allergen of a legal list is called, and what its entry takes in or leaves out. */
export interface AllergenName {
  /** Number in the list of the law. */
  readonly number: number;
  readonly name: string;
  /** Absent where the name says it all. */
  readonly detail?: string;
}

/** The 14 allergens that EU and UK law asks to be named. **Source**: Regulation (EU) 1169/2011, Annex II. */
export const EU_ALLERGEN_NAMES: Readonly<Record<EuAllergen, AllergenName>> = {
  gluten: {
    number: 1,
    name: "cereals containing gluten",
    detail:
      "wheat with spelt and khorasan wheat, rye, barley, oats; not their glucose syrups, dextrose and maltodextrins",
  },
  crustaceans: { number: 2, name: "crustaceans" },
  eggs: { number: 3, name: "eggs" },
  fish: { number: 4, name: "fish", detail: "not the gelatine that carries vitamins, nor isinglass used for fining" },
  peanuts: { number: 5, name: "peanuts" },
  soybeans: { number: 6, name: "soya beans", detail: "not fully refined oil and fat" },
  milk: { number: 7, name: "milk", detail: "lactose too; not lactitol" },
  nuts: {
    number: 8,
    name: "nuts",
    detail: "almonds, hazelnuts, walnuts, cashews, pecans, Brazil nuts, pistachios, macadamias",
  },
  celery: { number: 9, name: "celery", detail: "celeriac too" },
  mustard: { number: 10, name: "mustard" },
  sesame: { number: 11, name: "sesame seeds" },
  sulphites: { number: 12, name: "sulphur dioxide and sulphites", detail: "above 10 mg a kg or litre in all, as SO2" },
  lupin: { number: 13, name: "lupin" },
  molluscs: { number: 14, name: "molluscs" },
};

/**
 * The 9 major food allergens of US law. Its list has no molluscs, and of the cereals wheat alone.
 * **Source**: Food Allergen Labeling and Consumer Protection Act 2004 and FASTER Act 2021 (from memory).
 */
export const US_ALLERGEN_NAMES: Readonly<Record<UsAllergen, AllergenName>> = {
  milk: { number: 1, name: "milk" },
  eggs: { number: 2, name: "eggs" },
  fish: { number: 3, name: "fish", detail: "the species is named" },
  "crustacean-shellfish": { number: 4, name: "crustacean shellfish", detail: "the species is named; not molluscs" },
  "tree-nuts": { number: 5, name: "tree nuts", detail: "the species is named" },
  peanuts: { number: 6, name: "peanuts" },
  wheat: { number: 7, name: "wheat", detail: "not barley, rye or oats" },
  soybeans: { number: 8, name: "soybeans", detail: "not highly refined oil" },
  sesame: { number: 9, name: "sesame", detail: "since 1 January 2023" },
};
