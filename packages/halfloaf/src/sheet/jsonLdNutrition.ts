import type { Dish, DishNutrients } from "../dish/index.ts";
import type { Nutrient } from "../food/index.ts";
import type { JsonLd } from "./ownProperty.ts";

/** Figures that rest on less than all of the edible mass are not told; the slack is for sums of fractions. */
const WHOLE_SHARE = 1 - 1e-9;

/**
 * What a portion holds, as schema.org's NutritionInformation; empty where nothing is known. A figure that is known of a part
 * of the makings only is left out, and sodium also where a making is to taste.
 */
export function jsonLdNutrition(
  nutrients: DishNutrients,
  dish: Pick<Dish, "portionMassG">,
  english: "british" | "american",
): { readonly nutrition?: JsonLd } {
  const known = (name: Nutrient) => {
    const { amount, knownShare } = nutrients.perPortion[name];
    return amount !== undefined && knownShare >= WHOLE_SHARE ? amount : undefined;
  };
  const unsaturatesG = addKnown(known("monounsaturatesG"), known("polyunsaturatesG"));
  const figures: [string, number | undefined, string][] = [
    ["calories", known("energyKcal"), "kcal"],
    ["fatContent", known("fatG"), "g"],
    ["saturatedFatContent", known("saturatesG"), "g"],
    ["unsaturatedFatContent", unsaturatesG, "g"],
    ["carbohydrateContent", known(english === "british" ? "carbohydrateAvailableG" : "carbohydrateByDifferenceG"), "g"],
    ["sugarContent", known("sugarsG"), "g"],
    ["fiberContent", known("fibreG"), "g"],
    ["proteinContent", known("proteinG"), "g"],
    ["sodiumContent", nutrients.unknown.length > 0 ? undefined : known("sodiumMg"), "mg"],
  ];
  const told = figures.flatMap(([key, amount, unit]) =>
    amount === undefined ? [] : [[key, tell(amount, unit)] as const],
  );
  if (told.length === 0) return {};
  return {
    nutrition: {
      "@type": "NutritionInformation",
      servingSize: `${Math.round(dish.portionMassG)} g`,
      ...Object.fromEntries(told),
    },
  };
}

function addKnown(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : a + b;
}

/** Whole kcal and mg, g to a tenth. */
function tell(amount: number, unit: string): string {
  return `${unit === "g" ? Math.round(amount * 10) / 10 : Math.round(amount)} ${unit}`;
}
