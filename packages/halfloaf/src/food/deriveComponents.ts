import { KJ_PER_KCAL } from "../quantity/index.ts";
import type { Composition, Nutrient } from "./nutrient.ts";

/** How one component follows from others that are all known. */
interface Rule {
  readonly component: Nutrient;
  readonly from: readonly Nutrient[];
  readonly reckon: (figures: readonly number[]) => number | undefined;
  readonly told: string;
}

/** A rule reckons from what it names, in that order; the types of its figures follow from their number. */
const RULES: readonly Rule[] = [
  {
    component: "carbohydrateAvailableG",
    from: ["carbohydrateByDifferenceG", "fibreG"],
    reckon: ([byDifference = Number.NaN, fibre = Number.NaN]) => Math.max(0, byDifference - fibre),
    told: "carbohydrate by difference less fibre",
  },
  {
    component: "carbohydrateByDifferenceG",
    from: ["carbohydrateAvailableG", "fibreG"],
    reckon: ([available = Number.NaN, fibre = Number.NaN]) => available + fibre,
    told: "available carbohydrate and fibre",
  },
  {
    component: "energyKj",
    from: ["energyKcal"],
    reckon: ([kcal = Number.NaN]) => kcal * KJ_PER_KCAL,
    told: "kilocalories x 4.184",
  },
  {
    component: "energyKcal",
    from: ["energyKj"],
    reckon: ([kj = Number.NaN]) => kj / KJ_PER_KCAL,
    told: "kilojoules / 4.184",
  },
  {
    component: "freeSugarsG",
    from: ["sugarsG"],
    reckon: ([sugars]) => (sugars === 0 ? 0 : undefined),
    told: "none, as there are no sugars",
  },
  {
    component: "vitaminARaeUg",
    from: ["retinolUg", "betaCaroteneUg", "alphaCaroteneUg", "betaCryptoxanthinUg"],
    reckon: ([retinol = Number.NaN, beta = Number.NaN, alpha = Number.NaN, cryptoxanthin = Number.NaN]) =>
      retinol + beta / 12 + (alpha + cryptoxanthin) / 24,
    told: "retinol + beta-carotene/12 + (alpha-carotene + beta-cryptoxanthin)/24",
  },
  {
    component: "folateDfeUg",
    from: ["folateFoodUg", "folicAcidUg"],
    reckon: ([food = Number.NaN, acid = Number.NaN]) => food + 1.7 * acid,
    told: "food folate + 1.7 x folic acid",
  },
];

/** A composition with what follows from it, and for each component that was reckoned from which it was. */
export interface DerivedComposition {
  readonly composition: Composition;
  /** In words, by component; absent where the figure was given. */
  readonly derived: Readonly<Partial<Record<Nutrient, string>>>;
}

/**
 * Adds to a composition each component that is unknown but follows from known ones; what is given stays as it is. A
 * component follows only where all it is reckoned from is known and given, never from a figure reckoned itself.
 * **Source**: FAO Food and Nutrition Paper 77 (2003) for energy and carbohydrate; IOM 2001 and 1998 for vitamin A as
 * retinol activity equivalents and folate as dietary equivalents (all from memory).
 */
export function deriveComponents(given: Composition): DerivedComposition {
  const composition: Partial<Record<Nutrient, number>> = { ...given };
  const derived: Partial<Record<Nutrient, string>> = {};
  for (const { component, from, reckon, told } of RULES) {
    const figures = from.map((name) => given[name]).filter((figure) => figure !== undefined);
    if (given[component] !== undefined || figures.length < from.length) continue;
    const figure = reckon(figures);
    if (figure === undefined) continue;
    composition[component] = figure;
    derived[component] = told;
  }
  return { composition, derived };
}

/** The components that are reckoned from a component by one of the rules of `deriveComponents`. */
export function componentsDerivedFrom(component: Nutrient): readonly Nutrient[] {
  return RULES.filter(({ from }) => from.includes(component)).map((rule) => rule.component);
}
